//! From the fields as typed to the question.

use crate::form::{Fields, Reader};
use loopwright::bounds::Bounds;
use loopwright::problem::{Kind, Problem};
use loopwright::sizing::{
    Ask, Garment, GarmentKind, Gauges, Listed, Measured, Name, PerMille, Question, Room, Size, Wanted, Wrap,
    read_listed, with_stitches,
};
use loopwright::tables::fit::Fit;
use loopwright::units::count;
use loopwright::units::parse::Unreadable;

/// Per cent more than the body, or less.
const PERCENT: Bounds<u32> = Bounds::new(0, 100);

/// Thousandths in one per cent.
const PER_MILLE: i32 = 10;

pub fn read(fields: &Fields) -> Result<Question, Vec<Problem>> {
    let mut reader = Reader::new(fields);
    let bust = reader.length(Name::Bust);
    let listed = listed(&mut reader);
    let sizes = sizes(&mut reader, listed);
    let kind = reader.choice(Name::Garment);
    let question = Question {
        listed,
        garment: garment(&mut reader, kind),
        high_bust: match kind {
            GarmentKind::Sweater => reader.length_if_any(Name::HighBust),
            GarmentKind::Wrap => None,
        },
        ask: match listed {
            Some(Listed::Garment) => ask(&mut reader, kind),
            Some(Listed::Body) | None => Ask::Fit(Fit::Standard),
        },
        cloth: reader.choice(Name::Cloth),
        pattern: gauges(&mut reader, Name::PatternStitches, Name::PatternRows),
        own: gauges(&mut reader, Name::OwnStitches, Name::OwnRows),
        ..Question::about(bust, sizes)
    };
    reader.done(question)
}

/// What the list measures: it is asked, and as long as it is not said there is no question.
fn listed(reader: &mut Reader) -> Option<Listed> {
    let listed = reader.choice::<Measured>(Name::Listed).listed();
    if listed.is_none() {
        reader.wrong(Name::Listed, Kind::Unreadable(Unreadable::Empty));
    }
    listed
}

/// The list, with the stitches of each size where they are typed.
fn sizes(reader: &mut Reader, listed: Option<Listed>) -> Vec<Size> {
    let (_, unit) = reader.fields().list_unit(Name::Sizes.into());
    // Which of two lists she means is asked below; until she says it, either will do.
    let read = read_listed(&reader.text(Name::Sizes), unit, listed.or(Some(Listed::Body)));
    let sizes = reader.listed(Name::Sizes, read, Vec::new());
    if sizes.is_empty() {
        return sizes;
    }
    let read = with_stitches(sizes, &reader.text(Name::Stitches));
    reader.listed(Name::Stitches, read, Vec::new())
}

fn garment(reader: &mut Reader, kind: GarmentKind) -> Garment {
    match kind {
        GarmentKind::Sweater => Garment::Sweater,
        GarmentKind::Wrap => Garment::Wrap(Wrap {
            round: reader.length_if_any(Name::Round),
            upper_arm: reader.length_if_any(Name::UpperArm),
            neck: reader.length_if_any(Name::Neck),
            head: reader.length_if_any(Name::Head),
        }),
    }
}

/// How it should sit, which is only asked where garments are listed.
fn ask(reader: &mut Reader, kind: GarmentKind) -> Ask {
    match kind {
        GarmentKind::Sweater => match reader.choice(Name::Fit) {
            Wanted::VeryClose => Ask::Fit(Fit::VeryClose),
            Wanted::Close => Ask::Fit(Fit::Close),
            Wanted::Standard => Ask::Fit(Fit::Standard),
            Wanted::Loose => Ask::Fit(Fit::Loose),
            Wanted::Oversized => Ask::Fit(Fit::Oversized),
            Wanted::Ease => Ask::Ease(reader.length(Name::Ease)),
            Wanted::Percent => Ask::Percent(percent(reader)),
        },
        GarmentKind::Wrap => match reader.choice(Name::Fit) {
            Room::Free => Ask::Fit(Fit::Standard),
            Room::Ease => Ask::Ease(reader.length(Name::Ease)),
        },
    }
}

fn percent(reader: &mut Reader) -> PerMille {
    let (sign, read) = read_percent(&reader.text(Name::Percent));
    let percent = reader.value(Name::Percent, read, PERCENT.least);
    PerMille(sign * PER_MILLE * i32::try_from(percent).unwrap_or(0))
}

/// `5`, `5 %`, `-10%`: which way, and how many per cent.
fn read_percent(text: &str) -> (i32, Result<u32, Unreadable>) {
    let text = text.trim().trim_end_matches('%');
    let less = text.strip_prefix(['-', '−', '–']);
    let sign = if less.is_some() { -1 } else { 1 };
    let read = count::read(less.unwrap_or(text), PERCENT);
    (sign, read.map(|read| read.value))
}

/// Stitches and rows; rows alone are no gauge for a girth.
fn gauges(reader: &mut Reader, stitches: Name, rows: Name) -> Option<Gauges> {
    let (across, up) = (reader.gauge_if_any(stitches), reader.gauge_if_any(rows));
    if across.is_none() && up.is_some() {
        reader.wrong(stitches, Kind::Missing);
    }
    Some(Gauges {
        stitches: across?,
        rows: up,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn per_cent_are_read_with_their_sign_and_without() {
        for (text, wanted) in [
            ("5", 5),
            ("5%", 5),
            ("+5 %", 5),
            ("-10%", -10),
            ("−10 %", -10),
            (" -5 ", -5),
            ("0", 0),
        ] {
            let (sign, read) = read_percent(text);
            assert_eq!(read.map(|read| sign * read as i32), Ok(wanted), "{text}");
        }
        for text in ["", "-", "%", "--5", "101", "five"] {
            assert!(read_percent(text).1.is_err(), "{text}");
        }
    }
}
