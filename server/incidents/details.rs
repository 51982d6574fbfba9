//! What happened, as it lies beside the book.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::error::{Error, Result};

/// What sort of incident.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum What {
    /// Chemistry on the skin.
    SkinContact,
    /// A splash in the eye.
    EyeSplash,
    /// Something was breathed in.
    Inhalation,
    /// Something was spilt.
    Spill,
    /// It nearly happened.
    NearMiss,
}

impl What {
    /// Every sort, in the order pages list them.
    pub const ALL: [Self; 5] = [
        Self::SkinContact,
        Self::EyeSplash,
        Self::Inhalation,
        Self::Spill,
        Self::NearMiss,
    ];

    /// As forms write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::SkinContact => "skin_contact",
            Self::EyeSplash => "eye_splash",
            Self::Inhalation => "inhalation",
            Self::Spill => "spill",
            Self::NearMiss => "near_miss",
        }
    }

    /// Reads what [`What::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|what| what.as_str() == text)
    }

    /// Whether running water comes before anything else.
    #[must_use]
    pub const fn wants_water(self) -> bool {
        matches!(self, Self::SkinContact | Self::EyeSplash)
    }
}

/// Which part of the body.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum BodyPart {
    /// Hands and fingers.
    Hands,
    /// Arms.
    Arms,
    /// Face and neck.
    Face,
    /// Anything else.
    Elsewhere,
}

impl BodyPart {
    /// Every part, in the order pages list them.
    pub const ALL: [Self; 4] = [Self::Hands, Self::Arms, Self::Face, Self::Elsewhere];

    /// As forms write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Hands => "hands",
            Self::Arms => "arms",
            Self::Face => "face",
            Self::Elsewhere => "elsewhere",
        }
    }

    /// Reads what [`BodyPart::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|part| part.as_str() == text)
    }
}

/// What was done first: the steps of the page for emergencies.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum FirstDeed {
    /// Running water, at least 15 minutes.
    LongFlush,
    /// Running water, less than that.
    ShortFlush,
    /// Everyone out, and air let in.
    Out,
    /// The emergency number, the poison centre or a doctor was called.
    Called,
    /// Nothing.
    Nothing,
}

impl FirstDeed {
    /// Every deed, in the order pages list them.
    pub const ALL: [Self; 5] = [
        Self::LongFlush,
        Self::ShortFlush,
        Self::Out,
        Self::Called,
        Self::Nothing,
    ];

    /// As forms write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::LongFlush => "long_flush",
            Self::ShortFlush => "short_flush",
            Self::Out => "out",
            Self::Called => "called",
            Self::Nothing => "nothing",
        }
    }

    /// Reads what [`FirstDeed::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|deed| deed.as_str() == text)
    }
}

/// Everything that is known of an incident.
#[derive(Clone, Deserialize, Eq, PartialEq, Serialize)]
pub struct Details {
    /// What sort.
    pub what: What,
    /// When it happened: microseconds since 1970.
    pub happened_at_us: i64,
    /// The line it happened at; nothing for elsewhere in the room.
    pub line_id: Option<Uuid>,
    /// The product, where it was one.
    pub product_id: Option<Uuid>,
    /// Which part of the body, of contact with the skin.
    pub part: Option<BodyPart>,
    /// What was done first.
    pub first: Vec<FirstDeed>,
    /// What happened and how the person is, in their words.
    pub words: String,
}

impl std::fmt::Debug for Details {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Details")
    }
}

impl Details {
    /// As it lies beside the book.
    ///
    /// # Errors
    /// A fault: it is text and whole numbers.
    pub fn to_text(&self) -> Result<String> {
        Ok(serde_json::to_string(self)?)
    }

    /// Reads what [`Details::to_text`] writes.
    ///
    /// # Errors
    /// Text that is none of ours.
    pub fn of_text(text: &str) -> Result<Self> {
        serde_json::from_str(text).map_err(|_| Error::fault("an incident that cannot be read"))
    }
}
