//! The Emergency page: open to everyone, with or without a room.

use askama::Template;

use crate::web::shell::Shell;

/// What to do first, whom to call, where things are.
#[derive(Debug, Clone, Template)]
#[template(path = "emergency/emergency.html")]
pub struct EmergencyPage {
    /// The frame.
    pub shell: Shell,
    /// What this room has on file; none on the page without a room.
    pub room: Option<RoomHelp>,
    /// The supplier's P-statements of what stands on the bench; empty: the generic ones.
    pub precautions: Vec<Precaution>,
}

/// Where help is in this room; an empty string says it is not on file.
#[derive(Debug, Clone, Default)]
pub struct RoomHelp {
    /// The number of the emergency services.
    pub emergency_number: String,
    /// Name and number of the poison centre.
    pub poison_centre: String,
    /// The address to give.
    pub address: String,
    /// The room's own people.
    pub contacts: String,
    /// Where the eyewash is.
    pub eyewash: String,
    /// Where the safety data sheets are.
    pub data_sheets: String,
}

/// A precautionary statement of the supplier.
#[derive(Debug, Clone)]
pub struct Precaution {
    /// The product.
    pub product: String,
    /// `P305+P351+P338`.
    pub code: String,
    /// Its text.
    pub text: String,
}
