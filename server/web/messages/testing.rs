//! What the forms of checks, contamination and extensions say.

use crate::darkroom::incompatibility::Group;
use crate::mixes::ReadingKind;

/// How a check is made.
#[must_use]
pub const fn how(kind: ReadingKind) -> &'static str {
    match kind {
        ReadingKind::Temperature => {
            "Hold the thermometer in the middle of the bath until it stands still. Rinse it \
             before it goes into another."
        }
        ReadingKind::TestPrint => {
            "Print a strip or a small sheet as you always do, and look at it in white light. \
             Compare it with one that was made when the bath was fresh."
        }
        ReadingKind::Emergence => {
            "Count from the moment the paper goes in until the image first shows. Use the same \
             paper as for the fresh time: another paper compares with nothing."
        }
        ReadingKind::Clearing => {
            "Drop a snippet of undeveloped film into the bath and count until it is clear. Use \
             the same film as for the fresh time, within 2 °C of it: otherwise nothing compares. \
             Twice the fresh time means used up."
        }
        ReadingKind::Ph => {
            "Dip a strip or a meter, as its maker says. Of a stop bath the figure decides by \
             itself where its acid is on file; of other baths it is kept for comparison."
        }
        ReadingKind::IndicatorColour => {
            "Look in white light with all paper put away: under a red lamp no colour can be told. \
             A colour that has turned means used up."
        }
        ReadingKind::Silver => {
            "Read a silver test strip, or take the laboratory’s figure. At the limit of this \
             bath it is to be replaced."
        }
        ReadingKind::ResidualSilver => {
            "Put a drop of the test solution on the white edge of a washed print, as its sheet \
             says, and look at the stain. A failed test tells everyone whose prints went through \
             since the last good one."
        }
        ReadingKind::ResidualThiosulfate => {
            "Put a drop of the test solution on the white edge of a washed print, as its sheet \
             says, and compare the stain with the patch beside it. A failed test tells everyone \
             whose prints went through since the last good one."
        }
        ReadingKind::Contamination => "",
    }
}

/// Good and not good, as that check shows it.
#[must_use]
pub const fn outcomes(kind: ReadingKind) -> (&'static str, &'static str) {
    match kind {
        ReadingKind::IndicatorColour => ("The colour of a fresh bath", "It has turned"),
        ReadingKind::ResidualSilver | ReadingKind::ResidualThiosulfate => (
            "Good: no more of a stain than allowed",
            "Not good: too dark a stain",
        ),
        _ => ("Good, as when fresh", "Not good"),
    }
}

/// The label and the unit of a figure.
#[must_use]
pub const fn figure(kind: ReadingKind) -> (&'static str, &'static str) {
    match kind {
        ReadingKind::Temperature => ("Temperature of the bath", "°C"),
        ReadingKind::Emergence => ("Until the image showed", "s"),
        ReadingKind::Clearing => ("Until the film was clear", "s"),
        ReadingKind::Silver => ("Silver", "mg/L"),
        _ => ("pH", ""),
    }
}

/// The label of paper or film, where a time is taken with it.
#[must_use]
pub const fn sample(kind: ReadingKind) -> Option<&'static str> {
    match kind {
        ReadingKind::Emergence => Some("Paper"),
        ReadingKind::Clearing => Some("Film"),
        _ => None,
    }
}

/// With what fresh times were taken.
#[must_use]
pub fn samples(all: &[String]) -> String {
    match all.is_empty() {
        true => "No fresh time was taken yet, so this one compares with nothing unless it is \
             the fresh one itself."
            .to_owned(),
        false => format!("Fresh times were taken with: {}.", all.join(", ")),
    }
}

/// What may have come into a mix: its name and what it is recognised by.
#[must_use]
pub const fn contaminant(group: Group) -> (&'static str, &'static str) {
    match group {
        Group::Developer => ("Developer", ""),
        Group::StopBath => ("Stop bath", ""),
        Group::Fixer => ("Fixer", ""),
        other => super::products::group(other),
    }
}
