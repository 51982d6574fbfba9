//! Where the demo's used baths go: canisters of twenty litres, one after another,
//! each for what may stand together.

use crate::products::Kind;

/// What a canister takes, in microlitres.
const HOLDS_UL: i64 = 18_000_000;

/// The canisters by what they take, and what went into each sort so far.
#[derive(Debug, Default)]
pub(super) struct Canisters {
    developer_ul: i64,
    stop_ul: i64,
    fixer_ul: i64,
    toner_ul: i64,
}

impl Canisters {
    /// The name of the canister that so much of a bath goes into.
    pub(super) fn take(&mut self, kind: Kind, volume_ul: i64) -> String {
        let (name, taken_ul) = match kind {
            Kind::Developer => ("Developer", &mut self.developer_ul),
            Kind::StopBath => ("Stop bath", &mut self.stop_ul),
            Kind::Fixer | Kind::HoldingWater | Kind::WashAid => ("Fixer", &mut self.fixer_ul),
            Kind::Toner => ("Toner", &mut self.toner_ul),
        };
        *taken_ul += volume_ul;
        format!("{name} canister {}", 1 + *taken_ul / HOLDS_UL)
    }
}
