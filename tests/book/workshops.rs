//! What the book of the tests says of workshops: one called off, one that was held and
//! taken over, whose first guests' names are erased, and one that nobody ended.

use uuid::Uuid;
use wetside::clock::micros;
use wetside::error::Result;
use wetside::logbook::Book;
use wetside::logbook::beside::erase_beside;
use wetside::workshops::{
    GuestNamesErased, GuestsSignedIn, GuestsSignedOut, ProductRead, TopicRead, WorkshopCalledOff,
    WorkshopEnded, WorkshopNotEnded, WorkshopOpened, WorkshopSet, WorkshopTakenOver,
};
use wetside::{products, topics};

use super::bench::steward;

/// So many entries [`write`] writes.
pub(super) const ENTRIES: i64 = 14;

pub(super) async fn write(book: &mut Book<'_>, other: Uuid) -> Result<()> {
    let leader = steward(book).await?;
    let off = planned(book, leader).await?;
    let reason = "Nobody could come".to_owned();
    let workshop_id = off;
    book.append(&WorkshopCalledOff {
        workshop_id,
        reason,
    })
    .await?;
    held(book, leader, other).await?;
    let left_open = opened(book, leader).await?;
    let (guest_ids, _) = signed_in(book, left_open, 1).await?;
    let not_ended = WorkshopNotEnded {
        workshop_id: left_open,
        guest_ids,
        local_date: "2026-11-25".to_owned(),
    };
    book.append(&not_ended).await?;
    Ok(())
}

async fn held(book: &mut Book<'_>, leader: Uuid, other: Uuid) -> Result<()> {
    let workshop_id = opened(book, leader).await?;
    let (mut first, seq) = signed_in(book, workshop_id, 2).await?;
    let (second, _) = signed_in(book, workshop_id, 1).await?;
    let left = first.split_off(1);
    let out = GuestsSignedOut {
        workshop_id,
        guest_ids: left,
    };
    book.append(&out).await?;
    let taken = WorkshopTakenOver {
        workshop_id,
        leader_id: other,
        from_person_id: leader,
        over_at_us: over_at_us(book) + 1_000_000,
    };
    book.append(&taken).await?;
    let guest_ids = first.into_iter().chain(second).collect();
    let ended = WorkshopEnded {
        workshop_id,
        guest_ids,
    };
    book.append(&ended).await?;
    let erased = GuestNamesErased {
        workshop_id,
        erases_beside_seq: seq,
    };
    let by = book.append(&erased).await?;
    erase_beside(book.tx(), seq, by).await
}

fn over_at_us(book: &Book<'_>) -> i64 {
    // Long after every night of the tests.
    micros(book.now()) + 1_000 * 86_400_000_000
}

async fn planned(book: &mut Book<'_>, leader_id: Uuid) -> Result<Uuid> {
    let begins_at_us = micros(book.now());
    let set = WorkshopSet {
        workshop_id: book.new_id(),
        title: "First prints".to_owned(),
        leader_id,
        space_id: None,
        local_date: "2026-11-25".to_owned(),
        begins_at_us,
        ends_at_us: begins_at_us + 10_800_000_000,
        most_guests: 5,
        line_ids: Vec::new(),
        paid_by_id: Some(leader_id),
    };
    book.append(&set).await?;
    Ok(set.workshop_id)
}

async fn opened(book: &mut Book<'_>, leader_id: Uuid) -> Result<Uuid> {
    let workshop_id = planned(book, leader_id).await?;
    let products = products::products(book.tx()).await?;
    let topics = topics::topics(book.tx()).await?;
    let opened = WorkshopOpened {
        workshop_id,
        leader_id,
        over_at_us: over_at_us(book),
        products: vec![ProductRead {
            product_id: products[0].id,
            version: products[0].version,
        }],
        topics: vec![TopicRead {
            topic_id: topics[0].id,
            version: topics[0].version,
        }],
        is_unknown_there: false,
    };
    book.append(&opened).await?;
    Ok(workshop_id)
}

async fn signed_in(
    book: &mut Book<'_>,
    workshop_id: Uuid,
    count: usize,
) -> Result<(Vec<Uuid>, i64)> {
    let text = book.lay_aside(serde_json::to_string(&vec!["Ada Moss"; count])?)?;
    let signed_in = GuestsSignedIn {
        workshop_id,
        guest_ids: (0..count).map(|_| book.new_id()).collect(),
        beside_sha256: text.sha256(),
    };
    let seq = book.append(&signed_in).await?;
    text.lay(book.tx(), seq).await?;
    Ok((signed_in.guest_ids, seq))
}
