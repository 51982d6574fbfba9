//! Who may do what: one table. A right is a type; holding a [`Permit`] of it is
//! the proof that its holder may, and only `identity` can make one.
//!
//! [`Permit`]: crate::identity::Permit

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// What a person is in one room.
#[derive(
    Clone, Copy, Debug, Deserialize, Eq, Hash, Ord, PartialEq, PartialOrd, Serialize, ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// Prints, and notes what they print.
    Member,
    /// A member who may also mix.
    Trained,
    /// Keeps the bench, the stock, the safety and the people.
    Steward,
    /// Keeps the money.
    Treasurer,
}

impl Role {
    /// Every role, in the order pages list them.
    pub const ALL: [Self; 4] = [Self::Member, Self::Trained, Self::Steward, Self::Treasurer];

    /// The role as the database and the API write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Member => "member",
            Self::Trained => "trained",
            Self::Steward => "steward",
            Self::Treasurer => "treasurer",
        }
    }

    /// Reads what [`Role::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|role| role.as_str() == text)
    }
}

/// Whether a right reads or writes, and what an API token must be good for.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub enum Reach {
    /// Looks at the room.
    Read,
    /// Writes what members write at the bench.
    Bench,
    /// Writes what a steward keeps.
    Keep,
    /// A person's own affairs, by log-in only: never by a token.
    Own,
}

impl Reach {
    /// The scope a token needs, if a token can have it at all.
    #[must_use]
    pub const fn scope(self) -> Option<&'static str> {
        match self {
            Self::Read => Some("read"),
            Self::Bench => Some("bench"),
            Self::Keep => Some("keep"),
            Self::Own => None,
        }
    }
}

/// A right, as a type.
pub trait Right: Send + Sync + 'static {
    /// Its row in the table.
    const ROW: Row;
}

/// One row of the rights table.
#[derive(Clone, Copy, Debug)]
pub struct Row {
    /// The action's name: what the fingerprint, the API and the table call it.
    pub name: &'static str,
    /// What it lets one do, as DEVELOPERS.md says it.
    pub what: &'static str,
    /// Who has it.
    pub roles: &'static [Role],
    /// What it reaches.
    pub reach: Reach,
}

macro_rules! rights {
    ($( $right:ident $name:literal $reach:ident [$($role:ident)+] $what:literal; )+) => {
        $(
            #[doc = $what]
            #[derive(Clone, Copy, Debug)]
            pub struct $right;
            impl Right for $right {
                const ROW: Row = Row {
                    name: $name,
                    what: $what,
                    roles: &[$(Role::$role),+],
                    reach: Reach::$reach,
                };
            }
        )+
        /// The rights table.
        pub const TABLE: &[Row] = &[$($right::ROW),+];
    };
}

rights! {
    LookAtBoard "look_at_board" Read [Member Trained Steward Treasurer] "Look at the board and at a tray.";
    ReadBook "read_book" Read [Member Trained Steward Treasurer] "Read the book, as far as its kinds of entry are shown to one.";
    SealBook "seal_book" Keep [Steward Treasurer] "Make a checkpoint of the book now, and take the book away as a file.";
    ReadNotices "read_notices" Own [Member Trained Steward Treasurer] "Read one's notices.";
    KeepTokens "keep_tokens" Own [Member Trained Steward Treasurer] "Make and revoke one's own tokens.";
    CorrectNote "correct_note" Keep [Steward] "Set somebody's note of sheets right, with the reason.";
    NoteSheets "note_sheets" Bench [Member Trained Steward] "Note sheets, and prints that join or leave the wash.";
    EnterBenchSheet "enter_bench_sheet" Bench [Trained Steward] "Enter a bench sheet that was kept on paper, for everyone on it.";
    UndoNote "undo_note" Bench [Member Trained Steward] "Undo one's own note for ten minutes; a steward, any note.";
    Mix "mix" Bench [Trained Steward] "Mix a working solution, top up, pour together, move a second fixing bath up.";
    KeepMix "keep_mix" Bench [Member Trained Steward] "Cover, uncover, bottle and pour back a mix.";
    TestMix "test_mix" Bench [Member Trained Steward] "Record a check or a temperature, flag contamination, report liquid nobody can name.";
    OpenBench "open_bench" Keep [Steward] "Enter mixes that stood there already on the first day.";
    ExtendMix "extend_mix" Keep [Steward] "Let a mix be used a little longer, tested.";
    TakeBack "take_back" Keep [Steward] "Take back a reading, a flag of contamination, a discard, a fog test, a room check or a measured flow of air.";
    Discard "discard" Bench [Trained Steward] "Discard a mix into a named container.";
    NoteOutages "note_outages" Bench [Member Trained Steward] "Say that power or fan is off, and that it is on again.";
    Arrive "arrive" Bench [Member Trained Steward Treasurer] "Say that one is in the room, until when, and that one has left.";
    ClosePresence "close_presence" Keep [Steward] "End the presence of somebody who forgot to.";
    SeePapers "see_papers" Read [Member Trained Steward Treasurer] "See sheet sizes and paper classes.";
    KeepPapers "keep_papers" Keep [Steward] "Add, change and retire sheet sizes and paper classes.";
    SeeProducts "see_products" Read [Member Trained Steward Treasurer] "See products, their dilutions, lives and safety data.";
    KeepProducts "keep_products" Keep [Steward] "Add, change and retire products.";
    SeeBench "see_bench" Read [Member Trained Steward Treasurer] "See lines, trays, bottles and spaces, and how prints are finished.";
    KeepBench "keep_bench" Keep [Steward] "Add, change and retire lines, trays, bottles and spaces; set finishing times.";
    SeeLamps "see_lamps" Read [Member Trained Steward Treasurer] "See lamps and screens, and their fog tests.";
    TestLamps "test_lamps" Bench [Member Trained Steward] "Record a fog test of a lamp or a screen.";
    KeepLamps "keep_lamps" Keep [Steward] "Add, change and retire lamps and screens.";
    SeeTopics "see_topics" Read [Member Trained Steward Treasurer] "See the topics of inductions and their texts.";
    KeepTopics "keep_topics" Keep [Steward] "Add, change and retire topics of inductions.";
    SeeOwnInductions "see_own_inductions" Read [Member Trained Steward Treasurer] "See one's own inductions.";
    ConfirmInductions "confirm_inductions" Own [Member Trained Steward Treasurer] "Confirm the inductions one was given.";
    SeeInductions "see_inductions" Read [Steward] "See everybody's inductions.";
    Induct "induct" Keep [Steward] "Record, renew and withdraw inductions; let somebody confirm by number and PIN.";
    Supervise "supervise" Keep [Steward] "Let somebody in who is not inducted, supervised.";
    SeeChecks "see_checks" Read [Member Trained Steward Treasurer] "See room checks: what is due, and what was found.";
    RecordCheck "record_check" Bench [Member Trained Steward] "Record a room check.";
    KeepChecks "keep_checks" Keep [Steward] "Add, change and retire room checks.";
    SeeAir "see_air" Read [Member Trained Steward Treasurer] "See what is known of the room's air, and its measurements.";
    NoteAiring "note_airing" Bench [Member Trained Steward] "Say that a space is aired, and that this is over.";
    KeepAir "keep_air" Keep [Steward] "Set what is known of a space's air, record a measured flow, and let baths start without measured exhaust.";
    SeeIncidents "see_incidents" Own [Member Trained Steward Treasurer] "See one's own incidents; a steward, that there are others.";
    ReportIncident "report_incident" Own [Member Trained Steward Treasurer] "Report an incident of one's own; a steward, of anybody.";
    OpenIncident "open_incident" Own [Steward] "Open somebody's incident, on record, and say that it is dealt with.";
    EraseIncident "erase_incident" Own [Member Trained Steward Treasurer] "Erase what is known of one's own incident; a steward, when the person asks.";
    KeepAvoidNotes "keep_avoid_notes" Own [Member Trained Steward Treasurer] "Keep private notes of what one wants to avoid.";
    SeeWorkshops "see_workshops" Read [Member Trained Steward Treasurer] "See workshops, past and to come.";
    PlanWorkshop "plan_workshop" Keep [Steward] "Plan a workshop, change it, and call it off.";
    LeadWorkshop "lead_workshop" Bench [Member Trained Steward] "Open a workshop that one leads, sign its guests in and out, and end it; a steward, any. Take one over.";
    SeeMembers "see_members" Read [Steward] "See who is in the room and which invitations are open.";
    Invite "invite" Own [Steward] "Invite somebody, and revoke an invitation.";
    KeepMembers "keep_members" Keep [Steward] "Change a role, suspend and restore a membership, end its access.";
    MakeResetLink "make_reset_link" Own [Steward] "Make a link for a new password, where that is allowed.";
    SeeHandover "see_handover" Read [Steward] "See what one steward hands over to another.";
    HandOver "hand_over" Keep [Steward] "Hand the room over to another steward, confirm that, or take it back.";
    SeeScreens "see_screens" Read [Steward] "See the room's paired screens.";
    KeepScreens "keep_screens" Keep [Steward] "Pair a screen, rename it, and end its pairing.";
    KeepPin "keep_pin" Own [Member Trained Steward Treasurer] "Set one's own PIN for the door, and take it away.";
    SeeRoom "see_room" Read [Member Trained Steward Treasurer] "See the room's settings.";
    KeepRoom "keep_room" Keep [Steward] "Change the room's settings.";
}
