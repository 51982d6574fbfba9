//! What can be wrong with what somebody asked, as meanings with their numbers.
//! The sentences are in `web::messages`.

use crate::darkroom::air::NeedsExhaust;
use crate::darkroom::incompatibility::Clash;
use crate::darkroom::joining::JoinRefused;
use crate::web::numbers::NumberProblem;

/// One thing that is wrong.
#[derive(Clone, Debug, Eq, PartialEq)]
pub enum Problem {
    /// The field is empty and must not be.
    Missing,
    /// More than this many characters.
    TooLong(usize),
    /// Fewer than this many characters.
    TooShort(usize),
    /// Not a number as this room writes them, or one with the wrong unit.
    Number(NumberProblem),
    /// Not a number at all, where no unit and no mark is in question.
    NotANumber,
    /// A number outside these bounds, which are in the field's own unit.
    OutOfRange {
        /// Least, as the room writes it.
        least: String,
        /// Most, as the room writes it.
        most: String,
    },
    /// None of the choices offered.
    NotAChoice,
    /// What must be confirmed was not.
    NotConfirmed,
    /// Not a moment.
    NotATime,
    /// Not a date.
    NotADate,
    /// Not a time zone the program knows.
    NotAZone,
    /// Not a three-letter currency code.
    NotACurrency,
    /// Too easily guessed: it is in the list of common ones or holds the name.
    PasswordEasy,
    /// Somebody has this log-in name.
    LogInNameTaken,
    /// Name or password is wrong, or the account may not log in now.
    LogInFailed,
    /// The present password is wrong.
    PasswordWrong,
    /// Letters, digits, dots and hyphens only.
    NotALogInName,
    /// The short name in the address is taken.
    SlugTaken,
    /// Lower-case letters, digits and hyphens only.
    NotASlug,
    /// Another thing of this room has that name.
    NameTaken,
    /// More than this many of them.
    TooMany(usize),
    /// The product has this dilution already.
    DilutionTaken,
    /// A hazard or precaution code that no system of codes has.
    NotACode(String),
    /// Not shaped like a CAS number.
    NotACas,
    /// A CAS number whose last digit does not agree with the others.
    CasMiscopied,
    /// Open must come before close.
    ClosesBeforeOpening,
    /// The long side is shorter than the short side.
    SidesSwapped,
    /// Opening hours of another number of days.
    NotSevenDays,
    /// The same thing stands in the list before.
    Twice,
    /// What covers a print is more than the tray is deep.
    DeeperThanTheTray,
    /// A field that is not asked for.
    NotAField,
    /// Not the kind of value the field takes.
    WrongType,
    /// A figure that a product of this form does not have.
    NotOfThisForm,
    /// A figure that a product of this kind does not have.
    NotOfThisKind,
    /// Not the two to eight parts of a kit.
    NotKitParts,
    /// Not none and not two points of a sheet.
    NotTwoPoints,
    /// Two points of a sheet less than 2 °C apart.
    PointsTooClose,
    /// Two points of a sheet of which the warmer one is not the quicker one.
    WarmerNotQuicker,
    /// The coldest temperature is above the warmest.
    ColdestAboveWarmest,
    /// A part-filled bottle that would keep longer than a full one.
    LongerThanFull,
    /// What is used as it is takes no water.
    ReadyToUse,
    /// The product's acid is not on file.
    NoAcid,
    /// A stop bath that would be past its limit pH when fresh.
    FreshPastLimit,
    /// The product's dilutions have figures that do not go with this.
    DilutionsDisagree,
    /// The lower end is above the upper one.
    LeastAboveMost,
    /// Figures that do not rise from least to most.
    NotRising,
    /// Neither 22 characters of base64url nor a UUID.
    NotAKey,

    /// More than two minutes in the future.
    InTheFuture,
    /// Earlier than the room still takes notes for.
    TooLate {
        /// How many minutes late a note may be.
        minutes: i32,
    },
    /// The form was served to somebody else.
    NotYourForm,
    /// Nothing recorded stood in that line at that time.
    NothingStoodThere,
    /// No toner stood in that line at that time.
    NoTonerStood,
    /// Nothing recorded stood in that tray at that time.
    NothingInTray,
    /// What stood in that tray then is gone.
    GoneSince,
    /// Neither a count nor that nobody counted, or both.
    CountedOrNot,
    /// Not one row is filled in.
    NothingEntered,
    /// A bath in the line has no capacity entered for this paper.
    NoCapacity {
        /// The product's name.
        product: String,
    },
    /// Something stands in the tray already.
    TrayFull,
    /// Something stands in one of the line's trays.
    LineFull,
    /// A line that is in use stands in the space.
    SpaceInUse,
    /// The fixing baths of the line together take longer than the longest time.
    BathsTakeLonger,
    /// The wash after a wash aid is longer than the wash without it.
    LongerThanWithout,
    /// Nobody entered how long this paper washes in this line.
    NoWashingTime,
    /// Nothing was noted in the wash.
    WashEmpty,
    /// More than the tray holds, in microlitres.
    OverTheRim {
        /// What the tray holds.
        holds_ul: i64,
    },
    /// The bottle holds more than it is said to hold, in microlitres.
    HoldsMore {
        /// What stands in it.
        held_ul: i64,
    },
    /// Too little to cover a print, in microlitres.
    TooShallow {
        /// What covers a print.
        least_ul: i64,
    },
    /// What is in the container and what would be poured must not meet.
    MustNotMeet(Clash),
    /// Not in one container, unless the contractor's written acceptance is on file.
    NotInOneContainer(Clash),
    /// A container was chosen and another written.
    TwoContainers,
    /// One of the two is of no stated group, and the unknown goes with nothing.
    UnknownGroups,
    /// The product has no safety data, so nobody mixes it.
    NoSafetyData,
    /// Only a steward mixes this product.
    StewardOnly,
    /// Retired things are not used again.
    Retired,
    /// It was undone before.
    AlreadyUndone,
    /// Members undo their own notes for this many minutes.
    UndoTimeOver {
        /// The minutes.
        minutes: i64,
    },
    /// The mix was discarded.
    MixGone,
    /// Liquid that nobody can name: only a steward deals with it.
    UnknownLiquid,
    /// The book knows of a mix there: a doubt about it is a flag, not a find.
    KnownMixThere,
    /// The vessel held household bleach: it is rinsed first.
    RinseFirst,
    /// Household bleach has no use at this bench.
    NotAtThisBench,
    /// Prints meet another bath in this tray.
    OtherStep,
    /// The product has no capacity for this place among fixing baths.
    NoFiguresForPlace,
    /// Two solutions are not joined.
    MayNotJoin(JoinRefused),
    /// No second bath of the same fixer stands in this line.
    NoSecondBath,
    /// The second bath is used up or has moved up often enough: both are replaced.
    ReplaceBoth,
    /// It was not discarded, or not by itself.
    NotDiscarded,
    /// The product is no powder, or what a packet makes is not on file.
    NotAPowder,
    /// A part of a packet that is taken whole.
    WholePackets,
    /// The stock solution is another product's.
    OtherStock,
    /// The stock solution is past its use-by.
    StockPast,
    /// The stock solution was made later.
    StockNotYetMade,
    /// Less than that remains of the stock solution.
    StockShort {
        /// How much is missing, in microlitres.
        missing_ul: i64,
        /// How much remains, in microlitres.
        left_ul: i64,
    },
    /// Adding water never makes a solution stronger.
    NotWeaker,
    /// The hot tap is colder than the cold one.
    TapsSwapped,
    /// Even the cold tap is warmer than the product may be mixed with.
    ColdTooWarm,
    /// The cylinder is too coarse for so little.
    TooCoarse,
    /// The mix did not stand there yet.
    BeforeItStood,
    /// Something else stood there then.
    SomethingStoodThere,
    /// An extension lasts more than nothing and at most 24 hours.
    ExtensionTooLong,
    /// No extension covers what is wrong with this mix.
    ExtensionUnsafe,
    /// The mix would not be replaced now.
    ExtensionNotNeeded,
    /// No reading of this mix is a fresh one any more.
    NotFresh,
    /// A check that tells nothing of this kind of bath.
    OtherBath,
    /// The fixer takes paper only.
    PaperOnly {
        /// The product's name.
        product: String,
    },
    /// The book has it as off already.
    OffAlready,
    /// Somebody has said already that it is over.
    OnAgainAlready,
    /// It would be over before it began.
    EndsBeforeItBegan,
    /// It starts with measured exhaust only, and nobody measured any.
    ExhaustUnmeasured(NeedsExhaust),
    /// It does not start while power or fan is off.
    FanStandsStill(NeedsExhaust),
    /// A form that brings a file came without one.
    NoFile,
    /// A file larger than a scan may be.
    FileTooLarge,
    /// A file that is no scan of a paper.
    NotAScan,
    /// What was known of the incident was erased before.
    AlreadyErased,
    /// The record says that no fan takes air out.
    NoFan,
    /// A figure that another rule does not take.
    NotByThisRule,
    /// The place is being aired already.
    AiredAlready,
    /// The airing would be over before it began.
    BeforeAiringBegan,
    /// Neither a clean step of a fog test nor a fogged one.
    NoStep,
    /// The step that fogged is not longer than the one that stayed clean.
    FoggedBeforeClean,
    /// What was measured is outside the check's own limit, so it did not pass.
    OutsideLimit,
    /// Nothing is measured at this check.
    NothingMeasured,

    /// The person is in the room already.
    HereAlready,
    /// Topics that whoever comes in must know, and that they were not inducted on.
    NotInducted {
        /// The titles of what is missing.
        missing: Vec<String>,
        /// Who can give it, by name; empty where nobody is to be named.
        stewards: Vec<String>,
    },
    /// Nobody inducts themself while somebody else could.
    NotOneself,
    /// No induction waits for the person's confirmation.
    NothingToConfirm,
    /// The person has not said that they are in the room.
    NotHere,
    /// Every place of the room is taken.
    RoomFull {
        /// How many there are.
        places: usize,
    },
    /// They lead guests who are there still.
    GuestsAreIn {
        /// How many.
        guests: i64,
    },
    /// Topics that whoever is to lead a workshop was not inducted on.
    LeaderLacks {
        /// The titles of what is missing.
        missing: Vec<String>,
    },
    /// Whoever leads the workshop is not in the room.
    LeaderNotHere {
        /// Who, by name.
        leader: String,
    },
    /// More guests than there are places.
    TooManyGuests {
        /// How many there are.
        places: usize,
    },
    /// The workshop was opened, called off, or has passed.
    WorkshopNotPlanned,
    /// The workshop is on another day.
    WorkshopNotToday,
    /// The workshop is not going on.
    WorkshopNotOpen,
    /// They do not lead such a workshop, or it was not going on then.
    NotTheirWorkshop,
    /// Something else stands here than what was read out.
    CautionsChanged,
    /// The end is not after the beginning.
    EndsBeforeBeginning,
    /// The end is not on the day of the beginning.
    NotOnOneDay,
    /// It would be over already.
    HasPassed,
    /// That presence has ended.
    LeftAlready,
    /// Whoever comes in alone says until when.
    UntilWhen,
    /// A time to leave that has passed, or that no presence lasts until.
    NotWhileHere,
    /// Nobody mixes concentrate here while nobody else is in the room.
    MixesAlone,

    /// No screen shows that code now.
    CodeUnknown,
    /// Not six digits.
    NotAPin,
    /// Among the first six digits that anyone tries.
    PinEasy,
    /// Number or PIN is wrong, or the person may not come in now.
    DoorFailed,
    /// Too many wrong PINs at that number, at that door.
    DoorSleeps,
    /// The person's role does not do that.
    OtherRole,

    /// The last steward of a room cannot leave, be suspended or be demoted.
    LastSteward,
    /// A steward does not do this to themself.
    NotToOneself,
    /// It is as asked already.
    Unchanged,
    /// The person's access to the room has ended; only an invitation brings them back.
    AccessEnded,
    /// A token can do no more than its person, and nothing is no use.
    NotAScope,
    /// The person is a member already.
    AlreadyMember,
    /// A reset link for this person is made by themself or on the machine.
    ResetNotAllowed,
    /// This steward's handover to somebody waits already.
    HandoverWaits,
    /// The handover names somebody else.
    NotTheSuccessor,
    /// The handover was confirmed or taken back.
    HandoverEnded,
    /// The link was used, revoked or is too old.
    LinkDead,
    /// The room is closed.
    RoomClosed,
}

/// What is wrong with each field, all of it at once.
#[derive(Clone, Debug, Default, Eq, PartialEq)]
pub struct Problems(Vec<(String, Problem)>);

impl Problems {
    /// One field's problem.
    #[must_use]
    pub fn one(field: impl Into<String>, problem: Problem) -> Self {
        Self(vec![(field.into(), problem)])
    }

    /// Adds a field's problem.
    pub fn add(&mut self, field: impl Into<String>, problem: Problem) {
        self.0.push((field.into(), problem));
    }

    /// Adds all of another list.
    pub fn append(&mut self, others: Self) {
        self.0.extend(others.0);
    }

    /// Keeps what was read, or notes the problem and answers nothing.
    pub fn take<T>(&mut self, field: impl Into<String>, read: Result<T, Problem>) -> Option<T> {
        match read {
            Ok(value) => Some(value),
            Err(problem) => {
                self.add(field, problem);
                None
            }
        }
    }

    /// Whether nothing is wrong.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Field and problem, in the order found.
    pub fn iter(&self) -> impl Iterator<Item = (&str, &Problem)> {
        self.0
            .iter()
            .map(|(field, problem)| (field.as_str(), problem))
    }
}
