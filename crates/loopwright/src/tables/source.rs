//! A source, which is never without its mark: what is taken from outside, and how sure we are of it.
//!
//! [`Taken`] names everything here that somebody else published or said, and there is no way from it to a [`Source`]
//! but [`Taken::read`], [`Taken::quoted`] and [`Taken::from_memory`]: whoever writes a row down has to say which it
//! was. A row that is taken from outside holds a `Source`, and [`Taken::marks`] lists them all.
//!
//! ```
//! use loopwright::tables::{Certainty, Source, Taken};
//! use loopwright::tables::yarn_weight::{Weight, class};
//!
//! // Of one row the needle was read where it is printed, and the wraps were not.
//! let fine = class(Weight::Fine);
//! assert_eq!(fine.source, Taken::YarnClasses.read());
//! assert_eq!(fine.wraps_source.certainty(), Certainty::FromMemory);
//! // A list is as sure as its least sure number.
//! assert_eq!(Source::least_sure(&[fine.source, fine.wraps_source]), Certainty::FromMemory);
//! ```

use super::Certainty;

/// Where a value comes from that was taken from outside, and how sure we are of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Source {
    taken: Taken,
    certainty: Certainty,
}

/// What is taken from outside. Each says whose it is; how far that was read is said by the [`Source`] of every row.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Taken {
    /// What an inch, a yard, an ounce and a pound are exactly: NIST, SP 811 appendix B.8 and Handbook 44 appendix C.
    Conversions,
    /// The inches of women's sizes: Craft Yarn Council, *Standard Body Measurements/Sizing*.
    Women,
    /// The inches of men's sizes, there.
    Men,
    /// The inches of children's sizes, there.
    Children,
    /// The inches of babies' sizes, there.
    Babies,
    /// The centimetres of all these sizes, there.
    SizesInCm,
    /// Letter codes by bust girth: EN 13402-3.
    EnWomen,
    /// Letter codes by chest girth: EN 13402-3.
    EnMen,
    /// Where the tape goes: EN 13402-1:2001.
    Tape,
    /// The five fits by inches of ease: an older edition of the council's *Standard Body Measurements/Sizing*.
    FitsInInches,
    /// The five fits by more or less ease: its edition of August 2021.
    FitsBySign,
    /// Names, stitches and needles of the classes of yarn: Craft Yarn Council, Standard Yarn Weight System, and its
    /// guide "YDKWYDK: A guide to yarn weights".
    YarnClasses,
    /// Wraps in an inch, class by class. No source is named: copies of the council's table have no column for them, and
    /// those who add one add other numbers.
    Wraps,
    /// US numbers of needles: for some, the ends of the council's ranges. No standard fixes them.
    UsNumbers,
    /// Old UK and Canadian numbers of needles. No standard fixes them.
    UkNumbers,
    /// Japanese numbers of needles.
    JapaneseNumbers,
    /// The lengths in which circular needles are sold.
    Circulars,
    /// The loop from stitches in an area, `l = sqrt(k / S)`: Munden, J. Text. Inst. 50 (1959) T448.
    LoopLength,
    /// The `k` of each state of rest: Munden, there, and for the fully relaxed state others after him; as tabulated in
    /// Spencer, *Knitting Technology*, section 22.5.
    LoopConstants,
    /// What a square metre weighs: Texcoms *Textile Technical Handbook*, general formulae.
    ArealMass,
    /// Tex, grams in 1000 m: ISO 1144.
    Tex,
    /// The least that a yarn can be across: Peirce 1937.
    YarnDiameter,
    /// The most even order, by an integer error term: Bresenham, *Algorithm for computer control of a digital plotter*,
    /// IBM Systems Journal 4(1), 1965.
    MostEven,
    /// The abbreviations of stitches: Craft Yarn Council, the list that goes with its *Standards & Guidelines*.
    Abbreviations,
}

// What the tables are called where the outside checks list them.
crate::keys!(Taken {
    Conversions = "conversions",
    Women = "women",
    Men = "men",
    Children = "children",
    Babies = "babies",
    SizesInCm = "sizes-in-cm",
    EnWomen = "en-women",
    EnMen = "en-men",
    Tape = "tape",
    FitsInInches = "fits-in-inches",
    FitsBySign = "fits-by-sign",
    YarnClasses = "yarn-classes",
    Wraps = "wraps",
    UsNumbers = "us-numbers",
    UkNumbers = "uk-numbers",
    JapaneseNumbers = "japanese-numbers",
    Circulars = "circulars",
    LoopLength = "loop-length",
    LoopConstants = "loop-constants",
    ArealMass = "areal-mass",
    Tex = "tex",
    YarnDiameter = "yarn-diameter",
    MostEven = "most-even",
    Abbreviations = "abbreviations",
});

impl Taken {
    /// It was read in the source that is named.
    pub const fn read(self) -> Source {
        self.marked(Certainty::Read)
    }

    /// It was read as others quote it, and the source that is named was not.
    pub const fn quoted(self) -> Source {
        self.marked(Certainty::Quoted)
    }

    /// It was written down from memory.
    pub const fn from_memory(self) -> Source {
        self.marked(Certainty::FromMemory)
    }

    const fn marked(self, certainty: Certainty) -> Source {
        Source { taken: self, certainty }
    }
}

impl Source {
    /// What it is taken from.
    pub const fn taken(self) -> Taken {
        self.taken
    }

    /// How sure we are of it.
    pub const fn certainty(self) -> Certainty {
        self.certainty
    }

    /// How sure we are of all of them together: as sure as of the least sure one.
    pub fn least_sure(sources: &[Self]) -> Certainty {
        let all = |marks: &[Certainty]| sources.iter().all(|source| marks.contains(&source.certainty));
        if sources.is_empty() {
            Certainty::FromMemory
        } else if all(&[Certainty::Read]) {
            Certainty::Read
        } else if all(&[Certainty::Read, Certainty::Quoted]) {
            Certainty::Quoted
        } else {
            Certainty::FromMemory
        }
    }

    /// How sure we are where either of the two would do: as sure as of the surer one.
    pub const fn or_more(self, other: Self) -> Certainty {
        match (self.certainty, other.certainty) {
            (Certainty::Read, _) | (_, Certainty::Read) => Certainty::Read,
            (Certainty::Quoted, _) | (_, Certainty::Quoted) => Certainty::Quoted,
            (own, Certainty::FromMemory | Certainty::Practice | Certainty::Computed) => own,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_is_as_sure_as_its_least_sure_number() {
        let (read, quoted, remembered) = (Taken::Tape.read(), Taken::Tape.quoted(), Taken::Tape.from_memory());
        assert_eq!(Source::least_sure(&[read, read]), Certainty::Read);
        assert_eq!(Source::least_sure(&[read, quoted]), Certainty::Quoted);
        assert_eq!(Source::least_sure(&[quoted, remembered, read]), Certainty::FromMemory);
        assert_eq!(Source::least_sure(&[]), Certainty::FromMemory);
        assert_eq!(remembered.or_more(quoted), Certainty::Quoted);
        assert_eq!(quoted.or_more(read), Certainty::Read);
        assert_eq!(remembered.or_more(remembered), Certainty::FromMemory);
    }
}
