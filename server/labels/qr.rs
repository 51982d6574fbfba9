//! A QR code (ISO/IEC 18004) as a drawing of ours.

use askama::Template;
use askama::filters::HtmlSafe;
use qrcode::types::QrError;
use qrcode::{Color, EcLevel};

/// The light margin a reader needs, in modules. Source: ISO/IEC 18004, from memory.
const QUIET: usize = 4;

/// A code, drawn dark on light in every display.
#[derive(Debug, Clone, PartialEq, Eq, Template)]
#[template(path = "labels/qr.html")]
pub struct QrCode {
    /// The side with its margin, in modules.
    pub side: usize,
    /// The dark modules, run by run.
    pub path: String,
}

impl HtmlSafe for QrCode {}

impl QrCode {
    /// The code of a text; a quarter of it may be spoilt by splashes.
    ///
    /// # Errors
    /// A text longer than any code holds.
    pub fn of(text: &str) -> Result<Self, QrError> {
        let code = qrcode::QrCode::with_error_correction_level(text, EcLevel::Q)?;
        let width = code.width();
        let colours = code.to_colors();
        let mut path = String::new();
        for (row, modules) in colours.chunks(width).enumerate() {
            let mut column = 0;
            for run in modules.chunk_by(|one, other| one == other) {
                if run.first() == Some(&Color::Dark) {
                    let (x, y, long) = (column + QUIET, row + QUIET, run.len());
                    path.push_str(&format!("M{x} {y}h{long}v1h-{long}z"));
                }
                column += run.len();
            }
        }
        Ok(Self {
            side: width + 2 * QUIET,
            path,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The dark modules of a drawn code, read back from its path.
    fn dark(code: &QrCode) -> Vec<(usize, usize)> {
        let runs = code.path.split('M').filter(|run| !run.is_empty());
        let runs = runs.map(|run| {
            let (x, rest) = run.split_once(' ').unwrap();
            let (y, rest) = rest.split_once('h').unwrap();
            let (long, _) = rest.split_once('v').unwrap();
            let number = |text: &str| text.parse::<usize>().unwrap();
            (number(x), number(y), number(long))
        });
        runs.flat_map(|(x, y, long)| (x..x + long).map(move |x| (x, y)))
            .collect()
    }

    /// Three corners hold a square of 7 modules, dark ring, light ring, dark 3×3; nothing
    /// lies in the margin. Source: ISO/IEC 18004, from memory.
    #[test]
    fn three_corners_hold_their_squares() {
        let code = QrCode::of("https://darkroom.example/rooms/cellar/trays/1").unwrap();
        let modules = code.side - 2 * QUIET;
        assert_eq!((modules - 17) % 4, 0, "a width of some version");
        let dark = dark(&code);
        let inside = QUIET..code.side - QUIET;
        assert!(
            dark.iter()
                .all(|(x, y)| inside.contains(x) && inside.contains(y))
        );
        let far = modules - 7;
        for (left, top) in [(0, 0), (far, 0), (0, far)] {
            for (x, y) in (0..7).flat_map(|x| (0..7).map(move |y| (x, y))) {
                let ring = x.min(6 - x).min(y.min(6 - y));
                let is_dark = dark.contains(&(QUIET + left + x, QUIET + top + y));
                assert_eq!(is_dark, ring != 1, "{left} {top}: {x} {y}");
            }
        }
    }

    #[test]
    fn other_texts_are_other_codes() {
        let one = QrCode::of("https://darkroom.example/1").unwrap();
        assert_ne!(one, QrCode::of("https://darkroom.example/2").unwrap());
        assert!(QrCode::of(&"a".repeat(4_000)).is_err());
    }
}
