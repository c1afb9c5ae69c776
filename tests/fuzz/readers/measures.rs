//! Measures, counts, needles and gauges: what is read lies within the limits that were asked for, can be printed, and comes back
//! from another unit as it was typed.

use loopwright::bounds::Bounds;
use loopwright::gauge::Direction;
use loopwright::tables::needle::read_across;
use loopwright::units::parse::{Unreadable, Wanted, read};
use loopwright::units::print::{Step, print, with_unit};
use loopwright::units::switch::Typed;
use loopwright::units::{Gauge, Length, LengthUnit, Mass, MassUnit, Measure, count, gauge_text};

/// Reads the text within the limits of a fitting, without any, and within limits that nothing is in.
pub fn every_reading_is_within_limits(text: &str) {
    torture(text, 0, 100_000_000_000);
    torture(text, i64::MIN, i64::MAX);
    torture(text, 1, 0);
}

/// Reads the text as every quantity in every unit within these limits, and shows it in every unit.
pub fn torture(text: &str, least: i64, most: i64) {
    for unit in LengthUnit::ALL {
        measure::<Length>(text, unit, least, most, &LengthUnit::ALL);
    }
    for unit in MassUnit::ALL {
        measure::<Mass>(text, unit, least, most, &MassUnit::ALL);
    }
    let needles = Bounds::new(Length::from_nm(least), Length::from_nm(most));
    if let Ok(read) = read_across(text, needles) {
        assert!(needles.allow(read.across), "{text:?} gave {:?}", read.across);
    }
    if let Ok(read) = gauge_text::read(text, Gauge::TEN_CM) {
        let named = [Direction::Stitches, Direction::Rows].map(|direction| read.of(direction));
        let accepted = |gauge: Gauge| (1_000..=400_000).contains(&gauge.thousandths());
        assert!(
            named.into_iter().flatten().all(|counted| accepted(counted.gauge)),
            "{text:?}"
        );
    }
    let (few, many) = (least as u32, most as u32);
    let bounds = Bounds::new(few, many);
    match count::read(text, bounds) {
        Ok(read) => assert!(bounds.allow(read.value), "{text:?} gave {}", read.value),
        Err(Unreadable::NotWhole { below, above }) if few <= many => {
            assert!(
                bounds.allow(below) && bounds.allow(above) && below <= above,
                "{text:?}: {below} to {above}"
            );
        }
        Err(_) => {}
    }
}

/// Reads the text as one quantity, prints what was read, and switches the units of what was typed.
fn measure<T: Measure + PartialEq>(text: &str, unit: T::Unit, least: i64, most: i64, all: &[T::Unit]) {
    let bounds = Bounds::new(T::from_base(least), T::from_base(most));
    if let Ok(read) = read(text, &Wanted { bounds, unit }) {
        assert!(bounds.allow(read.value), "{text:?} gave {:?}", read.value);
        for step in Step::ALL {
            assert!(with_unit(read.value, unit, step).starts_with(&print(read.value, unit, step)));
        }
    }
    let typed = Typed::<T>::new(text, unit);
    for &other in all {
        let shown = typed.shown_in(other, Step::Tenth).into_owned();
        assert!(other != unit || shown == text, "{text:?} became {shown:?}");
    }
}
