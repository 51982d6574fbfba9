//! The texts of the precautionary statements that say what to do, by code: GHS
//! Annex 3, section 3, response. Every text here is from memory; a code that is
//! not here is shown by its code alone, and the supplier's sheet has its text.

const RESPONSES: &[(&str, &str)] = &[
    (
        "P301+P310",
        "If swallowed: immediately call a poison centre or doctor.",
    ),
    (
        "P301+P312",
        "If swallowed: call a poison centre or doctor if you feel unwell.",
    ),
    (
        "P301+P330+P331",
        "If swallowed: rinse mouth. Do not induce vomiting.",
    ),
    ("P302+P352", "If on skin: wash with plenty of water."),
    (
        "P303+P361+P353",
        "If on skin (or hair): take off immediately all contaminated clothing. Rinse skin with water or shower.",
    ),
    (
        "P304+P340",
        "If inhaled: remove person to fresh air and keep comfortable for breathing.",
    ),
    (
        "P305+P351+P338",
        "If in eyes: rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.",
    ),
    (
        "P308+P313",
        "If exposed or concerned: get medical advice or attention.",
    ),
    ("P310", "Immediately call a poison centre or doctor."),
    ("P312", "Call a poison centre or doctor if you feel unwell."),
    (
        "P314",
        "Get medical advice or attention if you feel unwell.",
    ),
    ("P321", "Specific treatment: see this product’s label."),
    ("P330", "Rinse mouth."),
    (
        "P332+P313",
        "If skin irritation occurs: get medical advice or attention.",
    ),
    (
        "P333+P313",
        "If skin irritation or rash occurs: get medical advice or attention.",
    ),
    (
        "P337+P313",
        "If eye irritation persists: get medical advice or attention.",
    ),
    (
        "P342+P311",
        "If experiencing respiratory symptoms: call a poison centre or doctor.",
    ),
    (
        "P361+P364",
        "Take off immediately all contaminated clothing and wash it before reuse.",
    ),
    (
        "P362+P364",
        "Take off contaminated clothing and wash it before reuse.",
    ),
    ("P363", "Wash contaminated clothing before reuse."),
    ("P391", "Collect spillage."),
];

/// The text of a response statement.
pub(crate) fn response(code: &str) -> String {
    let found = RESPONSES.iter().find(|(known, _)| *known == code);
    found.map_or_else(
        || "Its text stands in the supplier’s safety data sheet.".to_owned(),
        |(_, text)| (*text).to_owned(),
    )
}
