//! Round the chest or bust: what sizes are said to fit, and where the tape goes.
//!
//! Body measures, not garments. The sizes of the yarn makers' trade body (Craft Yarn Council, "Standard Body
//! Measurements/Sizing") have real gaps: a bust of 31 in lies between XS and S. Those of the European standard EN
//! 13402-3 have none: one size begins where the one before ends. The trade body prints its centimetres rounded; both
//! columns are kept as printed.
//!
//! ```
//! use loopwright::tables::body::WOMEN;
//! use loopwright::units::Length;
//! let xs = &WOMEN[0];
//! assert_eq!((xs.label, xs.inches.1), ("XS", Length::from_inches(30)));
//! ```

use super::{Certainty, Source, Taken};
use crate::units::Length;

/// One size of the trade body: the body it is for, least and most, in both columns as printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Row {
    /// The size as it is called; for children the age in years, for babies in months.
    pub label: &'static str,
    /// From and to, the column in inches.
    pub inches: (Length, Length),
    /// How sure we are of each of the two.
    pub inches_source: (Source, Source),
    /// From and to, the column in centimetres.
    pub cm: (Length, Length),
    /// How sure we are of the centimetres.
    pub cm_source: Source,
}

/// One size of EN 13402-3, in centimetres: from (included) and below (not included).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Code {
    /// The letter code.
    pub label: &'static str,
    /// The least girth.
    pub from: Length,
    /// The girth at which the next size begins.
    pub below: Length,
    /// How sure we are of it.
    pub source: Source,
}

/// Round the bust, women. The larger number of every size is as a pattern quotes it that says it follows the council;
/// the smaller ones and all centimetres are from memory. (From S to 2X the smaller ones agree with a designer's
/// "standard sizes", which do not say whose they are.) The document itself was not read.
pub const WOMEN: [Row; 9] = [
    woman("XS", (56, 60), (710, 760)),
    woman("S", (64, 68), (810, 860)),
    woman("M", (72, 76), (915, 965)),
    woman("L", (80, 84), (1015, 1065)),
    woman("1X", (88, 92), (1115, 1170)),
    woman("2X", (96, 100), (1220, 1270)),
    woman("3X", (104, 108), (1320, 1370)),
    woman("4X", (112, 116), (1420, 1470)),
    woman("5X", (120, 124), (1520, 1580)),
];

/// Round the chest, men. From memory.
pub const MEN: [Row; 8] = [
    man("S", (68, 72), (860, 915)),
    man("M", (76, 80), (965, 1015)),
    man("L", (84, 88), (1065, 1115)),
    man("XL", (92, 96), (1165, 1220)),
    man("2X", (100, 104), (1270, 1320)),
    man("3X", (108, 112), (1370, 1420)),
    man("4X", (116, 120), (1470, 1520)),
    man("5X", (124, 128), (1580, 1630)),
];

/// Round the chest, children, by age in years. From memory.
pub const CHILDREN: [Row; 8] = [
    child("2", (42, 42), (530, 530)),
    child("4", (46, 46), (585, 585)),
    child("6", (50, 50), (635, 635)),
    child("8", (53, 53), (670, 670)),
    child("10", (56, 56), (710, 710)),
    child("12", (60, 60), (760, 760)),
    child("14", (63, 63), (800, 800)),
    child("16", (65, 65), (825, 825)),
];

/// Round the chest, babies, by age in months. From memory.
pub const BABIES: [Row; 5] = [
    baby("3", (32, 32), (405, 405)),
    baby("6", (34, 34), (430, 430)),
    baby("12", (36, 36), (455, 455)),
    baby("18", (38, 38), (480, 480)),
    baby("24", (40, 40), (505, 505)),
];

/// EN 13402-3, letter codes by bust girth, women. From memory; the standard was not read. The edges from 74 to 131
/// agree with its bust steps (2005) as the manual of an anthropometry package quotes them.
pub const EN_WOMEN: [Code; 8] = [
    woman_by_letter("XXS", 66, 74),
    woman_by_letter("XS", 74, 82),
    woman_by_letter("S", 82, 90),
    woman_by_letter("M", 90, 98),
    woman_by_letter("L", 98, 107),
    woman_by_letter("XL", 107, 119),
    woman_by_letter("XXL", 119, 131),
    woman_by_letter("3XL", 131, 143),
];

/// EN 13402-3, letter codes by chest girth, men. From memory.
pub const EN_MEN: [Code; 8] = [
    man_by_letter("XXS", 70, 78),
    man_by_letter("XS", 78, 86),
    man_by_letter("S", 86, 94),
    man_by_letter("M", 94, 102),
    man_by_letter("L", 102, 110),
    man_by_letter("XL", 110, 118),
    man_by_letter("XXL", 118, 129),
    man_by_letter("3XL", 129, 141),
];

/// One thing to mind when the tape goes round.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Tape {
    /// Stand upright and breathe normally.
    Upright,
    /// Under the arms.
    UnderArms,
    /// Across the fullest part of the bust.
    FullestPart,
    /// Over the shoulder blades at the back, where it is a chest and not a bust.
    ShoulderBlades,
    /// Level all the way round.
    Level,
    /// Snug, not tight: moderate tension.
    Moderate,
    /// Over the bra that will be worn, one that does not press.
    OverBra,
    /// In inches or centimetres, a tape round a body is good to about a centimetre. Let somebody else hold it.
    ByAnother,
}

/// One thing to mind, and where it comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Step {
    /// What to mind.
    pub tape: Tape,
    /// Where it is from; none where it is common practice without a source.
    pub source: Option<Source>,
}

impl Step {
    /// How sure we are of it.
    pub const fn certainty(self) -> Certainty {
        match self.source {
            Some(source) => source.certainty(),
            None => Certainty::Practice,
        }
    }
}

/// Where the tape goes, in the order to do it. EN 13402-1:2001 as two summaries quote it, and the standard itself was
/// not read; that somebody else holds the tape is common practice, no source.
pub const TAPE: [Step; 8] = [
    quoted(Tape::Upright),
    quoted(Tape::UnderArms),
    quoted(Tape::FullestPart),
    quoted(Tape::ShoulderBlades),
    quoted(Tape::Level),
    quoted(Tape::Moderate),
    quoted(Tape::OverBra),
    Step {
        tape: Tape::ByAnother,
        source: None,
    },
];

const fn quoted(tape: Tape) -> Step {
    Step {
        tape,
        source: Some(Taken::Tape.quoted()),
    }
}

const fn woman(label: &'static str, half_inches: (i64, i64), mm: (i64, i64)) -> Row {
    let sources = (Taken::Women.from_memory(), Taken::Women.quoted());
    row(label, half_inches, mm, sources)
}

const fn man(label: &'static str, half_inches: (i64, i64), mm: (i64, i64)) -> Row {
    remembered(label, half_inches, mm, Taken::Men)
}

const fn child(label: &'static str, half_inches: (i64, i64), mm: (i64, i64)) -> Row {
    remembered(label, half_inches, mm, Taken::Children)
}

const fn baby(label: &'static str, half_inches: (i64, i64), mm: (i64, i64)) -> Row {
    remembered(label, half_inches, mm, Taken::Babies)
}

/// Both inches from memory.
const fn remembered(label: &'static str, half_inches: (i64, i64), mm: (i64, i64), taken: Taken) -> Row {
    row(label, half_inches, mm, (taken.from_memory(), taken.from_memory()))
}

/// From half inches and millimetres.
const fn row(label: &'static str, half_inches: (i64, i64), mm: (i64, i64), inches_source: (Source, Source)) -> Row {
    Row {
        label,
        inches: (half(half_inches.0), half(half_inches.1)),
        inches_source,
        cm: (Length::from_mm(mm.0), Length::from_mm(mm.1)),
        cm_source: Taken::SizesInCm.from_memory(),
    }
}

const fn half(inches: i64) -> Length {
    Length::from_sixty_fourths(inches * 32)
}

const fn woman_by_letter(label: &'static str, from: i64, below: i64) -> Code {
    code(label, from, below, Taken::EnWomen.from_memory())
}

const fn man_by_letter(label: &'static str, from: i64, below: i64) -> Code {
    code(label, from, below, Taken::EnMen.from_memory())
}

const fn code(label: &'static str, from: i64, below: i64, source: Source) -> Code {
    Code {
        label,
        from: Length::from_mm(from * 10),
        below: Length::from_mm(below * 10),
        source,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The two columns of a row are the same girth, to the nearest half centimetre and the slips of the print.
    #[test]
    fn the_columns_agree() {
        let tables: [&[Row]; 4] = [&WOMEN, &MEN, &CHILDREN, &BABIES];
        for row in tables.concat() {
            for (inches, cm) in [(row.inches.0, row.cm.0), (row.inches.1, row.cm.1)] {
                let apart = inches.saturating_sub(cm).to_nm().abs();
                assert!(apart <= Length::from_mm(6).to_nm(), "{} is {apart} nm apart", row.label);
            }
        }
    }

    #[test]
    fn the_trade_body_leaves_gaps_and_the_standard_none() {
        for pair in WOMEN.windows(2) {
            assert_eq!(
                pair[1].inches.0.saturating_sub(pair[0].inches.1),
                Length::from_inches(2)
            );
        }
        for pair in EN_WOMEN.windows(2).chain(EN_MEN.windows(2)) {
            assert_eq!(pair[0].below, pair[1].from);
        }
    }
}
