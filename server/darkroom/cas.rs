//! Numbers of substances in the CAS Registry, and the digit that checks them.
//!
//! Two to seven digits, two digits, one digit: 123-31-9. The last one is the sum of all the
//! others, each times its place counted from the right, modulo 10. Source: Chemical
//! Abstracts Service, *Check Digit Verification of CAS Registry Numbers*, from memory.

use std::fmt;

/// Why a text is no such number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum CasError {
    /// Not two to seven digits, two digits and one, with hyphens between.
    #[error("a CAS number is two to seven digits, two digits and one digit, with hyphens between")]
    Shape,
    /// The last digit does not follow from the others: one of them was miscopied.
    #[error("the last digit of this CAS number does not agree with the others")]
    CheckDigit,
}

/// A number whose last digit agrees with the others. That it was given to a substance is
/// not known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CasNumber {
    /// All of its digits.
    digits: u64,
}

impl CasNumber {
    /// Reads a number as data sheets print it, with any of the hyphens that typesetting
    /// has.
    ///
    /// # Errors
    /// [`CasError`].
    pub fn parse(text: &str) -> Result<Self, CasError> {
        let text: String = text.trim().chars().map(plain_hyphen).collect();
        let parts: Vec<&str> = text.split('-').collect();
        let [head, middle, last] = parts[..] else {
            return Err(CasError::Shape);
        };
        let is_shaped = (2..=7).contains(&head.len())
            && !head.starts_with('0')
            && middle.len() == 2
            && last.len() == 1
            && [head, middle, last]
                .iter()
                .all(|part| part.bytes().all(|byte| byte.is_ascii_digit()));
        if !is_shaped {
            return Err(CasError::Shape);
        }
        let digits = format!("{head}{middle}{last}").parse();
        let number = Self {
            digits: digits.map_err(|_| CasError::Shape)?,
        };
        match number.digits % 10 == check_digit(number.digits / 10) {
            true => Ok(number),
            false => Err(CasError::CheckDigit),
        }
    }
}

/// The digit that follows from the others.
fn check_digit(mut others: u64) -> u64 {
    let (mut sum, mut place) = (0, 1);
    while others > 0 {
        sum += others % 10 * place;
        others /= 10;
        place += 1;
    }
    sum % 10
}

/// Hyphens and dashes of typesetting as the one on the keyboard.
const fn plain_hyphen(letter: char) -> char {
    match letter {
        '\u{2010}'..='\u{2014}' | '\u{2212}' => '-',
        other => other,
    }
}

impl fmt::Display for CasNumber {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (head, middle) = (self.digits / 1_000, self.digits / 10 % 100);
        write!(f, "{head}-{middle:02}-{}", self.digits % 10)
    }
}
