//! Places as pages show them: figures with their arithmetic.

use time::OffsetDateTime;

use super::standing::{AVERAGE_OVER, AirNow};
use super::store::{Airing, Measurement};
use super::views::{AirShown, AiringShown, PastRow};
use crate::darkroom::air::{Cleared, Exhaust};
use crate::darkroom::quantities::Thousandths;
use crate::error::Result;
use crate::mixes::step;
use crate::rooms::Settings;
use crate::trays::views::Step;
use crate::web::dates::Zone;
use crate::web::days;
use crate::web::messages::air as words;

/// Who measured: as it was written down, or whoever wrote it.
fn by(measured: &Measurement) -> &str {
    match measured.measured_by.as_str() {
        "" => measured.person.as_deref().unwrap_or_default(),
        by => by,
    }
}

/// What everything is written with.
#[derive(Clone, Copy)]
pub(super) struct Said<'s> {
    pub(super) settings: &'s Settings,
    pub(super) zone: &'s Zone,
    pub(super) now: OffsetDateTime,
}

impl Said<'_> {
    fn changes(self, changes: Thousandths) -> String {
        self.settings.numbers().rounded(changes.get(), 3, 2)
    }

    fn flow(self, ul_per_s: i64) -> String {
        self.settings.air_units().flow(ul_per_s)
    }

    fn at(self, at: OffsetDateTime) -> String {
        self.zone.words(at, self.now).words
    }

    /// A place with everything that is known of it.
    pub(super) fn place(self, place: &AirNow) -> Result<AirShown> {
        let judged = place.judged()?;
        let agreed = place.agreed.as_ref();
        let agreed = agreed.map(|(by, at)| (by.as_str(), self.at(*at)));
        let agreed = agreed.as_ref().map(|(by, at)| (*by, at.as_str()));
        Ok(AirShown {
            id: place.place.id.to_string(),
            name: words::here(place.place.name.as_deref()).to_owned(),
            word: words::word(judged, place.off.is_some()),
            said: self.said(place, judged),
            steps: self.steps(place, judged)?,
            clearing: self.clearing(place)?,
            clearing_said: self.clearing_said(place)?,
            starts: words::starts(judged != Exhaust::Unmeasured, agreed),
            airing: self.airing(place)?,
        })
    }

    fn said(self, place: &AirNow, judged: Exhaust) -> String {
        if let Some((what, since)) = place.off {
            return words::off_since(what, &self.at(since));
        }
        let missing = match judged {
            Exhaust::Short(missing) => Some(self.flow(missing.get())),
            _ => None,
        };
        match (&place.exhaust, judged) {
            (measured, Exhaust::Unmeasured) => {
                let was_nothing = place.has_fan() && measured.is_some();
                words::unmeasured(was_nothing, place.has_fan()).to_owned()
            }
            (Some(measured), _) => {
                let flow = self.flow(measured.ul_per_s);
                words::measured(judged, &flow, &measured.measured_on, missing.as_deref())
            }
            (None, _) => String::new(),
        }
    }

    /// Volume, exhaust, air changes, what is wanted and what is missing.
    fn steps(self, place: &AirNow, judged: Exhaust) -> Result<Vec<Step>> {
        let units = self.settings.air_units();
        let mut steps = Vec::new();
        let volume = place.volume()?.map(|volume| units.volume(volume.get()));
        if let (Some(volume), Some(air)) = (&volume, &place.air) {
            let floor = air.floor_hundredths_mm2.map(|floor| units.area(floor));
            let height = air
                .height_tenths_mm
                .map(|height| units.height(height.into()));
            let how = [floor, height].map(Option::unwrap_or_default).join(" × ");
            steps.push(step(words::VOLUME, how, volume.clone()));
        }
        steps.push(self.measured_step(place));
        if let (Some(changes), Some(flow), Some(volume)) =
            (place.changes()?, place.measured(), &volume)
        {
            let how = words::changes_how(&self.flow(flow.get()), volume);
            let changes = words::an_hour(&self.changes(changes));
            steps.push(step(words::CHANGES, how, changes));
        }
        if let (Some(wanted), Some(air)) = (place.wanted()?, &place.air) {
            let floor = air.floor_hundredths_mm2.unwrap_or_default();
            let how = words::wanted_how(air.rule, &units.area(floor), &air.basis);
            steps.push(step(words::WANTED, how, self.flow(wanted.get())));
            if let (Exhaust::Short(missing), Some(measured)) = (judged, place.measured()) {
                let [wanted, measured] = [wanted, measured].map(|flow| self.flow(flow.get()));
                let how = format!("{wanted} − {measured}");
                steps.push(step(words::SHORT_BY, how, self.flow(missing.get())));
            }
        }
        Ok(steps)
    }

    fn measured_step(self, place: &AirNow) -> Step {
        match (&place.exhaust, place.measured()) {
            (Some(measured), Some(flow)) => {
                let how = words::by_how(by(measured), &measured.how);
                let how = format!("{}. {how}", days::words(&measured.measured_on));
                step(words::MEASURED, how, self.flow(flow.get()))
            }
            _ => step(
                words::MEASURED,
                String::new(),
                words::NOT_MEASURED.to_owned(),
            ),
        }
    }

    fn mixing(self, place: &AirNow) -> Result<String> {
        let tenths = place.mixing()?.tenths();
        Ok(self.settings.numbers().decimal(tenths.into(), 1))
    }

    fn clearing(self, place: &AirNow) -> Result<Vec<Step>> {
        let mixing = self.mixing(place)?;
        let mut steps = Vec::new();
        for cleared in Cleared::ALL {
            if let (Some(time), Some(changes)) = (place.clearing(cleared)?, place.changes()?) {
                let how = words::clearing_how(cleared, &self.changes(changes), &mixing);
                let figure = words::minutes(time.get());
                steps.push(step(words::cleared(cleared), how, figure));
            }
        }
        Ok(steps)
    }

    fn clearing_said(self, place: &AirNow) -> Result<String> {
        let trays: Vec<String> = place.open_trays().collect();
        if place.off.is_some() {
            return Ok(words::NO_TIME_OFF.to_owned());
        }
        if place.changes()?.is_none() {
            return Ok(words::NO_TIME_UNKNOWN.to_owned());
        }
        match trays.is_empty() {
            true => Ok(words::clearing_holds(&self.mixing(place)?)),
            false => Ok(words::trays_open(&trays)),
        }
    }

    fn airing(self, place: &AirNow) -> Result<AiringShown> {
        let last = place.last_aired.map(|at| self.at(at));
        let aired = place.aired.min(AVERAGE_OVER).get();
        let minutes = words::minutes(aired);
        let average = place.average()?;
        let came_to = || match average {
            Some(average) => words::average(&minutes, &self.changes(average)),
            None => words::aired_for(&minutes),
        };
        let now = place.aired_now.as_ref().map(|airing| {
            let since = self.at(airing.began_at);
            let sentence = words::aired_since(&since, airing.began_by.as_deref());
            (airing.id.to_string(), sentence)
        });
        Ok(AiringShown {
            reminder: (!place.has_fan()).then_some(words::AIR_OFTEN),
            now,
            last: words::last_aired(last.as_deref()),
            average: (aired > 0).then(came_to),
        })
    }

    /// A measurement in its place's history.
    pub(super) fn measured_row(self, measured: &Measurement) -> PastRow {
        PastRow {
            seq: measured.seq,
            at: days::words(&measured.measured_on),
            said: self.found(measured),
            more: words::by_how(by(measured), &measured.how),
            id: Some(measured.id.to_string()),
            undone_by: measured.undone_by,
        }
    }

    /// What a measurement found.
    pub(super) fn found(self, measured: &Measurement) -> String {
        words::found(measured.of, &self.flow(measured.ul_per_s))
    }

    /// An airing in its place's history.
    pub(super) fn aired_row(self, airing: &Airing) -> PastRow {
        PastRow {
            seq: airing.began_seq,
            at: self.at(airing.began_at),
            said: self.aired(airing),
            more: String::new(),
            id: None,
            undone_by: None,
        }
    }

    /// From when until when a place was aired.
    pub(super) fn aired(self, airing: &Airing) -> String {
        let until = airing.ended_at.map(|at| self.at(at));
        let from = self.at(airing.began_at);
        words::aired_from(&from, until.as_deref(), airing.began_by.as_deref())
    }
}
