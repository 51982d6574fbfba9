//! A workshop as its form shows and reads it.

use uuid::Uuid;

use super::actions::NewWorkshop;
use super::input;
use super::store::Workshop;
use super::views::PlanForm;
use crate::clock::micros;
use crate::input::{date, name};
use crate::problem::{Problem, Problems};
use crate::rooms::Settings;
use crate::web::dates::Zone;
use crate::web::forms::read_id;

/// A workshop as texts.
pub(super) fn of_workshop(workshop: &Workshop, key: String, zone: &Zone) -> PlanForm {
    let text = |id: Option<Uuid>| id.map_or_else(String::new, |id| id.to_string());
    PlanForm {
        key,
        title: workshop.title.clone(),
        leader: workshop.leader_id.to_string(),
        space: text(workshop.space_id),
        day: zone.date_value(workshop.begins_at),
        begins: zone.clock(workshop.begins_at).words,
        ends: zone.clock(workshop.ends_at).words,
        most: workshop.most_guests.to_string(),
        lines: workshop.line_ids.iter().map(Uuid::to_string).collect(),
        paid_by: text(workshop.paid_by_id),
    }
}

/// An id that may be left out.
fn id_if_any(text: &str) -> Result<Option<Uuid>, Problem> {
    match text {
        "" => Ok(None),
        text => read_id(text).map(Some),
    }
}

/// Reads the form.
pub(super) fn read_plan(
    form: &PlanForm,
    id: Option<Uuid>,
    (settings, zone): (&Settings, &Zone),
) -> Result<NewWorkshop, Problems> {
    let mut problems = Problems::default();
    let title = problems.take("title", name(&form.title));
    let leader = problems.take("leader", read_id(&form.leader));
    let space = problems.take("space", id_if_any(&form.space));
    let day = problems.take("day", date(&form.day));
    let instant = |clock: &str| {
        // What is wrong with the day stands beside the day.
        let day = day.as_deref().unwrap_or("2026-01-01");
        let at = zone.instant_on(day, clock);
        at.map(|(at, _)| micros(at)).map_err(|_| Problem::NotATime)
    };
    let begins = problems.take("begins", instant(&form.begins));
    let ends = problems.take("ends", instant(&form.ends));
    let most = settings.numbers().read_count(&form.most);
    let most = most.map_err(Problem::Number).and_then(input::most_guests);
    let most = problems.take("most", most);
    let lines: Result<Vec<Uuid>, Problem> = form.lines.iter().map(|id| read_id(id)).collect();
    let lines = problems.take("lines", lines);
    let paid_by = problems.take("paid_by", id_if_any(&form.paid_by));
    match (title, leader, space, begins, ends, most, lines, paid_by) {
        (
            Some(title),
            Some(leader_id),
            Some(space_id),
            Some(begins_at_us),
            Some(ends_at_us),
            Some(most_guests),
            Some(line_ids),
            Some(paid_by_id),
        ) if problems.is_empty() => Ok(NewWorkshop {
            id,
            title,
            leader_id,
            space_id,
            begins_at_us,
            ends_at_us,
            most_guests,
            line_ids,
            paid_by_id,
        }),
        _ => Err(problems),
    }
}
