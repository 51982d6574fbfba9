//! The signal word that GHS gives to a product's hazard codes as supplied.
//!
//! Source: GHS Annex 1, label elements by class and category; every row here is from
//! memory. A code whose word depends on its category, or that is not here, decides
//! nothing: then the supplier's label is named instead of a word.

/// The word of a label.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Signal {
    /// Some code has this word, and it outranks the other.
    Danger,
    /// Some code has this word, and none the other.
    Warning,
    /// Every code is known to have no word.
    NoWord,
    /// The codes on file do not decide it.
    SeeLabel,
}

const DANGER: &[&str] = &[
    "H224", "H225", "H271", "H300", "H301", "H304", "H310", "H311", "H314", "H318", "H330", "H331",
    "H334", "H340", "H350", "H360", "H370", "H372",
];
const WARNING: &[&str] = &[
    "H226", "H290", "H302", "H312", "H315", "H317", "H319", "H332", "H335", "H336", "H341", "H351",
    "H361", "H371", "H373", "H400", "H410",
];
const NO_WORD: &[&str] = &["H362", "H411", "H412", "H413"];

fn of_code(code: &str) -> Signal {
    // Letters behind a code, as in H360FD, name what is harmed and change no word.
    let bare = code.get(..4).unwrap_or(code);
    match bare {
        _ if code.starts_with("EUH") || NO_WORD.contains(&bare) => Signal::NoWord,
        _ if DANGER.contains(&bare) => Signal::Danger,
        _ if WARNING.contains(&bare) => Signal::Warning,
        _ => Signal::SeeLabel,
    }
}

/// The word of all of a product's codes. No code on file decides nothing.
#[must_use]
pub fn signal(codes: &[String]) -> Signal {
    let words: Vec<Signal> = codes.iter().map(|code| of_code(code)).collect();
    let has = |word| words.contains(&word);
    match () {
        () if has(Signal::Danger) => Signal::Danger,
        () if words.is_empty() || has(Signal::SeeLabel) => Signal::SeeLabel,
        () if has(Signal::Warning) => Signal::Warning,
        () => Signal::NoWord,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(codes: &[&str]) -> Signal {
        let codes: Vec<String> = codes.iter().map(|code| (*code).to_owned()).collect();
        signal(&codes)
    }

    /// Source: GHS Annex 1, from memory.
    #[test]
    fn danger_outranks_warning() {
        assert_eq!(of(&["H314"]), Signal::Danger);
        assert_eq!(of(&["H317", "H290"]), Signal::Warning);
        assert_eq!(of(&["H317", "H318"]), Signal::Danger);
        assert_eq!(of(&["H360FD"]), Signal::Danger);
        assert_eq!(of(&["H412", "EUH031"]), Signal::NoWord);
    }

    /// H272 is Danger in category 2 and Warning in category 3. Source: GHS Annex 1,
    /// from memory.
    #[test]
    fn what_is_not_known_decides_nothing() {
        assert_eq!(of(&[]), Signal::SeeLabel);
        assert_eq!(of(&["H272", "H302"]), Signal::SeeLabel);
        assert_eq!(of(&["H272", "H314"]), Signal::Danger);
        assert_eq!(of(&["H999"]), Signal::SeeLabel);
    }
}
