//! The words in the drawing of gauge and below it: only of what is drawn.

use super::super::intl::fill_pattern_with;
use super::super::units::Lengths;
use super::misses;
use loopwright::gauge::{Answer, Question};

/// The words of the drawing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drawn {
    /// In the piece as it would be.
    pub would_be: String,
    /// Below the piece that is wanted.
    pub wanted: String,
}

/// The measures of both pieces: widths, and lengths where rows were compared. None where the one would be the other, so
/// that there is nothing to see.
pub fn picture(question: &Question, answer: &Answer, lengths: Lengths) -> Option<Drawn> {
    answer.stitches.against?;
    let (width, would_be) = (question.width, answer.stitches.would_be);
    let rows = answer.compared_rows();
    let is_off = misses(width, would_be, lengths)
        || rows.is_some_and(|rows| misses(question.length, rows.would_be, lengths))
        || answer.stitches.uneven;
    let [would_be, width] = [would_be, width].map(|length| lengths.write(length));
    is_off.then(|| match rows {
        Some(rows) => {
            let [high, length] = [rows.would_be, question.length].map(|length| lengths.write(length));
            Drawn {
                would_be: fill_pattern_with("@ by @", &[], &[&would_be, &high]),
                wanted: fill_pattern_with("wanted: @ by @", &[], &[&width, &length]),
            }
        }
        None => Drawn {
            would_be: fill_pattern_with("@ wide", &[], &[&would_be]),
            wanted: fill_pattern_with("wanted: @ wide", &[], &[&width]),
        },
    })
}

/// Below the drawing, of which so many bands are seen.
pub const fn drawing(bands: usize) -> &'static str {
    match bands {
        0 => "Dotted: the piece that is wanted. Solid: the piece as it would be.",
        1 => "Dotted: the piece that is wanted. Solid: the piece as it would be. The band: how far its edge is known.",
        _ => {
            "Dotted: the piece that is wanted. Solid: the piece as it would be. The bands: how far its edges are known."
        }
    }
}
