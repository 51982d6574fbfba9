//! A mix as the book has made it so far.

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::{Figures, Stand, Storage};
use crate::clock::moment;
use crate::darkroom::quantities::Ppb;
use crate::darkroom::state::Origin;
use crate::web::messages::verdicts;
use crate::web::numbers::Numbers;

/// A mix as it now is.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Mix {
    /// Which.
    pub id: Uuid,
    /// What it was mixed from; nothing for liquid that nobody can name.
    pub product_id: Option<Uuid>,
    /// The product's name.
    pub product_name: Option<String>,
    /// The groups that decide what it may be poured with.
    pub groups: Vec<String>,
    /// H codes of the product as supplied.
    pub hazard_codes: Vec<String>,
    /// Which version of the product.
    pub product_version: i32,
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// All that was poured in, in microlitres.
    pub charged_ul: i64,
    /// The concentrate in it, in microlitres.
    pub concentrate_ul: i64,
    /// What paper and film have used up of it, in nanolitres.
    pub spent_nl: i64,
    /// The fraction of its life used at `age_at`, in parts per billion.
    pub age_ppb: i64,
    /// When that was.
    pub age_at: OffsetDateTime,
    /// How long it lives as it is kept, in seconds; 0 where nobody knows.
    pub life_s: i64,
    /// When somebody last noted sheets of unknown number.
    pub unknown_sheets_at: Option<OffsetDateTime>,
    /// Where it comes from.
    pub origin: Origin,
    /// How it is kept.
    pub storage: Storage,
    /// What it keeps of its product; nothing for mixes of early entries.
    pub figures: Option<Figures>,
    /// When the oldest part of it was mixed.
    pub oldest_at: OffsetDateTime,
    /// Silver dissolved in it by estimate, in micrograms: least, usual, most.
    pub silver_ug: [i64; 3],
    /// Bromide that developing released, in micrograms.
    pub bromide_ug: i64,
    /// Alkali that prints carried in, in nano-equivalents.
    pub alkali_neq: i64,
    /// What prints carried out of it, in microlitres.
    pub carried_out_ul: i64,
    /// What prints carried into it, in microlitres.
    pub received_ul: i64,
    /// How often the mixes of its pair of fixing baths moved up before.
    pub shifts: i32,
    /// The stock solution it was mixed from; nothing where it was not from stock.
    pub stock_id: Option<Uuid>,
    /// The mix it was poured into, where its liquid is now.
    pub poured_into: Option<Uuid>,
    /// When it was mixed.
    pub mixed_at: OffsetDateTime,
    /// Who mixed it.
    pub mixed_by: Option<Uuid>,
    /// The number of the entry it began with.
    pub mixed_seq: i64,
    /// Where it stands; nowhere once it is gone.
    pub stand: Stand,
    /// Since when it stands in its tray.
    pub stands_since: Option<OffsetDateTime>,
    /// When it was discarded.
    pub discarded_at: Option<OffsetDateTime>,
    /// Into which container.
    pub discarded_into: Option<String>,
    /// The number of the last entry that changed it.
    pub last_seq: i64,
    /// Whether paper uses it up: some class has a capacity.
    pub has_capacity: bool,
}

impl Mix {
    /// The tray or bottle it stands in.
    #[must_use]
    pub fn vessel_id(&self) -> Option<Uuid> {
        self.stand.tray_id.or(self.stand.bottle_id)
    }

    /// What it is called, with its dilution; of liquid that nobody can name there
    /// is none.
    #[must_use]
    pub fn title(&self, numbers: Numbers) -> String {
        let product = self.product_name.as_deref();
        verdicts::mix_and_dilution(product, self.parts_thousandths, numbers)
    }

    /// What stands in the vessel by reckoning, in microlitres: what was poured
    /// in, less what prints carried out; never below nothing.
    #[must_use]
    pub fn level_ul(&self) -> i64 {
        (self.charged_ul - self.carried_out_ul).max(0)
    }

    /// When its life is over as it is kept now, the longest life that topping up
    /// leaves it among that; nothing where nobody knows.
    #[must_use]
    pub fn life_ends(&self) -> Option<OffsetDateTime> {
        let ends = self.age().ok()??.reaches(Ppb::ONE)?;
        let longest = self.figures.as_ref().and_then(|all| all.longest_life_s);
        let longest = longest.map(|life| self.oldest_at + Duration::seconds(life));
        let ends = moment(ends.get());
        Some(longest.map_or(ends, |longest| longest.min(ends)))
    }
}
