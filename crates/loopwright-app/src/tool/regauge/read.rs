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

/// Without these there is no shaping.
const SHAPING: [Name; 3] = [Name::From, Name::To, Name::ShapingRows];

/// What is missing of a shaping that is begun.
pub fn missing_of_shaping(fields: &Fields) -> Vec<Name> {
    let is_begun = SHAPING.iter().any(|name| fields.is_typed(*name));
    let missing = SHAPING.into_iter().filter(|name| is_begun && !fields.is_typed(*name));
    missing.collect()
}

/// Whether something else is asked, which is answered while the shaping is still being typed.
fn asks_more(fields: &Fields) -> bool {
    [Name::Counts, Name::Rows, Name::Length]
        .iter()
        .any(|name| fields.is_typed(*name))
}

/// The shaping. Where nothing else is asked and it is not typed whole, the rest is missing.
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
    if !asks_more(reader.fields()) {
        for name in missing_of_shaping(reader.fields()) {
            reader.wrong(name, Kind::Missing);
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tool::State;
    use crate::tool::regauge::Regauge;
    use crate::tool::tests::fields_of;

    /// While a shaping is being typed the counts keep their answer; alone it says of each field what is missing.
    #[test]
    fn shaping_that_is_half_typed_does_not_hide_the_stitches() {
        let of = |link| fields_of::<Regauge>(&State::new("", link));
        let begun = of("pattern=20&own=22&counts=180&from=60&shaping_rows=56");
        let question = read(&begun).unwrap();
        assert_eq!((question.counts, question.shaping), (vec![180], None));
        assert_eq!(missing_of_shaping(&begun), [Name::To]);
        let whole = of("pattern=20&own=22&counts=180&from=60&to=42&shaping_rows=56");
        assert!(read(&whole).unwrap().shaping.is_some() && missing_of_shaping(&whole).is_empty());
        assert!(missing_of_shaping(&of("pattern=20&own=22&counts=180")).is_empty());
        let alone = read(&of("pattern=20&own=22&from=60")).unwrap_err();
        let missing = [Name::To, Name::ShapingRows].map(|name| Problem::new(name, Kind::Missing));
        assert!(missing.iter().all(|problem| alone.contains(problem)), "{alone:?}");
    }
}
