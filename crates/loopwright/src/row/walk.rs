//! Walking along a row: its runs with the repeats unrolled, and where the changes fall.
//!
//! Both are iterators that hold one small frame for each bracket they stand in, so a row of a hundred thousand
//! stitches costs no more memory than its text.

use super::{Item, Row, Run, Stitch};

/// The runs of a row in working order.
#[derive(Clone, Debug)]
pub struct Runs<'a> {
    frames: Vec<Frame<'a>>,
}

/// A bracket being walked: its items, the next one, and how many rounds of it are still to come after this one.
#[derive(Clone, Debug)]
struct Frame<'a> {
    items: &'a [Item],
    next: usize,
    again: u32,
}

impl<'a> Runs<'a> {
    pub(super) fn new(items: &'a [Item]) -> Self {
        Self {
            frames: vec![Frame {
                items,
                next: 0,
                again: 0,
            }],
        }
    }
}

impl Iterator for Runs<'_> {
    type Item = Run;

    fn next(&mut self) -> Option<Run> {
        loop {
            let frame = self.frames.last_mut()?;
            match frame.items.get(frame.next) {
                Some(Item::Run(run)) => {
                    frame.next += 1;
                    if run.count > 0 {
                        return Some(*run);
                    }
                }
                Some(Item::Repeat { body, times }) => {
                    frame.next += 1;
                    // An empty bracket, or one worked no times, is nothing to walk.
                    if *times > 0 && !body.is_empty() {
                        let again = times - 1;
                        self.frames.push(Frame {
                            items: body,
                            next: 0,
                            again,
                        });
                    }
                }
                None if frame.again > 0 => {
                    frame.again -= 1;
                    frame.next = 0;
                }
                None => {
                    self.frames.pop();
                }
            }
        }
    }
}

/// One change in a row, and where it falls.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Change {
    /// The stitch that makes the change.
    pub stitch: Stitch,
    /// Stitches of the row below that are worked before it: hang the marker after this many.
    pub after: u64,
    /// Stitches already on the right needle when it is worked.
    pub made: u64,
}

/// The changes of a row in working order.
#[derive(Clone, Debug)]
pub struct Changes<'a> {
    runs: Runs<'a>,
    current: Option<Run>,
    after: u64,
    made: u64,
}

impl<'a> Changes<'a> {
    pub(super) fn new(row: &'a Row) -> Self {
        Self {
            runs: row.runs(),
            current: None,
            after: 0,
            made: 0,
        }
    }

    fn pass(&mut self, run: Run) {
        self.after += u64::from(run.stitch.uses()) * u64::from(run.count);
        self.made += u64::from(run.stitch.gives()) * u64::from(run.count);
    }
}

impl Iterator for Changes<'_> {
    type Item = Change;

    fn next(&mut self) -> Option<Change> {
        loop {
            match self.current {
                Some(run) if run.count > 0 => {
                    let change = Change {
                        stitch: run.stitch,
                        after: self.after,
                        made: self.made,
                    };
                    self.pass(Run::new(run.stitch, 1));
                    self.current = Some(Run::new(run.stitch, run.count - 1));
                    return Some(change);
                }
                _ => {
                    let run = self.runs.next()?;
                    if run.stitch.is_plain() {
                        self.pass(run);
                    } else {
                        self.current = Some(run);
                    }
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::read;

    #[test]
    fn runs_unroll_the_brackets() {
        let row = read("K1, ((K2, k2tog) twice, yo) 3 times").unwrap();
        assert_eq!(row.runs().count(), 1 + 3 * 5);
        assert_eq!(row.runs().last().unwrap().to_string(), "yo");
    }

    #[test]
    fn changes_fall_where_the_stitches_before_them_end() {
        let row = read("K4, k2tog twice, M1, K3").unwrap();
        let at: Vec<_> = row.changes().map(|c| (c.after, c.made)).collect();
        assert_eq!(at, [(4, 4), (6, 5), (8, 6)]);
    }
}
