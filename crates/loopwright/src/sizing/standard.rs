//! Lists of bodies that were published for everybody, for a pattern that only names its sizes.
//!
//! They say whom a size is made for, and nothing of how wide a garment is.
//!
//! ```
//! use loopwright::sizing::{Standard, read_sizes};
//! use loopwright::units::LengthUnit;
//!
//! let women = Standard::TradeWomen;
//! assert!(women.written(LengthUnit::Inch).starts_with("XS: 28-30, S: 32-34, M: 36-38"));
//! assert_eq!(read_sizes(&women.written(LengthUnit::Inch), LengthUnit::Inch), Ok(women.sizes(LengthUnit::Inch)));
//! ```

use super::Size;
use crate::tables::body::{BABIES, CHILDREN, Code, EN_MEN, EN_WOMEN, MEN, Row, WOMEN};
use crate::tables::{Certainty, Source};
use crate::units::LengthUnit;
use crate::units::print::{Step, print};

/// A published list of bodies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standard {
    /// Women, by the trade body of the yarn makers.
    TradeWomen,
    /// Men, by the trade body.
    TradeMen,
    /// Children by their years, by the trade body.
    TradeChildren,
    /// Babies by their months, by the trade body.
    TradeBabies,
    /// Women, by EN 13402-3.
    EnWomen,
    /// Men, by EN 13402-3.
    EnMen,
}

/// The table behind a list.
enum Table {
    Trade(&'static [Row]),
    En(&'static [Code]),
}

impl Standard {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 6] = [
        Self::TradeWomen,
        Self::TradeMen,
        Self::TradeChildren,
        Self::TradeBabies,
        Self::EnWomen,
        Self::EnMen,
    ];

    const fn table(self) -> Table {
        match self {
            Self::TradeWomen => Table::Trade(&WOMEN),
            Self::TradeMen => Table::Trade(&MEN),
            Self::TradeChildren => Table::Trade(&CHILDREN),
            Self::TradeBabies => Table::Trade(&BABIES),
            Self::EnWomen => Table::En(&EN_WOMEN),
            Self::EnMen => Table::En(&EN_MEN),
        }
    }

    /// The unit that the list is printed in, for a knitter who measures in `wanted`: the trade body prints inches and
    /// centimetres, the standard centimetres.
    pub const fn unit(self, wanted: LengthUnit) -> LengthUnit {
        match (self.table(), wanted) {
            (Table::Trade(_), LengthUnit::Inch | LengthUnit::Yard) => LengthUnit::Inch,
            (Table::Trade(_), LengthUnit::Mm | LengthUnit::Cm | LengthUnit::M) | (Table::En(_), _) => LengthUnit::Cm,
        }
    }

    /// The sizes, as they are printed for a knitter who measures in `wanted`.
    pub fn sizes(self, wanted: LengthUnit) -> Vec<Size> {
        match self.table() {
            Table::Trade(rows) => rows.iter().map(|row| Size::from_row(row, wanted)).collect(),
            Table::En(codes) => codes.iter().map(Size::from_code).collect(),
        }
    }

    /// The same as a text that [`read_sizes`](super::read_sizes) reads, in [`Self::unit`].
    pub fn written(self, wanted: LengthUnit) -> String {
        let unit = self.unit(wanted);
        let step = match unit {
            LengthUnit::Inch | LengthUnit::Yard => Step::Eighths,
            LengthUnit::Mm | LengthUnit::Cm | LengthUnit::M => Step::Tenth,
        };
        let written = |Size { label, girth, .. }: &Size| {
            let (from, to) = (print(girth.from, unit, step), print(girth.to, unit, step));
            if girth.from == girth.to {
                format!("{label}: {from}")
            } else {
                format!("{label}: {from}-{to}")
            }
        };
        let all: Vec<String> = self.sizes(wanted).iter().map(written).collect();
        all.join(", ")
    }

    /// How sure we are of its numbers: as sure as of the least sure one.
    pub fn certainty(self, wanted: LengthUnit) -> Certainty {
        let sources: Vec<Source> = match (self.table(), self.unit(wanted)) {
            (Table::Trade(rows), LengthUnit::Inch) => {
                let both = |row: &Row| [row.inches_source.0, row.inches_source.1];
                rows.iter().flat_map(both).collect()
            }
            (Table::Trade(rows), _) => rows.iter().map(|row| row.cm_source).collect(),
            (Table::En(codes), _) => codes.iter().map(|code| code.source).collect(),
        };
        Source::least_sure(&sources)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sizing::read_sizes;

    #[test]
    fn every_list_is_read_back_as_it_is_printed() {
        for standard in Standard::ALL {
            for wanted in LengthUnit::ALL {
                let text = standard.written(wanted);
                let read = read_sizes(&text, standard.unit(wanted));
                assert_eq!(read, Ok(standard.sizes(wanted)), "{text}");
            }
        }
    }

    #[test]
    fn no_list_is_surer_than_its_numbers() {
        for standard in Standard::ALL {
            for wanted in [LengthUnit::Cm, LengthUnit::Inch] {
                assert_eq!(standard.certainty(wanted), Certainty::FromMemory, "{standard:?}");
            }
        }
        // Some of the inches are as others quote them, and the list says no more than all of it can.
        assert!(
            WOMEN
                .iter()
                .any(|row| row.inches_source.1.certainty() == Certainty::Quoted)
        );
    }
}
