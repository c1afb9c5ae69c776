//! Loop geometry: how much yarn one stitch takes, and what a fabric weighs.
//!
//! In plain knitting the size of everything follows from one length, that of the yarn in one loop. With `S` stitches in
//! a square centimetre of stockinette, and the fabric at rest, `l = sqrt(k / S)`, where `k` is a pure number that
//! depends on how the fabric came to rest ([`MUNDEN`]). Loop length belongs to the yarn and the needle, not to the
//! fabric: garter or rib of the same yarn on the same needle has nearly the same loop in a quite different gauge, so
//! `S` must be counted in *stockinette*, and other fabrics get a factor ([`Fabric::factor`]) that is common practice,
//! no source.
//!
//! Source of the sum and of `k`: Munden, *The geometry and dimensional properties of plain-knit fabrics*, J. Text.
//! Inst. 50 (1959) T448, as tabulated in Spencer, *Knitting Technology*, section 22.5; as others transcribe that table,
//! and neither was read. They were found for machine-knitted wool: for hand knitting they are a fair estimate and no
//! more.
//!
//! ```
//! use loopwright::fabric::{Density, State};
//! use loopwright::units::{Gauge, Length};
//!
//! // 21 stitches and 28 rows in 10 cm of washed stockinette: 5.88 stitches in a square centimetre.
//! let density = Density::of(Gauge::of(21, Gauge::TEN_CM), Gauge::of(28, Gauge::TEN_CM));
//! let loop_length = density.loop_length(State::WetRelaxed.constants().product).unwrap();
//! // sqrt(21.6 / 5.88) = 1.917 cm of yarn in each.
//! assert_eq!(loop_length.to_nm() / 10_000, 1_916);
//! assert!(loop_length < Length::from_nm(19_170_000));
//! ```

use crate::tables::{Certainty, Source, Taken};
use crate::units::{Gauge, Length, LengthUnit, Mass, MassUnit};

/// How a fabric came to rest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum State {
    /// Off the needle and left alone, never washed.
    DryRelaxed,
    /// Washed and dried flat.
    WetRelaxed,
    /// Washed and tumbled.
    FullyRelaxed,
}

/// The pure numbers of plain knitting in one [`State`], with loop length and gauge in the same unit.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Constants {
    /// The state they are for.
    pub state: State,
    /// Rows in a unit of length are this over the loop length.
    pub courses: f64,
    /// Stitches in a unit of length are this over the loop length.
    pub wales: f64,
    /// Stitches in a unit of area are this over the loop length squared. As printed: the product of the other two,
    /// rounded, and so off it by up to 1 %.
    pub product: f64,
    /// How sure they are.
    pub source: Source,
}

/// How sure the sum is, `l = sqrt(k / S)`: Munden's, as others quote it.
pub const LOOP_LENGTH: Source = Taken::LoopLength.quoted();

/// How sure [`Density::grams_per_square_metre`] is: the handbook's formula, in a copy of it.
pub const AREAL_MASS: Source = Taken::ArealMass.quoted();

/// How sure the definition of [`tex`] is: as others quote the standard.
pub const TEX: Source = Taken::Tex.quoted();

/// How sure [`least_diameter`] is: Peirce's, as others quote it.
pub const LEAST_DIAMETER: Source = Taken::YarnDiameter.quoted();

/// Munden's numbers, and those of a third state that others added to them later (from memory that they did). All as
/// others transcribe Spencer's table, in which the three stand together.
pub const MUNDEN: [Constants; 3] = [
    State::DryRelaxed.constants(),
    State::WetRelaxed.constants(),
    State::FullyRelaxed.constants(),
];

/// What takes the place of [`Constants::product`] when only a *garter* gauge is known: about 32. It is the loop length
/// of a stockinette of 21 by 28 and the density of its garter of 21 by 42. Common practice, no source.
pub const GARTER_PRODUCT: f64 = 32.0;

impl State {
    /// The numbers for this state.
    pub const fn constants(self) -> Constants {
        match self {
            Self::DryRelaxed => munden(self, 5.0, 3.8, 19.0),
            Self::WetRelaxed => munden(self, 5.3, 4.1, 21.6),
            // Added later, by others.
            Self::FullyRelaxed => munden(self, 5.5, 4.2, 23.1),
        }
    }
}

const fn munden(state: State, courses: f64, wales: f64, product: f64) -> Constants {
    Constants {
        state,
        courses,
        wales,
        product,
        source: Taken::LoopConstants.quoted(),
    }
}

/// Stitches in a square centimetre.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Density(
    /// Stitches in a square centimetre; above zero when it comes from gauges.
    pub f64,
);

impl Density {
    /// From the stitch gauge and the row gauge of one fabric, each over its own span.
    pub fn of(stitches: Gauge, rows: Gauge) -> Self {
        Self(stitches.per_cm() * rows.per_cm())
    }

    /// From a loop length and the constant of a state: `k / l^2`.
    pub fn from_loop(loop_length: Length, product: f64) -> Self {
        Self(product / loop_length.in_unit(LengthUnit::Cm).powi(2))
    }

    /// The yarn in one stitch, `sqrt(k / S)`, rounded once to the nanometre. None when there is no such length.
    pub fn loop_length(self, product: f64) -> Option<Length> {
        let cm = (product / self.0).sqrt();
        Length::from_f64(cm, LengthUnit::Cm).filter(|length| *length > Length::ZERO)
    }

    /// How much more yarn the same measures take at this density than at another: `sqrt(S / S other)`. A knitter with
    /// a tenth more stitches to the area needs a twentieth more yarn, not a tenth.
    pub fn yarn_against(self, other: Self) -> f64 {
        (self.0 / other.0).sqrt()
    }

    /// What a square metre weighs, in grams: `S x l(mm) x tex / 100`. Source: Texcoms Textile Technical Handbook,
    /// general formulae, as a copy of it has them ([`AREAL_MASS`]).
    pub fn grams_per_square_metre(self, loop_length: Length, tex: f64) -> f64 {
        self.0 * loop_length.in_unit(LengthUnit::Mm) * tex / 100.0
    }
}

/// What a yarn weighs for its length: grams in 1000 m (ISO 1144, as others quote it: [`TEX`]). 50 g / 125 m is 400 tex.
/// None when the length is not above zero.
pub fn tex(mass: Mass, length: Length) -> Option<f64> {
    let kilometres = length.in_unit(LengthUnit::M) / 1_000.0;
    (kilometres > 0.0).then(|| mass.in_unit(MassUnit::Gram) / kilometres)
}

/// The least a yarn can be across: `0.003742 sqrt(tex)` cm, for yarn packed as tight as spun cotton (1.1 cm3/g).
/// Source: Peirce 1937, as others quote it ([`LEAST_DIAMETER`]).
///
/// A **lower bound**: soft hand-knitting yarn is two or three times as thick. Never for a cast-on tail, which would
/// run out; wraps in an inch are for that ([`crate::tables::yarn_weight::diameter`]).
pub fn least_diameter(tex: f64) -> Option<Length> {
    Length::from_f64(0.003_742 * tex.sqrt(), LengthUnit::Cm)
}

/// What is knitted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Fabric {
    /// Stockinette.
    Stockinette,
    /// Garter.
    Garter,
    /// Rib of any kind.
    Rib,
    /// Cables.
    Cable,
    /// Lace.
    Lace,
    /// Two colours in a row: a loop of one and a float of the other in every stitch, both together.
    Stranded,
}

crate::choice!(Fabric starts Stockinette {
    Stockinette = "stockinette",
    Garter = "garter",
    Rib = "rib",
    Cable = "cable",
    Lace = "lace",
    Stranded = "stranded",
});

/// How much yarn something takes, in times of what it is measured by, such as a stitch against one of stockinette from
/// the same yarn and needle.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Factor {
    /// The least that is usual.
    pub least: f64,
    /// What is reckoned with.
    pub usual: f64,
    /// The most that is usual.
    pub most: f64,
    /// Where it comes from.
    pub certainty: Certainty,
}

impl Factor {
    /// Neither more nor less.
    pub const ONE: Self = Self {
        certainty: Certainty::Computed,
        ..Self::practice(1.0, 1.0, 1.0)
    };

    /// Common practice, no source.
    pub const fn practice(least: f64, usual: f64, most: f64) -> Self {
        Self {
            least,
            usual,
            most,
            certainty: Certainty::Practice,
        }
    }
}

/// A float is as long as the stitch it passes is wide, `1 / 4.1` of a loop.
const WITH_FLOAT: f64 = 1.0 + 1.0 / State::WetRelaxed.constants().wales;

impl Fabric {
    /// How much yarn a stitch takes against one of stockinette, which is what the others are measured by.
    pub const fn factor(self) -> Factor {
        match self {
            Self::Stockinette => Factor::ONE,
            Self::Garter | Self::Lace => Factor::practice(1.0, 1.0, 1.0),
            Self::Rib => Factor::practice(1.02, 1.05, 1.08),
            Self::Cable => Factor::practice(1.03, 1.045, 1.06),
            Self::Stranded => Factor::practice(WITH_FLOAT, WITH_FLOAT, WITH_FLOAT),
        }
    }

    /// How much yarn a stitch takes against one of another fabric.
    pub fn against(self, other: Self) -> Factor {
        if self == other {
            return Factor::ONE;
        }
        let (own, other) = (self.factor(), other.factor());
        Factor::practice(own.least / other.most, own.usual / other.usual, own.most / other.least)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn density(stitches: u32, rows: u32) -> Density {
        Density::of(Gauge::of(stitches, Gauge::TEN_CM), Gauge::of(rows, Gauge::TEN_CM))
    }

    fn cm(length: Option<Length>) -> f64 {
        length.unwrap().in_unit(LengthUnit::Cm)
    }

    /// Garter of the same yarn on the same needle, put into the stockinette sum, comes out 18 % short; relaxed
    /// rib counted at 34 stitches 21 % short.
    #[test]
    fn a_fabrics_own_gauge_gives_too_short_a_loop() {
        let right = cm(density(21, 28).loop_length(21.6));
        assert!((right - 1.917).abs() < 5e-4, "{right}");
        let naive = cm(density(21, 42).loop_length(21.6));
        assert!((naive - 1.565).abs() < 5e-4, "{naive}");
        assert!((1.0 - naive / right - 0.18).abs() < 0.005);
        let rib = cm(density(34, 28).loop_length(21.6));
        assert!((1.0 - rib / right - 0.21).abs() < 0.005);
        // With the garter's own number it is right to a hundredth.
        let garter = cm(density(21, 42).loop_length(GARTER_PRODUCT));
        assert!((garter / right - 1.0).abs() < 0.01, "{garter}");
    }

    #[test]
    fn a_tenth_more_stitches_take_a_twentieth_more_yarn() {
        let more = Density(1.1).yarn_against(Density(1.0));
        assert!((more - 1.049).abs() < 5e-4);
        assert!((Density(2.0).yarn_against(Density(1.0)) - 1.414).abs() < 5e-4);
    }

    #[test]
    fn a_ball_has_a_weight_for_its_length() {
        let length = Length::of(125, LengthUnit::M);
        let tex = tex(Mass::from_grams(50), length).unwrap();
        assert_eq!(tex, 400.0);
        let least = least_diameter(tex).unwrap();
        assert_eq!(least.to_nm() / 10_000, 74);
        assert_eq!(super::tex(Mass::from_grams(50), Length::ZERO), None);
    }

    #[test]
    fn two_strands_together_take_a_loop_and_a_float() {
        let both = Fabric::Stranded.against(Fabric::Stockinette);
        assert!((both.usual - 1.244).abs() < 5e-4);
        // On the scale, both yarns were weighed.
        assert_eq!(Fabric::Stranded.against(Fabric::Stranded), Factor::ONE);
        let rib = Fabric::Rib.against(Fabric::Cable);
        assert!(rib.least < rib.usual && rib.usual < rib.most);
    }

    proptest! {
        #[test]
        fn a_loop_gives_back_its_density(stitches in 1_u32..=400, rows in 1_u32..=400) {
            let there = density(stitches, rows);
            for constants in MUNDEN {
                let back = Density::from_loop(there.loop_length(constants.product).unwrap(), constants.product);
                prop_assert!((back.0 / there.0 - 1.0).abs() < 1e-5);
            }
        }

        #[test]
        fn geometry_never_panics(a: f64, b: f64) {
            let _ = Density(a).loop_length(b);
            let _ = least_diameter(a);
        }
    }
}
