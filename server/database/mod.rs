//! Everything that touches PostgreSQL, except the SQL of the nouns.

pub mod cluster;
pub mod connect;
pub mod migrate;
pub mod roles;
mod transactions;

pub use transactions::{Database, InstallationTx, RoleName, RoomTx, Scope};
