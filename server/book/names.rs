//! Names for the ids that entries hold.

use std::collections::{BTreeSet, HashMap};

use serde_json::Value;
use uuid::Uuid;

use super::store::{self, Line};
use crate::database::RoomTx;
use crate::error::Result;

/// What people call the things and persons of some entries now.
#[derive(Clone, Debug, Default)]
pub struct Names(HashMap<Uuid, String>);

impl Names {
    /// Looks up whatever the lines that are shown name.
    pub(super) async fn of(tx: &mut RoomTx, lines: &[Line]) -> Result<Self> {
        let mut ids = BTreeSet::new();
        for shown in lines.iter().filter_map(|line| line.shown.as_ref()) {
            ids.extend(shown.actor);
            // What is no JSON names nothing; the page shows it as it is.
            if let Ok(value) = serde_json::from_slice(&shown.payload) {
                collect(&value, &mut ids);
            }
        }
        let ids: Vec<Uuid> = ids.into_iter().collect();
        let named = store::names(tx, &ids).await?;
        Ok(Self(named.into_iter().collect()))
    }

    /// Names that are known already.
    #[must_use]
    pub fn known(named: impl IntoIterator<Item = (Uuid, String)>) -> Self {
        Self(named.into_iter().collect())
    }

    /// The name of an id, where it has one.
    #[must_use]
    pub fn find(&self, id: Uuid) -> Option<&str> {
        self.0.get(&id).map(String::as_str)
    }
}

fn collect(value: &Value, ids: &mut BTreeSet<Uuid>) {
    match value {
        Value::String(text) => ids.extend(Uuid::parse_str(text)),
        Value::Array(all) => all.iter().for_each(|one| collect(one, ids)),
        Value::Object(fields) => fields.values().for_each(|one| collect(one, ids)),
        _ => {}
    }
}
