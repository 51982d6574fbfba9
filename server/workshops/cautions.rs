//! What is read to the group before a workshop begins: of what is in the trays, of the
//! concentrates, and the topics that whoever comes in must know.

use std::collections::BTreeSet;

use data_encoding::HEXLOWER;
use serde::Serialize;
use sha2::{Digest, Sha256};
use uuid::Uuid;

use super::{ProductRead, TopicRead};
use crate::arrivals;
use crate::database::RoomTx;
use crate::error::Result;
use crate::inductions;
use crate::mixes;
use crate::products::{self, Product};
use crate::topics::Topic;
use crate::web::messages::drawing;

/// What is to be read out now.
#[derive(Clone, Debug)]
pub struct Cautions {
    /// Of what stands in the trays, one sentence a product.
    pub in_trays: Vec<String>,
    /// Of the concentrates of products in use that are in no tray.
    pub concentrates: Vec<String>,
    /// The topics, by title.
    pub topics: Vec<Topic>,
    /// Which versions these are, as the entry keeps them.
    pub read: Read,
}

/// Which versions of products and topics were read.
#[derive(Clone, Debug, Default, Serialize)]
pub struct Read {
    /// The products.
    pub products: Vec<ProductRead>,
    /// The topics.
    pub topics: Vec<TopicRead>,
    /// Whether liquid nobody can name stands in a tray.
    pub is_unknown_there: bool,
}

impl Read {
    /// Names exactly this: other versions, another name.
    ///
    /// # Errors
    /// None in practice: these are numbers and ids.
    pub fn digest(&self) -> Result<String> {
        let text = serde_json::to_vec(self)?;
        Ok(HEXLOWER.encode(&Sha256::digest(text)))
    }
}

/// What is to be read out now.
///
/// # Errors
/// The database's.
pub async fn cautions(tx: &mut RoomTx) -> Result<Cautions> {
    let standing = mixes::standing(tx).await?;
    let in_trays = standing.iter().filter(|mix| mix.stand.tray_id.is_some());
    let ids: Vec<Option<Uuid>> = in_trays.map(|mix| mix.product_id).collect();
    let known: BTreeSet<Uuid> = ids.iter().copied().flatten().collect();
    let mut products = products::products(tx).await?;
    products.retain(|product| !product.is_retired || known.contains(&product.id));
    let topics = inductions::must_know(tx).await?;
    let concentrates = products.iter().filter(|each| !known.contains(&each.id));
    Ok(Cautions {
        in_trays: arrivals::cautions_now(tx).await?,
        concentrates: concentrates.map(caution).collect(),
        read: Read {
            products: products.iter().map(product_read).collect(),
            topics: topics.iter().map(topic_read).collect(),
            is_unknown_there: ids.contains(&None),
        },
        topics,
    })
}

fn caution(product: &Product) -> String {
    drawing::caution(&product.name, &product.hazard_codes)
}

fn product_read(product: &Product) -> ProductRead {
    ProductRead {
        product_id: product.id,
        version: product.version,
    }
}

fn topic_read(topic: &Topic) -> TopicRead {
    TopicRead {
        topic_id: topic.id,
        version: topic.version,
    }
}
