//! What a note did to each bath: what it used up, and by estimate what prints
//! brought and took.

mod store;

use uuid::Uuid;

use super::{Brought, Wear};
use crate::board::ppb;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::web::messages::sheets as words;
use crate::web::numbers::Numbers;

/// What a note did to one bath, and how that stands now.
#[derive(Clone, Debug)]
pub(super) struct Effect {
    /// The bath in its tray, in words.
    pub(super) bath: String,
    /// What was used up, in nanolitres.
    pub(super) spent_nl: i64,
    /// Whether paper uses this bath up at all.
    is_worn: bool,
    share_ppb: Option<i64>,
    brought: Option<Brought>,
    mix_spent_nl: i64,
    charged_ul: i64,
    silver_usual_ug: i64,
}

/// What a note did, bath by bath in the order prints travel, from what its entry stored.
///
/// # Errors
/// The database's.
pub(super) async fn effects(tx: &mut RoomTx, wear: &[Wear]) -> Result<Vec<Effect>> {
    let mixes: Vec<Uuid> = wear.iter().map(|worn| worn.mix_id).collect();
    let trays: Vec<Uuid> = wear.iter().map(|worn| worn.tray_id).collect();
    let baths = store::baths(tx, &mixes, &trays).await?;
    if baths.len() != wear.len() {
        return Err(Error::fault("a note wore what is not there"));
    }
    let effect = |(worn, bath): (&Wear, store::Bath)| Effect {
        bath: words::bath(bath.product.as_deref(), &bath.tray),
        spent_nl: worn.spent_nl,
        is_worn: worn.sheets_per_litre_thousandths > 0,
        share_ppb: worn.share_ppb,
        brought: worn.brought,
        mix_spent_nl: bath.spent_nl,
        charged_ul: bath.charged_ul,
        silver_usual_ug: bath.silver_usual_ug,
    };
    Ok(wear.iter().zip(baths).map(effect).collect())
}

impl Effect {
    /// What was used up, as people read it.
    pub(super) fn spent(&self, numbers: Numbers) -> String {
        numbers.volume((self.spent_nl + 500) / 1_000)
    }

    /// Everything the note did to the bath.
    pub(super) fn in_words(&self, numbers: Numbers) -> String {
        let mut said = vec![self.worn_in_words(numbers)];
        if let Some(share) = self.share_ppb {
            said.push(words::second_of_two(&numbers.percent_used(share)));
        }
        if let Some(brought) = &self.brought {
            said.extend(self.brought_in_words(brought, numbers));
        }
        said.join(" ")
    }

    fn worn_in_words(&self, numbers: Numbers) -> String {
        if !self.is_worn {
            return words::no_capacity(&self.bath);
        }
        let used = ppb(self.mix_spent_nl, self.charged_ul.saturating_mul(1_000));
        words::effect(
            &self.bath,
            &self.spent(numbers),
            &numbers.percent_used(used),
        )
    }

    /// The estimates, each where there is one.
    fn brought_in_words(&self, brought: &Brought, numbers: Numbers) -> Vec<String> {
        let milligrams = |ug: i64| format!("{}\u{a0}mg", numbers.rounded(ug, 3, 1));
        let millilitres = |ul: i64| format!("{}\u{a0}ml", numbers.rounded(ul, 3, 1));
        let mut said = Vec::new();
        if brought.received_ul > 0 {
            said.push(words::received(&millilitres(brought.received_ul)));
        }
        if brought.carried_out_ul > 0 {
            said.push(words::carried_out(&millilitres(brought.carried_out_ul)));
        }
        if brought.silver_ug != [0; 3] {
            let [least, usual, most] = brought.silver_ug.map(milligrams);
            // Micrograms in a microlitre are grams in a litre.
            let thousandths = self.silver_usual_ug.saturating_mul(1_000) / self.charged_ul.max(1);
            let now = format!("{}\u{a0}g/L", numbers.rounded(thousandths, 3, 2));
            said.push(match least == most {
                true => words::silver(&usual, &now),
                false => words::silver_between((&least, &usual, &most), &now),
            });
        }
        if brought.alkali_neq > 0 {
            let milli = numbers.rounded(brought.alkali_neq / 1_000, 3, 2);
            said.push(words::alkali(&format!("{milli}\u{a0}meq")));
        }
        if brought.bromide_ug > 0 {
            said.push(words::bromide(&milligrams(brought.bromide_ug)));
        }
        said
    }
}
