//! The words in the drawing of gauge and below it: only of what is drawn.

use super::super::intl::fill_pattern_with;
use super::super::units::Lengths;
use super::misses;
use loopwright::gauge::{Answer, Measured, Question};
use loopwright::units::Length;

/// What there is to see.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// The piece that is wanted, as long as the pattern's gauge is not there.
    Wanted,
    /// One piece, since it turns out as it is wanted.
    Same,
    /// Both pieces, the one apart from the other.
    Apart,
}

/// The words of the drawing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drawn {
    /// What there is to see.
    pub seen: Seen,
    /// In the piece as it would be.
    pub would_be: String,
    /// Below the piece that is wanted.
    pub wanted: String,
}

/// The measures of both pieces: widths, and lengths where rows were compared.
pub fn picture(question: &Question, answer: &Answer, lengths: Lengths) -> Drawn {
    let size = |width, high: Option<Length>| match high {
        Some(high) => fill_pattern_with("@ by @", &[], &[&lengths.write(width), &lengths.write(high)]),
        None => fill_pattern_with("@ wide", &[], &[&lengths.write(width)]),
    };
    let rows = answer.compared_rows();
    let seen = seen(question, answer, lengths);
    let wanted = size(question.width, rows.map(|_| question.length));
    Drawn {
        seen,
        would_be: match seen {
            Seen::Wanted | Seen::Same => String::new(),
            Seen::Apart => size(answer.stitches.would_be, rows.map(|rows| rows.would_be)),
        },
        wanted: match seen {
            Seen::Wanted | Seen::Apart => fill_pattern_with("wanted: @", &[], &[&wanted]),
            Seen::Same => fill_pattern_with("as wanted: @", &[], &[&wanted]),
        },
    }
}

fn seen(question: &Question, answer: &Answer, lengths: Lengths) -> Seen {
    if answer.stitches.against.is_none() {
        return Seen::Wanted;
    }
    let is_longer = |rows: &Measured| misses(question.length, rows.would_be, lengths);
    let is_apart = misses(question.width, answer.stitches.would_be, lengths)
        || answer.compared_rows().is_some_and(is_longer)
        || answer.stitches.uneven;
    if is_apart { Seen::Apart } else { Seen::Same }
}

/// Below the drawing, of which so many bands are seen.
pub const fn drawing(seen: Seen, bands: usize) -> &'static str {
    match (seen, bands) {
        (Seen::Wanted, _) => {
            "The piece that is wanted. Type the pattern’s stitches, and how it would turn out is drawn over it."
        }
        (Seen::Same, _) => "It turns out as it is wanted.",
        (Seen::Apart, 0) => "Dotted: the piece that is wanted. Solid: the piece as it would be.",
        (Seen::Apart, 1) => {
            "Dotted: the piece that is wanted. Solid: the piece as it would be. The band: how far its edge is known."
        }
        (Seen::Apart, _) => {
            "Dotted: the piece that is wanted. Solid: the piece as it would be. The bands: how far its edges are known."
        }
    }
}
