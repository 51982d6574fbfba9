//! Sizes and classes of paper, each by itself: invented data.

use askama::Template;
use wetside::papers::views::{ClassPage, PapersForm, SizePage};
use wetside::web::fields::Problems;
use wetside::web::shell::Shell;

use super::Page;

pub(crate) const PAGES: &[Page] = &[("size-form", size_form), ("class-form", class_form)];

fn size_form(shell: Shell) -> String {
    let page = SizePage {
        shell,
        id: "s1".to_owned(),
        form: PapersForm {
            key: "k".to_owned(),
            size_name: "5×7 in".to_owned(),
            long: "127".to_owned(),
            short: "177.8".to_owned(),
            class_name: String::new(),
        },
        problems: Problems::one(
            "long",
            "The long side is shorter than the short side. Swap them.",
        ),
        unit: "mm".to_owned(),
    };
    page.render().unwrap()
}

fn class_form(shell: Shell) -> String {
    let page = ClassPage {
        shell,
        id: "c1".to_owned(),
        form: PapersForm {
            key: "k".to_owned(),
            class_name: "RC".to_owned(),
            ..PapersForm::default()
        },
        problems: Problems::none(),
    };
    page.render().unwrap()
}
