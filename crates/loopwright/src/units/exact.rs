//! The sums that a length and a weight have in common: whole numbers in, whole numbers out, never a crash.
//!
//! `Length` and `Mass` differ in their units only. What can be done with them is written here once and given to both:
//! adding, taking away, multiplying by a count, and asking how many balls are needed.
//!
//! ```
//! use loopwright::units::{Length, LengthUnit};
//!
//! let ball = Length::of(125, LengthUnit::M);
//! assert_eq!(ball.saturating_mul(6).div_ceil(ball), Some(6));
//! assert_eq!(Length::MAX.checked_add(ball), None);
//! ```

/// Gives a newtype over `i64` the arithmetic of an exact quantity, and ties it to its unit.
macro_rules! exact {
    ($name:ident, $unit:ident) => {
        impl $name {
            /// None at all.
            pub const ZERO: Self = Self(0);
            /// The least that can be held (far below anything knitted).
            pub const MIN: Self = Self(i64::MIN);
            /// The most that can be held (far above anything knitted).
            pub const MAX: Self = Self(i64::MAX);

            /// A whole number of units, exact; past what can be held it stays at [`Self::MIN`] or [`Self::MAX`].
            pub const fn of(whole: i64, unit: $unit) -> Self {
                Self(unit.base().saturating_mul(whole))
            }

            /// The sum, or `None` when it is too large to hold.
            pub const fn checked_add(self, other: Self) -> Option<Self> {
                match self.0.checked_add(other.0) {
                    Some(base) => Some(Self(base)),
                    None => None,
                }
            }

            /// The sum, held at the least or the most where it would pass them.
            pub const fn saturating_add(self, other: Self) -> Self {
                Self(self.0.saturating_add(other.0))
            }

            /// The difference, or `None` when it is too large to hold.
            pub const fn checked_sub(self, other: Self) -> Option<Self> {
                match self.0.checked_sub(other.0) {
                    Some(base) => Some(Self(base)),
                    None => None,
                }
            }

            /// The difference, held at the least or the most where it would pass them.
            pub const fn saturating_sub(self, other: Self) -> Self {
                Self(self.0.saturating_sub(other.0))
            }

            /// So many times as much, or `None` when it is too large to hold.
            pub const fn checked_mul(self, times: i64) -> Option<Self> {
                match self.0.checked_mul(times) {
                    Some(base) => Some(Self(base)),
                    None => None,
                }
            }

            /// So many times as much, held at the least or the most where it would pass them.
            pub const fn saturating_mul(self, times: i64) -> Self {
                Self(self.0.saturating_mul(times))
            }

            /// How many pieces of this size cover it, the last one perhaps in part: six balls of 125 m for 750 m, and
            /// seven for a nanometre more. `None` when the piece is nothing or less than nothing.
            pub const fn div_ceil(self, piece: Self) -> Option<i64> {
                if piece.0 <= 0 {
                    return None;
                }
                let whole = self.0.div_euclid(piece.0);
                // Safe to add: a remainder means the piece is at least 2, so `whole` is at most half of the most.
                Some(if self.0.rem_euclid(piece.0) == 0 {
                    whole
                } else {
                    whole + 1
                })
            }

            /// As a number of units, for geometry and drawings; never to be fed back as a quantity that was asked for.
            pub fn in_unit(self, unit: $unit) -> f64 {
                self.0 as f64 / unit.base() as f64
            }

            /// From geometry's number of units, rounded once to the nearest that can be held. `None` when it is not a
            /// number or too large to hold.
            pub fn from_f64(value: f64, unit: $unit) -> Option<Self> {
                let base = (value * unit.base() as f64).round();
                // 2^63 is exact as a float and is one more than the most.
                let fits = (-9_223_372_036_854_775_808.0..9_223_372_036_854_775_808.0).contains(&base);
                fits.then(|| Self(base as i64))
            }
        }

        impl From<$unit> for $crate::units::Unit {
            fn from(unit: $unit) -> Self {
                Self::$name(unit)
            }
        }

        impl $crate::units::Measure for $name {
            type Unit = $unit;
            const DIMENSION: $crate::units::Dimension = $crate::units::Dimension::$name;

            fn from_base(base: i64) -> Self {
                Self(base)
            }

            fn base(self) -> i64 {
                self.0
            }

            fn per_unit(unit: $unit) -> i64 {
                unit.base()
            }

            fn unit_of(unit: $crate::units::Unit) -> Option<$unit> {
                match unit {
                    $crate::units::Unit::$name(unit) => Some(unit),
                    _ => None,
                }
            }

            fn symbol(unit: $unit) -> &'static str {
                unit.symbol()
            }

            fn amount(self) -> $crate::units::Amount {
                $crate::units::Amount::$name(self)
            }

            fn meant(self, unit: $unit) -> $crate::units::meant::Meant {
                $crate::units::meant::Meant::$name { value: self, unit }
            }
        }
    };
}

pub(super) use exact;

#[cfg(test)]
mod tests {
    use crate::units::{Length, LengthUnit, Mass, MassUnit};
    use proptest::prelude::*;

    #[test]
    fn the_ball_edge_is_exact() {
        let ball = Length::of(125, LengthUnit::M);
        let need = Length::of(750, LengthUnit::M);
        assert_eq!(need.div_ceil(ball), Some(6));
        assert_eq!(need.saturating_add(Length::from_nm(1)).div_ceil(ball), Some(7));
        assert_eq!(Length::ZERO.div_ceil(ball), Some(0));
        assert_eq!(need.div_ceil(Length::ZERO), None);
        assert_eq!(need.div_ceil(Length::from_mm(-1)), None);
        assert_eq!(Length::MAX.div_ceil(Length::from_nm(1)), Some(i64::MAX));
        assert_eq!(Length::MIN.div_ceil(Length::from_nm(1)), Some(i64::MIN));
    }

    #[test]
    fn geometry_that_went_wrong_is_none() {
        for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e300, -1e300] {
            assert_eq!(Length::from_f64(value, LengthUnit::Mm), None, "{value}");
            assert_eq!(Mass::from_f64(value, MassUnit::Gram), None, "{value}");
        }
        assert_eq!(
            Length::from_f64(7.5, LengthUnit::Inch),
            Some(Length::from_sixty_fourths(480))
        );
        assert_eq!(Length::from_f64(-0.5, LengthUnit::Cm), Some(Length::from_mm(-5)));
    }

    proptest! {
        #[test]
        fn pieces_cover_and_one_fewer_does_not(need in 1..i64::MAX, piece in 1..i64::MAX) {
            let count = Length::from_nm(need).div_ceil(Length::from_nm(piece)).unwrap();
            prop_assert!(i128::from(count) * i128::from(piece) >= i128::from(need));
            prop_assert!((i128::from(count) - 1) * i128::from(piece) < i128::from(need));
        }

        #[test]
        fn checked_and_saturating_agree_where_it_fits(a: i64, b: i64) {
            let (x, y) = (Mass::from_ng(a), Mass::from_ng(b));
            if let Some(sum) = x.checked_add(y) { prop_assert_eq!(sum, x.saturating_add(y)); }
            if let Some(rest) = x.checked_sub(y) { prop_assert_eq!(rest, x.saturating_sub(y)); }
            if let Some(many) = x.checked_mul(b) { prop_assert_eq!(many, x.saturating_mul(b)); }
        }

        #[test]
        fn through_geometry_and_back_within_the_float(nm in -1_000_000_000_000_000i64..1_000_000_000_000_000) {
            for unit in LengthUnit::ALL {
                let length = Length::from_nm(nm);
                let back = Length::from_f64(length.in_unit(unit), unit).unwrap();
                prop_assert!(back.saturating_sub(length).to_nm().abs() <= 1);
            }
        }
    }
}
