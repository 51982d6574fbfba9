//! What is wrong with what somebody wants to do with a mix, and what to do about it.

use crate::darkroom::joining::{JoinRefused, Side};
use crate::problem::Problem;
use crate::web::numbers::Numbers;

/// What is wrong with something done to a mix; nothing where it is no such problem.
#[must_use]
pub fn about_mixes(problem: &Problem, numbers: Numbers) -> Option<String> {
    match problem {
        Problem::MayNotJoin(cause) => Some(may_not_join(*cause)),
        Problem::PaperOnly { product } => Some(format!(
            "{product} has no figure for film here: it takes paper only. Use another fixer."
        )),
        Problem::StockShort {
            missing_ul,
            left_ul,
        } => Some(stock_short(*missing_ul, *left_ul, numbers)),
        other => about_baths(other)
            .or_else(|| about_mixing(other))
            .map(str::to_owned),
    }
}

/// Problems of what stands somewhere and what becomes of it.
fn about_baths(problem: &Problem) -> Option<&'static str> {
    Some(match problem {
        Problem::UnknownLiquid => {
            "Nobody knows what this liquid is. Leave it where it is and call a steward."
        }
        Problem::KnownMixThere => {
            "The book knows what stands here. If you doubt it, flag it as contaminated."
        }
        Problem::RinseFirst => {
            "This held household bleach. Rinse it well with water and record that first."
        }
        Problem::NotAtThisBench => {
            "Household bleach has no use at this bench: with almost anything here it gives off \
             toxic gas."
        }
        Problem::OtherStep => {
            "Prints meet another bath in this tray. Choose the tray that is for this one."
        }
        Problem::NoFiguresForPlace => {
            "This dilution has no capacity for this place among fixing baths. Ask a steward to \
             enter it from the maker’s data sheet."
        }
        Problem::NoSecondBath => {
            "No second bath of the same fixer stands in this line, so there is none to move up."
        }
        Problem::ReplaceBoth => {
            "The second bath is used up, or has moved up as often as this room allows. Discard \
             both and mix two fresh ones."
        }
        Problem::NotDiscarded => {
            "This mix was not discarded by itself, so there is nothing to undo."
        }
        Problem::BeforeItStood => "The mix did not stand there yet then. Look at the time again.",
        Problem::SomethingStoodThere => "Something else stood there then. Look at the time again.",
        Problem::ExtensionTooLong => "Give more than nothing and at most 24 hours.",
        Problem::ExtensionUnsafe => {
            "No extension covers contamination, a failed check, measured silver over its limit or \
             liquid nobody knows. Replace it."
        }
        Problem::ExtensionNotNeeded => "This mix need not be replaced yet, so nothing is extended.",
        Problem::NotFresh => {
            "A tenth of this mix is used up, or its start is a guess, so it is fresh no more. \
             Leave the tick out, or mix a fresh one to compare with."
        }
        Problem::OtherBath => "That check tells nothing of this bath. Choose one of those offered.",
        _ => return None,
    })
}

/// Problems of what is to be poured into a fresh mix.
fn about_mixing(problem: &Problem) -> Option<&'static str> {
    Some(match problem {
        Problem::NotAPowder => {
            "Stock solution is made of a powder whose packet is on file. Enter at the product what \
             a packet makes."
        }
        Problem::WholePackets => {
            "Take whole packets of this product: the powders in them are not evenly mixed."
        }
        Problem::OtherStock => {
            "This stock solution is another product’s. Choose one of the product you mix, or none."
        }
        Problem::StockPast => {
            "This stock solution is past its use-by. Mix nothing from it: make more, or say that \
             the mix is not from stock."
        }
        Problem::StockNotYetMade => {
            "This stock solution was made later than that. Look at the time again."
        }
        Problem::NotWeaker => {
            "Adding water only ever makes a solution weaker. Give more parts of water than it has."
        }
        Problem::TapsSwapped => "The hot tap is colder than the cold one. Swap them.",
        Problem::ColdTooWarm => {
            "Even the cold tap is warmer than this product may be mixed with. Let the water cool \
             first."
        }
        Problem::TooCoarse => {
            "This cylinder is too coarse for so little concentrate. Take a finer one, or mix more."
        }
        _ => return None,
    })
}

fn stock_short(missing_ul: i64, left_ul: i64, numbers: Numbers) -> String {
    let (missing, left) = (numbers.volume(missing_ul), numbers.volume(left_ul));
    format!(
        "{missing} of stock solution are missing: {left} are left of this one. Make more, mix \
         less, or say that the mix is not from stock."
    )
}

fn may_not_join(cause: JoinRefused) -> String {
    let which = |side| match side {
        Side::Receiving => "The mix you would add to",
        Side::Poured => "The mix you would pour",
    };
    match cause {
        JoinRefused::OtherProduct => "Different products are never poured together.".to_owned(),
        JoinRefused::OtherDilution => {
            "Different dilutions are not poured together: nobody could say what came of it."
                .to_owned()
        }
        JoinRefused::UsedUp(side, _) => format!(
            "{} is used up. Adding to it would not make it good: discard it.",
            which(side)
        ),
        JoinRefused::Contaminated(side) => {
            format!("{} is flagged as contaminated. Discard it.", which(side))
        }
        JoinRefused::CheckFailed(side) => {
            format!("{} failed a check. Discard it.", which(side))
        }
        JoinRefused::ReadingOver(side) => {
            format!(
                "The last reading of it says replace. {} is spent.",
                which(side)
            )
        }
        JoinRefused::UnknownStart(side) => {
            format!("{} is of unknown origin or age.", which(side))
        }
        JoinRefused::Quantity(_) => "That is more than can be reckoned.".to_owned(),
    }
}
