//! The place within a written row: its repeats, so that they can be counted ("repeat 3 of 12"), and its runs one by one,
//! each with the stitches before it, so that a drawing can show how far she is.
//!
//! ```
//! use loopwright::{follow, row};
//!
//! let row = row::read("K4, k2tog, (K9, k2tog) 11 times, K5")?;
//! let groups = follow::repeats(&row);
//! let times: Vec<u32> = groups.iter().map(|group| group.times).collect();
//! assert_eq!(times, [1, 11, 1]);
//! assert_eq!(groups[1].each.to_string(), "K9, k2tog");
//! assert_eq!((groups[1].each.uses(), groups[1].each.gives()), (11, 10));
//! # Ok::<(), loopwright::row::Misread>(())
//! ```

use crate::row::{Item, Row, Run, Varied};

/// What stands together in a written row: a bracket with how often it is worked, or what is worked once between brackets.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Group {
    /// How often it is worked in all; once for what stands outside of brackets.
    pub times: u32,
    /// What is worked each time.
    pub each: Row,
    /// The times that differ, where there are some.
    pub differing: Option<Differing>,
}

/// The times of a bracket that are not like the others.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Differing {
    /// Which times, counted from one, each larger than the one before.
    pub at: Vec<u32>,
    /// What is worked then.
    pub row: Row,
}

impl Group {
    /// What is worked the first, second, third time.
    pub fn time(&self, time: u32) -> &Row {
        match &self.differing {
            Some(differing) if differing.at.binary_search(&time).is_ok() => &differing.row,
            _ => &self.each,
        }
    }

    /// Stitches of the left needle that all its times use.
    pub fn uses(&self) -> u64 {
        self.in_all(Row::uses)
    }

    /// Stitches on the right needle that all its times give.
    pub fn gives(&self) -> u64 {
        self.in_all(Row::gives)
    }

    fn in_all(&self, count: fn(&Row) -> u64) -> u64 {
        let differing = self.differing.iter().flat_map(|differing| {
            let is_worked = |time: &&u32| (1..=self.times).contains(*time);
            differing.at.iter().filter(is_worked).map(|_| count(&differing.row))
        });
        let (mut sum, mut usual) = (0u64, u64::from(self.times));
        for stitches in differing {
            sum = sum.saturating_add(stitches);
            usual = usual.saturating_sub(1);
        }
        sum.saturating_add(count(&self.each).saturating_mul(usual))
    }
}

/// How the repeats of a row lie: its groups in the order they are worked. Brackets that stand within a bracket belong to
/// what is worked each time.
pub fn repeats(row: &Row) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    let mut begins_anew = true;
    for item in &row.items {
        let last = groups.last_mut().filter(|_| !begins_anew);
        begins_anew = !matches!(item, Item::Run(_));
        match (item, last) {
            (Item::Run(run), Some(between)) => between.each.items.push(Item::Run(*run)),
            (Item::Run(run), None) => groups.push(bracket(vec![Item::Run(*run)], 1)),
            (Item::Repeat { body, times }, _) => groups.push(bracket(body.clone(), *times)),
            (Item::Varied(varied), _) => groups.push(not_always_the_same(varied)),
        }
    }
    groups
}

const fn bracket(items: Vec<Item>, times: u32) -> Group {
    Group {
        times,
        each: Row { items },
        differing: None,
    }
}

fn not_always_the_same(varied: &Varied) -> Group {
    let row = |runs: Vec<Run>| Row {
        items: runs.into_iter().map(Item::Run).collect(),
    };
    let mut other = varied.body.clone();
    if let Some(run) = other.iter_mut().find(|run| run.stitch == varied.instead.stitch) {
        *run = varied.instead;
    }
    Group {
        times: varied.times,
        each: row(varied.body.clone()),
        differing: Some(Differing {
            at: varied.at.clone(),
            row: row(other),
        }),
    }
}

/// One run of a row where it is worked, repeats unrolled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Stretch {
    /// The run.
    pub run: Run,
    /// In which of the [`repeats`] it stands, counted from nought.
    pub group: usize,
    /// Which time of them it is, counted from one.
    pub time: u32,
    /// Stitches of the row below that are worked before it.
    pub after: u64,
    /// Stitches already on the right needle when it is begun.
    pub made: u64,
}

impl Stretch {
    /// Stitches of the row below that it uses.
    pub fn uses(&self) -> u64 {
        u64::from(self.run.stitch.uses()) * u64::from(self.run.count)
    }

    /// Stitches that it puts on the right needle.
    pub fn gives(&self) -> u64 {
        u64::from(self.run.stitch.gives()) * u64::from(self.run.count)
    }
}

/// The runs of a row in the order they are worked, each with what is worked before it. A row that somebody made up can be
/// endless: take as many as can be shown.
pub fn stretches(groups: &[Group]) -> impl Iterator<Item = Stretch> + '_ {
    let times = groups
        .iter()
        .enumerate()
        .flat_map(|(place, group)| (1..=group.times).map(move |time| (place, group, time)));
    let runs = times.flat_map(|(place, group, time)| group.time(time).runs().map(move |run| (place, time, run)));
    runs.scan((0u64, 0u64), |(after, made), (group, time, run)| {
        let stretch = Stretch {
            run,
            group,
            time,
            after: *after,
            made: *made,
        };
        *after = after.saturating_add(stretch.uses());
        *made = made.saturating_add(stretch.gives());
        Some(stretch)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::row::{Stitch, read, work};
    use crate::spacing::{self, Ask};
    use proptest::prelude::*;

    #[test]
    fn what_stands_between_brackets_is_worked_once_and_together() {
        let row = read("K4, k2tog, (K9, k2tog) 11 times, K5, M1, K1").unwrap();
        let groups = repeats(&row);
        let said: Vec<_> = groups
            .iter()
            .map(|group| (group.times, group.each.to_string()))
            .collect();
        let expected = [(1, "K4, k2tog"), (11, "K9, k2tog"), (1, "K5, M1, K1")];
        assert_eq!(said, expected.map(|(times, text)| (times, text.to_owned())));
        assert_eq!((groups[1].uses(), groups[1].gives()), (121, 110));
    }

    #[test]
    fn brackets_that_follow_each_other_stay_two() {
        let groups = repeats(&read("(K7, k2tog) 4 times, (K6, k2tog) 12 times").unwrap());
        assert_eq!(groups.iter().map(|group| group.times).collect::<Vec<_>>(), [4, 12]);
    }

    #[test]
    fn a_time_that_differs_says_what_is_worked_then() {
        let row = read("(K1, M1) 5 times, but K2 the 2nd and 4th time, K3").unwrap();
        let groups = repeats(&row);
        let times: Vec<String> = (1..=3).map(|time| groups[0].time(time).to_string()).collect();
        assert_eq!(times, ["K1, M1", "K2, M1", "K1, M1"]);
        assert_eq!((groups[0].uses(), groups[0].gives()), (7, 12));
    }

    #[test]
    fn a_stretch_knows_what_is_before_it() {
        let row = read("K1, (K2, k2tog) twice, K1").unwrap();
        let groups = repeats(&row);
        let found: Vec<_> = stretches(&groups)
            .map(|each| (each.group, each.time, each.after, each.made))
            .collect();
        assert_eq!(
            found,
            [
                (0, 1, 0, 0),
                (1, 1, 1, 1),
                (1, 1, 3, 3),
                (1, 2, 5, 4),
                (1, 2, 7, 6),
                (2, 1, 9, 7)
            ]
        );
        assert_eq!(
            stretches(&groups).last().map(|last| last.run),
            Some(Run::new(Stitch::Knit, 1))
        );
    }

    proptest! {
        /// All groups together are the row, and so are all stretches, run by run.
        #[test]
        fn groups_and_stretches_are_the_row(stitches in 20_u32..400, lost in 1_u32..60) {
            let question = spacing::Question { ask: Ask::Lose(lost), ..spacing::Question::about(stitches) };
            let Ok(answer) = spacing::answer(&question) else { return Ok(()) };
            for way in &answer.ways {
                let groups = repeats(&way.row);
                let used: u64 = groups.iter().map(Group::uses).sum();
                let given: u64 = groups.iter().map(Group::gives).sum();
                prop_assert_eq!((used, given), (way.row.uses(), way.row.gives()));
                prop_assert!(stretches(&groups).map(|each| each.run).eq(way.row.runs()));
                let last = stretches(&groups).last().map(|last| last.made + last.gives());
                prop_assert_eq!(last, work(&way.row, stitches).ok().map(|worked| worked.on_needle));
            }
        }
    }
}
