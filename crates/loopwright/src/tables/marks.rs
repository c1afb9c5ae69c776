//! Every mark there is: what is taken from outside, row by row, so that nobody has to search for it.
//!
//! The outside checks and what they say about each source are held to this list.
//!
//! ```
//! use loopwright::tables::{Certainty, Taken};
//! let marks = Taken::LoopConstants.marks();
//! assert!(marks.iter().all(|(_, source)| source.certainty() == Certainty::Quoted));
//! ```

use super::body::{BABIES, CHILDREN, Code, EN_MEN, EN_WOMEN, MEN, Row, TAPE, WOMEN};
use super::fit::BANDS;
use super::needle::{CIRCULARS, JAPANESE, JAPANESE_SOURCE, NEEDLES, Needle, Number};
use super::yarn_weight::CLASSES;
use super::{Source, Taken};
use crate::fabric::{AREAL_MASS, LEAST_DIAMETER, LOOP_LENGTH, MUNDEN, State, TEX};
use crate::spacing::MOST_EVEN;
use crate::units::{LengthUnit, MassUnit};
use crate::written::{LIST, TECHNIQUES};

/// A row by its name, and where it is from.
type Mark = (String, Source);

impl Taken {
    /// Every row of it with its mark, in the order of the table; one row without a name where it is a single value.
    pub fn marks(self) -> Vec<(String, Source)> {
        match self {
            Self::Conversions => conversions(),
            Self::Women => in_inches(&WOMEN),
            Self::Men => in_inches(&MEN),
            Self::Children => in_inches(&CHILDREN),
            Self::Babies => in_inches(&BABIES),
            Self::SizesInCm => [&WOMEN[..], &MEN, &CHILDREN, &BABIES]
                .concat()
                .iter()
                .map(|row| (row.label.to_owned(), row.cm_source))
                .collect(),
            Self::EnWomen => codes(&EN_WOMEN),
            Self::EnMen => codes(&EN_MEN),
            Self::Tape => TAPE
                .iter()
                .filter_map(|step| Some((format!("{:?}", step.tape), step.source?)))
                .collect(),
            Self::FitsInInches => BANDS.map(|band| (format!("{:?}", band.fit), band.inches)).into(),
            Self::FitsBySign => BANDS.map(|band| (format!("{:?}", band.fit), band.signs)).into(),
            Self::YarnClasses => CLASSES.map(|class| (class.number.to_string(), class.source)).into(),
            Self::Wraps => CLASSES
                .map(|class| (class.number.to_string(), class.wraps_source))
                .into(),
            Self::UsNumbers => numbers(|needle| (needle.us, needle.us_source)),
            Self::UkNumbers => numbers(|needle| (needle.uk, needle.uk_source)),
            Self::JapaneseNumbers => (JAPANESE.least..=JAPANESE.most)
                .map(|number| (number.to_string(), JAPANESE_SOURCE))
                .collect(),
            Self::Circulars => CIRCULARS.map(|row| (row.inches.to_string(), row.source)).into(),
            Self::LoopLength => one(LOOP_LENGTH),
            Self::LoopConstants => MUNDEN
                .map(|constants| (state(constants.state).to_owned(), constants.source))
                .into(),
            Self::ArealMass => one(AREAL_MASS),
            Self::Tex => one(TEX),
            Self::YarnDiameter => one(LEAST_DIAMETER),
            Self::MostEven => one(MOST_EVEN),
            Self::Abbreviations => TECHNIQUES
                .iter()
                .filter(|technique| technique.certainty == LIST.certainty())
                .map(|technique| (technique.written.to_owned(), LIST))
                .collect(),
        }
    }
}

fn one(source: Source) -> Vec<Mark> {
    vec![(String::new(), source)]
}

/// The units that are not their own definition.
fn conversions() -> Vec<Mark> {
    let lengths = LengthUnit::ALL.map(|unit| (unit.symbol(), unit.source()));
    let masses = MassUnit::ALL.map(|unit| (unit.symbol(), unit.source()));
    let units = lengths.into_iter().chain(masses);
    units
        .filter_map(|(symbol, source)| Some((symbol.to_owned(), source?)))
        .collect()
}

/// The two numbers of every size.
fn in_inches(rows: &[Row]) -> Vec<Mark> {
    let both = |row: &Row| {
        let (from, to) = row.inches_source;
        [(format!("{} from", row.label), from), (format!("{} to", row.label), to)]
    };
    rows.iter().flat_map(both).collect()
}

fn codes(codes: &[Code]) -> Vec<Mark> {
    codes.iter().map(|code| (code.label.to_owned(), code.source)).collect()
}

/// The needles that have a number of a system.
fn numbers(of: fn(&Needle) -> (Option<Number>, Source)) -> Vec<Mark> {
    let numbered = NEEDLES.iter().map(of);
    numbered
        .filter_map(|(number, source)| Some((number?.to_string(), source)))
        .collect()
}

const fn state(state: State) -> &'static str {
    match state {
        State::DryRelaxed => "dry",
        State::WetRelaxed => "wet",
        State::FullyRelaxed => "fully",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::choice::Key;

    /// A table that took its sources from the name of another one would be listed under that.
    #[test]
    fn every_row_is_listed_under_its_own_name() {
        for taken in Taken::ALL {
            let marks = taken.marks();
            assert!(!marks.is_empty(), "{taken:?}");
            for (row, source) in marks {
                assert_eq!(source.taken(), *taken, "{row}");
                assert!(source.certainty().is_from_outside(), "{taken:?} {row}");
            }
        }
    }
}
