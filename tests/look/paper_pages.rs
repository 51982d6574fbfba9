//! Sizes and classes of paper, each by itself: invented data.

use askama::Template;
use wetside::papers::views::{ClassForm, ClassPage, PapersForm, SizePage};
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
        form: ClassForm {
            key: "k".to_owned(),
            class_name: "RC".to_owned(),
            silver_least: "0.5".to_owned(),
            silver_usual: "1.2".to_owned(),
            silver_most: "1.6".to_owned(),
            kept_least: "20".to_owned(),
            kept_usual: "33".to_owned(),
            kept_most: "50".to_owned(),
            silver_basis: "set by a steward".to_owned(),
            carry_over: "40".to_owned(),
        },
        problems: Problems::none(),
    };
    page.render().unwrap()
}
