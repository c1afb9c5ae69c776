//! From the fields as typed to the question.

use super::sections::{are_several, sections};
use crate::form::Reader;
use loopwright::fabric::Fabric;
use loopwright::problem::Kind;
use loopwright::units::Gauge;
use loopwright::yarn::{
    Ask, Ball, Beginning, Counted, Ending, Extras, Name, Piece, Rest, RestKind, STITCHES, Section, SectionName, Shape,
    ShapeKind, Source, StitchSum, Swatch, SwatchKind, TAPERED, TOTAL,
};

/// What is asked.
pub fn ask(reader: &mut Reader) -> Ask {
    match reader.choice(Name::From) {
        Source::Piece => Ask::Piece(piece(reader)),
        Source::Balls => Ask::Balls {
            balls: reader.count(Name::Balls),
            ball: ball(reader, Name::PatternLength, Name::PatternMass),
        },
        Source::Length => Ask::Length(reader.length(Name::Length)),
    }
}

/// Which yarn each section is knitted with; none where there is but one section.
pub fn yarns(reader: &mut Reader) -> Vec<u32> {
    let sections = sections(reader.fields());
    let is_asked = are_several(reader.fields()) && reader.choice::<Source>(Name::From) == Source::Piece;
    let asked = sections.into_iter().filter(|_| is_asked);
    asked
        .map(|index| reader.member(index, |reader| reader.count(SectionName::Yarn)))
        .collect()
}

/// A ball by its band.
pub fn ball(reader: &mut Reader, length: Name, mass: Name) -> Ball {
    Ball {
        length: reader.length(length),
        mass: reader.mass_if_any(mass),
    }
}

fn piece(reader: &mut Reader) -> Piece {
    let sections = sections(reader.fields());
    Piece {
        sections: sections.into_iter().map(|index| section(reader, index)).collect(),
        swatch: swatch(reader),
        extras: Extras {
            swatch: is_counted(reader, Name::CountSwatch),
            joins: is_counted(reader, Name::CountJoins),
            seams: reader.length(Name::Seams),
            other: reader.length(Name::Other),
        },
    }
}

fn is_counted(reader: &Reader, name: Name) -> bool {
    match reader.choice(name) {
        Counted::In => true,
        Counted::Out => false,
    }
}

fn swatch(reader: &mut Reader) -> Swatch {
    let fabric = reader.choice(Name::SwatchFabric);
    match reader.choice(Name::By) {
        SwatchKind::Weighed => Swatch::Weighed {
            fabric,
            stitches: reader.count(Name::WeighedStitches),
            rows: reader.count(Name::WeighedRows),
            mass: reader.mass(Name::SwatchMass),
        },
        SwatchKind::Measured => {
            let rest = rest(reader);
            let [stitches, rows] = Name::gauge_in(fabric).map(|name| reader.gauge(name));
            Swatch::Gauge {
                fabric,
                stitches,
                rows,
                rest,
            }
        }
    }
}

fn rest(reader: &mut Reader) -> Rest {
    match reader.choice(Name::Rest) {
        RestKind::Washed => Rest::Washed,
        RestKind::Unwashed => Rest::Unwashed,
        RestKind::PinnedOut => Rest::PinnedOut {
            percent: reader.count(Name::Pinned),
        },
    }
}

/// One section. What is wrong with its figures together is noted here, where it is known which of those that are stored
/// it is: the maths counts only those that are in the piece.
fn section(reader: &mut Reader, index: usize) -> Section {
    let unread = reader.problems().len();
    let section = reader.member(index, |reader| {
        let fabric = reader.choice(SectionName::Fabric);
        Section {
            name: reader.text(SectionName::Name).trim().into(),
            shape: shape(reader, fabric),
            fabric,
            times: reader.count(SectionName::Times),
            cast_on: match reader.choice(SectionName::CastOn) {
                Beginning::CastOn => true,
                Beginning::Live => false,
            },
            bind_off: reader.choice::<Ending>(SectionName::BindOff).bind_off(),
        }
    });
    if reader.problems().len() == unread {
        reader.found(section.problems(index));
    }
    section
}

fn shape(reader: &mut Reader, fabric: Fabric) -> Shape {
    match reader.choice(SectionName::Shape) {
        ShapeKind::Straight => {
            let stitches = reader.count_within(SectionName::Stitches, STITCHES);
            Shape::rectangle(stitches, reader.count(SectionName::Rows))
        }
        ShapeKind::Tapered => Shape::Trapezoid {
            stitches: reader.count_within(SectionName::Stitches, TAPERED),
            to: reader.count(SectionName::To),
            rows: reader.count(SectionName::Rows),
        },
        ShapeKind::Measured => measured(reader, fabric),
        ShapeKind::Summed => {
            let stitches = reader.count_within(SectionName::Stitches, TOTAL);
            Shape::Stitches(StitchSum::of(u64::from(stitches)))
        }
    }
}

/// A section by the tape: its gauge is that of a swatch in its own fabric, and of no other.
fn measured(reader: &mut Reader, fabric: Fabric) -> Shape {
    let has_its_gauge = match reader.choice(Name::By) {
        SwatchKind::Weighed => false,
        SwatchKind::Measured => reader.choice::<Fabric>(Name::SwatchFabric) == fabric,
    };
    if !has_its_gauge {
        reader.wrong(Name::Measured, Kind::Missing);
    }
    // What cannot be read is said at the swatch.
    let [stitches, rows] = Name::gauge_in(fabric).map(|name| {
        let read = reader.fields().gauge_read(name.into());
        read.unwrap_or(Gauge::of(20, Gauge::TEN_CM))
    });
    Shape::Measured {
        width: reader.length(SectionName::Width),
        length: reader.length(SectionName::Length),
        stitches,
        rows,
    }
}
