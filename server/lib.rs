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

/// Lines and trays set up.
pub mod bench;
/// The board of a room.
pub mod board;
/// The pages of the book.
pub mod book;
/// What to do first when something went wrong.
pub mod emergency;
/// People and how they get in.
pub mod identity;
/// The people of a room.
pub mod members;
/// Mixing and discarding.
pub mod mixes;
/// What a person should know.
pub mod notices;
/// Sheet sizes and paper classes.
pub mod papers;
/// Products and their dilutions.
pub mod products;
/// Rooms and their rules.
pub mod rooms;
/// Notes of sheets.
pub mod sheets;
/// Trays, one by one.
pub mod trays;
/// What every page shares.
pub mod web;
