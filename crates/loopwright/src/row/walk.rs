//! Walking along a row: its runs with the repeats unrolled, and where the changes fall.
//!
//! Both are iterators that hold one small frame for each bracket they stand in, so a row of a hundred thousand
//! stitches costs no more memory than its text.

use super::{Item, Row, Run, Stitch, Varied};

/// The runs of a row in working order.
#[derive(Clone, Debug)]
pub struct Runs<'a> {
    frames: Vec<Frame<'a>>,
}

/// A bracket being walked: what stands in it, the next of that, how many rounds of it are done, and how many there are.
#[derive(Clone, Debug)]
struct Frame<'a> {
    body: Body<'a>,
    next: usize,
    done: u32,
    times: u32,
}

/// What stands in a bracket.
#[derive(Clone, Copy, Debug)]
enum Body<'a> {
    /// The same every time.
    Items(&'a [Item]),
    /// Not the same every time.
    Varied(&'a Varied),
}

/// One step along a row.
pub(super) enum Step {
    /// A run that makes something.
    Run(Run),
    /// A bracket is entered, begun again or left, or a run of no stitches passed.
    Nothing,
    /// The row is done.
    End,
}

impl<'a> Frame<'a> {
    const fn new(body: Body<'a>, times: u32) -> Self {
        Self {
            body,
            next: 0,
            done: 0,
            times,
        }
    }

    /// What comes next in the bracket, if it is not at its end.
    fn advance(&mut self) -> Option<Next<'a>> {
        let next = match self.body {
            Body::Items(items) => match items.get(self.next)? {
                Item::Run(run) => Next::Run(*run),
                Item::Repeat { body, times } => Next::Bracket(Frame::new(Body::Items(body), *times)),
                Item::Varied(varied) => Next::Bracket(Frame::new(Body::Varied(varied), varied.times)),
            },
            Body::Varied(varied) => Next::Run(self.of_varied(varied)?),
        };
        self.next += 1;
        Some(next)
    }

    fn of_varied(&self, varied: &Varied) -> Option<Run> {
        let run = *varied.body.get(self.next)?;
        let differs = varied.place() == Some(self.next) && varied.at.binary_search(&(self.done + 1)).is_ok();
        Some(if differs { varied.instead } else { run })
    }
}

/// What comes next in a bracket.
enum Next<'a> {
    Run(Run),
    Bracket(Frame<'a>),
}

impl<'a> Runs<'a> {
    pub(super) fn new(items: &'a [Item]) -> Self {
        Self {
            frames: vec![Frame::new(Body::Items(items), 1)],
        }
    }

    /// One step. Brackets that make nothing are steps too, so that who counts them is never kept waiting.
    pub(super) fn step(&mut self) -> Step {
        let Some(frame) = self.frames.last_mut() else {
            return Step::End;
        };
        match frame.advance() {
            Some(Next::Run(run)) if run.count > 0 => return Step::Run(run),
            Some(Next::Run(_)) => {}
            Some(Next::Bracket(bracket)) if bracket.times > 0 => self.frames.push(bracket),
            Some(Next::Bracket(_)) => {}
            None if frame.next > 0 && frame.done + 1 < frame.times => {
                frame.done += 1;
                frame.next = 0;
            }
            None => {
                self.frames.pop();
            }
        }
        Step::Nothing
    }
}

impl Iterator for Runs<'_> {
    type Item = Run;

    fn next(&mut self) -> Option<Run> {
        loop {
            match self.step() {
                Step::Run(run) => return Some(run),
                Step::Nothing => {}
                Step::End => return None,
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
    fn a_bracket_that_is_not_the_same_every_time_unrolls_as_it_is_said() {
        let varied = read("K1, (K1, M1) 5 times, but K2 the 2nd and 4th time, K3").unwrap();
        let flat = read("K1, K1, M1, K2, M1, K1, M1, K2, M1, K1, M1, K3").unwrap();
        assert!(varied.runs().eq(flat.runs()));
        assert_eq!((varied.uses(), varied.gives()), (flat.uses(), flat.gives()));
        assert_eq!((varied.terms(), varied.depth()), (8, 1));
    }

    #[test]
    fn changes_fall_where_the_stitches_before_them_end() {
        let row = read("K4, k2tog twice, M1, K3").unwrap();
        let at: Vec<_> = row.changes().map(|c| (c.after, c.made)).collect();
        assert_eq!(at, [(4, 4), (6, 5), (8, 6)]);
    }
}
