//! Round the chest or bust: what sizes are said to fit, and where the tape goes.
//!
//! Body measures, not garments. The sizes of the yarn makers' trade body (Craft Yarn Council, "Standard Body
//! Measurements/Sizing") have real gaps: a bust of 31 in lies between XS and S. Those of the European standard EN 13402-3
//! have none: one size begins where the one before ends. The trade body prints its centimetres rounded; both columns
//! are kept as printed.
//!
//! ```
//! use loopwright::tables::body::WOMEN;
//! use loopwright::units::Length;
//! let xs = &WOMEN[0];
//! assert_eq!((xs.label, xs.inches.1), ("XS", Length::from_inches(30)));
//! ```

use super::Certainty;
use crate::units::Length;

/// One size of the trade body: the body it is for, least and most, in both columns as printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Row {
    /// The size as it is called; for children the age in years, for babies in months.
    pub label: &'static str,
    /// From and to, the column in inches.
    pub inches: (Length, Length),
    /// From and to, the column in centimetres.
    pub cm: (Length, Length),
    /// How sure we are of the inches.
    pub certainty: Certainty,
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
    pub certainty: Certainty,
}

/// Round the bust, women. The inches of S to 2X were read as a designer quotes them as standard (2012), and the larger
/// number of every size as a pattern quotes them that follows the council; the rest, and all centimetres, are from
/// memory.
pub const WOMEN: [Row; 9] = [
    row("XS", (56, 60), (710, 760), Certainty::FromMemory),
    row("S", (64, 68), (810, 860), Certainty::Seen),
    row("M", (72, 76), (915, 965), Certainty::Seen),
    row("L", (80, 84), (1015, 1065), Certainty::Seen),
    row("1X", (88, 92), (1115, 1170), Certainty::Seen),
    row("2X", (96, 100), (1220, 1270), Certainty::Seen),
    row("3X", (104, 108), (1320, 1370), Certainty::FromMemory),
    row("4X", (112, 116), (1420, 1470), Certainty::FromMemory),
    row("5X", (120, 124), (1520, 1580), Certainty::FromMemory),
];

/// Round the chest, men.
pub const MEN: [Row; 8] = [
    row("S", (68, 72), (860, 915), Certainty::FromMemory),
    row("M", (76, 80), (965, 1015), Certainty::FromMemory),
    row("L", (84, 88), (1065, 1115), Certainty::FromMemory),
    row("XL", (92, 96), (1165, 1220), Certainty::FromMemory),
    row("2X", (100, 104), (1270, 1320), Certainty::FromMemory),
    row("3X", (108, 112), (1370, 1420), Certainty::FromMemory),
    row("4X", (116, 120), (1470, 1520), Certainty::FromMemory),
    row("5X", (124, 128), (1580, 1630), Certainty::FromMemory),
];

/// Round the chest, children, by age in years.
pub const CHILDREN: [Row; 8] = [
    row("2", (42, 42), (530, 530), Certainty::FromMemory),
    row("4", (46, 46), (585, 585), Certainty::FromMemory),
    row("6", (50, 50), (635, 635), Certainty::FromMemory),
    row("8", (53, 53), (670, 670), Certainty::FromMemory),
    row("10", (56, 56), (710, 710), Certainty::FromMemory),
    row("12", (60, 60), (760, 760), Certainty::FromMemory),
    row("14", (63, 63), (800, 800), Certainty::FromMemory),
    row("16", (65, 65), (825, 825), Certainty::FromMemory),
];

/// Round the chest, babies, by age in months.
pub const BABIES: [Row; 5] = [
    row("3", (32, 32), (405, 405), Certainty::FromMemory),
    row("6", (34, 34), (430, 430), Certainty::FromMemory),
    row("12", (36, 36), (455, 455), Certainty::FromMemory),
    row("18", (38, 38), (480, 480), Certainty::FromMemory),
    row("24", (40, 40), (505, 505), Certainty::FromMemory),
];

/// EN 13402-3, letter codes by bust girth, women. The standard was not read. The edges from 74 to 131 agree with the
/// bust steps of the standard (2005) as the manual of an anthropometry package quotes them.
pub const EN_WOMEN: [Code; 8] = [
    code("XXS", 66, 74),
    code("XS", 74, 82),
    code("S", 82, 90),
    code("M", 90, 98),
    code("L", 98, 107),
    code("XL", 107, 119),
    code("XXL", 119, 131),
    code("3XL", 131, 143),
];

/// EN 13402-3, letter codes by chest girth, men. From memory.
pub const EN_MEN: [Code; 8] = [
    code("XXS", 70, 78),
    code("XS", 78, 86),
    code("S", 86, 94),
    code("M", 94, 102),
    code("L", 102, 110),
    code("XL", 110, 118),
    code("XXL", 118, 129),
    code("3XL", 129, 141),
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

/// Where the tape goes, in the order to do it, and how sure we are. EN 13402-1:2001 as two summaries give it; the last
/// is common practice (the trade body advises it too).
pub const TAPE: [(Tape, Certainty); 8] = [
    (Tape::Upright, Certainty::Seen),
    (Tape::UnderArms, Certainty::Seen),
    (Tape::FullestPart, Certainty::Seen),
    (Tape::ShoulderBlades, Certainty::Seen),
    (Tape::Level, Certainty::Seen),
    (Tape::Moderate, Certainty::Seen),
    (Tape::OverBra, Certainty::Seen),
    (Tape::ByAnother, Certainty::Seen),
];

/// From half inches and millimetres.
const fn row(label: &'static str, half_inches: (i64, i64), mm: (i64, i64), certainty: Certainty) -> Row {
    Row {
        label,
        inches: (half(half_inches.0), half(half_inches.1)),
        cm: (Length::from_mm(mm.0), Length::from_mm(mm.1)),
        certainty,
    }
}

const fn half(inches: i64) -> Length {
    Length::from_sixty_fourths(inches * 32)
}

const fn code(label: &'static str, from: i64, below: i64) -> Code {
    Code {
        label,
        from: Length::from_mm(from * 10),
        below: Length::from_mm(below * 10),
        certainty: Certainty::FromMemory,
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
