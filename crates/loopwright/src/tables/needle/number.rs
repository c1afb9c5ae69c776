//! The number of a needle, as it stands on it: `7`, `10 1/2`, `000`.
//!
//! ```
//! use loopwright::tables::needle::Number;
//!
//! assert_eq!(Number::quarters(42).to_string(), "10 1/2");
//! ```

use core::fmt;

/// A number of a needle: `7`, `10 1/2`, `000`. Held in quarters; noughts beyond the first count down from nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(transparent))]
pub struct Number(i16);

impl Number {
    /// A whole number.
    pub const fn whole(number: i16) -> Self {
        Self::quarters(number.saturating_mul(4))
    }

    /// So many quarters: 42 are 10 1/2.
    pub const fn quarters(quarters: i16) -> Self {
        Self(quarters)
    }

    /// So many noughts, at least one: 3 are `000`.
    pub const fn noughts(noughts: i16) -> Self {
        Self(1_i16.saturating_sub(noughts))
    }

    /// In quarters; below nothing for noughts beyond the first.
    pub const fn in_quarters(self) -> i16 {
        self.0
    }

    /// The number, if it is whole; noughts beyond the first are none.
    pub const fn whole_number(self) -> Option<i16> {
        if self.0 >= 0 && self.0 % 4 == 0 {
            Some(self.0 / 4)
        } else {
            None
        }
    }
}

impl fmt::Display for Number {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for _ in self.0..0 {
            f.write_str("0")?;
        }
        write!(f, "{}", self.0.max(0) / 4)?;
        f.write_str(match self.0.max(0) % 4 {
            1 => " 1/4",
            2 => " 1/2",
            3 => " 3/4",
            _ => "",
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_written_as_on_the_needle() {
        let texts = [0, 4, 6, 42, 43, 45, -1, -2].map(|quarters| Number::quarters(quarters).to_string());
        assert_eq!(texts, ["0", "1", "1 1/2", "10 1/2", "10 3/4", "11 1/4", "00", "000"]);
    }
}
