//! What is to be done with a tray next, and what else may be done there, by role
//! and by how it stands.

use super::pages::Ground;
use super::views::{Deed, Deeds, Next, Press};
use crate::darkroom::quantities::Ppb;
use crate::darkroom::verdict::{Reason, Verdict};
use crate::error::Result;
use crate::mixes::readings::checks;
use crate::mixes::{Mix, ReadingKind, Storage};
use crate::products::Place;
use crate::rights::{self, Right, Role};
use crate::web::forms::new_key;
use crate::web::messages::trays as words;

/// Who reads the page, in front of which tray.
pub(super) struct Reader<'g> {
    pub(super) ground: &'g Ground,
    pub(super) role: Role,
}

impl Reader<'_> {
    fn may<R: Right>(&self, _: R) -> bool {
        R::ROW.roles.contains(&self.role)
    }

    fn verdict(&self) -> Verdict {
        self.ground.now.judgement.verdict
    }

    fn note(&self) -> Option<Deed> {
        let line = self.ground.line.id;
        self.may(rights::NoteSheets)
            .then(|| Deed::to(words::NOTE, format!("/sheets/new?line={line}")))
    }

    fn discard(&self, mix: &Mix) -> Option<Deed> {
        let is_theirs = mix.product_id.is_some() || self.role == Role::Steward;
        (is_theirs && self.may(rights::Discard))
            .then(|| Deed::to(words::DISCARD, of(mix, "discard")))
    }

    /// What comes next: a sentence, and what leads on, the first of them first.
    pub(super) fn next(&self) -> Next {
        let Some(mix) = &self.ground.now.mix else {
            return self.next_in_empty();
        };
        match self.verdict() {
            Verdict::TestFirst => self.tests(mix),
            Verdict::Replace => Next::new(
                words::replace(self.discard(mix).is_some()),
                self.discard(mix).into_iter().collect(),
            ),
            Verdict::Unknown | Verdict::NothingRecorded => Next::new(
                words::unknown(self.role == Role::Steward),
                self.discard(mix).into_iter().collect(),
            ),
            Verdict::Ready => Next::new(words::READY, self.note().into_iter().collect()),
        }
    }

    fn next_in_empty(&self) -> Next {
        let tray = &self.ground.now.tray;
        if tray.is_retired {
            return Next::new(words::RETIRED, Vec::new());
        }
        if self.ground.waits_for_rinse {
            return Next::new(words::RINSE_FIRST, Vec::new());
        }
        let may_mix = self.may(rights::Mix);
        let mix = may_mix.then(|| Deed::to(words::MIX, format!("/trays/{}/mix", tray.id)));
        Next::new(words::empty(may_mix), mix.into_iter().collect())
    }

    /// The tests that answer the doubts, and who may make them.
    fn tests(&self, mix: &Mix) -> Next {
        let tests = self.wanted(mix);
        let may_test = self.may(rights::TestMix);
        let mut deeds: Vec<Deed> = tests
            .iter()
            .filter(|_| may_test)
            .map(|kind| Deed::to(&words::make(*kind), check(mix, *kind)))
            .collect();
        deeds.extend(self.note());
        Next::new(&words::tests(&tests), deeds)
    }

    /// What each doubt asks for, none of them twice.
    fn wanted(&self, mix: &Mix) -> Vec<ReadingKind> {
        let kind = self.ground.product.as_ref().map(|product| product.kind);
        let fits = kind.map_or(&[][..], |kind| checks(kind, mix.place()));
        let judgement = &self.ground.now.judgement;
        let is_tested = judgement
            .reasons
            .iter()
            .any(|reason| matches!(reason, Reason::Tested(..)));
        let first_test = fits.iter().find(|kind| tells(**kind)).copied();
        let from = Ppb::new(self.ground.settings.test_first_ppb).unwrap_or(Ppb::LIMIT);
        let mut wanted = Vec::new();
        for reason in &judgement.reasons {
            let test = match reason {
                Reason::Used(_, used) if *used >= from && !is_tested => first_test,
                Reason::GuessedStart | Reason::SheetsUnknown(_) | Reason::ExtendedUntil(_) => {
                    first_test
                }
                Reason::SilverEstimated(..) => Some(ReadingKind::Silver),
                Reason::TemperatureOut(_) | Reason::TemperatureNotTaken(_) => {
                    Some(ReadingKind::Temperature)
                }
                _ => None,
            };
            if let Some(test) = test
                && !wanted.contains(&test)
            {
                wanted.push(test);
            }
        }
        wanted
    }

    /// Everything else that may be done here, in groups.
    pub(super) fn others(&self) -> Result<Vec<Deeds>> {
        let groups = match &self.ground.now.mix {
            Some(mix) if mix.product_id.is_some() => vec![
                (words::LOOK, self.looking(mix)),
                (words::CARE, self.caring(mix)?),
                (words::END, self.ending(mix)),
            ],
            Some(_) => Vec::new(),
            None => vec![(words::STANDS_HERE, self.standing())],
        };
        let groups = groups.into_iter().filter(|(_, deeds)| !deeds.is_empty());
        Ok(groups
            .map(|(title, deeds)| Deeds {
                title: title.to_owned(),
                deeds,
            })
            .collect())
    }

    fn looking(&self, mix: &Mix) -> Vec<Deed> {
        if !self.may(rights::TestMix) {
            return Vec::new();
        }
        vec![
            Deed::to(words::CHECK, of(mix, "check")),
            Deed::to(words::FLAG, of(mix, "flag")),
        ]
    }

    fn caring(&self, mix: &Mix) -> Result<Vec<Deed>> {
        let mut deeds = Vec::new();
        if self.verdict() == Verdict::Replace {
            deeds.extend(self.note());
        }
        if self.may(rights::KeepMix) {
            let (label, to) = match mix.storage {
                Storage::CoveredTray => (words::UNCOVER, "uncover"),
                _ => (words::COVER, "cover"),
            };
            let key = new_key()?;
            deeds.push(Deed::pressed(label, of(mix, "keep"), Press { key, to }));
            deeds.push(Deed::to(words::BOTTLE, of(mix, "keep")));
        }
        let is_replace = self.verdict() == Verdict::Replace;
        if self.may(rights::Mix) {
            // Dead solution is never laundered.
            if !is_replace {
                deeds.push(Deed::to(words::TOP_UP, of(mix, "top-up")));
                deeds.push(Deed::to(words::POUR, of(mix, "pour")));
            }
            if mix.place() == Place::First {
                deeds.push(Deed::to(words::SHIFT, of(mix, "shift")));
            }
        }
        deeds.push(Deed::to(words::LABEL, of(mix, "label")));
        Ok(deeds)
    }

    fn ending(&self, mix: &Mix) -> Vec<Deed> {
        let mut deeds = Vec::new();
        let is_replace = self.verdict() == Verdict::Replace;
        if !is_replace {
            deeds.extend(self.discard(mix));
        }
        if is_replace && self.may(rights::ExtendMix) && self.may_be_extended() {
            deeds.push(Deed::to(words::EXTEND, of(mix, "extend")));
        }
        deeds
    }

    /// Whether nothing stands that no extension covers.
    fn may_be_extended(&self) -> bool {
        let reasons = &self.ground.now.judgement.reasons;
        !reasons.iter().any(|reason| {
            matches!(
                reason,
                Reason::Contaminated(_)
                    | Reason::CheckFailed(_)
                    | Reason::SilverMeasured(..)
                    | Reason::UnknownStart
            )
        })
    }

    /// In front of a tray in which nothing is recorded.
    fn standing(&self) -> Vec<Deed> {
        let tray = &self.ground.now.tray;
        let mut deeds = Vec::new();
        if tray.is_retired {
            return deeds;
        }
        if self.ground.waits_for_rinse && self.may(rights::Discard) {
            deeds.push(Deed::to(words::RINSED, format!("/trays/{}/rinse", tray.id)));
        }
        if self.may(rights::TestMix) {
            deeds.push(Deed::to(
                words::UNKNOWN,
                format!("/trays/{}/unknown", tray.id),
            ));
        }
        if self.may(rights::OpenBench) {
            deeds.push(Deed::to(words::OPEN, format!("/trays/{}/open", tray.id)));
        }
        if self.may(rights::TakeBack)
            && let Some(mix) = &self.ground.undoable
        {
            deeds.push(Deed::to(words::UNDO_DISCARD, of(mix, "undo-discard")));
        }
        deeds
    }
}

/// Whether a check can pass by itself: a temperature says nothing of strength.
const fn tells(kind: ReadingKind) -> bool {
    !matches!(kind, ReadingKind::Temperature | ReadingKind::Ph)
}

fn of(mix: &Mix, what: &str) -> String {
    format!("/mixes/{}/{what}", mix.id)
}

fn check(mix: &Mix, kind: ReadingKind) -> String {
    format!("/mixes/{}/check?kind={}", mix.id, kind.as_str())
}
