//! `reckon`: the trade's arithmetic for anyone to hold against their own sources.
//!
//! One JSON object a line in, one a line out, in the same order:
//! `{"ask":name, …}` gives `{"ask":name,"answer":{…}}` or
//! `{"ask":name,"refused":sentence,"field":name}`. Field names end in their unit.
//! Fields no question knows, and fields that stand twice, are refused. A line that
//! cannot be read is refused with `"ask":null`; no line ends the run.

use serde::Serialize;
use serde_json::Value;

use fields::{Fields, Refusal};

mod air;
mod bench;
mod fields;
mod fixing;
mod mixing;
mod safety;
mod times;
mod wear;

/// What answers a question.
type Answer = Result<Value, Refusal>;

/// One question.
struct Question {
    name: &'static str,
    example: &'static str,
    answer: fn(&mut Fields) -> Answer,
}

/// A question: its name, the example's other fields as they follow the name, the function.
const fn question(
    name: &'static str,
    example: &'static str,
    answer: fn(&mut Fields) -> Answer,
) -> Question {
    Question {
        name,
        example,
        answer,
    }
}

/// All questions in the order of `--list`.
fn questions() -> impl Iterator<Item = &'static Question> {
    [
        mixing::QUESTIONS,
        wear::QUESTIONS,
        bench::QUESTIONS,
        fixing::QUESTIONS,
    ]
    .into_iter()
    .chain([times::QUESTIONS, safety::QUESTIONS, air::QUESTIONS])
    .flatten()
}

/// One line for each question that asks it with an example; the whole is input
/// for [`reckon`].
pub fn examples() -> impl Iterator<Item = String> {
    questions().map(|question| format!(r#"{{"ask":"{}"{}}}"#, question.name, question.example))
}

/// Answers one line, without its line end, with one line, without one.
#[must_use]
pub fn reckon(line: &[u8]) -> String {
    let (ask, answer) = match serde_json::from_slice::<Fields>(line) {
        Ok(mut fields) => {
            let ask = fields.take_ask();
            let answer = answer(ask.as_ref(), fields);
            (ask.unwrap_or(Value::Null), answer)
        }
        Err(reason) => (Value::Null, Err(Refusal::new(reason, None))),
    };
    let line = match answer {
        Ok(answer) => Line::Answered { ask, answer },
        Err(Refusal { sentence, field }) => Line::Refused {
            ask,
            refused: sentence,
            field,
        },
    };
    // Names of fields are text, so there is nothing in a line that JSON cannot hold.
    serde_json::to_string(&line).unwrap_or_default()
}

/// One line of output.
#[derive(Serialize)]
#[serde(untagged)]
enum Line {
    Answered {
        ask: Value,
        answer: Value,
    },
    Refused {
        ask: Value,
        refused: String,
        field: Option<String>,
    },
}

fn answer(ask: Option<&Value>, mut fields: Fields) -> Answer {
    let name = ask.ok_or_else(|| Refusal::new("every line asks something", "ask"))?;
    let question = questions()
        .find(|question| name == question.name)
        .ok_or_else(|| Refusal::new("there is no such question; --list prints them all", "ask"))?;
    let answer = (question.answer)(&mut fields)?;
    fields.refuse_unread()?;
    Ok(answer)
}
