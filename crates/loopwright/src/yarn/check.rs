//! Whether a question can be answered: every quantity against its bounds, and whether the swatch can speak for the
//! fabric that is knitted.

use super::{
    Ask, BALL_LENGTH, BALL_MASS, BALLS, Ball, EXTRA, GAUGE, PINNED, Piece, Question, RESERVE, ROWS, Rest, SCALE,
    SECTIONS, STATED, STITCHES, STRAND, STRANDS, SWATCH_MASS, Section, Swatch, TOTAL,
};
use crate::bounds::Bounds;
use crate::fabric::Fabric;
use crate::problem::{Kind, Problem};
use crate::units::parse::Unreadable;
use crate::units::{Gauge, Length, Mass, Measure};

/// A share of a hundred.
pub(super) const PERCENT: Bounds<u32> = Bounds::new(0, 100);

/// The problems found so far.
#[derive(Debug, Default)]
pub(super) struct Found(Vec<Problem>);

impl Found {
    pub(super) fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    fn add(&mut self, field: &'static str, kind: Kind) {
        self.0.push(Problem { field, kind });
    }

    pub(super) fn count(&mut self, field: &'static str, value: u32, bounds: Bounds<u32>) {
        if value < bounds.least {
            self.add(field, Kind::TooFew { least: bounds.least });
        } else if value > bounds.most {
            self.add(field, Kind::TooMany { most: bounds.most });
        }
    }

    fn measure<T: Measure>(&mut self, field: &'static str, value: T, bounds: Bounds<T>) {
        let (least, most) = (bounds.least.amount(), bounds.most.amount());
        if value < bounds.least {
            self.add(field, Kind::Unreadable(Unreadable::TooSmall { least }));
        } else if value > bounds.most {
            self.add(field, Kind::Unreadable(Unreadable::TooLarge { most }));
        }
    }

    pub(super) fn length(&mut self, field: &'static str, value: Length, bounds: Bounds<Length>) {
        self.measure(field, value, bounds);
    }

    fn mass(&mut self, field: &'static str, value: Mass, bounds: Bounds<Mass>) {
        self.measure(field, value, bounds);
    }

    /// A gauge against [`GAUGE`], in counts over its own span.
    pub(super) fn gauge(&mut self, field: &'static str, gauge: Gauge) {
        let over_span = |count: u32| Gauge::of(count, Gauge::TEN_CM).count_over(gauge.span());
        let (least, most) = (over_span(GAUGE.least), over_span(GAUGE.most));
        if gauge.count() < least {
            self.add(
                field,
                Kind::TooFew {
                    least: least.ceil() as u32,
                },
            );
        } else if gauge.count() > most {
            self.add(
                field,
                Kind::TooMany {
                    most: most.floor() as u32,
                },
            );
        }
    }
}

impl From<Found> for Vec<Problem> {
    fn from(found: Found) -> Self {
        found.0
    }
}

/// A list's length as a count.
pub(super) fn counted(length: usize) -> u32 {
    u32::try_from(length).unwrap_or(u32::MAX)
}

pub(super) fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut found = Found::default();
    check_ball(&mut found, question.ball);
    found.count("reserve", question.reserve, RESERVE);
    match &question.ask {
        Ask::Piece(piece) => check_piece(&mut found, piece),
        Ask::Balls { balls, ball } => {
            found.count("balls", *balls, BALLS);
            check_ball(&mut found, *ball);
        }
        Ask::Length(length) => found.length("length", *length, STATED),
    }
    if found.is_empty() { Ok(()) } else { Err(found.into()) }
}

fn check_ball(found: &mut Found, ball: Ball) {
    found.length("ball_length", ball.length, BALL_LENGTH);
    found.mass("ball_mass", ball.mass, BALL_MASS);
}

fn check_piece(found: &mut Found, piece: &Piece) {
    found.count("sections", counted(piece.sections.len()), SECTIONS);
    for section in &piece.sections {
        found.0.extend(section.problems());
    }
    check_swatch(found, &piece.swatch);
    if !speaks_for(&piece.swatch, &piece.sections) {
        found.add("swatch", Kind::NeedsSwatch);
    }
    let extras = &piece.extras;
    found.length("seams", extras.seams, EXTRA);
    found.count("strands", extras.strands, STRANDS);
    found.length("strand", extras.strand, STRAND);
    found.length("other", extras.other, EXTRA);
    let total = piece
        .sections
        .iter()
        .fold(0, |sum: u64, section| sum.saturating_add(section.sum().halves));
    if found.is_empty() && total > 2 * u64::from(TOTAL.most) {
        found.add("sections", Kind::TooMany { most: TOTAL.most });
    }
}

fn check_swatch(found: &mut Found, swatch: &Swatch) {
    match *swatch {
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
            stitches,
            rows,
            mass,
            scale,
            ..
        } => {
            found.count("swatch_stitches", stitches, STITCHES);
            found.count("swatch_rows", rows, ROWS);
            found.mass("swatch_mass", mass, SWATCH_MASS);
            found.mass("scale", scale, SCALE);
        }
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
        Fabric::Rib | Fabric::Cable | Fabric::Stranded { .. } => false,
    }
}
