//! What somebody must know before they come in, and what of that they lack.
//!
//! It follows from what is in the trays and from the concentrates of products in use, as
//! supplied: never from what a working solution computes to. Liquid nobody can name may
//! hold anything.

use std::collections::{BTreeMap, BTreeSet};

use uuid::Uuid;

use super::standing::Standing;
use super::store::{self, Held};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::members::{self, Member};
use crate::mixes;
use crate::problem::Problem;
use crate::products::{self, Product};
use crate::rights::Role;
use crate::topics::{self, Required, Topic, Trait, UNKNOWN, traits_of};

/// What is in the room that topics are asked for by.
#[derive(Clone, Debug, Default)]
struct Here {
    /// The traits of what is in trays, and of products in use.
    traits: BTreeSet<Trait>,
    /// The products in trays.
    products: BTreeSet<Uuid>,
}

impl Here {
    async fn read(tx: &mut RoomTx) -> Result<Self> {
        let products = products::products(tx).await?;
        let standing = mixes::standing(tx).await?;
        let mut in_trays = BTreeSet::new();
        let mut traits = BTreeSet::new();
        for mix in standing.iter().filter(|mix| mix.stand.tray_id.is_some()) {
            match mix.product_id {
                Some(product) => drop(in_trays.insert(product)),
                None => drop(traits.insert(UNKNOWN)),
            }
        }
        let is_here = |each: &&Product| !each.is_retired || in_trays.contains(&each.id);
        traits.extend(products.iter().filter(is_here).flat_map(traits_of));
        Ok(Self {
            traits,
            products: in_trays,
        })
    }

    fn asks_for(&self, topic: &Topic) -> bool {
        match &topic.required {
            Required::Always => true,
            Required::ByTrait(traits) => traits.iter().any(|each| self.traits.contains(each)),
            Required::ByProduct(ids) => ids.iter().any(|each| self.products.contains(each)),
            Required::Offered => false,
        }
    }
}

/// The topics in use that whoever comes in now must know, by title; in a room without
/// topics, nothing else is asked for.
///
/// # Errors
/// The database's.
pub async fn must_know(tx: &mut RoomTx) -> Result<Vec<Topic>> {
    let topics = topics::topics(tx).await?;
    if topics.iter().all(|topic| topic.is_retired) {
        return Ok(Vec::new());
    }
    let here = Here::read(tx).await?;
    let asked = topics.into_iter();
    Ok(asked
        .filter(|topic| !topic.is_retired && here.asks_for(topic))
        .collect())
}

/// A topic that somebody lacks, and why.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Lack {
    /// Which.
    pub topic_id: Uuid,
    /// Its title.
    pub title: String,
    /// What their records say of it.
    pub standing: Standing,
}

/// What somebody lacks of what they must know to come in today.
///
/// # Errors
/// The database's.
pub async fn lacks(tx: &mut RoomTx, person: Uuid, today: &str) -> Result<Vec<Lack>> {
    let wanted = must_know(tx).await?;
    if wanted.is_empty() {
        return Ok(Vec::new());
    }
    let held = store::held(tx, Some(person)).await?;
    Ok(lacking(&wanted, &held, today))
}

/// What everybody who may enter lacks, by person.
///
/// # Errors
/// The database's.
pub async fn lacks_of_all(tx: &mut RoomTx, today: &str) -> Result<BTreeMap<Uuid, Vec<Lack>>> {
    let wanted = must_know(tx).await?;
    let mut held: BTreeMap<Uuid, Vec<Held>> = BTreeMap::new();
    for each in store::held(tx, None).await? {
        held.entry(each.person_id).or_default().push(each);
    }
    let members = active(tx).await?.into_iter();
    Ok(members
        .map(|member| {
            let held = held.remove(&member.person).unwrap_or_default();
            (member.person, lacking(&wanted, &held, today))
        })
        .collect())
}

fn lacking(wanted: &[Topic], held: &[Held], today: &str) -> Vec<Lack> {
    let lack = |topic: &Topic| {
        let standing = Standing::of(topic, held, today);
        (!standing.holds()).then(|| Lack {
            topic_id: topic.id,
            title: topic.title.clone(),
            standing,
        })
    };
    wanted.iter().filter_map(lack).collect()
}

/// Lets somebody in who lacks nothing.
///
/// # Errors
/// [`Problem::NotInducted`], with what is missing and who can give it.
pub async fn check(tx: &mut RoomTx, person: Uuid, today: &str) -> Result<()> {
    let lacks = lacks(tx, person, today).await?;
    if lacks.is_empty() {
        return Ok(());
    }
    Err(Error::Refused(Problem::NotInducted {
        missing: lacks.into_iter().map(|lack| lack.title).collect(),
        stewards: stewards(tx).await?,
    }))
}

/// Who can induct, by name.
///
/// # Errors
/// The database's.
pub async fn stewards(tx: &mut RoomTx) -> Result<Vec<String>> {
    let members = active(tx).await?.into_iter();
    let stewards = members.filter(|member| member.role == Role::Steward);
    Ok(stewards.map(|member| member.name).collect())
}

/// Everyone who may enter the room, by number.
pub(super) async fn active(tx: &mut RoomTx) -> Result<Vec<Member>> {
    let mut all = members::everyone(tx).await?;
    all.retain(Member::is_active);
    Ok(all)
}
