//! What was typed about a mix, read.

use time::OffsetDateTime;
use uuid::Uuid;

use super::ground::Ground;
use super::views::{MixForm, TopUpForm, Wanted};
use super::warmth::Warmth;
use crate::clock::moment;
use crate::darkroom::dilution::{Dilution, volume_from_concentrate};
use crate::darkroom::quantities::{Microlitres, TenthsCelsius};
use crate::mixes::actions::NewMix;
use crate::mixes::input;
use crate::mixes::stock::Stock;
use crate::mixes::stock::actions::suits;
use crate::problem::{Problem, Problems};
use crate::products::{Form, Product};
use crate::web::forms::read_id;
use crate::web::late;
use crate::web::numbers::Numbers;

/// The recorded stock solution, whichever is to be used up first.
pub(super) const RECORDED: &str = "recorded";
/// None: it is not from stock.
pub(super) const NONE: &str = "none";

/// What is wanted beside a volume of a dilution, and only reckoned.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Wishes {
    pub(super) warmth: Option<Warmth>,
    pub(super) graduation_ul: Option<i64>,
}

/// A mix as it was typed.
pub(super) struct Asked {
    pub(super) new: NewMix,
    pub(super) wishes: Wishes,
}

fn given<T>(
    typed: &str,
    read: impl FnOnce(&str) -> Result<T, Problem>,
) -> Result<Option<T>, Problem> {
    match typed.trim().is_empty() {
        true => Ok(None),
        false => read(typed).map(Some),
    }
}

/// A mix as typed, read: where the concentrate is given, the volume follows.
pub(super) fn read_mix(form: &MixForm, ground: &Ground) -> Result<Asked, Problems> {
    let numbers = ground.numbers();
    let mut problems = Problems::default();
    let dilution = problems.take("dilution", read_id(&form.dilution));
    let found = dilution.and_then(|id| {
        let found = ground.dilution(id).map_err(|_| Problem::NotAChoice);
        problems.take("dilution", found)
    });
    let there = given(&form.concentrate, |typed| {
        let typed = numbers.read_millilitres(typed).map_err(Problem::Number)?;
        input::mixed(typed)
    });
    let there = problems.take("concentrate", there);
    let volume = match (there.flatten(), found) {
        (Some(there), Some((_, figures))) => {
            let makes = makes(figures.parts_thousandths, there);
            problems.take("concentrate", makes.and_then(input::mixed))
        }
        (Some(_), None) => None,
        (None, _) => {
            let volume = numbers.read_litres(&form.volume).map_err(Problem::Number);
            problems.take("volume", volume.and_then(input::mixed))
        }
    };
    let wishes = read_wishes(&form.wanted, numbers, &mut problems);
    let zone = ground.settings.time_zone().map_err(|_| Problem::NotATime);
    let when = zone.and_then(|zone| late::read(&zone, &form.when, &form.day, &form.time));
    let when = problems.take("time", when);
    let stock = found
        .zip(volume)
        .zip(when)
        .and_then(|((of, volume), when)| {
            let at = when.map_or(ground.now, moment);
            let (product, figures) = of;
            let draws = concentrate_of(figures.parts_thousandths, volume);
            let draws = problems.take("volume", draws)?;
            let stock = choose(&ground.stocks, &form.stock, product, draws, at);
            problems.take("stock", stock)
        });
    match (dilution, volume, wishes, when, stock) {
        (
            Some(dilution_id),
            Some(volume_ul),
            Some(wishes),
            Some(happened_at_us),
            Some(stock_id),
        ) if problems.is_empty() => {
            let new = NewMix {
                vessel: vessel_id(ground),
                dilution_id,
                volume_ul,
                stock_id,
                happened_at_us,
            };
            Ok(Asked { new, wishes })
        }
        _ => Err(problems),
    }
}

fn vessel_id(ground: &Ground) -> crate::mixes::actions::VesselId {
    use crate::mixes::actions::{Vessel, VesselId};
    match &ground.vessel {
        Vessel::Tray(tray) => VesselId::Tray(tray.id),
        Vessel::Bottle(bottle) => VesselId::Bottle(bottle.id),
    }
}

/// The volume that a concentrate makes.
///
/// # Errors
/// More than can be reckoned.
pub(super) fn makes(parts_thousandths: i64, concentrate_ul: i64) -> Result<i64, Problem> {
    let dilution = Dilution::new(parts_thousandths).map_err(|_| Problem::NotAChoice)?;
    let concentrate = Microlitres::new(concentrate_ul).map_err(|_| Problem::NotANumber)?;
    let volume = volume_from_concentrate(dilution, concentrate);
    volume
        .map(Microlitres::get)
        .map_err(|_| Problem::NotANumber)
}

/// The concentrate in a volume; of a kit, all its parts together.
pub(super) fn concentrate_of(parts_thousandths: i64, volume_ul: i64) -> Result<i64, Problem> {
    use crate::darkroom::dilution::parts_for_volume;
    let dilution = Dilution::new(parts_thousandths).map_err(|_| Problem::NotAChoice)?;
    let volume = Microlitres::new(volume_ul).map_err(|_| Problem::NotANumber)?;
    let parts = parts_for_volume(dilution, volume).map_err(|_| Problem::NotANumber)?;
    Ok(parts.concentrate.get())
}

/// Fresh solution for a mix, as it was typed.
pub(super) struct AskedTopUp {
    pub(super) volume_ul: i64,
    pub(super) stock_id: Option<Uuid>,
    pub(super) happened_at_us: Option<i64>,
    /// A weaker dilution to be told about.
    pub(super) weaker_thousandths: Option<i64>,
    pub(super) wishes: Wishes,
}

pub(super) fn read_top_up(
    form: &TopUpForm,
    ground: &Ground,
    product: &Product,
    parts_thousandths: i64,
) -> Result<AskedTopUp, Problems> {
    let numbers = ground.numbers();
    let mut problems = Problems::default();
    let volume = numbers.read_litres(&form.volume).map_err(Problem::Number);
    let volume = problems.take("volume", volume.and_then(input::mixed));
    let weaker = given(&form.weaker, |typed| {
        let parts = numbers.read_thousandths(typed).map_err(Problem::Number)?;
        let parts = crate::products::input::parts(parts)?;
        match parts > parts_thousandths {
            true => Ok(parts),
            false => Err(Problem::NotWeaker),
        }
    });
    let weaker = problems.take("weaker", weaker);
    let wishes = read_wishes(&form.wanted, numbers, &mut problems);
    let zone = ground.settings.time_zone().map_err(|_| Problem::NotATime);
    let when = zone.and_then(|zone| late::read(&zone, &form.when, &form.day, &form.time));
    let when = problems.take("time", when);
    let stock = volume.zip(when).and_then(|(volume, when)| {
        let at = when.map_or(ground.now, moment);
        let draws = problems.take("volume", concentrate_of(parts_thousandths, volume))?;
        let stock = choose(&ground.stocks, &form.stock, product, draws, at);
        problems.take("stock", stock)
    });
    match (volume, weaker, wishes, when, stock) {
        (Some(volume_ul), Some(weaker), Some(wishes), Some(happened_at_us), Some(stock_id)) => {
            Ok(AskedTopUp {
                volume_ul,
                stock_id,
                happened_at_us,
                weaker_thousandths: weaker,
                wishes,
            })
        }
        _ => Err(problems),
    }
}

/// Which stock solution is drawn from: the one named, or of those recorded the
/// one that is opened longest and has enough. Where none is recorded it is not
/// from stock.
fn choose(
    stocks: &[Stock],
    typed: &str,
    product: &Product,
    draws_ul: i64,
    at: OffsetDateTime,
) -> Result<Option<Uuid>, Problem> {
    if typed == NONE || (product.form != Form::Powder && [RECORDED, ""].contains(&typed)) {
        return Ok(None);
    }
    let of_product = |stock: &&Stock| stock.product_id == product.id && stock.may_be_drawn(at);
    let chosen = match typed {
        RECORDED | "" => {
            let mut may = stocks.iter().filter(of_product);
            let enough = may.clone().find(|stock| stock.left_ul() >= draws_ul);
            match enough.or_else(|| may.next()) {
                Some(stock) => stock,
                None => return Ok(None),
            }
        }
        id => {
            let id = read_id(id)?;
            let found = stocks.iter().find(|stock| stock.id == id);
            found.ok_or(Problem::NotAChoice)?
        }
    };
    suits(chosen, product.id, draws_ul, at)?;
    Ok(Some(chosen.id))
}

/// Temperatures and the cylinder; a mistake is noted and answers nothing.
fn read_wishes(wanted: &Wanted, numbers: Numbers, problems: &mut Problems) -> Option<Wishes> {
    let before = problems.iter().count();
    let mut degrees = |field: &'static str, typed: &str| {
        let read = given(typed, |typed| {
            let tenths = numbers.read_celsius(typed).map_err(Problem::Number)?;
            let tenths = input::celsius(tenths)?;
            TenthsCelsius::new(tenths).map_err(|_| Problem::NotANumber)
        });
        problems.take(field, read).flatten()
    };
    let mix = degrees("mix_temperature", &wanted.mix_temperature);
    let concentrate = degrees("concentrate_temperature", &wanted.concentrate_temperature);
    let hot = degrees("hot_tap", &wanted.hot_tap);
    let cold = degrees("cold_tap", &wanted.cold_tap);
    let graduation = given(&wanted.graduation, |typed| {
        let graduation = numbers.read_millilitres(typed).map_err(Problem::Number)?;
        input::graduation(graduation)
    });
    let graduation = problems.take("graduation", graduation).flatten();
    let is_any = mix.is_some() || concentrate.is_some() || hot.is_some() || cold.is_some();
    let mut needed = |field: &'static str, typed: &str, is_needed: bool| {
        if is_needed && typed.trim().is_empty() {
            problems.add(field, Problem::Missing);
        }
    };
    needed("mix_temperature", &wanted.mix_temperature, is_any);
    needed(
        "concentrate_temperature",
        &wanted.concentrate_temperature,
        is_any,
    );
    needed("hot_tap", &wanted.hot_tap, cold.is_some());
    needed("cold_tap", &wanted.cold_tap, hot.is_some());
    if hot.zip(cold).is_some_and(|(hot, cold)| hot < cold) {
        problems.add("hot_tap", Problem::TapsSwapped);
    }
    let warmth = mix.zip(concentrate).map(|(wanted, concentrate)| Warmth {
        wanted,
        concentrate,
        taps: hot.zip(cold),
    });
    let wishes = Wishes {
        warmth,
        graduation_ul: graduation,
    };
    (problems.iter().count() == before).then_some(wishes)
}
