//! A tape that stands beside a piece: a stroke and its number at each whole step, as many as there is room for.

use crate::drawing::path::Path;
use crate::part::plain::{self, element_with, list, text};
use crate::words::intl::number;
use loopwright::units::{Length, LengthUnit};
use yew::prelude::*;

/// The numbers there is room for beside one tape, also where they are set twice as large.
const MOST_NUMBERS: f64 = 6.0;
/// Steps between two numbers, in units of the tape; of what is longer still only the first is used.
const STEPS: [u32; 12] = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1_000, 2_000, 5_000];
/// How long a stroke is, and by how much the foot of a number lies below its stroke.
const STROKE: f64 = 8.0;
const FOOT: f64 = 5.0;

/// The step between two numbers on a tape of so many units.
fn step(units: f64) -> u32 {
    let fits = |step: &&u32| units / f64::from(**step) <= MOST_NUMBERS;
    STEPS.iter().find(fits).copied().unwrap_or(STEPS[STEPS.len() - 1])
}

/// A tape from nothing up to this length, its strokes ending at `x`; `height` is where a length stands.
pub fn tape(length: Length, unit: LengthUnit, x: f64, height: &dyn Fn(Length) -> f64) -> Html {
    let units = length.in_unit(unit).max(0.0);
    let step = step(units);
    let mut strokes = Path::default();
    strokes.line(&[(x, height(Length::ZERO)), (x, height(length))]);
    let mut content = Vec::new();
    for mark in (0..=units.floor() as u32).step_by(step as usize) {
        let y = height(Length::of(i64::from(mark), unit));
        strokes.line(&[(x - STROKE, y), (x, y)]);
        let place = [x - STROKE - 4.0, y + FOOT].map(|at| (at.round() as i32).to_string());
        let attributes = [("class", "said"), ("x", &*place[0]), ("y", &*place[1])];
        content.push(element_with("text", &attributes, vec![text(number(mark).into())]));
    }
    content.insert(0, plain::path("", &strokes.written()));
    list(content)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tape_has_room_for_its_numbers() {
        assert_eq!([1.0, 6.0, 7.0, 40.0, 50.0, 110.0].map(step), [1, 1, 2, 10, 10, 20]);
        for units in 1..100_000 {
            let units = f64::from(units) / 3.0;
            assert!(
                units > 30_000.0 || units / f64::from(step(units)) <= MOST_NUMBERS,
                "{units}"
            );
        }
    }
}
