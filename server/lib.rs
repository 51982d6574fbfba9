//! Wetside keeps the wet side of a communal darkroom: what stands in each tray,
//! how much of it is used up, who printed what, and a book nobody can quietly alter.

/// What the program does on the command line.
pub mod commands;
/// The trade's arithmetic, pure: no clock, no database, no web.
pub mod darkroom;
/// Transactions, roles, migrations and the private PostgreSQL cluster.
pub mod database;
/// The room's book: entries, their hash chain, checkpoints and verification.
pub mod logbook;
/// The trade's arithmetic as questions, a line each.
pub mod reckon;
