//! What all pages share: the shell around them, style sheets and script, form
//! fields, drawings, dates and numbers. Imports no noun but for what every page of a
//! room says beside its own matter.

/// Floors, heights and flows of air in a room's units.
pub mod air_units;
/// What every page of a room says beside its own matter.
pub mod around;
/// Style sheets and script, embedded, under names that change with their content.
pub mod assets;
/// Files that a browser keeps instead of showing.
pub mod attached;
/// How a mix wore, as a chart.
pub mod chart;
/// Instants in words of the room's zone, and local times back to instants.
pub mod dates;
/// Days of the calendar.
pub mod days;
/// What the pages of the steward's desk share.
pub mod desk;
/// How bright the pages are.
pub mod display;
/// Trays seen from above and the two rules beside them.
pub mod drawing;
/// Errors as pages.
pub mod error_pages;
/// An error on its way out.
pub mod failure;
/// What is wrong with a form, field by field.
pub mod fields;
/// Reading submitted forms and their keys.
pub mod forms;
/// What a handler knows of a page's frame.
pub mod frame;
/// What every request passes first: host, site, headers.
pub mod guards;
/// Alive and ready.
pub mod health;
/// One line a request.
pub mod journal;
/// Things that happened earlier than they are written down.
pub mod late;
/// Lengths in millimetres or inches.
pub mod lengths;
/// Connections.
pub mod listener;
/// Every visible sentence that does not stand in a template.
pub mod messages;
/// Times in the dark, as typed.
pub mod minutes;
/// Volumes, lengths and shares, exactly, with the room's decimal mark.
pub mod numbers;
/// What a phone keeps for when there is no network.
pub mod offline;
/// The frame around every page.
pub mod shell;
/// Tables as files for spreadsheets.
pub mod table;
/// https by the program itself.
pub mod tls;
/// Forms that bring a file.
pub mod upload;
/// Pages that belong to no noun: errors, a closed room, the word before Safelight.
pub mod views;
