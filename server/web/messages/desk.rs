//! What is asked before papers, products, lines and trays are retired.

use crate::web::desk::Question;

fn retire(name: &str, consequence: &str) -> Question {
    Question {
        question: format!("Retire {name}?"),
        consequence: consequence.to_owned(),
        verb: "Retire it".to_owned(),
    }
}

/// Before a sheet size is retired.
#[must_use]
pub fn retire_size(name: &str) -> Question {
    retire(
        name,
        "Nobody can choose this size any more. Notes made on it keep it, and it can be brought \
         back on the page of papers.",
    )
}

/// Before a paper class is retired.
#[must_use]
pub fn retire_class(name: &str) -> Question {
    retire(
        name,
        "Nobody can choose this class any more. Notes made on it keep it, products keep their \
         figures for it, and it can be brought back on the page of papers.",
    )
}

/// Before a product is retired.
#[must_use]
pub fn retire_product(name: &str) -> Question {
    retire(
        name,
        "Nobody can mix from it any more. Mixes that stand keep their figures and are noted on \
         as before, and it can be brought back on the page of products.",
    )
}

/// Before a dilution is taken out.
#[must_use]
pub fn take_out(product: &str, dilution: &str) -> Question {
    Question {
        question: format!("Take {dilution} out of {product}?"),
        consequence: "Nobody can mix it so any more. Mixes that stand keep their figures, and \
            the book keeps these; to bring it back, add the dilution again."
            .to_owned(),
        verb: "Take it out".to_owned(),
    }
}

/// Before a line is retired.
#[must_use]
pub fn retire_line(name: &str) -> Question {
    retire(
        name,
        "The line and its trays leave the board, and nobody can note sheets on it any more. All \
         that was noted stays, and it can be brought back on the page of the bench. Its trays \
         must be empty.",
    )
}

/// Before a tray is retired.
#[must_use]
pub fn retire_tray(name: &str) -> Question {
    retire(
        name,
        "The tray leaves the board, and nobody can mix into it any more. All that was noted \
         stays, and it can be brought back on the page of the bench. It must be empty.",
    )
}

/// Before a bottle is retired.
#[must_use]
pub fn retire_bottle(name: &str) -> Question {
    retire(
        name,
        "Nobody can choose this bottle any more. All that was noted stays, and it can be brought \
         back on the page of bottles.",
    )
}

/// Before a space is retired.
#[must_use]
pub fn retire_space(name: &str) -> Question {
    retire(
        name,
        "No line can be put in this space any more. All that was noted stays, and it can be \
         brought back on the page of spaces. No line that is in use may stand in it, and a \
         retired line of it comes back to the room itself.",
    )
}

/// How much covers a print in a tray, and how much it holds.
#[must_use]
pub fn volumes(least: &str, holds: &str) -> String {
    format!("{least} covers a print, {holds} fills it to the rim")
}

/// A tray's inside, its sides with their unit.
#[must_use]
pub fn inside(sides: &str, depth: &str, least: &str) -> String {
    format!("{sides}, {depth} deep; least depth {least}")
}

/// Something retired, where several kinds of things stand in one list.
#[must_use]
pub fn tray_of(tray: &str, line: &str) -> String {
    format!("{tray}, of {line}")
}
