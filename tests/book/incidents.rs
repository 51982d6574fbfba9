//! What the book of the tests says of incidents, and what lies beside it.

use uuid::Uuid;
use wetside::error::Result;
use wetside::incidents::{IncidentErased, IncidentFinished, IncidentLookedAt, IncidentReported};
use wetside::logbook::Book;
use wetside::logbook::beside::erase_beside;

use super::helpers::{Library, run};
use super::knife::disarm;

/// Two incidents: one that a steward looked at and dealt with, one that was erased.
pub(super) async fn write(book: &mut Book<'_>, person_id: Uuid) -> Result<()> {
    for number in 1..=2 {
        let text = book.lay_aside(format!("What happened the {number}. time"))?;
        let reported = IncidentReported {
            incident_id: book.new_id(),
            number,
            person_id,
            beside_sha256: text.sha256(),
        };
        let seq = book.append(&reported).await?;
        text.lay(book.tx(), seq).await?;
        let incident_id = reported.incident_id;
        if number == 1 {
            let looked = IncidentLookedAt {
                incident_id,
                person_id,
            };
            book.append(&looked).await?;
            let finished = IncidentFinished {
                incident_id,
                person_id,
            };
            book.append(&finished).await?;
        } else {
            let erased = IncidentErased {
                incident_id,
                person_id,
                erases_beside_seq: seq,
            };
            let by = book.append(&erased).await?;
            erase_beside(book.tx(), seq, by).await?;
        }
    }
    Ok(())
}

#[tokio::test]
async fn what_lies_beside_the_book_is_held_against_it() {
    let library = Library::open().await;
    let mut db = library.db().await;
    disarm(&mut db).await;
    let of = "where seq in (select seq from entry where kind = 'incident_reported')";
    let kept = format!("{of} and words is not null");
    let erased = format!("{of} and words is null");
    let changes = [
        format!("update beside set words = words || '.' {kept}"),
        format!("update beside set salt = set_bit(salt, 0, 1 - get_bit(salt, 0)) {kept}"),
        format!("update beside set words = null, salt = null, erased_seq = 7 {kept}"),
        format!("delete from beside {kept}"),
        // Of the one that was erased: given back, or erased by another entry.
        format!("update beside set words = '-', salt = '\\x00', erased_seq = null {erased}"),
        format!("update beside set erased_seq = 7 {erased}"),
        format!("delete from beside {erased}"),
        format!(
            "insert into beside (room_id, seq, salt, words) select room_id, 1, salt, words
            from beside {kept}"
        ),
    ];
    run(&mut db, "create table beside_kept as select * from beside").await;
    let clean = library.verify().await;
    assert!(clean.is_clean(), "{clean}");
    assert_eq!(clean.erased, 3, "an incident, a guest, a scan");
    for change in changes {
        run(&mut db, &change).await;
        let report = library.verify().await.to_string();
        let says = "what lies beside it is not what it holds the hash of";
        assert_eq!(report.matches(says).count(), 1, "{change}: {report}");
        run(
            &mut db,
            "delete from beside; insert into beside select * from beside_kept",
        )
        .await;
    }
    assert!(library.verify().await.is_clean());
}
