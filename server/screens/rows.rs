//! How lines stand on the wall: in rows of trays that are read from three metres.

use crate::board::views::LineOnBoard;

/// So many trays stand in a row.
const A_ROW: usize = 4;

/// So many rows the wall has room for; more are longer than the wall.
const ROWS: usize = 3;

/// A line, or the part of it that stands in one row.
#[derive(Debug, Clone)]
pub struct WallLine {
    /// The line, with the trays of this part alone.
    pub line: LineOnBoard,
    /// How many of its trays stand in the rows above.
    pub before: usize,
    /// How many trays it has.
    pub all: usize,
}

impl WallLine {
    fn whole(line: LineOnBoard) -> Self {
        Self {
            before: 0,
            all: line.trays.len(),
            line,
        }
    }

    /// How much of a row it takes: a line without trays says so.
    fn width(&self) -> usize {
        self.line.trays.len().max(1)
    }

    /// Parts it behind so many trays; nothing where no more are left.
    fn part(self, trays: usize) -> (Self, Option<Self>) {
        if self.line.trays.len() <= trays {
            return (self, None);
        }
        let (mut head, mut rest) = (self.clone(), self);
        rest.line.trays.drain(..trays);
        rest.before += trays;
        head.line.trays.truncate(trays);
        (head, Some(rest))
    }

    /// Whether other trays of the line stand in other rows.
    #[must_use]
    pub fn is_part(&self) -> bool {
        self.line.trays.len() < self.all
    }

    /// The number of its last tray on the line.
    #[must_use]
    pub fn last(&self) -> usize {
        self.before + self.line.trays.len()
    }
}

/// Lines in their order, in rows. A line is parted where it is longer than a row; a
/// shorter one only where whole lines would take more rows than there is room for.
#[must_use]
pub fn in_rows(lines: &[LineOnBoard]) -> Vec<Vec<WallLine>> {
    let whole = rows(lines, false);
    if whole.len() <= ROWS {
        return whole;
    }
    let parted = rows(lines, true);
    if parted.len() <= ROWS { parted } else { whole }
}

fn rows(lines: &[LineOnBoard], parts_any: bool) -> Vec<Vec<WallLine>> {
    let mut rows: Vec<Vec<WallLine>> = Vec::new();
    let mut free = 0;
    for line in lines {
        let mut next = Some(WallLine::whole(line.clone()));
        while let Some(rest) = next {
            let fits = free > 0 && (parts_any || rest.width() <= free);
            let (part, others) = rest.part(if fits { free } else { A_ROW });
            next = others;
            match rows.last_mut().filter(|_| fits) {
                Some(row) => {
                    free -= part.width();
                    row.push(part);
                }
                None => {
                    free = A_ROW - part.width();
                    rows.push(vec![part]);
                }
            }
        }
    }
    rows
}
