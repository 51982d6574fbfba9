//! A page as a person reads it.

use scraper::{ElementRef, Html, Selector};

/// A parsed page.
pub(crate) struct Page {
    html: Html,
}

fn selector(text: &str) -> Selector {
    Selector::parse(text).unwrap()
}

fn text_of(element: ElementRef<'_>) -> String {
    let text: String = element.text().collect();
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

impl Page {
    pub(crate) fn parse(body: &str) -> Self {
        Self {
            html: Html::parse_document(body),
        }
    }

    /// The texts of all elements that match.
    pub(crate) fn all(&self, what: &str) -> Vec<String> {
        let what = selector(what);
        self.html.select(&what).map(text_of).collect()
    }

    /// The text of the first element that matches.
    pub(crate) fn first(&self, what: &str) -> Option<String> {
        self.all(what).into_iter().next()
    }

    /// The page's one heading.
    pub(crate) fn heading(&self) -> String {
        self.first("h1").unwrap_or_default()
    }

    /// Everything the page says in its main part.
    pub(crate) fn main(&self) -> String {
        self.first("main")
            .or_else(|| self.first("body"))
            .unwrap_or_default()
    }

    /// What the page says is wrong: field name and sentence.
    pub(crate) fn problems(&self) -> Vec<(String, String)> {
        let errors = selector("p.error");
        self.html
            .select(&errors)
            .map(|error| {
                let id = error.value().id().unwrap_or_default();
                let field = id.strip_prefix("error-").unwrap_or(id).to_owned();
                (field, text_of(error))
            })
            .collect()
    }

    /// The links of the page.
    pub(crate) fn links(&self) -> Vec<(String, String)> {
        let links = selector("a[href]");
        self.html
            .select(&links)
            .map(|link| {
                let href = link.value().attr("href").unwrap_or_default();
                (text_of(link), href.to_owned())
            })
            .collect()
    }

    /// The form that has a button with this text: where it goes, and its fields
    /// as a browser would send them, the button's own among them.
    pub(crate) fn form(&self, button: &str) -> Option<Form> {
        let forms = selector("form");
        let buttons = selector("button, input[type=submit]");
        self.html.select(&forms).find_map(|form| {
            let pressed = form.select(&buttons).find(|it| text_of(*it) == button)?;
            let mut fields = fields_of(form);
            if let Some(name) = pressed.value().attr("name") {
                let value = pressed.value().attr("value").unwrap_or_default();
                fields.push((name.to_owned(), value.to_owned()));
            }
            let action = form.value().attr("action").unwrap_or_default();
            let labels = labels_of(form);
            Some(Form {
                action: action.to_owned(),
                fields,
                labels,
            })
        })
    }
}

fn fields_of(form: ElementRef<'_>) -> Vec<(String, String)> {
    let inputs = selector("input, select, textarea");
    let mut fields = Vec::new();
    for input in form.select(&inputs) {
        let element = input.value();
        let Some(name) = element.attr("name") else {
            continue;
        };
        let kind = element.attr("type").unwrap_or("text");
        let value = match element.name() {
            "textarea" => input.text().collect(),
            "select" => chosen_of(input),
            _ => element.attr("value").unwrap_or("").to_owned(),
        };
        let is_switch = matches!(kind, "radio" | "checkbox");
        if kind == "submit" || (is_switch && element.attr("checked").is_none()) {
            continue;
        }
        fields.push((name.to_owned(), value));
    }
    fields
}

fn chosen_of(select: ElementRef<'_>) -> String {
    let options = selector("option");
    let chosen = select
        .select(&options)
        .find(|option| option.value().attr("selected").is_some())
        .or_else(|| select.select(&options).next());
    let value = chosen.and_then(|option| option.value().attr("value"));
    value.unwrap_or_default().to_owned()
}

/// What a person can find by its label: label, field name, value of a choice.
fn labels_of(form: ElementRef<'_>) -> Vec<(String, String, Option<String>)> {
    let labels = selector("label");
    let inputs = selector("input");
    let mut found = Vec::new();
    for label in form.select(&labels) {
        if let Some(input) = label.select(&inputs).next() {
            let element = input.value();
            let name = element.attr("name").unwrap_or_default().to_owned();
            let value = element.attr("value").unwrap_or_default().to_owned();
            let own = selector(".target-name");
            let words = label
                .select(&own)
                .next()
                .map_or_else(|| text_of(label), text_of);
            found.push((words, name, Some(value)));
        } else if let Some(id) = label.value().attr("for") {
            let name = id.strip_prefix("field-").unwrap_or(id);
            found.push((text_of(label), name.to_owned(), None));
        }
    }
    found
}

/// A form as it was served, to be filled in.
#[derive(Clone, Debug)]
pub(crate) struct Form {
    pub(crate) action: String,
    pub(crate) fields: Vec<(String, String)>,
    labels: Vec<(String, String, Option<String>)>,
}

impl Form {
    /// Writes into the field with this label.
    pub(crate) fn fill(mut self, label: &str, value: &str) -> Self {
        let found = self
            .labels
            .iter()
            .find(|(words, _, of)| words == label && of.is_none());
        let name = found.map(|(_, name, _)| name.clone());
        let name = name.unwrap_or_else(|| panic!("no field {label:?} in {:?}", self.labels));
        self.set(&name, value);
        self
    }

    /// Takes the choice with this label, or ticks its box.
    pub(crate) fn choose(mut self, label: &str) -> Self {
        let found = self
            .labels
            .iter()
            .find(|(words, _, of)| words == label && of.is_some());
        let found = found.cloned();
        let (_, name, value) =
            found.unwrap_or_else(|| panic!("no choice {label:?} in {:?}", self.labels));
        self.set(&name, &value.unwrap_or_default());
        self
    }

    /// Sets a field by its name.
    pub(crate) fn with(mut self, name: &str, value: &str) -> Self {
        self.set(name, value);
        self
    }

    fn set(&mut self, name: &str, value: &str) {
        self.fields.retain(|(other, _)| other != name);
        self.fields.push((name.to_owned(), value.to_owned()));
    }

    /// The value of a field.
    pub(crate) fn value(&self, name: &str) -> Option<&str> {
        let found = self.fields.iter().find(|(other, _)| other == name);
        found.map(|(_, value)| value.as_str())
    }
}
