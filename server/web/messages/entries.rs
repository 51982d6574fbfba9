//! What each entry of the book says, in one sentence.
//!
//! A noun adds its kinds to [`SENTENCES`]; a kind that is not there is named by
//! its own name, so that a newer program's entries can still be read about.

use serde::de::DeserializeOwned;
use uuid::Uuid;

use super::{
    air, arrivals, checks, incidents, inductions, lamps, mix_entries, scans, topics, workshops,
};
use crate::bench::{BottleSet, FinishingSet, LineSet, SpaceSet, TraySet, WashEmptied, WashJoined};
use crate::book::names::Names;
use crate::handover::{HandedOver, HandoverOpened, HandoverWithdrawn};
use crate::logbook::{Entry, through_screen};
use crate::members::{
    AccessEnded, InvitationRevoked, Invited, Joined, ResetLinkMade, Restored, RoleChanged,
    Suspended,
};
use crate::outages::{OutageBegan, OutageEnded};
use crate::papers::{PaperClassSet, SheetSizeSet};
use crate::products::ProductSet;
use crate::rooms::{Demo, RoomClosed, RoomOpened, RoomReopened, RoomSettingsChanged};
use crate::screens::{PinRemoved, PinSet, ScreenEnded, ScreenPaired, ScreenRenamed};
use crate::sheets::{FilmNoted, NoteUndone, Noted};
use crate::web::messages::outages::name as what;
use crate::web::messages::people::role;
use crate::web::numbers::Numbers;

/// What a sentence is made with beside the entry itself.
#[derive(Clone, Copy, Debug)]
pub struct Telling<'n> {
    /// What people call the things and persons in it.
    pub names: &'n Names,
    /// How the room writes numbers.
    pub numbers: Numbers,
}

impl Telling<'_> {
    pub(super) fn name(&self, id: Uuid) -> &str {
        self.names.find(id).unwrap_or("something without a name")
    }
}

/// Says what an entry with this text says; nothing where the text is not of its kind.
pub type Sentence = fn(&[u8], Telling<'_>) -> Option<String>;

/// The sentences, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (RoomOpened::KIND, |text, telling| {
        say(text, telling, room_opened)
    }),
    (Demo::KIND, |text, telling| say(text, telling, demo)),
    (RoomSettingsChanged::KIND, |text, telling| {
        say(text, telling, room_settings_changed)
    }),
    (RoomClosed::KIND, |text, telling| {
        say(text, telling, room_closed)
    }),
    (RoomReopened::KIND, |text, telling| {
        say(text, telling, room_reopened)
    }),
    (Joined::KIND, |text, telling| say(text, telling, joined)),
    (RoleChanged::KIND, |text, telling| {
        say(text, telling, role_changed)
    }),
    (Suspended::KIND, |text, telling| {
        say(text, telling, suspended)
    }),
    (Restored::KIND, |text, telling| say(text, telling, restored)),
    (AccessEnded::KIND, |text, telling| {
        say(text, telling, access_ended)
    }),
    (Invited::KIND, |text, telling| say(text, telling, invited)),
    (InvitationRevoked::KIND, |text, telling| {
        say(text, telling, invitation_revoked)
    }),
    (ResetLinkMade::KIND, |text, telling| {
        say(text, telling, reset_link_made)
    }),
    (SheetSizeSet::KIND, |text, telling| {
        say(text, telling, sheet_size_set)
    }),
    (PaperClassSet::KIND, |text, telling| {
        say(text, telling, paper_class_set)
    }),
    (ProductSet::KIND, |text, telling| {
        say(text, telling, product_set)
    }),
    (LineSet::KIND, |text, telling| say(text, telling, line_set)),
    (TraySet::KIND, |text, telling| say(text, telling, tray_set)),
    (SpaceSet::KIND, |text, telling| {
        say(text, telling, space_set)
    }),
    (BottleSet::KIND, |text, telling| {
        say(text, telling, bottle_set)
    }),
    (FinishingSet::KIND, |text, telling| {
        say(text, telling, finishing_set)
    }),
    (WashJoined::KIND, |text, telling| {
        say(text, telling, wash_joined)
    }),
    (WashEmptied::KIND, |text, telling| {
        say(text, telling, wash_emptied)
    }),
    (Noted::KIND, |text, telling| say(text, telling, noted)),
    (FilmNoted::KIND, |text, telling| {
        say(text, telling, film_noted)
    }),
    (NoteUndone::KIND, |text, telling| {
        say(text, telling, note_undone)
    }),
    (OutageBegan::KIND, |text, telling| {
        say(text, telling, outage_began)
    }),
    (OutageEnded::KIND, |text, telling| {
        say(text, telling, outage_ended)
    }),
    (ScreenPaired::KIND, |text, telling| {
        say(text, telling, screen_paired)
    }),
    (ScreenRenamed::KIND, |text, telling| {
        say(text, telling, screen_renamed)
    }),
    (ScreenEnded::KIND, |text, telling| {
        say(text, telling, screen_ended)
    }),
    (PinSet::KIND, |text, telling| say(text, telling, pin_set)),
    (PinRemoved::KIND, |text, telling| {
        say(text, telling, pin_removed)
    }),
    (HandoverOpened::KIND, |text, telling| {
        say(text, telling, handover_opened)
    }),
    (HandedOver::KIND, |text, telling| {
        say(text, telling, handed_over)
    }),
    (HandoverWithdrawn::KIND, |text, telling| {
        say(text, telling, handover_withdrawn)
    }),
];

/// The sentences of every noun.
pub fn sentences() -> impl Iterator<Item = &'static (&'static str, Sentence)> {
    let nouns = [
        mix_entries::SENTENCES,
        arrivals::SENTENCES,
        lamps::SENTENCES,
        checks::SENTENCES,
        air::SENTENCES,
        topics::SENTENCES,
        inductions::SENTENCES,
        scans::SENTENCES,
        incidents::SENTENCES,
        workshops::SENTENCES,
    ];
    SENTENCES.iter().chain(nouns.into_iter().flatten())
}

/// What an entry says.
#[must_use]
pub fn sentence(kind: &str, text: &[u8], telling: Telling<'_>) -> String {
    let found = sentences().find(|(name, _)| *name == kind);
    let said = found
        .and_then(|(_, say)| say(text, telling))
        .unwrap_or_else(|| format!("An entry of the kind {}.", kind_name(kind)));
    match through_screen(text) {
        Some(screen) => format!("{said} At the screen “{}”.", telling.name(screen)),
        None => said,
    }
}

/// A kind's name as people read it.
#[must_use]
pub fn kind_name(kind: &str) -> String {
    kind.replace('_', " ")
}

/// The choice of entries of every kind.
pub const ALL_KINDS: &str = "All kinds";
/// The choice of everybody's entries.
pub const EVERYBODY: &str = "Everybody";
/// The choice of entries about anything.
pub const EVERYTHING: &str = "Everything";

/// What people call the things that entries are about.
#[must_use]
pub fn noun_name(noun: &str) -> String {
    match noun {
        "pass" => "note of sheets".to_owned(),
        noun => noun.replace('_', " "),
    }
}

/// What stands for an entry that is not shown.
#[must_use]
pub fn not_shown(seq: i64) -> String {
    format!("entry {seq}, not shown to you")
}

pub(super) fn say<E: DeserializeOwned>(
    text: &[u8],
    telling: Telling<'_>,
    words: fn(&E, Telling<'_>) -> String,
) -> Option<String> {
    let entry = serde_json::from_slice::<E>(text).ok()?;
    Some(words(&entry, telling))
}

fn room_opened(entry: &RoomOpened, _: Telling<'_>) -> String {
    format!("The room {} was opened.", entry.settings.name)
}

fn demo(entry: &Demo, _: Telling<'_>) -> String {
    format!(
        "The room {} was opened as a demo: its people and its history are invented.",
        entry.settings.name
    )
}

fn room_settings_changed(_: &RoomSettingsChanged, _: Telling<'_>) -> String {
    "The room's settings were changed.".to_owned()
}

fn room_closed(_: &RoomClosed, _: Telling<'_>) -> String {
    "The room was closed.".to_owned()
}

fn room_reopened(_: &RoomReopened, _: Telling<'_>) -> String {
    "The room was opened again.".to_owned()
}

fn joined(entry: &Joined, telling: Telling<'_>) -> String {
    format!(
        "{} joined as {}, number {}.",
        telling.name(entry.person),
        role(entry.role),
        entry.member_number
    )
}

fn role_changed(entry: &RoleChanged, telling: Telling<'_>) -> String {
    format!(
        "{} was {} and is {} from here on.",
        telling.name(entry.person),
        role(entry.from),
        role(entry.to)
    )
}

fn suspended(entry: &Suspended, telling: Telling<'_>) -> String {
    format!("{} was suspended.", telling.name(entry.person))
}

fn restored(entry: &Restored, telling: Telling<'_>) -> String {
    format!("{} may enter again.", telling.name(entry.person))
}

fn access_ended(entry: &AccessEnded, telling: Telling<'_>) -> String {
    format!("The access of {} was ended.", telling.name(entry.person))
}

fn invited(entry: &Invited, _: Telling<'_>) -> String {
    format!("Somebody was invited as {}.", role(entry.role))
}

fn invitation_revoked(entry: &InvitationRevoked, telling: Telling<'_>) -> String {
    match entry.person {
        None => "An invitation was revoked.".to_owned(),
        Some(person) => format!(
            "The link for a new password of {} was revoked.",
            telling.name(person)
        ),
    }
}

fn reset_link_made(entry: &ResetLinkMade, telling: Telling<'_>) -> String {
    format!(
        "A link for a new password of {} was made.",
        telling.name(entry.person)
    )
}

pub(super) fn set(what: &str, name: &str, is_retired: bool) -> String {
    if is_retired {
        format!("{what} {name} was retired.")
    } else {
        format!("{what} {name} was set.")
    }
}

fn sheet_size_set(entry: &SheetSizeSet, telling: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Sheet size", &entry.name, true);
    }
    format!(
        "Sheet size {} was set to {} by {}.",
        entry.name,
        telling.numbers.millimetres(entry.long_tenths_mm.into()),
        telling.numbers.millimetres(entry.short_tenths_mm.into())
    )
}

fn paper_class_set(entry: &PaperClassSet, _: Telling<'_>) -> String {
    set("Paper class", &entry.name, entry.is_retired)
}

fn product_set(entry: &ProductSet, _: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Product", &entry.name, true);
    }
    format!("Product {} was set, version {}.", entry.name, entry.version)
}

fn line_set(entry: &LineSet, _: Telling<'_>) -> String {
    set("Line", &entry.name, entry.is_retired)
}

fn tray_set(entry: &TraySet, telling: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Tray", &entry.name, true);
    }
    format!(
        "Tray {} was set to {} by {} by {} inside.",
        entry.name,
        telling
            .numbers
            .millimetres(entry.inside_long_tenths_mm.into()),
        telling
            .numbers
            .millimetres(entry.inside_short_tenths_mm.into()),
        telling
            .numbers
            .millimetres(entry.inside_depth_tenths_mm.into())
    )
}

fn space_set(entry: &SpaceSet, _: Telling<'_>) -> String {
    set("Space", &entry.name, entry.is_retired)
}

fn bottle_set(entry: &BottleSet, telling: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Bottle", &entry.name, true);
    }
    format!(
        "Bottle {} was set; it holds {}.",
        entry.name,
        telling.numbers.volume(entry.holds_ul)
    )
}

fn finishing_set(entry: &FinishingSet, telling: Telling<'_>) -> String {
    format!(
        "The finishing times of {} down {} were set.",
        telling.name(entry.paper_class_id),
        telling.name(entry.line_id)
    )
}

fn wash_joined(entry: &WashJoined, telling: Telling<'_>) -> String {
    format!(
        "A print of {} joined the wash of {}.",
        telling.name(entry.paper_class_id),
        telling.name(entry.line_id)
    )
}

fn wash_emptied(entry: &WashEmptied, telling: Telling<'_>) -> String {
    format!(
        "All prints were taken out of the wash of {}.",
        telling.name(entry.line_id)
    )
}

fn sheets(count: u32) -> String {
    match count {
        1 => "1 sheet".to_owned(),
        count => format!("{count} sheets"),
    }
}

fn noted(entry: &Noted, telling: Telling<'_>) -> String {
    let count = match entry.is_estimated {
        true => format!("Nobody counted, about {}", sheets(entry.sheets)),
        false => sheets(entry.sheets),
    };
    let beginning = match entry.corrects_seq {
        Some(seq) => format!("In place of the note of entry {seq}: {count}"),
        None => count,
    };
    let workshop = entry.workshop_id.map_or_else(String::new, |id| {
        format!(" and the workshop {}", telling.name(id))
    });
    format!(
        "{beginning} of {}, {}, down {}, noted for {}{workshop}.",
        telling.name(entry.sheet_size_id),
        telling.name(entry.paper_class_id),
        telling.name(entry.line_id),
        telling.name(entry.person_id)
    )
}

fn film_noted(entry: &FilmNoted, telling: Telling<'_>) -> String {
    let rolls = match entry.rolls {
        1 => "1 roll".to_owned(),
        count => format!("{count} rolls"),
    };
    format!(
        "{rolls} of film through the fixer of {}, noted for {}.",
        telling.name(entry.line_id),
        telling.name(entry.person_id)
    )
}

fn note_undone(entry: &NoteUndone, telling: Telling<'_>) -> String {
    let undone = format!(
        "The note of entry {} by {} was taken back",
        entry.pass_seq,
        telling.name(entry.person_id)
    );
    match entry.reason.trim() {
        "" => format!("{undone}."),
        reason => format!("{undone}: {}.", reason.trim_end_matches('.')),
    }
}

fn outage_began(entry: &OutageBegan, _: Telling<'_>) -> String {
    format!("The {} went off.", what(entry.what))
}

fn outage_ended(entry: &OutageEnded, _: Telling<'_>) -> String {
    format!("The {} was on again.", what(entry.what))
}

fn screen_paired(entry: &ScreenPaired, _: Telling<'_>) -> String {
    format!(
        "The screen “{}” was paired as a {}.",
        entry.name, entry.kind
    )
}

fn screen_renamed(entry: &ScreenRenamed, _: Telling<'_>) -> String {
    format!("A screen is called “{}” from here on.", entry.name)
}

fn screen_ended(entry: &ScreenEnded, telling: Telling<'_>) -> String {
    format!(
        "The pairing of the screen “{}” ended.",
        telling.name(entry.screen_id)
    )
}

fn pin_set(entry: &PinSet, telling: Telling<'_>) -> String {
    format!("{} set a PIN for the door.", telling.name(entry.person_id))
}

fn pin_removed(entry: &PinRemoved, telling: Telling<'_>) -> String {
    format!(
        "The PIN of {} for the door was taken away.",
        telling.name(entry.person_id)
    )
}

fn handover_opened(entry: &HandoverOpened, telling: Telling<'_>) -> String {
    let (from, to) = (entry.from_person_id, entry.to_person_id);
    format!(
        "{} hands the room over to {}.",
        telling.name(from),
        telling.name(to)
    )
}

fn handed_over(entry: &HandedOver, telling: Telling<'_>) -> String {
    let (from, to) = (entry.from_person_id, entry.to_person_id);
    format!(
        "{} took the room over from {} and confirmed the list.",
        telling.name(to),
        telling.name(from)
    )
}

fn handover_withdrawn(entry: &HandoverWithdrawn, telling: Telling<'_>) -> String {
    let (from, to) = (entry.from_person_id, entry.to_person_id);
    format!(
        "The handover from {} to {} was taken back.",
        telling.name(from),
        telling.name(to)
    )
}
