//! One cord more than there have to be: where the fewest leave a single round to change in, another cord between them may
//! leave several.

use super::piece::{By, Cord, Piece, Run, Stretch};
use crate::units::Length;

/// The piece on one cord more, with wider windows to change in.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Easier {
    /// The cord that is added.
    pub cord: Length,
    /// Which cord when.
    pub plan: Vec<Stretch>,
}

/// The cord more that leaves the most rounds for the narrowest change; none where no change is narrow, where a part of
/// the piece has no cord at all, or where no other cord helps.
pub(super) fn easier(piece: &Piece, plan: &[Stretch]) -> Option<Easier> {
    if narrowest(plan)? > 1 {
        return None;
    }
    let used: Vec<&Cord> = plan
        .iter()
        .map(|stretch| piece.cord_of(stretch))
        .collect::<Option<_>>()?;
    let mut best: Option<(u32, Easier)> = None;
    for cord in piece.cords.iter().filter(|cord| !used.contains(cord)) {
        for place in 1..used.len() {
            let mut cords = used.clone();
            cords.insert(place, cord);
            let Some(plan) = along(&cords) else { continue };
            let window = narrowest(&plan).unwrap_or(0);
            if window > best.as_ref().map_or(1, |(window, _)| *window) {
                let cord = cord.length;
                best = Some((window, Easier { cord, plan }));
            }
        }
    }
    best.map(|(_, easier)| easier)
}

/// How many rounds the narrowest change may be made in; none where there is no change.
fn narrowest(plan: &[Stretch]) -> Option<u32> {
    let windows = plan
        .iter()
        .skip(1)
        .map(|to| (to.latest - to.earliest).saturating_add(1));
    windows.min()
}

/// These cords one after the other, each for as long as it serves; none where they leave a round out.
fn along(cords: &[&Cord]) -> Option<Vec<Stretch>> {
    let mut plan: Vec<Stretch> = Vec::new();
    for cord in cords {
        // A cord that serves twice has no one stretch.
        let [Run { from, to }] = *cord.runs.as_slice() else {
            return None;
        };
        let (earliest, latest) = match plan.last() {
            None => (from, 1),
            Some(before) => (from.max(before.latest.saturating_add(1)), before.last.saturating_add(1)),
        };
        if earliest > latest || latest > to {
            return None;
        }
        plan.push(Stretch {
            by: By::Cord(cord.length),
            earliest,
            latest,
            last: to,
        });
    }
    Some(plan)
}
