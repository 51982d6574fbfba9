//! Numbers of the CAS Registry and their check digit.

use wetside::darkroom::cas::{CasError, CasNumber};

use super::same;

#[test]
pub(super) fn published_numbers_agree_with_their_check_digit() {
    for (number, source) in [
        ("123-31-9", "INRS, MIXIE substance 286: hydroquinone"),
        ("64-19-7", "INRS, MIXIE substance 674: acetic acid"),
        ("55-55-0", "International Chemical Safety Card 1528: metol"),
        (
            "7631-90-5",
            "International Chemical Safety Card 1134: sodium hydrogensulfite",
        ),
        (
            "7681-52-9",
            "Safe Work Australia, HCIS chemical 4178: sodium hypochlorite",
        ),
        ("92-43-3", "1-phenyl-3-pyrazolidinone, from memory"),
        ("1310-73-2", "sodium hydroxide, from memory"),
        ("497-19-8", "sodium carbonate, from memory"),
        ("7681-57-4", "sodium metabisulfite, from memory"),
        ("10102-18-8", "sodium selenite, from memory"),
        ("7732-18-5", "water, from memory"),
    ] {
        let read = CasNumber::parse(number).map(|read| read.to_string());
        same("CAS number", read, Ok(number.to_owned()), source);
    }
}

/// Two neighbours weigh one apart, so the sum always notices that they were swapped. Rule:
/// Chemical Abstracts Service, check digit verification, from memory.
#[test]
fn another_last_digit_and_swapped_neighbours_show() {
    for good in ["123-31-9", "7681-52-9", "7631-90-5"] {
        let letters: Vec<char> = good.chars().collect();
        let last = letters.len() - 1;
        for digit in '0'..='9' {
            let mut copied = letters.clone();
            copied[last] = digit;
            let read = CasNumber::parse(&String::from_iter(&copied));
            assert_eq!(read.is_ok(), copied == letters, "{copied:?}");
        }
        let digits: Vec<usize> = (0..last).filter(|at| letters[*at] != '-').collect();
        for pair in digits.windows(2) {
            let mut copied = letters.clone();
            copied.swap(pair[0], pair[1]);
            let read = CasNumber::parse(&String::from_iter(&copied));
            match copied == letters || copied[0] == '0' {
                true => assert_eq!(read.is_ok(), copied == letters),
                false => assert_eq!(read, Err(CasError::CheckDigit), "{copied:?}"),
            }
        }
    }
}

#[test]
fn what_is_no_such_number_is_refused_and_typeset_hyphens_are_read() {
    for text in [
        "",
        "123319",
        "1-31-9",
        "12345678-31-9",
        "123-1-9",
        "123-31-19",
        "123-31",
        "a23-31-9",
        "123-31-9-1",
        "１２３-31-9",
    ] {
        assert_eq!(CasNumber::parse(text), Err(CasError::Shape), "{text}");
    }
    for text in [
        " 123-31-9 ",
        "123\u{2010}31\u{2011}9",
        "123\u{2013}31\u{2212}9",
    ] {
        let read = CasNumber::parse(text).map(|read| read.to_string());
        assert_eq!(read.as_deref(), Ok("123-31-9"));
    }
    let longest = CasNumber::parse("9999999-99-5");
    let said = longest.map(|read| read.to_string());
    assert_eq!(said.as_deref(), Ok("9999999-99-5"));
}
