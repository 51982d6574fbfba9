//! What is wrong, and what to do about it: a sentence for every meaning.

use std::time::Duration;

use crate::darkroom::incompatibility::{Clash, Danger};
use crate::error::Error;
use crate::problem::Problem;
use crate::web::numbers::{NumberProblem, Numbers};

/// What is wrong, and what to do about it.
#[must_use]
pub fn problem(problem: &Problem, numbers: Numbers) -> String {
    about_words(problem)
        .or_else(|| about_products(problem))
        .or_else(|| about_people(problem))
        .or_else(|| about_presence(problem))
        .or_else(|| super::inductions::about_inductions(problem))
        .or_else(|| super::scans::about_scans(problem))
        .or_else(|| super::workshops::about_workshops(problem))
        .or_else(|| about_screens(problem))
        .or_else(|| about_numbers(problem, numbers))
        .or_else(|| super::air::about_air(problem))
        .or_else(|| super::mix_problems::about_mixes(problem, numbers))
        .or_else(|| super::sheets::about_sheets(problem))
        .unwrap_or_else(|| about_the_bench(problem).to_owned())
}

/// Problems of who is in the room.
fn about_presence(problem: &Problem) -> Option<String> {
    let sentence = match problem {
        Problem::HereAlready => "The room has you as here already. Say first that you have left.",
        Problem::NotHere => "You have not said that you are here, so there is nothing to end.",
        Problem::LeftAlready => "This has ended already: look at the roll.",
        Problem::UntilWhen => {
            "Nobody else is here: say when you expect to leave, so that somebody asks after you."
        }
        Problem::NotWhileHere => {
            "Choose a time that is still to come, no later than you would be taken for gone."
        }
        Problem::MixesAlone => {
            "Nobody mixes concentrate alone in this room, and as far as it knows nobody else is \
             here. Wait until somebody has said that they are, then send this again: what you \
             typed is kept."
        }
        Problem::RoomFull { places } => {
            return Some(format!(
                "The room is full: all {places} places are taken. Wait until somebody leaves."
            ));
        }
        _ => return None,
    };
    Some(sentence.to_owned())
}

/// Problems of screens, and of number and PIN at a door.
fn about_screens(problem: &Problem) -> Option<String> {
    let sentence = match problem {
        Problem::CodeUnknown => {
            "No screen shows this code now. Look at the screen again: a code is good for ten \
             minutes and once."
        }
        Problem::NotAPin => "A PIN is six digits, nothing else.",
        Problem::PinEasy => {
            "This is one of the first that anyone tries: digits over and over, or in a row. Choose \
             another one."
        }
        Problem::DoorFailed => {
            "Number and PIN do not go together here. Your number and your PIN stand on your own \
             page of this room, under “PIN for the door”."
        }
        Problem::DoorSleeps => {
            "Too many wrong PINs here. Wait 15 minutes, or use your own phone: it is not held up."
        }
        Problem::OtherRole => "Your role in this room does not do that. Ask a steward.",
        _ => return None,
    };
    Some(sentence.to_owned())
}

/// Problems of one field by itself, whatever the field is.
fn about_words(problem: &Problem) -> Option<String> {
    let sentence = match problem {
        Problem::Missing => "Fill this in.",
        Problem::NotANumber => "Write this as a number.",
        Problem::NotAChoice => "Choose one of those offered.",
        Problem::NotATime => "This is no date and time. Give both.",
        Problem::NotADate => "This is no date. Write it like 2026-11-25.",
        Problem::NotAZone => "No such time zone. Write it like Europe/Berlin.",
        Problem::NotACurrency => "Write the currency as its three letters, like EUR.",
        Problem::SlugTaken => "Another room has this short name. Choose another one.",
        Problem::NotASlug => "Use lower-case letters, digits and hyphens only.",
        Problem::NameTaken => "Something here has that name already. Choose another one.",
        Problem::DilutionTaken => "This product has this dilution already. Change that one.",
        Problem::ClosesBeforeOpening => "Closing comes before opening. Put the later time second.",
        Problem::SidesSwapped => "The long side is shorter than the short side. Swap them.",
        Problem::NotConfirmed => "Confirm this first.",
        Problem::Unchanged => "It is like this already, so there is nothing to change.",
        Problem::NotSevenDays => "Give seven days, Monday first; null for a day it is closed.",
        Problem::Twice => "This stands here twice. Take one of them out.",
        Problem::DeeperThanTheTray => {
            "The tray is not that deep. Give less than from the floor to the rim."
        }
        Problem::NotAField => "There is no such field. Take it out or mend its name.",
        Problem::WrongType => "This is not the kind of value that belongs here.",
        Problem::NotAKey => {
            "Send a key of your own for this request: a UUID, or 16 random bytes as \
             22 characters of base64url."
        }
        _ => return None,
    };
    Some(sentence.to_owned())
}

/// Problems of products, their dilutions and of papers.
fn about_products(problem: &Problem) -> Option<String> {
    let sentence = match problem {
        Problem::NotOfThisForm => {
            "A product of the form chosen here has no such figure. Choose the other form, or leave \
             this empty."
        }
        Problem::NotOfThisKind => {
            "A product of this kind has no such figure. Change its kind, or leave this empty."
        }
        Problem::NotKitParts => {
            "Give the kit’s two to eight parts, with colons between them, like 1:1:0.5."
        }
        Problem::NotTwoPoints => "Give both points of the sheet, or none.",
        Problem::PointsTooClose => {
            "These two lie less than 2 °C apart. Take two points of the sheet further apart, or none."
        }
        Problem::WarmerNotQuicker => {
            "The warmer of the two must be the quicker one. Look at the sheet again."
        }
        Problem::ColdestAboveWarmest => "The coldest is above the warmest. Swap them.",
        Problem::LongerThanFull => {
            "A part-filled bottle keeps no longer than a full one. Look at the sheet again."
        }
        Problem::ReadyToUse => {
            "This product is used as it is: 0 parts of water. Where it is diluted, change its form."
        }
        Problem::NoAcid => {
            "Which acid the product is made of is not on file. Choose it at the product, or leave \
             this empty."
        }
        Problem::FreshPastLimit => {
            "A bath with so little acid would be past its limit pH when fresh. Look at the acid \
             and the limit again."
        }
        Problem::DilutionsDisagree => {
            "Its dilutions have figures that do not go with this. Change or take out the dilutions \
             first."
        }
        Problem::NotACas => {
            "Write the CAS number as the sheet has it, like 123-31-9, or leave it out."
        }
        Problem::CasMiscopied => {
            "The last digit of this CAS number does not go with the others, so one of them is \
             wrong. Copy it again from the sheet, or leave it out."
        }
        Problem::LeastAboveMost => "The lower end is above the upper one. Swap them.",
        Problem::NotRising => "Give these from the least to the most: the usual one lies between.",
        _ => return None,
    };
    Some(sentence.to_owned())
}

/// Problems of people, their log-ins and their rooms.
fn about_people(problem: &Problem) -> Option<String> {
    let sentence = match problem {
        Problem::PasswordEasy => {
            "Others would guess this password. Take a longer one, without your name in it."
        }
        Problem::LogInNameTaken => "Somebody has this log-in name. Choose another one.",
        Problem::LogInFailed => {
            "Name and password do not go together, or this account cannot log in now. Try again, \
             or ask a steward."
        }
        Problem::PasswordWrong => "This is not your present password.",
        Problem::NotALogInName => "Use letters, digits, dots and hyphens only.",
        Problem::AccessEnded => {
            "This person's access to the room has ended. Only a new invitation brings them back."
        }
        Problem::NotAScope => {
            "Choose at least one thing the token may do, and none that you may not do yourself."
        }
        Problem::LastSteward => {
            "A room needs a steward, and this is the last one. Make somebody else a steward first."
        }
        Problem::NotToOneself => "Another steward has to do this to you.",
        Problem::AlreadyMember => "This person is in the room already.",
        Problem::ResetNotAllowed => {
            "A steward cannot make this link. The person can, or whoever looks after the machine: \
             wetside member reset."
        }
        Problem::LinkDead => {
            "This link was used, was taken back or is too old. Ask whoever gave it to you for a \
             new one."
        }
        Problem::HandoverWaits => {
            "You hand this room over to somebody already. Wait until it is confirmed, or take it \
             back first."
        }
        Problem::NotTheSuccessor => "Only the steward whom the handover names can confirm it.",
        Problem::HandoverEnded => "This handover was confirmed or taken back before.",
        Problem::NotYourForm => {
            "This form was opened by somebody else, so nothing was noted. Open the page again \
             under your own name."
        }
        Problem::RoomClosed => "This room is closed: it can be read and takes no more entries.",
        _ => return None,
    };
    Some(sentence.to_owned())
}

/// Problems that name a number.
fn about_numbers(problem: &Problem, numbers: Numbers) -> Option<String> {
    Some(match problem {
        Problem::Number(problem) => number(*problem, numbers),
        Problem::TooLong(most) => format!("Use at most {most} characters."),
        Problem::TooShort(least) => format!("Use at least {least} characters."),
        Problem::OutOfRange { least, most } => format!("Give something from {least} to {most}."),
        Problem::TooMany(most) => {
            format!("There can be {most} of these at most. Retire or take out one first.")
        }
        Problem::NotACode(code) => format!(
            "{code:?} is no code of a safety data sheet. Copy it as the sheet has it, \
             like H315 or P305+P351+P338."
        ),
        Problem::TooLate { minutes } => format!(
            "That is too long ago: this room takes notes for {}. Ask a steward to correct it.",
            minutes_in_words((*minutes).into())
        ),
        Problem::UndoTimeOver { minutes } => format!(
            "Your own notes can be undone for {}. Ask a steward to correct this one.",
            minutes_in_words(*minutes)
        ),
        Problem::NoCapacity { product } => format!(
            "{product} stands in this line and has no capacity for this paper. Ask a steward to \
             enter it before you print."
        ),
        Problem::OverTheRim { holds_ul } => format!(
            "That is more than there is room for. Give {} at most.",
            litres_below(*holds_ul, numbers)
        ),
        Problem::HoldsMore { held_ul } => format!(
            "{} stand in it now. Give that at least.",
            litres_above(*held_ul, numbers)
        ),
        Problem::TooShallow { least_ul } => format!(
            "That does not cover a print in this tray. Give {} at least.",
            litres_above(*least_ul, numbers)
        ),
        _ => return None,
    })
}

/// Why a number cannot be read.
fn number(problem: NumberProblem, numbers: Numbers) -> String {
    match problem {
        NumberProblem::Empty => "Fill this in.".to_owned(),
        NumberProblem::NotANumber => "Write this as a number.".to_owned(),
        NumberProblem::OtherMark => format!(
            "This room writes decimals with {:?}, like 1{}5, and takes no other mark.",
            numbers.mark(),
            numbers.mark()
        ),
        NumberProblem::TooFine(0) => "Write a whole number.".to_owned(),
        NumberProblem::TooFine(1) => "Write one decimal place at most.".to_owned(),
        NumberProblem::TooFine(places) => format!("Write {places} decimal places at most."),
        NumberProblem::TooLarge => "This number is too large. Look at it again.".to_owned(),
        NumberProblem::UnknownUnit => {
            "This unit does not belong here. Leave it out, or write one of this quantity."
                .to_owned()
        }
    }
}

/// Problems of trays, mixes and what must not meet.
fn about_the_bench(problem: &Problem) -> String {
    match problem {
        Problem::MustNotMeet(clash) => format!(
            "Never pour these together: {} Use another container.",
            self::clash(*clash)
        ),
        Problem::NotInOneContainer(clash) => format!(
            "Keep these apart: {} Use another container.",
            self::clash(*clash)
        ),
        Problem::UnknownGroups => "Nobody recorded what one of the two is, and the unknown goes \
            with nothing. Use another container, and ask a steward to enter it from the safety \
            data sheet."
            .to_owned(),
        other => of_the_tray(other).to_owned(),
    }
}

fn of_the_tray(problem: &Problem) -> &'static str {
    match problem {
        Problem::InTheFuture => "That is in the future. Give the time it happened.",
        Problem::NothingStoodThere => {
            "Nothing recorded stood in that line then. Choose the line you printed in, and the \
             time; or note it as an unknown tray."
        }
        Problem::TrayFull => "Something stands in there. Discard it first.",
        Problem::LineFull => "Something stands in a tray of this line. Discard it first.",
        Problem::SpaceInUse => "A line stands in this space. Move it or retire it first.",
        Problem::BathsTakeLonger => {
            "The fixing baths of this line together take longer than that. Look at the sheet \
             again, and give a longer time here or a shorter one for each bath."
        }
        Problem::LongerThanWithout => "A wash aid shortens the wash. Give no more than without it.",
        Problem::NoWashingTime => {
            "Nobody entered how long this paper washes here. Ask a steward to enter it from the \
             supplier's sheet."
        }
        Problem::WashEmpty => "Nothing is noted in this wash, so there is nothing to take out.",
        Problem::NoSafetyData => {
            "This product has no safety data here, so nobody mixes it. Ask a steward to enter the \
             date and the codes of its safety data sheet."
        }
        Problem::StewardOnly => "Only a steward mixes this product. Ask one.",
        Problem::Retired => "This is used no more. Choose another one.",
        Problem::OffAlready => "The book has this as off already. Say that it is over first.",
        Problem::OnAgainAlready => "Somebody has said already that this is over.",
        Problem::EndsBeforeItBegan => "That is before it went off. Give the time it was on again.",
        Problem::NoStep => {
            "Give the longest time without an outline, the shortest time with one, or both."
        }
        Problem::FoggedBeforeClean => {
            "Light fogs more the longer it shines: the shortest time with an outline is longer \
             than the longest time without one. Look at the strips again."
        }
        Problem::OutsideLimit => {
            "This is outside the limit of the check, so it did not pass. Measure again, or record \
             it as failed."
        }
        Problem::NothingMeasured => "Nothing is measured at this check. Leave this empty.",
        Problem::TwoContainers => {
            "You chose one container and wrote the name of another. Keep one of the two."
        }
        Problem::AlreadyUndone => "This was undone before.",
        Problem::AlreadyErased => "This was erased before.",
        Problem::MixGone => {
            "This mix stands there no more. Look at the board, and begin with what stands there \
             now."
        }
        _ => "This does not fit what the room has recorded. Look at it again and mend it.",
    }
}

/// What two liquids do when they meet. It begins small and ends with a full stop.
#[must_use]
pub fn clash(clash: Clash) -> String {
    let who = match clash {
        Clash::HypochloriteWithAcid => "hypochlorite bleach and an acid",
        Clash::HypochloriteWithAmmonium => "hypochlorite bleach and ammonia or an ammonium salt",
        Clash::HypochloriteWithAnything => "hypochlorite bleach and anything but water",
        Clash::SulfideWithAcid => "a sulfide and an acid",
        Clash::FerricyanideWithAcid => "a ferricyanide and a strong acid",
        Clash::BleachWithReducer => {
            "an oxidising bleach and a developer, a sulfite, a fixer or an organic substance"
        }
        Clash::AmmoniumWithStrongAlkali => "an ammonium salt and a strong alkali",
        Clash::ConcentratedAcidWithAlkali => "a concentrated acid and an alkali",
        Clash::AcidWithFixer => "an acid and a fixer",
        Clash::AcidWithSulfite => "an acid and a sulfite",
        Clash::AcidWithDeveloper => "an acid and a developer",
    };
    let what: Vec<&str> = clash.gives().iter().map(|each| danger(*each)).collect();
    format!("{who} can give {}.", what.join(" and "))
}

/// What a clash gives off or does.
#[must_use]
pub const fn danger(danger: Danger) -> &'static str {
    match danger {
        Danger::Chlorine => "chlorine, a toxic gas",
        Danger::Chloramines => "chloramines, toxic gases",
        Danger::HydrogenSulfide => "hydrogen sulfide, a toxic gas",
        Danger::HydrogenCyanide => "hydrogen cyanide, a deadly gas",
        Danger::Ammonia => "ammonia, a toxic gas",
        Danger::SulfurDioxide => "sulfur dioxide, a toxic gas",
        Danger::Gas => "dangerous gas",
        Danger::Heat => "heat and spattering liquid",
    }
}

/// Why something was not done.
#[must_use]
pub fn failure(error: &Error, numbers: Numbers) -> String {
    match error {
        Error::Unauthenticated => "Log in first.".to_owned(),
        Error::Forbidden => {
            "You cannot do this here: it takes another role. Ask a steward.".to_owned()
        }
        Error::NotFound => "There is no such thing here, or none that you may see.".to_owned(),
        Error::Invalid(_) => "Some of this needs mending: see what stands beside it.".to_owned(),
        Error::Refused(refused) => problem(refused, numbers),
        Error::Mismatch => "Something else was sent before under the same key. Open the page \
            again and send it from there."
            .to_owned(),
        Error::TooMany(wait) => format!(
            "Too many tries. Wait {}, then try again.",
            wait_in_words(*wait)
        ),
        Error::Unavailable(_) => "Too much is going on just now. Send it again in a moment: \
            the same thing sent twice counts once."
            .to_owned(),
        Error::Internal(_) => "Something went wrong in the program, not in what you did. Try \
            again; if it stays, tell a steward the number shown here."
            .to_owned(),
    }
}

fn minutes_in_words(minutes: i64) -> String {
    match (minutes / 60, minutes % 60) {
        (0, 1) => "1 minute".to_owned(),
        (0, minutes) => format!("{minutes} minutes"),
        (1, 0) => "1 hour".to_owned(),
        (hours, 0) if hours > 48 && hours % 24 == 0 => format!("{} days", hours / 24),
        (hours, 0) => format!("{hours} hours"),
        (hours, minutes) => format!("{hours} h {minutes} min"),
    }
}

fn wait_in_words(wait: Duration) -> String {
    match wait.as_secs() {
        0 | 1 => "a second".to_owned(),
        seconds if seconds < 120 => format!("{seconds} seconds"),
        seconds => minutes_in_words(i64::try_from(seconds.div_ceil(60)).unwrap_or(i64::MAX)),
    }
}

/// To the millilitre, rounded down: what still fits.
fn litres_below(microlitres: i64, numbers: Numbers) -> String {
    numbers.litres(microlitres.div_euclid(1_000) * 1_000)
}

/// To the millilitre, rounded up: what is enough.
fn litres_above(microlitres: i64, numbers: Numbers) -> String {
    numbers.litres(-(-microlitres).div_euclid(1_000) * 1_000)
}
