//! Which containers a mix may go into, as far as the book knows them.

use super::outlook::or_why_not;
use super::store::{Part, containers};
use super::views::{Barred, Containers};
use crate::database::RoomTx;
use crate::error::Result;
use crate::mixes::actions::may_share;
use crate::mixes::store;
use crate::mixes::{Mix, input};
use crate::problem::{Problem, Problems};
use crate::rooms::Settings;
use crate::web::dates::Zone;
use crate::web::fields::Choice;
use crate::web::messages::keeping as words;

/// What a form sends for a container that the book does not know yet.
const ANOTHER: &str = "another";

/// A container, what it holds, and why a mix must not join that; nothing where
/// no rule keeps it out.
pub(super) struct Offered {
    pub(super) name: String,
    pub(super) holds: String,
    pub(super) why_not: Option<String>,
}

/// Every container the book knows, as far as this mix goes.
pub(super) async fn offered(
    tx: &mut RoomTx,
    mix: &Mix,
    settings: &Settings,
) -> Result<Vec<Offered>> {
    let zone = settings.time_zone()?;
    let contaminants = store::contaminants(tx, mix.id).await?;
    let mut all: Vec<(String, Vec<Part>)> = Vec::new();
    for part in containers(tx).await? {
        let key = part.container.to_lowercase();
        match all.iter_mut().find(|(name, _)| *name == key) {
            Some((_, parts)) => parts.push(part),
            None => all.push((key, vec![part])),
        }
    }
    all.into_iter()
        .map(|(_, parts)| offer(mix, &contaminants, parts, settings, &zone))
        .collect()
}

fn offer(
    mix: &Mix,
    contaminants: &[String],
    parts: Vec<Part>,
    settings: &Settings,
    zone: &Zone,
) -> Result<Offered> {
    let said = parts.iter().map(|part| {
        let names = part.poured.contaminants.as_slice();
        words::part(part.product_name.as_deref(), part.mixes, names)
    });
    let mut holds = said.collect::<Vec<_>>().join("; ");
    let name = parts.first().map(|part| part.container.clone());
    if let Some(last) = parts.iter().map(|part| part.last_at).max() {
        holds = format!(
            "{holds}. {}",
            words::last_put(&zone.clock_and_weekday(last).words)
        );
    }
    let before: Vec<_> = parts.into_iter().map(|part| part.poured).collect();
    let asked = may_share(mix, contaminants, &before);
    Ok(Offered {
        name: name.unwrap_or_default(),
        holds,
        why_not: or_why_not(asked, settings.numbers())?.err(),
    })
}

/// The containers as a form offers them.
pub(super) fn choices(offered: &[Offered]) -> Containers {
    let may = offered.iter().filter(|each| each.why_not.is_none());
    let mut choices: Vec<Choice> = may
        .map(|each| {
            let hint = words::holds(&each.holds, words::NO_RULE);
            Choice::new(&each.name, &each.name).explained(hint)
        })
        .collect();
    if !choices.is_empty() {
        let another = Choice::new(ANOTHER, words::ANOTHER);
        choices.push(another.explained(words::ANOTHER_HINT));
    }
    let barred = offered.iter().filter_map(|each| {
        let why = each.why_not.as_ref()?;
        Some(Barred {
            name: each.name.clone(),
            why: words::holds(&each.holds, why),
        })
    });
    Containers {
        barred: barred.collect(),
        choices,
    }
}

/// The container of a form: one that the book knows, or another by its name.
pub(super) fn read(known: &str, container: &str) -> Result<String, Problem> {
    match (known, container.trim()) {
        ("" | ANOTHER, container) => input::container(container),
        (known, "") => input::container(known),
        (known, container) if known == container => input::container(known),
        _ => Err(Problem::TwoContainers),
    }
}

/// What is wrong with the container, beside the field that stands on the page.
pub(super) fn beside(problems: &Problems, known: &str) -> &'static [(&'static str, &'static str)] {
    let is_known = !matches!(known, "" | ANOTHER);
    let has = problems.iter().any(|(field, _)| field == "container");
    match is_known && has {
        true => &[("container", "collected")],
        false => &[],
    }
}
