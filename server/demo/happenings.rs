//! What happens once or now and then, and when: the book of a room is more than
//! notes of sheets.

use super::bench::Row;
use super::calendar::{Calendar, Day, SATURDAY};
use super::joining::{Change, changes};
use super::people::{DAGNY, MIREA, OTTILIE, TOMAS, Who};
use super::stage::Stage;
use super::{
    Cellar, affairs, incidents, inductions, mishaps, papers, products, slips, trials, workshops,
};
use crate::error::Result;

/// Something that happens on some day.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub(super) enum Happening {
    /// Something becomes of a member.
    Member(Change),
    /// The room counts the alkali that prints carry, and the silver of film.
    Settings,
    /// One steward hands over to the other, who confirms it.
    HandsOver,
    /// Papers that nobody buys are given up.
    GivesUpPapers,
    /// Stop baths that nobody mixes are given up.
    GivesUpProducts,
    /// Sheets of earlier are noted.
    LateNote,
    /// A slip of the finger is taken back at once.
    OwnSlip,
    /// The steward sets a count right.
    Correction,
    /// The steward takes a note back.
    NoteTakenBack,
    /// Fixer came into the developer.
    Contaminated,
    /// So somebody thought, and was mistaken.
    MistakenFlag,
    /// Household bleach was in a tray.
    Bleach,
    /// Prints of a fixer may not last.
    PrintsInDoubt,
    /// So it seemed.
    DoubtLifted,
    /// The fan is off.
    FanOff,
    /// And on again.
    FanOn,
    /// The power is off.
    PowerOff,
    /// And on again: what was kept on paper is entered.
    PowerOn,
    /// A bath is poured off that nobody wanted gone.
    WrongDiscard,
    /// Liquid stands there that nobody can name.
    UnknownLiquid,
    /// A stop bath's supplier calls it back.
    Recalled,
    /// A developer is mixed too thin.
    MixedWrongly,
    /// A developer in two parts is tried.
    KitTried,
    /// A stop bath of citric acid is tried.
    OtherStopTried,
    /// Fixer left in a bottle is poured to the second bath.
    PouredTogether,
    /// Prints are toned.
    Toning,
    /// Developer is bottled and forgotten.
    Forgotten,
    /// Something is spilt, and something splashes.
    Incidents,
    /// An induction is written down wrongly, withdrawn and recorded again.
    MistakenInduction,
    /// An induction is renewed.
    RenewedInduction,
    /// A topic's text is set right.
    RewordedTopic,
    /// A developer comes in that not everybody was told of.
    NewDeveloper,
    /// Guests look in.
    Workshop,
    /// The names of guests are erased.
    NamesErased,
}

use Happening as H;

/// When, in thousandths of the time.
const SCHEDULE: [(i64, Happening); 43] = [
    (20, H::Settings),
    (40, H::LateNote),
    (60, H::OwnSlip),
    (80, H::MistakenFlag),
    (100, H::Member(Change::OtherSteward)),
    (120, H::FanOff),
    (150, H::Correction),
    (170, H::Contaminated),
    (190, H::OtherStopTried),
    (210, H::Member(Change::NadjaMixes)),
    (220, H::Workshop),
    (230, H::Member(Change::RevokedInvitation)),
    (250, H::PowerOff),
    (280, H::WrongDiscard),
    (290, H::MistakenInduction),
    (300, H::UnknownLiquid),
    (330, H::HandsOver),
    (350, H::MixedWrongly),
    (370, H::NoteTakenBack),
    (400, H::PouredTogether),
    (450, H::Bleach),
    (480, H::LateNote),
    (500, H::PrintsInDoubt),
    (530, H::GivesUpProducts),
    (550, H::GivesUpPapers),
    (560, H::RewordedTopic),
    (570, H::Member(Change::EmericMixes)),
    (600, H::Member(Change::CorinRests)),
    (620, H::Member(Change::ForgottenPassword)),
    (640, H::KitTried),
    (650, H::RenewedInduction),
    (660, H::Member(Change::CorinIsBack)),
    (700, H::Member(Change::BennoLeaves)),
    (720, H::Recalled),
    (750, H::Correction),
    (760, H::NamesErased),
    (770, H::Incidents),
    (780, H::PouredTogether),
    (800, H::Contaminated),
    (850, H::Member(Change::JasperRests)),
    (880, H::FanOff),
    (900, H::DoubtLifted),
    (920, H::NewDeveloper),
];

impl Happening {
    /// What happens on a day.
    pub(super) fn on(calendar: &Calendar, day: &Day) -> Vec<Self> {
        let due = SCHEDULE.iter().filter(|(thousandths, _)| {
            // On the first day nothing stood there yesterday.
            calendar.due(*thousandths).max(1) == day.number
        });
        let mut all: Vec<Self> = due.map(|(_, happening)| *happening).collect();
        if day.weekday == SATURDAY && day.week() % 3 == 0 {
            all.push(Self::Toning);
        }
        // So long before the end that it is past its life by then.
        if calendar.after(day) == 1 {
            all.push(Self::Forgotten);
        }
        all
    }

    /// The line that must be filled for it.
    pub(super) const fn row(self) -> Row {
        match self {
            Self::Bleach | Self::PrintsInDoubt | Self::Toning => Row::Fibre,
            Self::Forgotten => Row::Window,
            _ => Row::Long,
        }
    }

    /// Who must be there for it.
    pub(super) const fn people(self) -> &'static [Who] {
        match self {
            Self::LateNote | Self::OwnSlip | Self::PowerOff => &[TOMAS],
            Self::Correction => &[OTTILIE, TOMAS],
            Self::NoteTakenBack => &[OTTILIE, MIREA],
            Self::Contaminated | Self::FanOff => &[DAGNY],
            Self::MistakenFlag => &[DAGNY, OTTILIE],
            Self::Workshop => &[OTTILIE, MIREA],
            Self::Toning | Self::Incidents => &[DAGNY, OTTILIE],
            Self::PowerOn | Self::MixedWrongly => &[MIREA],
            Self::PrintsInDoubt
            | Self::Bleach
            | Self::FanOn
            | Self::PouredTogether
            | Self::Forgotten => &[],
            _ => &[OTTILIE],
        }
    }

    /// What it ends with, and so many minutes later.
    pub(super) const fn ends(self) -> Option<(i64, Self)> {
        match self {
            Self::FanOff => Some((40, Self::FanOn)),
            Self::PowerOff => Some((44, Self::PowerOn)),
            _ => None,
        }
    }
}

/// Lets it happen; `keeper` looks after the baths that evening.
pub(super) async fn happens(
    stage: &mut Stage,
    cellar: &Cellar,
    happening: Happening,
    keeper: Who,
) -> Result<()> {
    match happening {
        H::Member(change) => changes(stage, change).await,
        H::Settings => affairs::settings(stage).await,
        H::HandsOver => affairs::hands_over(stage).await,
        H::GivesUpPapers => papers::retire(stage, &cellar.papers).await,
        H::GivesUpProducts => products::retire(stage).await,
        H::LateNote => slips::late_note(stage, cellar).await,
        H::OwnSlip => slips::own(stage, cellar).await,
        H::Correction => slips::corrected(stage, cellar, OTTILIE).await,
        H::NoteTakenBack => slips::taken_back(stage, cellar).await,
        H::WrongDiscard => slips::wrong_discard(stage, cellar, keeper).await,
        H::Contaminated => mishaps::contaminated(stage, cellar, keeper).await,
        H::MistakenFlag => mishaps::mistaken_flag(stage, cellar).await,
        H::Bleach => mishaps::bleach(stage, cellar, keeper).await,
        H::PrintsInDoubt => mishaps::prints_in_doubt(stage, cellar, keeper).await,
        H::DoubtLifted => mishaps::doubt_lifted(stage, cellar, keeper).await,
        H::FanOff => mishaps::goes_off(stage, DAGNY, crate::outages::What::Fan).await,
        H::PowerOff => mishaps::goes_off(stage, TOMAS, crate::outages::What::Power).await,
        H::FanOn => mishaps::is_on_again(stage, keeper).await,
        H::PowerOn => mishaps::power_is_back(stage, cellar).await,
        H::UnknownLiquid => mishaps::unknown_liquid(stage, cellar).await,
        H::Recalled => trials::recalled(stage, cellar, keeper).await,
        H::MixedWrongly => trials::mixed_wrongly(stage, cellar).await,
        H::KitTried => trials::kit(stage, cellar).await,
        H::OtherStopTried => trials::other_stop(stage, cellar).await,
        H::PouredTogether => trials::poured_together(stage, cellar, keeper).await,
        H::Toning => trials::toning(stage, cellar).await,
        H::MistakenInduction => inductions::mistaken(stage).await,
        H::RenewedInduction => inductions::renewed(stage).await,
        H::RewordedTopic => inductions::reworded(stage).await,
        H::NewDeveloper => inductions::new_developer(stage).await,
        H::Workshop => workshops::held(stage, cellar).await,
        H::NamesErased => workshops::tidied(stage).await,
        H::Forgotten => trials::forgotten(stage, cellar, keeper).await,
        H::Incidents => incidents::earlier(stage).await,
    }
}
