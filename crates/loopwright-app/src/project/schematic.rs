//! The piece as the steps make it: for each part of the garment the shapes that lie on one another, to scale by her own
//! gauge. A step that counts rows and no stitches goes on with those of the step before it in its part; where there is none,
//! it cannot be drawn, and is left to its line on the sheet.

use crate::form::kept::Kept;
use crate::form::{Field, Fields, Settings};
use loopwright::units::{Gauge, Length};
use loopwright_project::{Derived, Project, Sheet, Step, Totals};

/// One part of the garment.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// What she calls it.
    pub name: String,
    /// Its shapes, in the order in which they are knitted.
    pub shapes: Vec<Shape>,
}

/// What one step adds to the piece.
#[derive(Clone, Debug, PartialEq)]
pub struct Shape {
    /// The name of the step.
    pub name: String,
    /// Stitches where it begins, and how wide they are.
    pub first: (u32, Length),
    /// Stitches where it ends, and how wide they are.
    pub last: (u32, Length),
    /// Rows or rounds, and how long they are.
    pub rows: (u32, Length),
}

/// Her own gauge of the washed swatch, in stitches and rows; none where the project does not know both.
fn gauges(project: &Project) -> Option<[Gauge; 2]> {
    const ROWS: &[Field] = &[
        Field::gauge().named(Kept::GaugeStitches.key(), None, ""),
        Field::gauge().of_rows().named(Kept::GaugeRows.key(), None, ""),
    ];
    let fields = Fields::new(ROWS, project.facts.clone(), Settings::default());
    let read = |kept: Kept| fields.gauge_read(kept.into()).ok();
    Some([read(Kept::GaugeStitches)?, read(Kept::GaugeRows)?])
}

/// Every part that has a shape; nothing where her gauge is not known.
pub fn parts(project: &Project, sheet: &Sheet) -> Vec<Part> {
    let Some(gauges) = gauges(project) else {
        return Vec::new();
    };
    let sections = project.sections().into_iter().map(|(name, steps)| Part {
        name: name.to_owned(),
        shapes: shapes(sheet, &steps, gauges),
    });
    sections.filter(|part| !part.shapes.is_empty()).collect()
}

fn shapes(sheet: &Sheet, steps: &[&Step], gauges: [Gauge; 2]) -> Vec<Shape> {
    let mut on_needle = None;
    let mut shapes = Vec::new();
    for step in steps {
        let totals = sheet
            .step(step.id)
            .and_then(Derived::outcome)
            .map(|outcome| outcome.totals);
        let Some(totals) = totals else { continue };
        shapes.extend(shape(step, totals, on_needle, gauges));
        on_needle = totals.after.or(on_needle);
    }
    shapes
}

fn shape(step: &Step, totals: Totals, on_needle: Option<u32>, [stitches, rows]: [Gauge; 2]) -> Option<Shape> {
    let worked = totals.rows?;
    let first = totals.before.or(on_needle)?;
    let last = totals.after.unwrap_or(first);
    let wide = |count: u32| Some((count, stitches.width_of(count.into())?));
    Some(Shape {
        name: step.name.clone(),
        first: wide(first)?,
        last: wide(last)?,
        rows: (worked, rows.width_of(worked.into())?),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tool::Tools;
    use loopwright_project::derive;

    fn drawn(project: &Project) -> Vec<Part> {
        parts(project, &derive(project, &Tools::measuring(Settings::default())))
    }

    #[test]
    fn the_example_is_drawn_by_its_gauge() {
        let parts = drawn(&super::super::demo::pullover());
        let names: Vec<&str> = parts.iter().map(|part| &*part.name).collect();
        assert_eq!(names, ["Yoke", "Body", "Sleeves"]);
        let yoke = &parts[0].shapes[0];
        assert_eq!((yoke.first.0, yoke.rows.0), (96, 66));
        // 96 stitches at 22 over 10 cm, 66 rounds at 30.
        assert_eq!(yoke.first.1.to_nm() / 1_000_000, 436);
        assert_eq!(yoke.rows.1.to_nm(), 220_000_000);
        // The body goes on with its stitches, round after round.
        let body = &parts[1].shapes[0];
        assert_eq!(body.first, body.last);
    }

    #[test]
    fn without_a_gauge_nothing_is_drawn() {
        let mut project = super::super::demo::pullover();
        project.facts.remove(Kept::GaugeRows.key());
        assert!(drawn(&project).is_empty());
    }
}
