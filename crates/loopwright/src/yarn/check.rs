//! Whether a question can be answered: every quantity against its bounds, and whether the swatch can speak for the
//! fabric that is knitted.

use super::{
    Ask, BALL_LENGTH, BALL_MASS, BALLS, Ball, EXTRA, GAUGE, PINNED, Piece, Question, RESERVE, ROWS, Rest, SECTIONS,
    STATED, STITCHES, SWATCH_MASS, Section, Swatch, TOTAL,
};
use crate::bounds::Bounds;
use crate::fabric::Fabric;
use crate::problem::{Kind, Problem};
use crate::units::{Amount, Gauge, Length, Mass};

/// The problems found so far.
#[derive(Debug, Default)]
pub(super) struct Found(pub(super) Vec<Problem>);

impl Found {
    #[inline(never)]
    pub(super) fn count(&mut self, field: &'static str, value: u32, bounds: Bounds<u32>) {
        self.0.extend(Problem::of_count(field, value, bounds));
    }

    #[inline(never)]
    pub(super) fn length(&mut self, field: &'static str, value: Length, bounds: Bounds<Length>) {
        self.0.extend(Problem::of_length(field, value, bounds));
    }

    fn mass(&mut self, field: &'static str, value: Mass, bounds: Bounds<Mass>) {
        let (least, most) = (Amount::Mass(bounds.least), Amount::Mass(bounds.most));
        if value < bounds.least {
            self.0.push(Problem {
                field: field.into(),
                kind: Kind::TooSmall { least },
            });
        } else if value > bounds.most {
            self.0.push(Problem {
                field: field.into(),
                kind: Kind::TooLarge { most },
            });
        }
    }

    fn ball(&mut self, ball: Ball) {
        self.length("ball_length", ball.length, BALL_LENGTH);
        self.mass("ball_mass", ball.mass, BALL_MASS);
    }

    /// A gauge against [`GAUGE`], in counts over its own span.
    pub(super) fn gauge(&mut self, field: &'static str, gauge: Gauge) {
        let over_span = |count: u32| Gauge::of(count, Gauge::TEN_CM).count_over(gauge.span());
        let (least, most) = (over_span(GAUGE.least), over_span(GAUGE.most));
        if gauge.count() < least || gauge.count() > most {
            // Outside them by a part of one, a whole number is too.
            let value = if gauge.count() < least { 0 } else { u32::MAX };
            self.count(field, value, Bounds::new(least.ceil() as u32, most.floor() as u32));
        }
    }
}

/// A list's length as a count.
pub(super) fn counted(length: usize) -> u32 {
    u32::try_from(length).unwrap_or(u32::MAX)
}

pub(super) fn check(question: &Question) -> Vec<Problem> {
    let mut found = Found::default();
    found.ball(question.ball);
    found.count("reserve", question.reserve, RESERVE);
    match &question.ask {
        Ask::Piece(piece) => check_piece(&mut found, piece),
        Ask::Balls { balls, ball } => {
            found.count("balls", *balls, BALLS);
            found.ball(*ball);
        }
        Ask::Length(length) => found.length("length", *length, STATED),
    }
    found.0
}

fn check_piece(found: &mut Found, piece: &Piece) {
    found.count("sections", counted(piece.sections.len()), SECTIONS);
    let mut halves = 0_u64;
    for section in &piece.sections {
        found.0.append(&mut section.problems());
        halves = halves.saturating_add(section.sum().halves);
    }
    match piece.swatch {
        Swatch::Gauge {
            stitches, rows, rest, ..
        } => {
            found.gauge("swatch_stitches", stitches);
            found.gauge("swatch_rows", rows);
            if let Rest::PinnedOut { percent } = rest {
                found.count("pinned", percent, PINNED);
            }
        }
        Swatch::Weighed {
            stitches, rows, mass, ..
        } => {
            found.count("swatch_stitches", stitches, STITCHES);
            found.count("swatch_rows", rows, ROWS);
            found.mass("swatch_mass", mass, SWATCH_MASS);
        }
    }
    if !speaks_for(&piece.swatch, &piece.sections) {
        found.0.push(Problem::new("swatch", Kind::NeedsSwatch));
    }
    found.length("seams", piece.extras.seams, EXTRA);
    found.length("other", piece.extras.other, EXTRA);
    if found.0.is_empty() && halves > 2 * u64::from(TOTAL.most) {
        found.count("sections", u32::MAX, TOTAL);
    }
}

/// Whether a loop length for every section follows from the swatch. From a stockinette gauge it does, and from anything
/// on the scale; from a rib, cable or colour-work gauge never; and a garter or lace gauge is too weak to put a second
/// factor on.
fn speaks_for(swatch: &Swatch, sections: &[Section]) -> bool {
    let Swatch::Gauge { fabric, .. } = swatch else {
        return true;
    };
    let plain = |section: &Section| matches!(section.fabric, Fabric::Stockinette | Fabric::Garter | Fabric::Lace);
    match fabric {
        Fabric::Stockinette => true,
        Fabric::Garter | Fabric::Lace => sections.iter().all(plain),
        Fabric::Rib | Fabric::Cable | Fabric::Stranded => false,
    }
}
