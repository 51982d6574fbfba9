//! Scans of signed papers: the record on day one is the paper, and the book holds the
//! hash of its picture. The file itself lies beside the entry and can be erased.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store as records;
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::beside::erase_beside;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::Induct;

mod entries;
pub(super) mod pages;
pub(super) mod store;
/// Its pages, as templates want them.
pub mod views;

pub use entries::{InductionScanRemoved, InductionScanned};
pub use store::Scan;

/// A scan has so many bytes at most: 5 MB.
pub const MOST_BYTES: usize = 5_000_000;

/// What a scan is, told by its first bytes and never by its name.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub enum Media {
    /// A PDF (ISO 32000).
    #[serde(rename = "application/pdf")]
    Pdf,
    /// A JPEG picture (ITU-T T.81).
    #[serde(rename = "image/jpeg")]
    Jpeg,
    /// A PNG picture (ISO/IEC 15948).
    #[serde(rename = "image/png")]
    Png,
}

impl Media {
    /// Every sort.
    pub const ALL: [Self; 3] = [Self::Pdf, Self::Jpeg, Self::Png];

    /// Tells a file by its first bytes: the header of a PDF, a JPEG's start of image and
    /// the marker after it, a PNG's signature.
    #[must_use]
    pub fn of(bytes: &[u8]) -> Option<Self> {
        Self::ALL
            .into_iter()
            .find(|media| bytes.starts_with(media.signature()))
    }

    const fn signature(self) -> &'static [u8] {
        match self {
            Self::Pdf => b"%PDF-",
            Self::Jpeg => &[0xff, 0xd8, 0xff],
            Self::Png => b"\x89PNG\r\n\x1a\n",
        }
    }

    /// Its media type (RFC 6838), as the database and an answer's header have it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Pdf => "application/pdf",
            Self::Jpeg => "image/jpeg",
            Self::Png => "image/png",
        }
    }

    /// Reads what [`Media::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|media| media.as_str() == text)
    }

    /// How its file's name ends.
    #[must_use]
    pub const fn ending(self) -> &'static str {
        match self {
            Self::Pdf => "pdf",
            Self::Jpeg => "jpg",
            Self::Png => "png",
        }
    }
}

/// A scan to add.
#[derive(Clone)]
pub struct NewScan {
    /// The record it belongs to.
    pub induction_id: Uuid,
    /// Other records that stand on the same paper.
    pub also: Vec<Uuid>,
    /// The file.
    pub file: Vec<u8>,
}

impl std::fmt::Debug for NewScan {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "NewScan of {}", self.induction_id)
    }
}

/// Adds a scan to records: a copy for each, so that each can be erased alone.
///
/// # Errors
/// No file, one of another sort or one that is too large; a record that is none.
pub async fn add(app: &App, permit: &Permit<Induct>, key: Key, new: NewScan) -> Result<Done> {
    let media = media(&new.file).map_err(|problem| Error::field("scan", problem))?;
    let of: BTreeSet<Uuid> = [new.induction_id].into_iter().chain(new.also).collect();
    let asked = ("scan", of.clone(), new.file.len());
    permit
        .write(app, key, &asked, move |book| {
            Box::pin(async move {
                for id in of {
                    write_scan(book, id, media, &new.file).await?;
                }
                Ok(())
            })
        })
        .await
}

fn media(file: &[u8]) -> Result<Media, Problem> {
    if file.is_empty() {
        return Err(Problem::NoFile);
    }
    if file.len() > MOST_BYTES {
        return Err(Problem::FileTooLarge);
    }
    Media::of(file).ok_or(Problem::NotAScan)
}

async fn write_scan(book: &mut Book<'_>, id: Uuid, media: Media, file: &[u8]) -> Result<()> {
    let record = records::induction(book.tx(), id).await?;
    let record = record.ok_or_else(|| Error::field("also", Problem::NotAChoice))?;
    let aside = book.lay_file_aside(file.to_vec())?;
    let scanned = InductionScanned {
        scan_id: book.new_id(),
        induction_id: id,
        person_id: record.person_id,
        media,
        bytes: i64::try_from(file.len()).unwrap_or(i64::MAX),
        beside_sha256: aside.sha256(),
    };
    let seq = book.append(&scanned).await?;
    aside.lay(book.tx(), seq).await
}

/// Erases a scan: the book keeps that there was one.
///
/// # Errors
/// None of that id; one that was erased before.
pub async fn remove(app: &App, permit: &Permit<Induct>, key: Key, id: Uuid) -> Result<Done> {
    permit
        .write(app, key, &("remove", id), move |book| {
            Box::pin(async move {
                let scan = store::scan(book.tx(), id).await?.ok_or(Error::NotFound)?;
                if scan.is_removed {
                    return Err(Error::Refused(Problem::AlreadyErased));
                }
                let removed = InductionScanRemoved {
                    scan_id: id,
                    induction_id: scan.induction_id,
                    person_id: scan.person_id,
                    erases_beside_seq: scan.seq,
                };
                let by = book.append(&removed).await?;
                erase_beside(book.tx(), scan.seq, by).await
            })
        })
        .await
}

#[cfg(test)]
mod tests {
    use super::Media;

    /// Source for the signatures: ISO 32000-1 7.5.2, ITU-T T.81 B.1.1.3, PNG (third
    /// edition) 5.2. All three from memory.
    #[test]
    fn a_file_is_told_by_its_first_bytes() {
        assert_eq!(Media::of(b"%PDF-1.7\n"), Some(Media::Pdf));
        assert_eq!(Media::of(&[0xff, 0xd8, 0xff, 0xe0, 0]), Some(Media::Jpeg));
        let png = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0];
        assert_eq!(Media::of(&png), Some(Media::Png));
        for other in [&b"<svg>"[..], b"PK\x03\x04", b" %PDF-", &[0xff, 0xd8], b""] {
            assert_eq!(Media::of(other), None);
        }
        for media in Media::ALL {
            assert_eq!(Media::parse(media.as_str()), Some(media));
        }
    }
}
