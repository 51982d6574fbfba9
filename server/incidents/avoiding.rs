//! What somebody wants to be warned of, and the warnings.

use uuid::Uuid;

use super::input::MOST_NOTES;
use super::store;
use crate::app::App;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::Mix;
use crate::problem::Problem;
use crate::products::{self, Product};
use crate::rights::KeepAvoidNotes;
use crate::web::messages::incidents as words;

/// What somebody wants to avoid: a product, or what they call it.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct AvoidNote {
    /// Which note.
    pub id: Uuid,
    /// The product, where it is one of the room's.
    pub product_id: Option<Uuid>,
    /// Its name.
    pub product: Option<String>,
    /// What the person wrote; may be empty beside a product.
    pub words: String,
}

/// Notes what the holder wants to avoid. It stands in no book.
///
/// # Errors
/// A product that is none; neither product nor words; too many notes.
pub(super) async fn add(
    app: &App,
    permit: &Permit<KeepAvoidNotes>,
    product_id: Option<Uuid>,
    note: String,
) -> Result<()> {
    let now = app.clock().now();
    app.database()
        .in_room(permit.scope(), move |tx| {
            Box::pin(async move {
                if product_id.is_none() && note.is_empty() {
                    return Err(Error::field("words", Problem::Missing));
                }
                if let Some(product) = product_id
                    && products::product(tx, product).await?.is_none()
                {
                    return Err(Error::field("product", Problem::NotAChoice));
                }
                let note = AvoidNote {
                    id: Uuid::now_v7(),
                    product_id,
                    product: None,
                    words: note,
                };
                let kept = store::avoid_notes(tx).await?;
                if kept.iter().any(|each| each.is_as(&note)) {
                    return Ok(());
                }
                if kept.len() >= MOST_NOTES {
                    return Err(Error::Refused(Problem::TooMany(MOST_NOTES)));
                }
                store::add_avoid_note(tx, &note, now).await
            })
        })
        .await
}

/// Takes a note of the holder's away.
///
/// # Errors
/// That the database is away.
pub(super) async fn remove(app: &App, permit: &Permit<KeepAvoidNotes>, id: Uuid) -> Result<()> {
    app.database()
        .in_room(permit.scope(), move |tx| {
            Box::pin(store::remove_avoid_note(tx, id))
        })
        .await
}

/// What stands in the trays that the person of the transaction wants to avoid: one
/// sentence each. Words are looked for in the names of products and in what their
/// sheets list.
///
/// # Errors
/// The database's.
pub async fn warnings(tx: &mut RoomTx, standing: &[&Mix]) -> Result<Vec<String>> {
    let notes = store::avoid_notes(tx).await?;
    if notes.is_empty() {
        return Ok(Vec::new());
    }
    let mut there = products::products(tx).await?;
    there.retain(|product| {
        standing
            .iter()
            .any(|mix| mix.product_id == Some(product.id))
    });
    let warned = there.iter().filter_map(|product| {
        let note = notes.iter().find(|note| note.means(product))?;
        Some(words::avoid(&product.name, &note.words))
    });
    let may_hold = there.iter().filter(|product| {
        !product.composition_is_known && !notes.iter().any(|note| note.means(product))
    });
    let may_hold: Vec<&str> = may_hold.map(|product| product.name.as_str()).collect();
    let looks_inside = notes.iter().any(|note| !note.words.is_empty());
    let unknown = (looks_inside && !may_hold.is_empty()).then(|| words::may_hold(&may_hold));
    Ok(warned.chain(unknown).collect())
}

impl AvoidNote {
    /// Whether it speaks of a product: of the very one, or of words in its name, in the
    /// name of an ingredient or in an ingredient's CAS number.
    fn means(&self, product: &Product) -> bool {
        let wanted = self.words.to_lowercase();
        let has = |text: &str| !wanted.is_empty() && text.to_lowercase().contains(&wanted);
        let mut ingredients = product.ingredients.iter();
        self.product_id == Some(product.id)
            || has(&product.name)
            || ingredients.any(|each| has(&each.name) || each.cas.as_deref().is_some_and(has))
    }

    /// Whether it says the same.
    fn is_as(&self, other: &Self) -> bool {
        (self.product_id, &self.words) == (other.product_id, &other.words)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::products::actions::NewProduct;
    use crate::products::{Ingredient, Kind};

    fn note(product_id: Option<Uuid>, words: &str) -> AvoidNote {
        AvoidNote {
            id: Uuid::nil(),
            product_id,
            product: None,
            words: words.to_owned(),
        }
    }

    fn product() -> Product {
        let new = NewProduct::named("Larch print developer".to_owned(), Kind::Developer);
        Product {
            ingredients: vec![Ingredient {
                name: "Hydroquinone".to_owned(),
                cas: Some("123-31-9".to_owned()),
                least_millionths: None,
                most_millionths: Some(1),
                hazard_codes: Vec::new(),
            }],
            ..new.settled(Uuid::from_u128(1), 1, Vec::new())
        }
    }

    #[test]
    fn words_are_found_in_names_ingredients_and_cas_numbers() {
        let product = product();
        for words in ["larch PRINT", "hydroquinone", "123-31-9"] {
            assert!(note(None, words).means(&product), "{words}");
        }
        for words in ["metol", "123-31-8", ""] {
            assert!(!note(None, words).means(&product), "{words}");
        }
    }

    #[test]
    fn a_product_is_meant_by_itself() {
        let product = product();
        assert!(note(Some(product.id), "it itches").means(&product));
        assert!(!note(Some(Uuid::from_u128(2)), "").means(&product));
    }
}
