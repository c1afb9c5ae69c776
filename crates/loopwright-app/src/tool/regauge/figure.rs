//! What is laid over what: the pattern's piece and one's own, as far as either is asked about.

use crate::drawing::regauge::{Along, Measures, Overlay, pieces};
use crate::words::regauge::{Mark, Sentences};
use loopwright::regauge::{Converted, Piece, Shaped};
use loopwright::units::{Gauge, Length};
use yew::prelude::*;

/// As many as there is a stroke for along an edge.
const TEN: f64 = 10.0;

/// The counts: of the size to follow, or else the first one; with the first rows where there are any.
pub fn counts(sentences: &Sentences) -> Html {
    let (answer, question) = (sentences.answer, sentences.question);
    let rows = answer.rows.first();
    let stitches = sentences.followed().or(answer.stitches.first());
    match (stitches, rows) {
        (Some(found), rows) => {
            let rows = rows.filter(|_| answer.follow.is_none());
            let overlay = match question.wanted.filter(|_| answer.follow.is_some()) {
                Some(wanted) => following(found, wanted),
                None => converted(found, rows),
            };
            let overlay = Overlay {
                tens: tens(question.pattern, question.own).filter(|_| answer.follow.is_none()),
                ..overlay
            };
            pieces(overlay, &sentences.drawn_stitches(found, rows))
        }
        (None, Some(found)) => {
            let gauges = question.pattern_rows.zip(question.own_rows);
            let overlay = Overlay {
                tens: gauges.and_then(|(theirs, ours)| tens(theirs, ours)),
                ..upright(found)
            };
            pieces(overlay, &sentences.drawn_rows(found))
        }
        (None, None) => Html::default(),
    }
}

/// The shaped piece.
pub fn shaping(sentences: &Sentences, shaped: &Shaped) -> Html {
    let measures = |piece: &Piece| Measures {
        lower: Some(piece.lower),
        upper: Some(piece.upper),
        height: Some(piece.height),
    };
    let overlay = Overlay {
        dotted: measures(&shaped.was),
        dotted_is: Mark::Pattern,
        solid: measures(&shaped.becomes),
        kept: None,
        tens: None,
        along: Along::Neither,
    };
    pieces(overlay, &sentences.drawn_shaping(shaped))
}

/// How far ten reach at either gauge.
fn tens(theirs: Gauge, ours: Gauge) -> Option<[Length; 2]> {
    Some([theirs.width_of(TEN)?, ours.width_of(TEN)?])
}

/// A straight piece of this width.
const fn wide(width: Length, height: Option<Length>) -> Measures {
    Measures {
        lower: Some(width),
        upper: Some(width),
        height,
    }
}

/// The pattern's piece, and one's own in its place.
fn converted(found: &Converted, rows: Option<&Converted>) -> Overlay {
    Overlay {
        dotted: wide(found.was, rows.map(|rows| rows.was)),
        dotted_is: Mark::Pattern,
        solid: wide(found.becomes, rows.map(|rows| rows.becomes)),
        kept: Some(found.unchanged),
        tens: None,
        along: Along::Stitches,
    }
}

/// The width that is wanted, and the size that is followed.
fn following(found: &Converted, wanted: Length) -> Overlay {
    Overlay {
        dotted: wide(wanted, None),
        dotted_is: Mark::Wanted,
        solid: wide(found.unchanged, None),
        kept: None,
        tens: None,
        along: Along::Stitches,
    }
}

/// Rows alone: how wide the piece is nobody has asked.
fn upright(found: &Converted) -> Overlay {
    let high = |height: Length| Measures {
        height: Some(height),
        ..Measures::default()
    };
    Overlay {
        dotted: high(found.was),
        dotted_is: Mark::Pattern,
        solid: high(found.becomes),
        kept: Some(found.unchanged),
        tens: None,
        along: Along::Rows,
    }
}
