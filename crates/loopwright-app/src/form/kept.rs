//! What a project knows: the facts that its tools ask for. It is written only where she types it or taps "keep", and where a
//! tool takes it the field says so.

mod counts;
mod print;
mod unread;
mod value;

pub use counts::{Called, NameTrouble, NamedCount, name_trouble, named_counts};
pub use value::{Offer, Value};

use crate::store::Typed;
use crate::words::facts as words;
use loopwright::choice::Key;
use loopwright::tables::yarn_weight::Weight;

/// The sheet it is written on.
pub const SHEET: &str = "known";

/// One fact of a project.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kept {
    /// Round the body at the bust.
    Bust,
    /// Stitches that were cast on.
    CastOn,
    /// The needle, across.
    Needle,
    /// The class on the ball band.
    YarnClass,
    /// Stitches of the washed swatch.
    GaugeStitches,
    /// Rows of the washed swatch.
    GaugeRows,
    /// Stitches of the swatch before it was washed.
    GaugeStitchesUnwashed,
    /// Rows of the swatch before it was washed.
    GaugeRowsUnwashed,
    /// Round the upper arm.
    UpperArm,
    /// Round the head.
    Head,
    /// The sizes as the pattern lists them.
    Sizes,
    /// Stitches of the pattern's gauge.
    PatternStitches,
    /// Rows of the pattern's gauge.
    PatternRows,
    /// The cords that lie in her kit.
    Cords,
    /// How long a tip is.
    Tip,
    /// How much yarn is on a ball.
    BallLength,
    /// What a ball weighs.
    BallMass,
    /// Across the shoulders.
    Shoulder,
    /// From the waist up to the underarm.
    WaistToUnderarm,
    /// Wraps of the yarn in an inch.
    Wraps,
    /// What a ball costs.
    BallPrice,
    /// The needle for the cast-on, where that is another one.
    CastOnNeedle,
    /// Round the garment in the size that was chosen.
    Girth,
    /// Stitches at each edge that stay plain.
    Edge,
    /// Stitches of one repeat, and those beside the repeats.
    Multiple,
    /// Stitches at the neck.
    Neck,
    /// Stitches round the body.
    Body,
    /// Stitches round a sleeve.
    Sleeve,
    /// Stitches cast on at each underarm.
    Underarm,
}

loopwright::field_names!(Kept {
    Bust = "bust",
    CastOn = "cast_on",
    Needle = "needle",
    YarnClass = "yarn_class",
    GaugeStitches = "gauge_stitches",
    GaugeRows = "gauge_rows",
    GaugeStitchesUnwashed = "gauge_stitches_unwashed",
    GaugeRowsUnwashed = "gauge_rows_unwashed",
    UpperArm = "upper_arm",
    Head = "head",
    Sizes = "sizes",
    PatternStitches = "pattern_stitches",
    PatternRows = "pattern_rows",
    Cords = "cords",
    Tip = "tip",
    BallLength = "ball_length",
    BallMass = "ball_mass",
    Shoulder = "shoulder",
    WaistToUnderarm = "waist_to_underarm",
    Wraps = "wraps",
    BallPrice = "ball_price",
    CastOnNeedle = "cast_on_needle",
    Girth = "girth",
    Edge = "edge",
    Multiple = "multiple",
    Neck = "neck",
    Body = "body",
    Sleeve = "sleeve",
    Underarm = "underarm",
});

impl Kept {
    /// What kind of value it is.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Bust
            | Self::UpperArm
            | Self::Head
            | Self::Shoulder
            | Self::WaistToUnderarm
            | Self::Girth
            | Self::Tip
            | Self::BallLength => Dimension::Length,
            Self::BallMass => Dimension::Mass,
            Self::Sizes | Self::Cords => Dimension::List,
            Self::CastOn | Self::Neck | Self::Body | Self::Sleeve | Self::Underarm | Self::Wraps | Self::Edge => {
                Dimension::Count
            }
            Self::Multiple => Dimension::Multiple,
            Self::BallPrice => Dimension::Text,
            Self::Needle | Self::CastOnNeedle => Dimension::Needle,
            Self::YarnClass => Dimension::YarnClass,
            Self::GaugeStitches
            | Self::GaugeRows
            | Self::GaugeStitchesUnwashed
            | Self::GaugeRowsUnwashed
            | Self::PatternStitches
            | Self::PatternRows => Dimension::Gauge,
        }
    }

    /// What it is called beside its field.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Bust => words::BUST,
            Self::CastOn => words::CAST_ON,
            Self::Needle => words::NEEDLE,
            Self::YarnClass => words::YARN_CLASS,
            Self::GaugeStitches => words::GAUGE_STITCHES,
            Self::GaugeRows => words::GAUGE_ROWS,
            Self::GaugeStitchesUnwashed => words::GAUGE_STITCHES_UNWASHED,
            Self::GaugeRowsUnwashed => words::GAUGE_ROWS_UNWASHED,
            Self::UpperArm => words::UPPER_ARM,
            Self::Head => words::HEAD,
            Self::Sizes => words::SIZES,
            Self::PatternStitches => words::PATTERN_STITCHES,
            Self::PatternRows => words::PATTERN_ROWS,
            Self::Cords => words::CORDS,
            Self::Tip => words::TIP,
            Self::BallLength => words::BALL_LENGTH,
            Self::BallMass => words::BALL_MASS,
            Self::Shoulder => words::SHOULDER,
            Self::WaistToUnderarm => words::WAIST_TO_UNDERARM,
            Self::Wraps => words::WRAPS,
            Self::BallPrice => words::BALL_PRICE,
            Self::CastOnNeedle => words::CAST_ON_NEEDLE,
            Self::Girth => words::GIRTH,
            Self::Edge => words::EDGE,
            Self::Multiple => words::MULTIPLE,
            Self::Neck => words::NECK,
            Self::Body => words::BODY_STITCHES,
            Self::Sleeve => words::SLEEVE,
            Self::Underarm => words::UNDERARM,
        }
    }

    /// A kept text as it is written now, where it was kept under a key that has changed.
    pub fn renewed(self, typed: Typed) -> Typed {
        match self.dimension() {
            Dimension::YarnClass => match Weight::from_key(&typed.text) {
                Some(weight) => Typed::plain(weight.key()),
                None => typed,
            },
            Dimension::Count
            | Dimension::Length
            | Dimension::Mass
            | Dimension::Needle
            | Dimension::Gauge
            | Dimension::Multiple
            | Dimension::Text
            | Dimension::List => typed,
        }
    }
}

/// What kind of value is kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dimension {
    /// A count.
    Count,
    /// A length.
    Length,
    /// A weight.
    Mass,
    /// A list, as a pattern or a kit has it.
    List,
    /// A needle, in millimetres.
    Needle,
    /// A gauge.
    Gauge,
    /// A class of yarn.
    YarnClass,
    /// Stitches of a repeat as a pattern writes them: `8`, or `8 + 3`.
    Multiple,
    /// What she wrote herself, and no tool reads.
    Text,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_class_that_was_kept_as_two_words_is_the_same_class() {
        let old = Kept::YarnClass.renewed(Typed::plain("super fine"));
        assert_eq!(old, Typed::plain("super-fine"));
        for key in ["super fine", "super-fine"] {
            assert_eq!(Kept::YarnClass.print(&Typed::plain(key)), "super fine");
        }
        // What is no class is neither lost nor made one.
        let other = Typed::plain("sock");
        assert_eq!(Kept::YarnClass.renewed(other.clone()), other);
        assert_eq!(Kept::YarnClass.print(&other), "sock");
    }
}
