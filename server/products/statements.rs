//! The texts of hazard and precautionary statements by code: GHS Annex 3, and
//! CLP Annex II for EUH. Every text here is from memory; a code that is not here
//! is shown by its code alone, and the supplier's sheet has its text.

use crate::emergency::response;
use crate::web::messages::products::NO_TEXT;

const STATEMENTS: &[(&str, &str)] = &[
    ("H226", "Flammable liquid and vapour."),
    ("H270", "May cause or intensify fire; oxidiser."),
    ("H271", "May cause fire or explosion; strong oxidiser."),
    ("H272", "May intensify fire; oxidiser."),
    ("H290", "May be corrosive to metals."),
    ("H300", "Fatal if swallowed."),
    ("H301", "Toxic if swallowed."),
    ("H302", "Harmful if swallowed."),
    ("H310", "Fatal in contact with skin."),
    ("H311", "Toxic in contact with skin."),
    ("H312", "Harmful in contact with skin."),
    ("H314", "Causes severe skin burns and eye damage."),
    ("H315", "Causes skin irritation."),
    ("H317", "May cause an allergic skin reaction."),
    ("H318", "Causes serious eye damage."),
    ("H319", "Causes serious eye irritation."),
    ("H330", "Fatal if inhaled."),
    ("H331", "Toxic if inhaled."),
    ("H332", "Harmful if inhaled."),
    (
        "H334",
        "May cause allergy or asthma symptoms or breathing difficulties if inhaled.",
    ),
    ("H335", "May cause respiratory irritation."),
    ("H336", "May cause drowsiness or dizziness."),
    ("H340", "May cause genetic defects."),
    ("H341", "Suspected of causing genetic defects."),
    ("H350", "May cause cancer."),
    ("H351", "Suspected of causing cancer."),
    ("H360", "May damage fertility or the unborn child."),
    (
        "H361",
        "Suspected of damaging fertility or the unborn child.",
    ),
    ("H362", "May cause harm to breast-fed children."),
    (
        "H373",
        "May cause damage to organs through prolonged or repeated exposure.",
    ),
    ("H400", "Very toxic to aquatic life."),
    (
        "H410",
        "Very toxic to aquatic life with long lasting effects.",
    ),
    ("H411", "Toxic to aquatic life with long lasting effects."),
    ("H412", "Harmful to aquatic life with long lasting effects."),
    ("EUH031", "Contact with acids liberates toxic gas."),
    ("EUH032", "Contact with acids liberates very toxic gas."),
    (
        "EUH066",
        "Repeated exposure may cause skin dryness or cracking.",
    ),
    ("EUH070", "Toxic by eye contact."),
    ("EUH071", "Corrosive to the respiratory tract."),
    (
        "EUH208",
        "Contains a sensitiser. May produce an allergic reaction.",
    ),
    (
        "P260",
        "Do not breathe dust, fume, gas, mist, vapours or spray.",
    ),
    ("P264", "Wash thoroughly after handling."),
    (
        "P270",
        "Do not eat, drink or smoke when using this product.",
    ),
    (
        "P272",
        "Contaminated work clothing should not be allowed out of the workplace.",
    ),
    ("P273", "Avoid release to the environment."),
    (
        "P280",
        "Wear protective gloves, protective clothing, eye protection and face protection as the sheet says.",
    ),
    ("P405", "Store locked up."),
    (
        "P501",
        "Dispose of contents and container as the sheet and local rules say.",
    ),
];

/// The text of a statement.
pub(crate) fn text(code: &str) -> String {
    let found = STATEMENTS.iter().find(|(known, _)| *known == code);
    match found {
        Some((_, text)) => (*text).to_owned(),
        None if code.starts_with("P3") => response(code),
        None => NO_TEXT.to_owned(),
    }
}
