//! What is wrong with a form, field by field.
//!
//! A handler keeps the form as it came (a struct of strings) and one list of
//! `Problems`; the macros of `templates/fields.html` show both. The field name is the
//! `name` of the input; the id of the input is `field-<name>`.

/// One thing to mend: which field, and the sentence that says how.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// The `name` of the input it stands beside.
    pub field: String,
    /// What to do, in the words of the label.
    pub sentence: String,
}

impl Problem {
    /// The sentence away from its field, which it then names: `Paper class: Choose
    /// one of those offered.` Names of inputs are the words of their labels.
    #[must_use]
    pub fn named(&self) -> String {
        let words = self.field.replace(['_', '-'], " ");
        let mut letters = words.chars();
        match letters.next() {
            Some(first) => format!(
                "{}{}: {}",
                first.to_uppercase(),
                letters.as_str(),
                self.sentence
            ),
            None => self.sentence.clone(),
        }
    }
}

/// Everything to mend in one form, in the order of its fields.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Problems(Vec<Problem>);

impl Problems {
    /// Nothing is wrong.
    #[must_use]
    pub fn none() -> Self {
        Self::default()
    }

    /// One field is wrong.
    #[must_use]
    pub fn one(field: impl Into<String>, sentence: impl Into<String>) -> Self {
        let mut problems = Self::none();
        problems.add(field, sentence);
        problems
    }

    /// Adds a problem; only the first of a field is shown beside it.
    pub fn add(&mut self, field: impl Into<String>, sentence: impl Into<String>) {
        self.0.push(Problem {
            field: field.into(),
            sentence: sentence.into(),
        });
    }

    /// Takes the good value out, or keeps the sentence: `let volume = problems.take("volume", parsed)`.
    pub fn take<T, E: Into<String>>(&mut self, field: &str, parsed: Result<T, E>) -> Option<T> {
        match parsed {
            Ok(value) => Some(value),
            Err(sentence) => {
                self.add(field, sentence);
                None
            }
        }
    }

    /// Is nothing wrong?
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// All of them, for the summary.
    pub fn iter(&self) -> impl Iterator<Item = &Problem> {
        self.0.iter()
    }

    /// How many.
    #[must_use]
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// The sentence beside a field.
    #[must_use]
    pub fn of(&self, field: &str) -> Option<&str> {
        self.0
            .iter()
            .find(|problem| problem.field == field)
            .map(|problem| problem.sentence.as_str())
    }

    /// Is that field wrong?
    #[must_use]
    pub fn has(&self, field: &str) -> bool {
        self.of(field).is_some()
    }

    /// The sentence beside one of a row of fields: of `stem-index`.
    #[must_use]
    pub fn nth(&self, stem: &str, index: &usize) -> Option<&str> {
        self.of(&format!("{stem}-{index}"))
    }

    /// The value of `aria-describedby`, where a hint or a problem stands beside the field.
    #[must_use]
    pub fn described_by(&self, field: &str, hint: &str) -> Option<String> {
        match (hint.is_empty(), self.has(field)) {
            (true, false) => None,
            (true, true) => Some(format!("error-{field}")),
            (false, false) => Some(format!("hint-{field}")),
            (false, true) => Some(format!("hint-{field} error-{field}")),
        }
    }
}

/// One of several answers, as a big target or a line of a list.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Choice {
    /// What the form sends.
    pub value: String,
    /// What people read.
    pub label: String,
    /// A line of explanation; may be empty.
    pub hint: String,
}

impl Choice {
    /// A choice without explanation.
    #[must_use]
    pub fn new(value: impl Into<String>, label: impl Into<String>) -> Self {
        Self {
            value: value.into(),
            label: label.into(),
            hint: String::new(),
        }
    }

    /// The same with a line of explanation.
    #[must_use]
    pub fn explained(mut self, hint: impl Into<String>) -> Self {
        self.hint = hint.into();
        self
    }
}

/// One input of a row of a form that has several.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Cell {
    /// What its id ends with: `row-1-line`.
    pub id: String,
    /// As typed.
    pub value: String,
    /// What to mend.
    pub sentence: Option<String>,
}

impl Cell {
    /// An input of that id, with what stands beside it.
    #[must_use]
    pub fn new(id: String, value: &str, problems: &Problems) -> Self {
        Self {
            value: value.to_owned(),
            sentence: problems.of(&id).map(str::to_owned),
            id,
        }
    }
}

/// Is that value among the ones ticked?
#[must_use]
pub fn is_among(ticked: &[String], value: &str) -> bool {
    ticked.iter().any(|one| one == value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_problem_of_a_field_stands_beside_it() {
        let mut problems = Problems::one("volume", "Enter the volume.");
        problems.add("volume", "Too much for this tray.");
        assert_eq!(problems.of("volume"), Some("Enter the volume."));
        assert_eq!(problems.of("dilution"), None);
        assert_eq!(problems.len(), 2);
    }

    #[test]
    fn away_from_its_field_a_problem_names_it() {
        let problems = Problems::one("paper_class", "Choose one.");
        let named: Vec<String> = problems.iter().map(Problem::named).collect();
        assert_eq!(named, ["Paper class: Choose one."]);
    }

    #[test]
    fn a_field_is_described_by_what_stands_beside_it() {
        let problems = Problems::one("a", "Mend.");
        assert_eq!(problems.described_by("a", ""), Some("error-a".to_owned()));
        assert_eq!(
            problems.described_by("a", "hint"),
            Some("hint-a error-a".to_owned())
        );
        assert_eq!(
            problems.described_by("b", "hint"),
            Some("hint-b".to_owned())
        );
        assert_eq!(problems.described_by("b", ""), None);
    }
}
