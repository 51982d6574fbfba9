//! The bench a new room starts with: one line, whose trays the steward measures.

use super::LineSet;
use crate::error::Result;
use crate::logbook::Book;

/// Writes it into a new room's book.
///
/// # Errors
/// The database's.
pub async fn write(book: &mut Book<'_>) -> Result<()> {
    let line = LineSet {
        id: book.new_id(),
        name: "First line".to_owned(),
        position: 1,
        space_id: None,
        is_retired: false,
    };
    book.append(&line).await?;
    Ok(())
}
