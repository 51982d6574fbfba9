//! Topics, one of them reworded; inductions confirmed, withdrawn and declared.

use uuid::Uuid;
use wetside::error::Result;
use wetside::inductions::scans::Media;
use wetside::inductions::{
    Basis, Covered, Inducted, InductionConfirmed, InductionScanRemoved, InductionScanned,
    InductionWithdrawn, Means,
};
use wetside::logbook::Book;
use wetside::logbook::beside::erase_beside;
use wetside::products;
use wetside::topics::{Required, TopicSet, Trait};

use super::bench::steward;

/// Eleven entries.
pub(super) async fn write(book: &mut Book<'_>, printer: Uuid) -> Result<()> {
    let product = products::products(book.tx()).await?.remove(0).id;
    let by_trait = Required::ByTrait(vec![Trait::Sensitiser, Trait::AcidOrAlkali]);
    let mut covered = Vec::new();
    for required in [by_trait, Required::ByProduct(vec![product])] {
        let topic = topic(book, required);
        book.append(&topic).await?;
        covered.push(Covered {
            topic_id: topic.id,
            version: 1,
            good_until: (covered.is_empty()).then(|| "2028-11-25".to_owned()),
        });
        if covered.len() == 2 {
            let reworded = TopicSet {
                version: 2,
                body: "Other words.".to_owned(),
                ..topic
            };
            book.append(&reworded).await?;
        }
    }
    confirmed(book, printer, &covered).await?;
    withdrawn(book, printer, &covered).await?;
    let steward = steward(book).await?;
    let declared = inducted(book, steward, Basis::SelfDeclared, &covered);
    book.append(&declared).await?;
    Ok(())
}

fn topic(book: &mut Book<'_>, required: Required) -> TopicSet {
    TopicSet {
        id: book.new_id(),
        version: 1,
        counts_from_version: 1,
        title: required.as_str().to_owned(),
        body: "Say it aloud.".to_owned(),
        required,
        good_months: Some(24),
        is_retired: false,
    }
}

fn inducted(book: &mut Book<'_>, person_id: Uuid, basis: Basis, topics: &[Covered]) -> Inducted {
    Inducted {
        induction_id: book.new_id(),
        person_id,
        topics: topics.to_vec(),
        basis,
        given_on: "2026-11-25".to_owned(),
        remark: "In the binder".to_owned(),
        renews_id: None,
    }
}

async fn confirmed(book: &mut Book<'_>, person_id: Uuid, topics: &[Covered]) -> Result<()> {
    let given = inducted(book, person_id, Basis::Given, topics);
    let induction_seq = book.append(&given).await?;
    let confirmed = InductionConfirmed {
        induction_id: given.induction_id,
        induction_seq,
        person_id,
        means: Means::OwnAccount,
    };
    book.append(&confirmed).await?;
    Ok(())
}

async fn withdrawn(book: &mut Book<'_>, person_id: Uuid, topics: &[Covered]) -> Result<()> {
    let paper = inducted(book, person_id, Basis::OnPaper, &topics[..1]);
    let induction_seq = book.append(&paper).await?;
    let withdrawn = InductionWithdrawn {
        induction_id: paper.induction_id,
        induction_seq,
        person_id,
        reason: "Another person's paper".to_owned(),
    };
    book.append(&withdrawn).await?;
    scans(book, &paper).await
}

/// Its paper was scanned twice, and one of the scans was erased.
async fn scans(book: &mut Book<'_>, paper: &Inducted) -> Result<()> {
    let mut first = None;
    for file in ["%PDF-1.4 of somebody else", "%PDF-1.4 of the right one"] {
        let aside = book.lay_file_aside(file.as_bytes().to_vec())?;
        let scanned = InductionScanned {
            scan_id: book.new_id(),
            induction_id: paper.induction_id,
            person_id: paper.person_id,
            media: Media::Pdf,
            bytes: 25,
            beside_sha256: aside.sha256(),
        };
        let seq = book.append(&scanned).await?;
        aside.lay(book.tx(), seq).await?;
        first.get_or_insert((scanned.scan_id, seq));
    }
    let Some((scan_id, erases_beside_seq)) = first else {
        return Ok(());
    };
    let removed = InductionScanRemoved {
        scan_id,
        induction_id: paper.induction_id,
        person_id: paper.person_id,
        erases_beside_seq,
    };
    let by = book.append(&removed).await?;
    erase_beside(book.tx(), erases_beside_seq, by).await
}
