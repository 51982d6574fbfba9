//! What happened to a tray or a bottle, as its page tells it.

use time::OffsetDateTime;
use uuid::Uuid;

use super::views::TrayEvent;
use crate::app::App;
use crate::book::filter::{Filter, Reader};
use crate::book::reading;
use crate::error::Result;
use crate::identity::Permit;
use crate::rights::LookAtBoard;
use crate::rooms::Settings;
use crate::web::messages::entries::{self, Telling};

/// What happened to the thing of this noun and id, newest first, as far as the
/// book shows it; and the query that leads to older events, where there are any.
///
/// # Errors
/// That the database is away.
pub async fn history(
    app: &App,
    permit: &Permit<LookAtBoard>,
    (noun, id): (&str, Uuid),
    before: Option<i64>,
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<(Vec<TrayEvent>, Option<String>)> {
    let reader = Reader::new(permit.person().id, permit.role());
    let filter = Filter {
        noun: Some(noun.to_owned()),
        id: Some(id),
        ..Filter::default()
    };
    let page = reading::page_for(app, permit.scope(), reader, filter, before).await?;
    let zone = settings.time_zone()?;
    let telling = Telling {
        names: &page.names,
        numbers: settings.numbers(),
    };
    let reversed = |seq: i64| page.reversals.iter().any(|(of, _)| *of == seq);
    let told = page.lines.iter().filter_map(|line| {
        let shown = line.shown.as_ref()?;
        Some(TrayEvent {
            seq: line.seq,
            at: zone.words(shown.happened_at, now),
            sentence: entries::sentence(&shown.kind, &shown.payload, telling),
            is_undone: reversed(line.seq),
        })
    });
    let older = page.older.map(|before| format!("?before={before}"));
    Ok((told.collect(), older))
}
