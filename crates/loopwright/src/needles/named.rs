//! What a needle is called: its millimetres, and the number of each system that is equal or nearest.

use crate::tables::Certainty;
use crate::tables::needle::{NEEDLES, Number, Numbered, System, hole};
use crate::units::Length;

/// One needle and its names.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Needle {
    /// How thick it is, exactly as named.
    pub across: Length,
    /// The equal or nearest of each system, in the order of [`System::ALL`]; two where both are as near, thinner first,
    /// and none where the system has none so thin or so thick.
    pub named: Vec<Named>,
    /// The smallest hole of a needle gauge that it passes wholly; none when it is thicker than all.
    pub hole: Option<Length>,
    /// The next smaller hole, which stops it; none when it is thinner than all.
    pub stops: Option<Length>,
}

/// A needle by a system.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Named {
    /// The system.
    pub system: System,
    /// Its number; none for millimetres.
    pub number: Option<Number>,
    /// How thick that needle is.
    pub across: Length,
    /// How much thicker that is than the needle in question: nothing when they are equal.
    pub off: Length,
    /// How sure the number is.
    pub certainty: Certainty,
}

impl Needle {
    pub(super) fn of(across: Length) -> Self {
        Self {
            across,
            named: System::ALL
                .into_iter()
                .flat_map(|system| nearest(system, across))
                .collect(),
            hole: hole(across),
            stops: stops(across),
        }
    }
}

/// The next hole of a needle gauge that stops a shaft; none where all let it pass.
pub(super) fn stops(across: Length) -> Option<Length> {
    let smaller = NEEDLES.iter().rfind(|needle| needle.across < across);
    smaller.map(|needle| needle.across)
}

/// The needles of a system that are equal, or as near as any; none where the system has none so thin or so thick.
fn nearest(system: System, across: Length) -> Vec<Named> {
    let off = |row: Named| Named {
        off: row.across.saturating_sub(across),
        ..row
    };
    let mut rows: Vec<Named> = rows(system).into_iter().map(off).collect();
    let is_thinner = rows.iter().all(|row| row.across > across);
    let is_thicker = rows.iter().all(|row| row.across < across);
    if is_thinner || is_thicker {
        return Vec::new();
    }
    let distance = |row: &Named| row.off.to_nm().unsigned_abs();
    let least = rows.iter().map(distance).min();
    rows.retain(|row| Some(distance(row)) == least);
    rows
}

/// The needles of a system, thinnest first.
fn rows(system: System) -> Vec<Named> {
    match system {
        System::Metric => NEEDLES
            .iter()
            .map(|needle| row(system, None, needle.across, needle.certainty()))
            .collect(),
        System::Us | System::Uk | System::Japanese => numbered(system).into_iter().map(|(_, named)| named).collect(),
    }
}

/// The needles of a system that have a number, thinnest first.
pub(super) fn numbered(system: System) -> Vec<(Number, Named)> {
    let named = |numbered: Numbered| {
        let Numbered {
            number,
            across,
            certainty,
        } = numbered;
        (number, row(system, Some(number), across, certainty))
    };
    system.numbered().into_iter().map(named).collect()
}

const fn row(system: System, number: Option<Number>, across: Length, certainty: Certainty) -> Named {
    Named {
        system,
        number,
        across,
        off: Length::ZERO,
        certainty,
    }
}
