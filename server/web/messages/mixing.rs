//! What the pages of mixing, topping up and stock solution say.

use super::products::life;
use crate::web::numbers::Numbers;

/// What every temperature of a mix rests on.
pub const WARMTH_ASSUMES: &str = "Water and concentrate are taken to be equally dense and to warm \
    equally fast; the warmth or cold of dissolving is not reckoned. Measure before you print. \
    Never heat concentrate directly.";

/// The heading over the water's temperature.
pub const TEMPERATURE: &str = "Temperature";
/// The heading over what a cylinder makes of it.
pub const CYLINDER: &str = "With this cylinder";
/// The heading over the stock solution of a powder.
pub const STOCK: &str = "Stock solution";
/// The heading over what topping up does.
pub const DOES: &str = "What that does";

/// What of the volume is water.
pub const WATER_FIRST: &str = "water first";
/// The concentrate.
pub const CONCENTRATE_INTO_IT: &str = "concentrate into it";
/// A powder's stock solution.
pub const STOCK_INTO_IT: &str = "stock solution into it";
/// What takes no water.
pub const AS_IT_IS: &str = "as it is, no water";

/// A kit's part, by its number.
#[must_use]
pub fn part_into_it(number: usize) -> String {
    format!("part {number} into it, then stir")
}

/// The step of a kit's part.
#[must_use]
pub fn part(number: usize) -> String {
    format!("Part {number}")
}

/// `1 L × 1 ÷ 20`.
#[must_use]
pub fn share(total: &str, parts: &str, all: &str) -> String {
    format!("{total} × {parts} ÷ {all}")
}

/// The step of all parts together.
pub const ALL_PARTS: &str = "All parts and water";

/// Where the mix goes.
#[must_use]
pub const fn in_the(is_tray: bool) -> &'static str {
    if is_tray {
        "in the tray"
    } else {
        "in the bottle"
    }
}

/// Where fresh solution goes.
#[must_use]
pub const fn fresh_in_the(is_tray: bool) -> &'static str {
    if is_tray {
        "fresh, into the tray"
    } else {
        "fresh, into the bottle"
    }
}

/// How much more there is room for.
#[must_use]
pub fn room_left(room: &str) -> String {
    format!("There is room for {room}.")
}

/// The button that writes the mix.
#[must_use]
pub const fn it_stands(is_tray: bool) -> &'static str {
    if is_tray {
        "It stands in the tray"
    } else {
        "It stands in the bottle"
    }
}

/// The button that writes a top-up.
pub const IT_IS_IN: &str = "It is topped up";
/// The button that writes the making of stock solution.
pub const IT_IS_MADE: &str = "It is made";

/// How much a bottle holds.
#[must_use]
pub fn bottle_hint(holds_ul: i64, numbers: Numbers) -> String {
    let holds = numbers.volume(holds_ul);
    format!("The bottle holds {holds} up to the stopper.")
}

/// How long a mix keeps in a bottle, and until when.
#[must_use]
pub fn keeps_bottled(life_s: i64, until: &str) -> String {
    let life = life(life_s);
    format!("In this bottle {life}: good until {until} if nothing is drawn or poured.")
}

/// Water of a temperature from two taps.
#[must_use]
pub fn drawn(at: &str, percent: &str, hot: &str, cold: &str) -> String {
    format!(
        "Draw water at {at}: {percent}\u{a0}% from the hot tap, {hot}, and {cold} from the cold one."
    )
}

/// Water of a temperature.
#[must_use]
pub fn water_at(at: &str) -> String {
    format!("Draw water at {at}.")
}

/// What no water changes.
#[must_use]
pub fn as_it_is(at: &str) -> String {
    format!("No water can change it: it has {at}.")
}

/// What the mix will have where the wanted temperature is out of reach.
#[must_use]
pub fn nearest(results: &str, is_too_cold: bool) -> String {
    let stand = if is_too_cold { "warm" } else { "cold" };
    format!(
        "That is as near as it comes: it will have {results}. Stand the tray in {stand} water \
         until the thermometer says what you want."
    )
}

/// A wanted temperature outside the product's range.
#[must_use]
pub fn outside(range: &str) -> String {
    format!("This product works at {range}; what you want lies outside that.")
}

/// What a cylinder makes of a dilution.
#[must_use]
pub fn measured(
    concentrate: &str,
    water: &str,
    dilution: &str,
    change: i64,
    numbers: Numbers,
) -> String {
    let percent = numbers.decimal(change.abs(), 1);
    let strength = match change {
        0 => "as strong as asked".to_owned(),
        change if change < 0 => format!("{percent}\u{a0}% weaker"),
        _ => format!("{percent}\u{a0}% stronger"),
    };
    format!(
        "To the nearest mark: {concentrate} and {water} of water. That is {dilution}, {strength}."
    )
}

/// A kit has more than one thing to measure.
pub const KIT_BY_PART: &str = "Measure each part of a kit in a cylinder of its own, as reckoned \
    above: rounding is only told of a single concentrate.";

/// Nothing to round in what is used as it is.
pub const NOTHING_TO_ROUND: &str = "Nothing is diluted, so nothing is rounded.";

/// The packets for the stock solution of a mix.
#[must_use]
pub fn packets_needed(
    stock: &str,
    packets_thousandths: i64,
    makes: &str,
    numbers: Numbers,
) -> String {
    let packets = packets(packets_thousandths, numbers);
    format!("{stock} of stock solution: {packets} would make {makes}.")
}

/// `2 packets`, `1 packet`, `0.25 packets`.
#[must_use]
pub fn packets(thousandths: i64, numbers: Numbers) -> String {
    let count = numbers.decimal(thousandths, 3);
    let noun = if thousandths == 1_000 {
        "packet"
    } else {
        "packets"
    };
    format!("{count} {noun}")
}

/// How long stock solution keeps.
#[must_use]
pub fn stock_keeps(full_s: Option<i64>, part_s: Option<i64>) -> String {
    match (full_s, part_s) {
        (Some(full), Some(part)) => format!(
            "The stock solution keeps {} in a full bottle, {} from the first draw on.",
            life(full),
            life(part)
        ),
        (Some(full), None) => format!("The stock solution keeps {}.", life(full)),
        (None, _) => "How long the stock solution keeps is not on file.".to_owned(),
    }
}

/// What is drawn from recorded stock solution.
#[must_use]
pub fn drawn_from(made: &str, draws: &str, leaves: &str) -> String {
    format!("Drawn from what was made {made}: {draws}; {leaves} remain.")
}

/// Nothing is drawn from stock.
pub const NOT_FROM_STOCK: &str =
    "It is entered as not from stock: no recorded stock solution grows less.";

/// The choice of whatever is recorded.
pub const RECORDED: &str = "What is recorded, opened first";
/// What that means.
pub const RECORDED_HINT: &str = "Of a powder only; without any recorded it is not from stock.";
/// The choice of nothing recorded.
pub const NONE_RECORDED: &str = "Not from stock";

/// A stock solution among choices.
#[must_use]
pub fn stock_choice(product: &str, made: &str) -> String {
    format!("{product}, made {made}")
}

/// What is left of it and until when it may be used.
#[must_use]
pub fn stock_left(left: &str, until: Option<&str>) -> String {
    match until {
        Some(until) => format!("{left} left, use by {until}"),
        None => format!("{left} left"),
    }
}

/// A stock solution whose use-by passed.
#[must_use]
pub fn stock_past(left: &str, until: &str) -> String {
    format!("{left} left, past its use-by of {until}: mix nothing from it")
}

/// Fresh solution joins what stands there.
#[must_use]
pub fn sum_of(there: &str, fresh: &str) -> String {
    format!("{there} + {fresh}")
}

/// The step of what stands there afterwards.
pub const TOGETHER: &str = "Charged together";

/// How topping up changes the used fractions.
#[must_use]
pub fn younger(what: Used, before: &str, after: &str) -> String {
    match what {
        Used::Capacity => format!("Used of its capacity: {before} before, {after} after."),
        Used::Life => format!("Used of its life: {before} before, {after} after."),
    }
}

/// What is used of a mix.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub enum Used {
    /// By paper.
    Capacity,
    /// By time.
    Life,
}

/// A product's longest age.
#[must_use]
pub fn longest(until: &str) -> String {
    format!("Its oldest part keeps its date: no topping up takes it past {until}.")
}

/// What water would make of what stands there.
#[must_use]
pub fn weaker(there: &str, from: &str, water: &str, to: &str, makes: &str) -> String {
    format!("{there} at {from} and {water} of water make {makes} at {to}.")
}

/// What is read out of a worksheet while somebody types.
#[must_use]
pub fn said(pours: &str) -> String {
    format!("{pours}.")
}

/// A mix that stood there already.
#[must_use]
pub fn guessed(used: &str, age: &str) -> String {
    format!(
        "By guess {used} of its capacity and {age} of its life are used. It begins as Test first \
         until a check passes."
    )
}

/// A stock solution that was drawn from, after mixing.
#[must_use]
pub fn left_after(left: &str) -> String {
    format!("It was drawn from recorded stock solution, of which {left} remain.")
}

/// Without stock, after mixing.
pub const NO_PRICE: &str = "It was not drawn from stock, so it carries no price.";

/// How the powder of a packet is made up.
pub const POWDER_INTO_WATER: &str = "into less water than that, the powder into the water, as its \
    sheet says";

/// What that fills up to.
pub const OF_STOCK: &str = "of stock solution, filled up with water";

/// How long it keeps.
pub const KEEPS: &str = "How long it keeps";

/// The heading of a sheet for stock solution.
#[must_use]
pub fn stock_of(product: &str) -> String {
    format!("Stock solution of {product}")
}

/// What a packet makes.
#[must_use]
pub fn packet_hint(makes: &str, may_be_divided: bool) -> String {
    match may_be_divided {
        true => format!("A packet makes {makes}; by its sheet a part of one may be taken."),
        false => format!(
            "A packet makes {makes}. Packets are taken whole: their powders are not evenly mixed."
        ),
    }
}
