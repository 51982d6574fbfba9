//! Which passwords are too easily guessed.
//!
//! The list is short because of the least length: most of what is commonest in
//! the world is shorter. Words and habits are written down from memory.

/// Words that a password may not consist of, whatever digits and marks stand
/// around them. From memory.
const WORDS: &[&str] = &[
    "abcdefghij",
    "administrator",
    "administration",
    "basketball",
    "blackandwhite",
    "butterfly",
    "changeit",
    "changeme",
    "chocolate",
    "computer",
    "darkroom",
    "default",
    "developer",
    "enlarger",
    "fixer",
    "football",
    "forever",
    "fotolabor",
    "guest",
    "hello",
    "helloworld",
    "iloveyou",
    "internet",
    "jesuschrist",
    "letmein",
    "liverpool",
    "login",
    "loveyou",
    "master",
    "member",
    "michael",
    "mypassword",
    "newpassword",
    "nopassword",
    "pass",
    "passphrase",
    "passwort",
    "password",
    "passwordpassword",
    "photo",
    "photograph",
    "photography",
    "princess",
    "qazwsx",
    "qazwsxedc",
    "qwerty",
    "qwertyqwerty",
    "qwertz",
    "safelight",
    "secret",
    "starwars",
    "steward",
    "summer",
    "sunshine",
    "superman",
    "superuser",
    "temporary",
    "test",
    "testtest",
    "thisismypassword",
    "trustno",
    "unknown",
    "username",
    "welcome",
    "wetside",
    "whatever",
    "winter",
    "autumn",
    "spring",
];

/// Rows of keys and of signs that fingers run along.
const ROWS: &[&str] = &[
    "abcdefghijklmnopqrstuvwxyz",
    "01234567890",
    "qwertyuiopasdfghjklzxcvbnm",
    "qwertzuiopasdfghjklyxcvbnm",
    "azertyuiopqsdfghjklmwxcvbn",
    "1qaz2wsx3edc4rfv5tgb6yhn7ujm",
    "1q2w3e4r5t6y7u8i9o0p",
    "zaq12wsxcde34rfvbgt56yhn",
];

/// Whether a password is among the first that anyone tries, or holds a name
/// that stands on the page beside it.
#[must_use]
pub(super) fn is_easy(password: &str, names: &[&str]) -> bool {
    let lower = password.to_lowercase();
    is_repetition(&lower)
        || runs_along_rows(&lower)
        || is_a_word(&lower)
        || names.iter().any(|name| holds(&lower, name))
}

/// One to four signs over and over, or two or three in any order.
fn is_repetition(text: &str) -> bool {
    let signs: Vec<char> = text.chars().collect();
    let mut kinds = signs.clone();
    kinds.sort_unstable();
    kinds.dedup();
    if kinds.len() < 4 {
        return true;
    }
    (1..=4).any(|unit| {
        signs.len() > unit && (unit..signs.len()).all(|at| signs[at] == signs[at - unit])
    })
}

/// Nothing but two runs along rows of keys, forwards or backwards: what is left
/// after the longest two is too little to matter.
fn runs_along_rows(text: &str) -> bool {
    let signs: Vec<char> = text.chars().collect();
    let first = run_length(&signs);
    let second = run_length(&signs[first..]);
    signs.len() - first - second < 3
}

fn run_length(signs: &[char]) -> usize {
    let longest = (1..=signs.len()).rev().find(|length| {
        let run: String = signs[..*length].iter().collect();
        let back: String = signs[..*length].iter().rev().collect();
        ROWS.iter()
            .any(|row| row.contains(&run) || row.contains(&back))
    });
    longest.unwrap_or(0)
}

/// A listed word, once or twice, between digits and marks.
fn is_a_word(text: &str) -> bool {
    let bare = letters(text);
    let spelt = spelt_out(text);
    [bare, spelt].iter().any(|word| {
        WORDS
            .iter()
            .any(|listed| word == listed || *word == format!("{listed}{listed}"))
    })
}

/// What is left without what usually stands before and behind a word.
fn letters(text: &str) -> String {
    let inner = text.trim_matches(|sign: char| !sign.is_alphabetic());
    inner.chars().filter(|sign| !is_gap(*sign)).collect()
}

/// Digits and marks read as the letters they stand for.
fn spelt_out(text: &str) -> String {
    let inner = text.trim_end_matches(|sign: char| !sign.is_alphabetic() && sign != '@');
    inner
        .chars()
        .filter(|sign| !is_gap(*sign))
        .map(|sign| match sign {
            '0' => 'o',
            '1' | '!' => 'i',
            '3' => 'e',
            '4' | '@' => 'a',
            '5' | '$' => 's',
            '7' => 't',
            other => other,
        })
        .collect()
}

fn is_gap(sign: char) -> bool {
    matches!(sign, ' ' | '-' | '_' | '.')
}

fn holds(password: &str, name: &str) -> bool {
    let bare = |text: &str| -> String { text.chars().filter(|sign| !is_gap(*sign)).collect() };
    let name = bare(&name.to_lowercase());
    name.chars().count() >= 3 && bare(password).contains(&name)
}

#[cfg(test)]
mod tests {
    use super::is_easy;

    #[test]
    fn first_guesses_are_refused() {
        for guess in [
            "password12",
            "Passw0rd!!",
            "P@ssword2026",
            "qwertyuiop",
            "1234567890",
            "0987654321",
            "aaaaaaaaaaaa",
            "abcabcabcabc",
            "1q2w3e4r5t",
            "Darkroom2026!",
            "iloveyou1234",
            "123456789012",
            "abcdefghijkl",
            "qwertyuiop123",
            "wetside-wetside",
            "1111122222",
        ] {
            assert!(is_easy(guess, &[]), "{guess}");
        }
    }

    #[test]
    fn sentences_and_random_signs_are_accepted() {
        for fine in [
            "correct horse battery",
            "three wet prints drying",
            "xK9#mQ2v!pLw",
            "стоп-ванна полна",
            "kelp lantern orbit",
            "passing words over water",
        ] {
            assert!(!is_easy(fine, &[]), "{fine}");
        }
    }

    #[test]
    fn names_on_the_page_are_refused() {
        assert!(is_easy("the north lane lab", &["North Lane"]));
        assert!(is_easy("xx-ines.o-2291-kw", &["ines.o"]));
        assert!(!is_easy("the south lane lab", &["North Lane"]));
    }
}
