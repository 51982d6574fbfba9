//! What was sent and what was answered, held against what is there.

use std::collections::{BTreeMap, BTreeSet};

use wetside::logbook::Key;

/// What came of every key.
#[derive(Debug, Default)]
pub(crate) struct Audit {
    /// Answered, and not there.
    pub(crate) lost: Vec<Key>,
    /// There more than once.
    pub(crate) twice: Vec<Key>,
    /// There, and never sent.
    pub(crate) unknown: Vec<Key>,
    /// Answered, and there.
    pub(crate) kept: usize,
    /// Never answered, and there all the same: the answer was lost, not the note.
    pub(crate) unanswered: usize,
}

impl Audit {
    /// Holds the keys that were sent and those that were answered against the
    /// keys that are there, each as often as it is.
    pub(crate) fn of(sent: &BTreeSet<Key>, answered: &BTreeSet<Key>, there: &[Key]) -> Self {
        let mut counts = BTreeMap::new();
        for key in there {
            *counts.entry(*key).or_insert(0) += 1;
        }
        let is_there = |key: &&Key| counts.contains_key(*key);
        Self {
            lost: answered
                .iter()
                .filter(|key| !is_there(key))
                .copied()
                .collect(),
            twice: counts
                .iter()
                .filter(|(_, count)| **count > 1)
                .map(|(key, _)| *key)
                .collect(),
            unknown: counts
                .keys()
                .filter(|key| !sent.contains(*key))
                .copied()
                .collect(),
            kept: answered.iter().filter(is_there).count(),
            unanswered: sent.difference(answered).filter(is_there).count(),
        }
    }

    /// Each answered key exactly once, each other at most once, none unknown.
    pub(crate) fn is_clean(&self) -> bool {
        self.lost.is_empty() && self.twice.is_empty() && self.unknown.is_empty()
    }
}

/// Numbers drawn from a seed, the same each time.
#[derive(Clone, Debug)]
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// One of the numbers below `end`.
    pub(crate) fn below(&mut self, end: u64) -> u64 {
        // The output function of SplitMix64.
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut drawn = self.0;
        drawn = (drawn ^ (drawn >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        drawn = (drawn ^ (drawn >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (drawn ^ (drawn >> 31)) % end
    }
}

#[test]
fn an_audit_names_what_is_lost_double_or_unknown() {
    let [one, two, three, four, five] = [[1; 16], [2; 16], [3; 16], [4; 16], [5; 16]];
    let sent = BTreeSet::from([one, two, three, four]);
    let answered = BTreeSet::from([one, two, three]);
    let audit = Audit::of(&sent, &answered, &[one, three, three, four, five]);
    assert_eq!(audit.lost, [two]);
    assert_eq!(audit.twice, [three]);
    assert_eq!(audit.unknown, [five]);
    assert_eq!((audit.kept, audit.unanswered), (2, 1));
    assert!(!audit.is_clean());
    assert!(Audit::of(&sent, &answered, &[one, two, three]).is_clean());
}
