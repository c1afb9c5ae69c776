//! From the fields as typed to the question.

use crate::form::{Fields, Reader, read_multiple};
use loopwright::bounds::Bounds;
use loopwright::cast_on::Knitting;
use loopwright::problem::{Kind, Problem};
use loopwright::regauge::{KnittingKind, Name, Parity, Question, ROWS, STITCHES, Shaping, ShapingSide};
use loopwright::sizing::read_counts;
use loopwright::units::parse::Unreadable;

pub fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
    let mut reader = Reader::new(fields);
    let (pattern, own) = (reader.gauge(Name::Pattern), reader.gauge(Name::Own));
    let (stitches, count_gaps) = counts(&mut reader, Name::Counts, STITCHES);
    let (rows, row_gaps) = counts(&mut reader, Name::Rows, ROWS);
    let question = Question {
        pattern_rows: reader.gauge_if_any(Name::PatternRows),
        own_rows: reader.gauge_if_any(Name::OwnRows),
        count_gaps,
        rows,
        row_gaps,
        length: reader.length_if_any(Name::Length),
        wanted: reader.length_if_any(Name::Wanted),
        shaping: shaping(&mut reader),
        multiple: read_multiple(&mut reader, Name::Multiple, Name::Plus),
        knitting: knitting(&mut reader),
        parity: reader.choice::<Parity>(Name::Parity) == Parity::Kept,
        row_repeat: reader.count(Name::RowRepeat),
        ..Question::about(pattern, own, stitches)
    };
    if asks_nothing(&question) {
        reader.wrong(Name::Counts, Kind::Unreadable(Unreadable::Empty));
    }
    reader.done(question)
}

/// Whether there is nothing yet to be brought to another gauge.
fn asks_nothing(question: &Question) -> bool {
    let asks_rows = !question.rows.is_empty() || question.length.is_some() || question.shaping.is_some();
    question.counts.is_empty() && question.wanted.is_none() && !asks_rows
}

/// A list of counts, and the places of its dashes; none where the field is empty.
fn counts(reader: &mut Reader, name: Name, each: Bounds<u32>) -> (Vec<u32>, Vec<usize>) {
    let read = read_counts(&reader.text(name), each);
    let printed = reader.listed(name, read, Vec::new());
    let places = printed.iter().enumerate();
    let gaps = places.filter(|(_, count)| count.is_none()).map(|(place, _)| place);
    (printed.iter().copied().flatten().collect(), gaps.collect())
}

fn knitting(reader: &mut Reader) -> Knitting {
    match reader.choice(Name::Knitting) {
        KnittingKind::Round => Knitting::Round { extra: false },
        KnittingKind::Extra => Knitting::Round { extra: true },
        KnittingKind::Flat => Knitting::Flat {
            edge: reader.count(Name::Edge),
            seam: 0,
        },
    }
}

/// The shaping, where any of it is typed: the rest is missing then.
fn shaping(reader: &mut Reader) -> Option<Shaping> {
    let from = reader.count_if_any(Name::From);
    let to = reader.count_if_any(Name::To);
    let rows = reader.count_if_any(Name::ShapingRows);
    if let (Some(from), Some(to), Some(rows)) = (from, to, rows) {
        return Some(Shaping {
            from,
            to,
            rows,
            each: reader.count(Name::Each),
            right_side_only: match reader.choice(Name::Sides) {
                ShapingSide::Right => true,
                ShapingSide::Any => false,
            },
        });
    }
    let ends = [(Name::From, from), (Name::To, to), (Name::ShapingRows, rows)];
    if ends.iter().any(|(_, typed)| typed.is_some()) {
        for (name, _) in ends.iter().filter(|(_, typed)| typed.is_none()) {
            reader.wrong(*name, Kind::Missing);
        }
    }
    None
}
