//! The two names of a person: the one others see, and the one typed to log in.

use unicode_normalization::UnicodeNormalization;

use crate::problem::Problem;

/// The most characters of the name others see.
pub const NAME: usize = 80;
/// The most characters of a log-in name.
pub const LOG_IN_NAME: usize = 40;

/// A log-in name, in its one spelling.
#[derive(Clone, Debug, Eq, PartialEq, serde::Serialize)]
pub struct LogInName(String);

impl LogInName {
    /// Reads what was typed: letters, digits, dots and hyphens, large and small
    /// letters alike.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn read(typed: &str) -> Result<Self, Problem> {
        let name: String = typed.trim().nfkc().collect::<String>().to_lowercase();
        let length = name.chars().count();
        if length == 0 {
            return Err(Problem::Missing);
        }
        if length > LOG_IN_NAME {
            return Err(Problem::TooLong(LOG_IN_NAME));
        }
        if length < 2 {
            return Err(Problem::TooShort(2));
        }
        let fits = |sign: char| sign.is_alphanumeric() || sign == '.' || sign == '-';
        if !name.chars().all(fits) {
            return Err(Problem::NotALogInName);
        }
        Ok(Self(name))
    }

    /// The name.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

/// Reads the name others see.
///
/// # Errors
/// What is wrong with it.
pub fn read_name(typed: &str) -> Result<String, Problem> {
    text(typed, NAME).and_then(|name| match name.is_empty() {
        true => Err(Problem::Missing),
        false => Ok(name),
    })
}

/// One line of text, trimmed, in composed form, without signs that no page shows.
///
/// # Errors
/// That it is too long.
pub fn text(typed: &str, most: usize) -> Result<String, Problem> {
    let text: String = typed
        .nfc()
        .filter(|sign| !sign.is_control())
        .collect::<String>()
        .trim()
        .to_owned();
    match text.chars().count() > most {
        true => Err(Problem::TooLong(most)),
        false => Ok(text),
    }
}
