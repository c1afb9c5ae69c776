//! How a sweater feels by its ease: the five fits, with the numbers that were printed for them.
//!
//! Ease is the garment round the bust less the body round the bust. The trade body of the yarn makers names five fits.
//! It has printed them in two ways: an older edition gives inches, with gaps (0, then 1 to 2) and edges that belong to
//! two fits at once (2 is close and standard); a newer one gives no numbers but signs (negative, zero, some, more,
//! generous). Neither edition was read. The inches are twice second-hand: a weblog of August 2011 quotes a yarn maker's
//! page that gives them; the signs are as a summary of the edition of August 2021 gives them. Here every ease has one
//! word: a band begins at its lower edge and ends just before the next.
//!
//! Our edges are 0, 5, 10 and 15 cm. The printed 2, 4 and 6 inches are a millimetre or two wider; with the metric edges
//! a knitter who reckons with 5 cm and one who reckons with 2 in are told the same. Exactly none is "close", as in the
//! newer edition; the older one called it "very close".
//!
//! ```
//! use loopwright::tables::fit::Fit;
//! use loopwright::units::Length;
//! assert_eq!(Fit::of(Length::from_inches(2)), Fit::Standard);
//! assert_eq!(Fit::of(Length::from_mm(50)), Fit::Standard);
//! assert_eq!(Fit::of(Length::from_mm(-13)), Fit::VeryClose);
//! ```

use super::{Source, Taken};
use crate::units::Length;

/// How a sweater feels.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Fit {
    /// Smaller than the body; it stretches to fit.
    VeryClose,
    /// As the body, or a little more.
    Close,
    /// The usual sweater; the newer edition says "classic".
    Standard,
    /// Roomy.
    Loose,
    /// Meant to be large.
    Oversized,
}

/// What the newer edition says of the ease instead of a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Sign {
    /// Negative ease.
    Negative,
    /// Zero ease.
    Zero,
    /// Some positive ease.
    Some,
    /// More positive ease.
    More,
    /// Generous positive ease.
    Generous,
}

/// One fit: where it begins, what was printed for it, and what to aim for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Band {
    /// The fit.
    pub fit: Fit,
    /// The least ease that is called so; none when there is no least.
    pub from: Option<Length>,
    /// The ease that is no longer called so; none when there is no most.
    pub below: Option<Length>,
    /// The least ease in whole inches that the older edition prints.
    pub inches_from: Option<i8>,
    /// The most ease in whole inches that the older edition prints.
    pub inches_to: Option<i8>,
    /// How sure we are of the inches: twice second-hand, as a weblog quotes a yarn maker's page.
    pub inches: Source,
    /// What the newer edition says.
    pub sign: Sign,
    /// How sure we are of the sign: as a summary of the document of August 2021 gives it.
    pub signs: Source,
    /// The ease to look for when this fit is wanted: the middle of the band, or 5 cm past the last edge. Common
    /// practice, no source.
    pub aim: Length,
}

const VERY_CLOSE: Band = band(Fit::VeryClose, None, Some(0), (None, Some(0)), Sign::Negative, -50);
const CLOSE: Band = band(Fit::Close, Some(0), Some(50), (Some(1), Some(2)), Sign::Zero, 25);
const STANDARD: Band = band(Fit::Standard, Some(50), Some(100), (Some(2), Some(4)), Sign::Some, 75);
const LOOSE: Band = band(Fit::Loose, Some(100), Some(150), (Some(4), Some(6)), Sign::More, 125);
const OVERSIZED: Band = band(Fit::Oversized, Some(150), None, (Some(6), None), Sign::Generous, 200);

/// The five fits, from closest to widest, without a gap between them.
pub const BANDS: [Band; 5] = [VERY_CLOSE, CLOSE, STANDARD, LOOSE, OVERSIZED];

impl Fit {
    /// The fit of an ease: the one band it lies in.
    pub fn of(ease: Length) -> Self {
        let found = BANDS.iter().rfind(|band| band.from.is_none_or(|from| ease >= from));
        found.map_or(Self::VeryClose, |band| band.fit)
    }

    /// Its row of the table.
    pub const fn band(self) -> &'static Band {
        match self {
            Self::VeryClose => &VERY_CLOSE,
            Self::Close => &CLOSE,
            Self::Standard => &STANDARD,
            Self::Loose => &LOOSE,
            Self::Oversized => &OVERSIZED,
        }
    }
}

impl Band {
    /// Whether an ease lies in the band.
    pub fn has(&self, ease: Length) -> bool {
        self.from.is_none_or(|from| ease >= from) && self.below.is_none_or(|below| ease < below)
    }
}

const fn band(
    fit: Fit,
    from: Option<i64>,
    below: Option<i64>,
    printed: (Option<i8>, Option<i8>),
    sign: Sign,
    aim: i64,
) -> Band {
    Band {
        fit,
        from: mm(from),
        below: mm(below),
        inches_from: printed.0,
        inches_to: printed.1,
        inches: Taken::FitsInInches.quoted(),
        sign,
        signs: Taken::FitsBySign.quoted(),
        aim: Length::from_mm(aim),
    }
}

const fn mm(edge: Option<i64>) -> Option<Length> {
    match edge {
        Some(edge) => Some(Length::from_mm(edge)),
        None => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn each_band_begins_where_the_one_before_ends() {
        assert!(BANDS[0].from.is_none() && BANDS[4].below.is_none());
        for pair in BANDS.windows(2) {
            assert_eq!(pair[0].below, pair[1].from);
            assert!(pair[0].fit < pair[1].fit);
        }
        for band in BANDS {
            assert_eq!(*band.fit.band(), band);
            assert_eq!(Fit::of(band.aim), band.fit);
        }
    }

    proptest! {
        #[test]
        fn every_ease_is_in_exactly_one_band(nm: i64) {
            let ease = Length::from_nm(nm);
            let having: Vec<_> = BANDS.iter().filter(|band| band.has(ease)).map(|band| band.fit).collect();
            prop_assert_eq!(having, vec![Fit::of(ease)]);
        }
    }
}
