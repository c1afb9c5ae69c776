//! The piece as the steps make it: for each part of the garment the shapes that lie on one another, to scale by her own
//! gauge. A step that counts rows and no stitches goes on with those of the step before it in its part; where there is none,
//! it cannot be drawn, and is left to its line on the sheet.

use super::together::Knitted;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, Settings};
use crate::tool::Gift;
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

/// Every part that has a shape; nothing where her gauge is not known. What is knitted at the same time is one shape.
pub fn parts(project: &Project, sheet: &Sheet, knitted: &[Knitted]) -> Vec<Part> {
    let Some(gauges) = gauges(project) else {
        return Vec::new();
    };
    let sections = project.sections().into_iter().map(|(name, steps)| Part {
        name: name.to_owned(),
        shapes: shapes(project, sheet, knitted, &steps, gauges),
    });
    sections.filter(|part| !part.shapes.is_empty()).collect()
}

fn shapes(project: &Project, sheet: &Sheet, knitted: &[Knitted], steps: &[&Step], gauges: [Gauge; 2]) -> Vec<Shape> {
    let mut on_needle = None;
    let mut shapes = Vec::new();
    for step in steps {
        let Some(one) = knitted.iter().find(|one| one.bundle.first == step.id) else {
            continue;
        };
        let outcome = sheet.step(step.id).and_then(Derived::outcome);
        let Some(outcome) = outcome else { continue };
        let totals = match one.is_several() {
            true => Totals {
                after: one.after,
                rows: one.bundle.rows(sheet).filter(|_| one.after.is_some()),
                ..outcome.totals
            },
            false => outcome.totals,
        };
        if !project.is_counted_elsewhere(step, sheet, Gift::Rows.key()) {
            shapes.extend(shape(called(project, one), totals, on_needle, gauges));
        }
        on_needle = totals.after.or(on_needle);
    }
    shapes
}

fn called(project: &Project, one: &Knitted) -> String {
    let names = one.steps().filter_map(|id| Some(project.step(id)?.name.clone()));
    let names: Vec<String> = names.collect();
    names.join(", ")
}

fn shape(name: String, totals: Totals, on_needle: Option<u32>, [stitches, rows]: [Gauge; 2]) -> Option<Shape> {
    let worked = totals.rows?;
    let first = totals.before.or(on_needle)?;
    let last = totals.after.unwrap_or(first);
    let wide = |count: u32| Some((count, stitches.width_of(count.into())?));
    Some(Shape {
        name,
        first: wide(first)?,
        last: wide(last)?,
        rows: (worked, rows.width_of(worked.into())?),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::project::together::knitted;
    use crate::tool::Tools;
    use loopwright_project::derive;

    fn drawn(project: &Project) -> Vec<Part> {
        let tools = Tools::measuring(Settings::default());
        let sheet = derive(project, &tools);
        parts(project, &sheet, &knitted(project, &sheet, &tools))
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
    fn what_is_knitted_at_the_same_time_is_one_shape() {
        let parts = drawn(&super::super::demo::fronts("12"));
        let shapes = &parts[0].shapes;
        assert_eq!(shapes.len(), 2);
        assert_eq!((shapes[0].first.0, shapes[0].last.0, shapes[0].rows.0), (50, 26, 60));
        // Where the two meet there is no shape that could be knitted.
        assert!(drawn(&super::super::demo::fronts("40")).is_empty());
    }

    #[test]
    fn without_a_gauge_nothing_is_drawn() {
        let mut project = super::super::demo::pullover();
        project.facts.remove(Kept::GaugeRows.key());
        assert!(drawn(&project).is_empty());
    }
}
