//! People: log-in, joining, accounts, members, tokens.

/// Its pages.
pub mod views;
