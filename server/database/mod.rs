//! Everything that touches PostgreSQL, except the SQL of the nouns.

#![expect(
    clippy::disallowed_methods,
    clippy::disallowed_types,
    reason = "this is where connections and transactions are opened"
)]

pub mod cluster;
pub mod connect;
pub mod migrate;
/// What the owner of the tables does.
pub mod owner;
pub mod roles;
mod shelf;
mod transactions;

pub use owner::Owner;
pub use transactions::{Database, InstallationTx, RoleName, RoomTx, Scope};
