//! How often skin met a sensitiser.

use time::Duration;

use super::{Details, What};
use crate::products::Product;
use crate::topics::{Trait, UNKNOWN, traits_of};

/// Contact with a sensitiser so often asks for advice: the default of the issue that
/// asked for it, common practice, no source.
pub const CONTACTS: usize = 3;

/// Within so many days: from the same place.
pub const CONTACT_DAYS: i64 = 90;

/// Whether skin met a sensitiser. Chemistry that nobody can name counts as what is to be
/// expected of it.
fn is_contact(details: &Details, products: &[Product]) -> bool {
    let product = products
        .iter()
        .find(|each| Some(each.id) == details.product_id);
    let is_sensitiser = match product {
        Some(product) => traits_of(product).contains(&Trait::Sensitiser),
        None => UNKNOWN == Trait::Sensitiser,
    };
    details.what == What::SkinContact && is_sensitiser
}

/// Whether this one is a contact, and there were so many within so many days around it
/// that the person is advised; `all` has this one too.
pub(super) fn are_many(this: &Details, all: &[Details], products: &[Product]) -> bool {
    let contacts = all.iter().filter(|each| is_contact(each, products));
    let moments: Vec<i64> = contacts.map(|each| each.happened_at_us).collect();
    is_contact(this, products) && is_often(this.happened_at_us, &moments)
}

/// Whether some stretch of so many days that holds this moment holds enough of them.
fn is_often(this: i64, moments: &[i64]) -> bool {
    let days = Duration::days(CONTACT_DAYS).whole_microseconds();
    let within = |start: i64, at: i64| start <= at && i128::from(at) - i128::from(start) < days;
    let starts = moments.iter().filter(|start| within(**start, this));
    let mut counts = starts.map(|start| {
        let within = moments.iter().filter(|at| within(*start, **at));
        within.count()
    });
    counts.any(|count| count >= CONTACTS)
}

#[cfg(test)]
mod tests {
    use super::*;

    const DAY: i64 = 86_400_000_000;

    fn often(this: i64, days: &[i64]) -> bool {
        let moments: Vec<i64> = days.iter().map(|day| day * DAY).collect();
        is_often(this * DAY, &moments)
    }

    #[test]
    fn three_in_ninety_days_are_often_and_two_are_not() {
        assert!(often(89, &[0, 40, 89]));
        assert!(!often(90, &[0, 40, 90]));
        assert!(!often(40, &[0, 40]));
        assert!(!often(0, &[]));
    }

    #[test]
    fn one_that_is_told_late_counts_with_those_after_it() {
        assert!(often(5, &[10, 20, 5]));
        // Three of long ago say nothing of this one.
        assert!(!often(400, &[1, 2, 3, 400]));
    }
}
