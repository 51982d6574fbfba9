//! What may be asked of readings, for pages and API alike.

use super::Taken;
use crate::darkroom::incompatibility::Group;
/// A reason, trimmed.
pub use crate::input::needed_remark as reason;
/// Words beside a reading, trimmed; may be empty.
pub use crate::input::remark;
use crate::input::{self, Bounds};
use crate::mixes::ReadingKind;
use crate::problem::{Problem, Problems};

const TEMPERATURE: Bounds = Bounds {
    least: 0,
    most: 600,
    words: ("0 °C", "60 °C"),
};

const SECONDS: Bounds = Bounds {
    least: 1,
    most: 3_600,
    words: ("1 s", "3600 s"),
};

const PH: Bounds = Bounds {
    least: 0,
    most: 14_000,
    words: ("0", "14"),
};

const SILVER: Bounds = Bounds {
    least: 0,
    most: 50_000,
    words: ("0 mg/L", "50000 mg/L"),
};

/// What somebody says they found, not looked at yet.
#[derive(Clone, Debug)]
pub struct Said {
    /// What they looked at.
    pub kind: ReadingKind,
    /// Good or not, by eye.
    pub passed: Option<bool>,
    /// The figure, in the kind's own unit.
    pub value: Result<i64, Problem>,
    /// The bath's temperature, in tenths of a degree.
    pub bath: Result<i64, Problem>,
    /// The paper or film.
    pub sample: String,
    /// Whether later readings are held against it.
    pub is_fresh: bool,
}

/// The field that holds a kind's figure; nothing where it is judged by eye.
#[must_use]
pub const fn figure_of(kind: ReadingKind) -> Option<&'static str> {
    match kind {
        ReadingKind::Temperature => Some("temperature"),
        ReadingKind::Emergence | ReadingKind::Clearing => Some("seconds"),
        ReadingKind::Ph => Some("ph"),
        ReadingKind::Silver => Some("silver"),
        ReadingKind::TestPrint
        | ReadingKind::IndicatorColour
        | ReadingKind::ResidualSilver
        | ReadingKind::ResidualThiosulfate
        | ReadingKind::Contamination => None,
    }
}

/// What was found, where it can be.
pub fn taken(said: Said, problems: &mut Problems) -> Option<Taken> {
    let kind = said.kind;
    let bounds = match kind {
        ReadingKind::Temperature => TEMPERATURE,
        ReadingKind::Emergence | ReadingKind::Clearing => SECONDS,
        ReadingKind::Ph => PH,
        ReadingKind::Silver => SILVER,
        _ => return by_eye(kind, said.passed, problems),
    };
    let figure = said.value.and_then(|value| bounds.hold(value));
    let figure = problems.take(figure_of(kind).unwrap_or_default(), figure);
    match kind {
        ReadingKind::Temperature => i32::try_from(figure?).ok().map(Taken::Temperature),
        ReadingKind::Ph => figure.map(Taken::Ph),
        ReadingKind::Silver => figure.map(Taken::Silver),
        _ => {
            let bath = said.bath.and_then(|bath| TEMPERATURE.hold_as(bath));
            let bath = problems.take("bath_temperature", bath);
            let sample = problems.take("sample", input::name(&said.sample));
            Some(Taken::Timed {
                kind,
                seconds: figure?,
                tenths_celsius: bath?,
                sample: sample?,
                is_fresh: said.is_fresh,
            })
        }
    }
}

fn by_eye(kind: ReadingKind, passed: Option<bool>, problems: &mut Problems) -> Option<Taken> {
    if kind == ReadingKind::Contamination {
        problems.add("kind", Problem::NotAChoice);
        return None;
    }
    let passed = problems.take("outcome", passed.ok_or(Problem::Missing))?;
    Some(Taken::ByEye { kind, passed })
}

/// The groups somebody can say came into a mix; that something can cause an
/// allergy names no liquid.
pub fn contaminants() -> impl Iterator<Item = Group> {
    let all = Group::ALL.into_iter();
    all.filter(|group| *group != Group::Sensitiser)
}

/// What came into a mix: groups, or nothing where nobody can say. Whoever is not
/// sure of all of it cannot say.
///
/// # Errors
/// Neither, or no such group.
pub fn came_in(groups: &[Group], is_unknown: bool) -> Result<Vec<Group>, Problem> {
    let all = groups.iter();
    match (is_unknown, groups.is_empty()) {
        (true, _) => Ok(Vec::new()),
        (false, true) => Err(Problem::Missing),
        (false, false) => match all.clone().any(|group| *group == Group::Sensitiser) {
            true => Err(Problem::NotAChoice),
            false => Ok(all.copied().collect()),
        },
    }
}
