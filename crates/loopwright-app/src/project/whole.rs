//! What the whole project is in stitches and hours. Rows, yarn and cords are added up by `loopwright_project::sum`.

use super::together::Knitted;
use crate::tool::Gift;
use loopwright::follow::pace::{self, Hours, PACE};
use loopwright::units::count;
use loopwright_project::{All, Derived, Project, Sheet, StepId, sum};

/// All steps together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Whole {
    /// What they add up to.
    pub all: All,
    /// Stitches that are worked in the rows of all steps that count both.
    pub stitches: u64,
    /// Those of them that are knitted already, by her taps.
    pub knitted: u64,
    /// The steps that count rows, and not how many stitches are worked in them.
    pub uncounted: Vec<StepId>,
    /// How long they take.
    pub time: Time,
}

/// How long the stitches take.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Time {
    /// At this pace.
    Hours {
        /// The hours.
        hours: Hours,
        /// Stitches a minute.
        pace: u32,
        /// The hours for what is still to be knitted, once some of it is.
        left: Option<Hours>,
    },
    /// She has not said how fast she knits, or no stitches are counted.
    Unknown,
    /// What she said is no number of stitches.
    Unreadable,
}

/// What a project comes to. How far she is with what is knitted together is for the caller to say, in stitches.
pub fn whole(project: &Project, sheet: &Sheet, knitted: &[Knitted], done: impl Fn(&Knitted) -> u64) -> Whole {
    let rows = Gift::Rows.key();
    let mut all = sum(project, sheet, rows);
    let (mut stitches, mut behind_her, mut uncounted) = (0, 0, Vec::new());
    for one in knitted {
        let Some(first) = project.step(one.bundle.first) else {
            continue;
        };
        all.widest = all.widest.max(one.widest());
        if !one.is_several() && project.is_counted_elsewhere(first, sheet, rows) {
            continue;
        }
        // A cast-on and a single row that is only planned are no rows of the whole, and no stitches of it.
        match one.worked().filter(|_| counts_rows(sheet, first.id)) {
            Some(worked) => {
                let in_all = worked * u64::from(first.times().unwrap_or(1));
                stitches += in_all;
                behind_her += done(one).min(in_all);
            }
            None => uncounted.extend(one.steps().filter(|step| counts_rows(sheet, *step))),
        }
    }
    let time = time(&project.pace, stitches, behind_her);
    Whole {
        all,
        stitches,
        knitted: behind_her,
        uncounted,
        time,
    }
}

fn counts_rows(sheet: &Sheet, id: StepId) -> bool {
    let outcome = sheet.step(id).and_then(Derived::outcome);
    outcome.is_some_and(|outcome| outcome.totals.rows.is_some())
}

fn time(typed: &str, stitches: u64, knitted: u64) -> Time {
    if typed.trim().is_empty() {
        return Time::Unknown;
    }
    match count::read(typed, PACE) {
        Ok(read) => {
            let pace = read.value;
            let left = (knitted > 0).then(|| pace::hours(stitches.saturating_sub(knitted), pace));
            pace::hours(stitches, pace).map_or(Time::Unknown, |hours| Time::Hours {
                hours,
                pace,
                left: left.flatten(),
            })
        }
        Err(_) => Time::Unreadable,
    }
}

/// The pace of so many stitches between two moments of a clock, in milliseconds; none where it is no pace. A clock that was
/// set back in between has no time to tell.
pub fn pace_between(stitches: u32, since: f64, now: f64) -> Option<u32> {
    pace::timed(stitches, (now - since).max(0.0) as u64)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::Settings;
    use crate::project::demo::{fronts, pullover};
    use crate::project::together::knitted;
    use crate::tool::Tools;
    use loopwright_project::{Step, Typed, derive};

    fn whole_of(project: &Project) -> Whole {
        let tools = Tools::measuring(Settings::default());
        let sheet = derive(project, &tools);
        whole(project, &sheet, &knitted(project, &sheet, &tools), |_| 0)
    }

    #[test]
    fn what_is_knitted_already_is_not_left() {
        let mut project = pullover();
        project.pace = "25".into();
        let tools = Tools::measuring(Settings::default());
        let sheet = derive(&project, &tools);
        let knitted = knitted(&project, &sheet, &tools);
        let half = |one: &Knitted| one.worked().unwrap_or_default() / 2;
        let whole = whole(&project, &sheet, &knitted, half);
        assert!(whole.knitted > 0 && whole.knitted < whole.stitches);
        let Time::Hours {
            hours,
            left: Some(left),
            ..
        } = whole.time
        else {
            panic!("{:?}", whole.time);
        };
        assert!(left.most < hours.most, "{left:?} of {hours:?}");
    }

    #[test]
    fn rows_of_armhole_and_neck_are_counted_once_and_each_stitch_as_well() {
        let mut project = fronts("12");
        let one = whole_of(&project);
        // 60 rows of both at once, and 12 behind them.
        assert_eq!((one.all.rows, &*one.uncounted), (72, &[][..]));
        for step in &mut project.steps {
            step.amount = "2".into();
        }
        let two = whole_of(&project);
        assert_eq!((two.all.rows, two.stitches), (2 * 72, 2 * one.stitches));
    }

    #[test]
    fn rows_that_are_handed_on_are_those_of_the_step_that_works_them() {
        let mut project = pullover();
        let whole = whole_of(&project);
        // 66 rounds of the yoke, 108 of the body, and 126 of each sleeve.
        assert_eq!(whole.all.rows, 66 + 108 + 2 * 126);
        // A cast-on has no rows, and adds no stitches to those of the rows.
        let mut more = Step::new("cast_on", "More");
        more.fields.insert("width".into(), Typed::with_unit("50", "cm"));
        project.add(more);
        assert_eq!(whole_of(&project).stitches, whole.stitches);
    }

    #[test]
    fn a_pace_is_what_was_knitted_between_two_taps() {
        assert_eq!(pace_between(20, 1_000.0, 49_000.0), Some(25));
        assert_eq!(pace_between(20, 49_000.0, 1_000.0), None);
        assert_eq!(pace_between(20, f64::NAN, 1_000.0), None);
    }

    #[test]
    fn a_pace_makes_hours_and_what_is_no_pace_is_said() {
        let mut project = fronts("12");
        assert_eq!(whole_of(&project).time, Time::Unknown);
        for pace in ["fast", "0", "2000", "25 cm"] {
            project.pace = pace.into();
            assert_eq!(whole_of(&project).time, Time::Unreadable, "{pace}");
        }
        project.pace = "25".into();
        assert!(matches!(whole_of(&project).time, Time::Hours { pace: 25, .. }));
    }
}
