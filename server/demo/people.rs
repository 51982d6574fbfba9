//! The invented people of the demo, and what each of them likes to do.

use super::calendar::THURSDAY;
use super::draw::Draw;
use crate::identity::Person;
use crate::rights::Role;

/// Somebody of the demo, as it is written.
#[derive(Debug)]
pub(super) struct Part {
    /// The name others see.
    pub(super) name: &'static str,
    /// The log-in name.
    pub(super) log_in_name: &'static str,
    /// What they are invited as.
    pub(super) role: Role,
    /// When they join, in thousandths of the time.
    pub(super) joins: i64,
}

const fn part(name: &'static str, log_in_name: &'static str, role: Role, joins: i64) -> Part {
    Part {
        name,
        log_in_name,
        role,
        joins,
    }
}

/// Somebody, by their place in the list.
#[derive(Clone, Copy, Debug, Eq, Ord, PartialEq, PartialOrd)]
pub(super) struct Who(pub(super) usize);

/// Keeps the room, and the installation.
pub(super) const OTTILIE: Who = Who(0);
/// Becomes the other steward.
pub(super) const CASIMIR: Who = Who(1);
/// Mixes.
pub(super) const MIREA: Who = Who(3);
/// Prints.
pub(super) const TOMAS: Who = Who(4);
/// Those who can log in with a password that is printed. The password of everyone
/// else nobody knows.
pub(super) const LOG_IN: [Who; 5] = [OTTILIE, CASIMIR, Who(2), MIREA, TOMAS];
/// Learns to mix.
pub(super) const NADJA: Who = Who(7);
/// Learns to mix, later.
pub(super) const EMERIC: Who = Who(8);
/// Prints on fibre-base paper.
pub(super) const DAGNY: Who = Who(10);
/// Is suspended for a while.
pub(super) const CORIN: Who = Who(12);
/// Forgets the password.
pub(super) const FENNA: Who = Who(14);
/// Leaves for another town.
pub(super) const BENNO: Who = Who(32);
/// Is suspended and not restored.
pub(super) const JASPER: Who = Who(37);

/// Everyone. The names are invented: none is that of a person the public knows.
pub(super) const PARTS: [Part; 44] = [
    part("Ottilie Brandvik", "ottilie", Role::Steward, 0),
    part("Casimir Rookhurst", "casimir", Role::Trained, 0),
    part("Pavo Sandmoor", "pavo", Role::Treasurer, 0),
    part("Mirea Dunholt", "mirea", Role::Trained, 0),
    part("Tomas Ferrow", "tomas", Role::Member, 0),
    part("Bertil Oxmere", "bertil", Role::Trained, 0),
    part("Linnea Farrowgate", "linnea", Role::Trained, 15),
    part("Nadja Wrenfold", "nadja", Role::Member, 0),
    part("Emeric Tollander", "emeric", Role::Member, 30),
    part("Idris Holloweth", "idris", Role::Trained, 380),
    part("Dagny Elverstone", "dagny", Role::Member, 0),
    part("Aurel Quensby", "aurel", Role::Member, 0),
    part("Corin Lathmoor", "corin", Role::Member, 0),
    part("Eskil Marrowby", "eskil", Role::Member, 10),
    part("Fenna Osterwold", "fenna", Role::Member, 10),
    part("Gideon Stackmere", "gideon", Role::Member, 20),
    part("Hedda Brinkwater", "hedda", Role::Member, 25),
    part("Ivo Kestrelund", "ivo", Role::Member, 30),
    part("Jorun Saltergard", "jorun", Role::Member, 45),
    part("Leopold Finnegrath", "leopold", Role::Member, 60),
    part("Maren Tidebank", "maren", Role::Member, 70),
    part("Oona Thistlemar", "oona", Role::Member, 90),
    part("Pelle Grundvale", "pelle", Role::Member, 110),
    part("Runa Kolmere", "runa", Role::Member, 140),
    part("Selma Dovecrook", "selma", Role::Member, 160),
    part("Tibor Langmoss", "tibor", Role::Member, 190),
    part("Ulla Pfennigbach", "ulla", Role::Member, 210),
    part("Viggo Strandmoor", "viggo", Role::Member, 250),
    part("Wilma Corbellan", "wilma", Role::Member, 270),
    part("Xaver Lindquell", "xaver", Role::Member, 300),
    part("Yara Mossgrave", "yara", Role::Member, 330),
    part("Zeno Halvermoor", "zeno", Role::Member, 350),
    part("Benno Trawmere", "benno", Role::Member, 40),
    part("Clea Norrvale", "clea", Role::Member, 400),
    part("Femke Rustholm", "femke", Role::Member, 480),
    part("Hanne Copperlid", "hanne", Role::Member, 520),
    part("Ines Valdermoor", "ines", Role::Member, 580),
    part("Jasper Kornholt", "jasper", Role::Member, 50),
    part("Lorenz Bickelhorn", "lorenz", Role::Member, 640),
    part("Łucja Dębomirska", "lucja", Role::Member, 700),
    part(
        "Maximiliane Theodora von Hohenlauterbach-Süßmoor",
        "maximiliane",
        Role::Member,
        760,
    ),
    part("Quirin Hazelhof", "quirin", Role::Member, 820),
    part("Noor Ravensett", "noor", Role::Member, 900),
    part("Þóra Hvalbergsdóttir", "thora", Role::Member, 960),
];

/// What somebody likes.
#[derive(Clone, Debug)]
pub(super) struct Habit {
    /// How often they come, beside others.
    keen: u64,
    /// The weekdays that suit them.
    days: [bool; 7],
    /// The paper classes they print on, the favourite first; by place in the list.
    pub(super) classes: [usize; 2],
    /// The sheet sizes, the favourite first; by place in the list.
    pub(super) sizes: [usize; 2],
    /// Whether they fix film here too.
    pub(super) has_film: bool,
}

impl Habit {
    fn of(seed: i64, who: Who) -> Self {
        let number = i64::try_from(who.0).unwrap_or(0);
        let mut draw = Draw::of(seed, "habit", number);
        let keen = draw.between(1, 6);
        let mut days = [false; 7];
        days[THURSDAY] = draw.happens(75);
        for _ in 0..2 {
            days[usize::try_from(draw.between(0, 6)).unwrap_or(0)] = true;
        }
        // Resin-coated, mostly; the fibre printers stay with theirs.
        let classes = [[0, 2], [0, 1], [0, 0], [1, 3], [2, 0]];
        let sizes = [[0, 1], [1, 0], [1, 2], [2, 3], [7, 1], [1, 4], [3, 5]];
        Self {
            keen: u64::try_from(keen * keen).unwrap_or(1),
            days,
            classes: match who {
                DAGNY => [1, 3],
                _ => draw.one_of(&classes).unwrap_or_default(),
            },
            sizes: draw.one_of(&sizes).unwrap_or_default(),
            has_film: draw.happens(35),
        }
    }

    /// How likely they come on this weekday, beside others.
    pub(super) fn weight(&self, weekday: usize) -> u64 {
        let suits = if self.days[weekday] { 4 } else { 1 };
        self.keen * suits
    }
}

/// Somebody of the demo as they now are.
#[derive(Clone, Debug)]
pub(super) struct Someone {
    /// Who acts.
    pub(super) person: Person,
    /// What they may do; nothing where they may not enter.
    pub(super) role: Option<Role>,
    /// What they like.
    pub(super) habit: Habit,
}

impl Someone {
    /// Somebody who has not joined yet.
    pub(super) fn outside(seed: i64, who: Who, person: Person) -> Self {
        Self {
            habit: Habit::of(seed, who),
            role: None,
            person,
        }
    }

    /// Whether they may mix.
    pub(super) fn mixes(&self) -> bool {
        matches!(self.role, Some(Role::Trained | Role::Steward))
    }

    /// Whether they print.
    pub(super) fn prints(&self) -> bool {
        matches!(
            self.role,
            Some(Role::Member | Role::Trained | Role::Steward)
        )
    }
}
