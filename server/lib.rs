//! Wetside keeps the wet side of a communal darkroom: what stands in each tray,
//! how much of it is used up, who printed what, and a book nobody can quietly alter.

/// The public address: the only source of links, cookies and hosts.
pub mod address;
/// Room air: what is known, measured and aired, and what may start there.
pub mod air;
/// The second skin: the same actions as JSON.
pub mod api;
/// What every request shares.
pub mod app;
/// Who is in the room.
pub mod arrivals;
/// The bench: lines and trays.
pub mod bench;
/// The bench on paper, for power cuts.
pub mod bench_sheet;
/// The board of a room: what stands in each tray, and whether it is good.
pub mod board;
/// The book's pages: entries, filters, checkpoints, the book as a file.
pub mod book;
/// What a room looks at on a schedule.
pub mod checks;
/// The time, injected.
pub mod clock;
/// What the program does on the command line.
pub mod commands;
/// The trade's arithmetic, pure: no clock, no database, no web.
pub mod darkroom;
/// Transactions, roles, migrations and the private PostgreSQL cluster.
pub mod database;
/// A demo room of invented people.
pub mod demo;
/// What to do first when something went wrong.
pub mod emergency;
/// What can go wrong, by meaning.
pub mod error;
/// What one steward hands over to another.
pub mod handover;
/// Who somebody is, and what that lets them do.
pub mod identity;
/// Incidents, and what people want to avoid.
pub mod incidents;
/// Who was told what, by whom, and until when that holds.
pub mod inductions;
/// Rules for values that both skins read.
pub mod input;
/// What the program does by itself.
pub mod jobs;
/// Every kind of entry.
pub mod kinds;
/// Labels for trays and bottles.
pub mod labels;
/// Lamps and screens near paper, and their fog tests.
pub mod lamps;
/// The room's book: entries, their hash chain, checkpoints and verification.
pub mod logbook;
/// Members: who is in a room and as what.
pub mod members;
/// Mixing and discarding.
pub mod mixes;
/// What a person should know.
pub mod notices;
/// Power and fan, while they are off.
pub mod outages;
/// Papers: sheet sizes and paper classes.
pub mod papers;
/// What can be wrong with what somebody asked.
pub mod problem;
/// Products: what the room mixes from.
pub mod products;
/// The trade's arithmetic as questions, a line each.
pub mod reckon;
/// Who may do what: one table.
pub mod rights;
/// Rooms and their settings.
pub mod rooms;
/// Every route.
/// The whole router, and what is listed of each route.
pub mod router;
/// Screens of the room that are no person's: on the wall and at the door.
pub mod screens;
/// Notes of sheets, and what they used up.
pub mod sheets;
/// What a new room starts with.
pub mod starters;
/// What people must know before they touch chemistry.
pub mod topics;
/// Trays, one by one.
pub mod trays;
/// What all pages share.
pub mod web;
/// Workshops, and the guests at them.
pub mod workshops;
