//! What the figures and the safety data of a product may be.

use crate::input::Bounds;
use crate::problem::Problem;

/// So many codes of one sort.
const MOST_CODES: usize = 60;
/// So many dilutions of one product.
const MOST_DILUTIONS: usize = 20;

const PARTS: Bounds = Bounds {
    least: 0,
    most: 1_000_000,
    words: ("0", "1000"),
};

const LIVES: Bounds = Bounds {
    least: 60,
    most: 5 * 365 * 24 * 3_600,
    words: ("1 minute", "5 years"),
};

const CAPACITIES: Bounds = Bounds {
    least: 1_000,
    most: 10_000_000,
    words: ("1 sheet a litre", "10000 sheets a litre"),
};

const DEPTHS: Bounds = Bounds {
    least: 10,
    most: 5_000,
    words: ("1 mm", "500 mm"),
};

/// N of 1+N, in thousandths.
///
/// # Errors
/// Outside 0 to 1000.
pub fn parts(thousandths: i64) -> Result<i64, Problem> {
    PARTS.hold(thousandths)
}

/// How long a working solution keeps, in seconds.
///
/// # Errors
/// Outside one minute to five years.
pub fn life(seconds: i64) -> Result<i64, Problem> {
    LIVES.hold(seconds)
}

/// How many 8×10 in sheets a litre takes, in thousandths.
///
/// # Errors
/// Outside 1 to 10,000 sheets.
pub fn capacity(thousandths: i64) -> Result<i64, Problem> {
    CAPACITIES.hold(thousandths)
}

/// The depth that tray lives hold for, in tenths of a millimetre.
///
/// # Errors
/// Outside 1 to 500 mm.
pub fn depth_reference(tenths_mm: i64) -> Result<i32, Problem> {
    DEPTHS.hold_as(tenths_mm)
}

/// No more than a product may have.
///
/// # Errors
/// Too many.
pub fn dilution_count(count: usize) -> Result<(), Problem> {
    match count > MOST_DILUTIONS {
        true => Err(Problem::TooMany(MOST_DILUTIONS)),
        false => Ok(()),
    }
}

/// Hazard codes as supplied: `H315`, `H360FD`, `H300+H310`, `EUH208`.
///
/// # Errors
/// One of another shape; one twice; too many.
pub fn hazard_codes<'t>(texts: impl IntoIterator<Item = &'t str>) -> Result<Vec<String>, Problem> {
    codes(texts, |part| {
        match (part.strip_prefix("EUH"), part.strip_prefix('H')) {
            (Some(rest), _) => is_number(rest, 1),
            (None, Some(rest)) => is_number(rest, 2),
            (None, None) => false,
        }
    })
}

/// Precaution codes as supplied: `P280`, `P305+P351+P338`.
///
/// # Errors
/// One of another shape; one twice; too many.
pub fn precaution_codes<'t>(
    texts: impl IntoIterator<Item = &'t str>,
) -> Result<Vec<String>, Problem> {
    codes(texts, |part| {
        part.strip_prefix('P')
            .is_some_and(|rest| is_number(rest, 0))
    })
}

/// Three digits, and up to so many letters that narrow a code.
fn is_number(rest: &str, letters: usize) -> bool {
    let (digits, more) = rest.split_at_checked(3).unwrap_or(("", ""));
    digits.len() == 3
        && digits.bytes().all(|each| each.is_ascii_digit())
        && more.len() <= letters
        && more.bytes().all(|each| each.is_ascii_alphabetic())
}

fn codes<'t>(
    texts: impl IntoIterator<Item = &'t str>,
    is_one: impl Fn(&str) -> bool,
) -> Result<Vec<String>, Problem> {
    let mut codes: Vec<String> = Vec::new();
    for text in texts {
        let code: String = text.chars().filter(|each| !each.is_whitespace()).collect();
        if !code.split('+').all(&is_one) {
            let shown = text.chars().take(40).collect();
            return Err(Problem::NotACode(shown));
        }
        if codes.contains(&code) {
            return Err(Problem::Twice);
        }
        codes.push(code);
    }
    match codes.len() > MOST_CODES {
        true => Err(Problem::TooMany(MOST_CODES)),
        false => Ok(codes),
    }
}
