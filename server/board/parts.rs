//! A board in parts, each with the id its element has on the page: what changed is sent
//! part by part.

use std::sync::Arc;

use askama::Template;
use serde::Serialize;

use super::draw::Drawn;
use super::views::{BoardPage, LineHead, LineOnBoard, Station};
use crate::clock::micros;
use crate::error::{Error, Result};

/// An element of the page as it is now.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Part {
    /// The element's id.
    id: String,
    /// The element.
    html: Arc<str>,
}

impl Part {
    fn new(id: impl Into<String>, template: &impl Template) -> Result<Self> {
        let html = template
            .render()
            .map_err(|cause| Error::Internal(cause.into()))?;
        Ok(Self {
            id: id.into(),
            html: html.trim().into(),
        })
    }

    fn is(&self, other: &Self) -> bool {
        self.id == other.id && self.html == other.html
    }
}

/// A board as those who follow it were shown it.
#[derive(Debug)]
pub(super) struct Shown {
    /// The number of the last entry on it.
    pub(super) seq: i64,
    /// The name of that entry.
    pub(super) id: String,
    /// When it was drawn.
    pub(super) drawn_us: i64,
    /// What is off, the glance, notices, bottles and who is here: always these.
    around: Vec<Part>,
    /// Line by line, tray by tray.
    bench: Vec<Part>,
}

impl Shown {
    /// The parts of a board. What is as it was before is kept once.
    pub(super) fn of(drawn: &Drawn, before: Option<&Self>) -> Result<Self> {
        let view = &drawn.view;
        let mut bench = Vec::new();
        for line in &view.lines {
            line_parts(view, line, &mut bench)?;
        }
        let mut shown = Self {
            seq: drawn.head.seq,
            id: view.at.clone(),
            drawn_us: micros(drawn.at),
            around: vec![
                Part::new("board-off", &view.as_off())?,
                Part::new("board-glance", &view.as_glance())?,
                Part::new("board-notices", &view.as_notices())?,
                Part::new("board-bottles", &view.as_bottles())?,
                Part::new("present", &view.as_present())?,
            ],
            bench,
        };
        if let Some(before) = before {
            share(&mut shown.around, &before.around);
            share(&mut shown.bench, &before.bench);
        }
        Ok(shown)
    }

    /// What is otherwise than it was before: the whole bench as one part, where lines or
    /// trays came, went or changed places.
    pub(super) fn since(&self, before: &Self, drawn: &Drawn) -> Result<Vec<Part>> {
        let mut parts = changed(&self.around, &before.around);
        let ids = |shown: &[Part]| shown.iter().map(|part| part.id.clone()).collect::<Vec<_>>();
        match ids(&self.bench) == ids(&before.bench) {
            true => parts.extend(changed(&self.bench, &before.bench)),
            false => parts.push(whole_bench(drawn)?),
        }
        Ok(parts)
    }

    /// Everything.
    pub(super) fn whole(&self, drawn: &Drawn) -> Result<Vec<Part>> {
        let mut parts = self.around.clone();
        parts.push(whole_bench(drawn)?);
        Ok(parts)
    }
}

fn line_parts(view: &BoardPage, line: &LineOnBoard, parts: &mut Vec<Part>) -> Result<()> {
    let shell = &view.shell;
    let head = LineHead {
        shell,
        line,
        may_note: view.may_note,
    };
    parts.push(Part::new(format!("line-head-{}", line.id), &head)?);
    for (place, tray) in line.trays.iter().enumerate() {
        let station = Station {
            shell,
            line,
            tray,
            number: place + 1,
            may_mix: view.may_mix,
        };
        parts.push(Part::new(format!("tray-{}", tray.id), &station)?);
    }
    Ok(())
}

fn whole_bench(drawn: &Drawn) -> Result<Part> {
    Part::new("board-bench", &drawn.view.as_bench())
}

fn share(parts: &mut [Part], before: &[Part]) {
    for (part, old) in parts.iter_mut().zip(before) {
        if part.is(old) {
            part.html = old.html.clone();
        }
    }
}

fn changed(parts: &[Part], before: &[Part]) -> Vec<Part> {
    let pairs = parts.iter().zip(before);
    let changed = pairs.filter(|(part, old)| !part.is(old));
    changed.map(|(part, _)| part.clone()).collect()
}
