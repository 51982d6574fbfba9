//! Tables as files for spreadsheets.

use axum::response::Response;

use crate::error::{Error, Result};
use crate::web::attached::attached;

/// A spreadsheet takes a cell that begins so for a formula and runs it.
#[must_use]
pub fn harmless(cell: &str) -> String {
    if cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '\u{2212}']) {
        format!("'{cell}")
    } else {
        cell.to_owned()
    }
}

/// A table to be taken away under this name.
///
/// # Errors
/// A fault: rows of another width than the columns.
pub fn download<const WIDTH: usize>(
    name: &str,
    columns: [&str; WIDTH],
    rows: impl IntoIterator<Item = [String; WIDTH]>,
) -> Result<Response> {
    let mut table = csv::Writer::from_writer(Vec::new());
    table.write_record(columns).map_err(fault)?;
    for row in rows {
        let row = row.map(|cell| harmless(&cell));
        table.write_record(row).map_err(fault)?;
    }
    let bytes = table
        .into_inner()
        .map_err(|cause| fault(cause.into_error()))?;
    Ok(attached("text/csv; charset=utf-8", name, bytes))
}

fn fault(cause: impl std::error::Error + Send + Sync + 'static) -> Error {
    Error::Internal(cause.into())
}

#[cfg(test)]
mod tests {
    use super::harmless;

    #[test]
    fn a_cell_never_begins_like_a_formula() {
        for cell in ["=1+1", "+1", "-1", "@sum", "\t=1", "\r=1", "\u{2212}1"] {
            assert_eq!(harmless(cell), format!("'{cell}"));
        }
        assert_eq!(harmless("6 sheets = half a box"), "6 sheets = half a box");
    }
}
