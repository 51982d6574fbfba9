//! The forms of inductions, read and filled in.

use uuid::Uuid;

use super::actions::{NewInduction, Withdrawal};
use super::views::{InductionForm, WithdrawForm};
use super::{Basis, Induction};
use crate::input::{date, remark};
use crate::mixes::readings::input::reason;
use crate::problem::{Problem, Problems};
use crate::web::forms::read_id;

/// The form of an induction of somebody on something, today.
pub(super) fn of_new(
    key: String,
    today: &str,
    person: Option<Uuid>,
    topics: Vec<String>,
) -> InductionForm {
    InductionForm {
        key,
        people: person.iter().map(ToString::to_string).collect(),
        topics,
        on: today.to_owned(),
        basis: Basis::Given.as_str().to_owned(),
        ..InductionForm::default()
    }
}

/// The form that renews a record: the same person and topics, today.
pub(super) fn of_renewal(key: String, today: &str, old: &Induction) -> InductionForm {
    let topics = old.topics.iter();
    let topics = topics.map(|covered| covered.topic_id.to_string());
    InductionForm {
        renews: old.id.to_string(),
        ..of_new(key, today, Some(old.person_id), topics.collect())
    }
}

/// An induction as typed, read.
pub(super) fn read_induction(form: &InductionForm) -> Result<NewInduction, Problems> {
    let mut problems = Problems::default();
    let people = problems.take("people", read_ids(&form.people));
    let topics = problems.take("topics", read_ids(&form.topics));
    let on = problems.take("on", read_day(&form.on));
    let basis = match Basis::parse(&form.basis) {
        Some(Basis::Given) => Ok(false),
        Some(Basis::OnPaper) => Ok(true),
        Some(Basis::SelfDeclared) | None => Err(Problem::NotAChoice),
    };
    let basis = problems.take("basis", basis);
    let remark = problems.take("remark", remark(&form.remark));
    let renews = match form.renews.as_str() {
        "" => Ok(None),
        text => read_id(text).map(Some),
    };
    let renews = problems.take("renews", renews);
    match (people, topics, on, basis, remark, renews) {
        (
            Some(person_ids),
            Some(topic_ids),
            Some(given_on),
            Some(is_on_paper),
            Some(remark),
            Some(renews_id),
        ) => Ok(NewInduction {
            person_ids,
            topic_ids,
            given_on,
            is_on_paper,
            remark,
            renews_id,
        }),
        _ => Err(problems),
    }
}

fn read_ids(texts: &[String]) -> Result<Vec<Uuid>, Problem> {
    let ids = texts.iter().map(|text| read_id(text));
    let ids: Vec<Uuid> = ids.collect::<Result<_, _>>()?;
    match ids.is_empty() {
        true => Err(Problem::Missing),
        false => Ok(ids),
    }
}

/// The day; nothing for today.
fn read_day(typed: &str) -> Result<Option<String>, Problem> {
    match typed.trim() {
        "" => Ok(None),
        typed => date(typed).map(Some),
    }
}

/// The reason for withdrawing a record as typed, read.
pub(super) fn read_withdrawal(form: &WithdrawForm, id: Uuid) -> Result<Withdrawal, Problems> {
    match reason(&form.reason) {
        Ok(reason) => Ok(Withdrawal {
            induction_id: id,
            reason,
        }),
        Err(problem) => Err(Problems::one("reason", problem)),
    }
}
