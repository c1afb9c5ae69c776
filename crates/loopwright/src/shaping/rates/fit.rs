//! The rates that are easiest to hold in mind and stray least from the straight line.
//!
//! Two neighbouring whole numbers of rounds lie on either side of the line's own gap, and any other two stray farther.
//! From corner to corner, that is from one change of rate to the next, the shaping rounds drift steadily, so that they are
//! farthest from the line at a corner; and turns drift steadily too, so that it is a corner of the first turn or of the
//! last two.

use super::super::even::{Line, Rhythm, Rounds};
use super::Rate;

/// Shaping rounds of one turn, at most, where two rates go by turns.
pub(super) const LONGEST_TURN: u32 = 8;

/// A turn of up to so many is soon said, however seldom it comes.
const SHORT_TURN: u32 = 4;

/// How long a turn may be among so many gaps: a long one that does not come twice would be three rates one after another.
pub(super) fn longest_turn(gaps: u32) -> u32 {
    let most = (gaps / 2).clamp(SHORT_TURN, LONGEST_TURN);
    most.min(gaps.saturating_sub(1))
}

/// Where shaping rounds may lie.
#[derive(Clone, Copy, Debug)]
pub(super) struct Grid {
    /// All gaps are multiples of so many rounds.
    pub every: u32,
    /// The last round that may be one.
    pub end: u32,
}

impl Grid {
    /// In any round that leaves the plain ones at the end.
    pub(super) const fn any(rounds: Rounds) -> Self {
        let end = rounds.all.saturating_sub(rounds.last);
        Self { every: 1, end }
    }
}

/// Shaping rounds at two rates, by turns if one turn does not take all of them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Pattern {
    start: u32,
    turn: [Rate; 2],
}

impl Pattern {
    /// Rounds from the first shaping round to the one behind so many gaps.
    const fn passed(turn: [Rate; 2], gaps: u32) -> u32 {
        let [one, other] = turn;
        let whole = one.times + other.times;
        let (turns, rest) = (gaps / whole, gaps % whole);
        let in_one = if rest < one.times { rest } else { one.times };
        let all = one.every * one.times + other.every * other.times;
        turns * all + one.every * in_one + other.every * (rest - in_one)
    }
}

/// The gaps behind which a turn may be farthest from the line.
fn corners(turn: [Rate; 2], gaps: u32) -> impl Iterator<Item = u32> {
    let whole = turn[0].times + turn[1].times;
    let turns = gaps / whole;
    let begins = [0, turns.saturating_sub(1) * whole, turns * whole];
    let corners = begins.into_iter().flat_map(move |begin| [begin, begin + turn[0].times]);
    corners.chain([gaps]).filter(move |corner| *corner <= gaps)
}

/// What was found: the pattern, and how far it strays.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fitted {
    pattern: Pattern,
    times: u32,
    /// Parts of the line by which it strays where that is farthest, and those of one shaping round's growth.
    pub strays: i64,
    growth: i64,
}

impl Fitted {
    /// Whether it nowhere strays as far as one shaping round's growth.
    pub(super) const fn is_near(&self) -> bool {
        self.strays < self.growth || self.times < 2
    }

    /// The rounds that are shaped.
    pub(super) fn rounds(self) -> impl Iterator<Item = u32> {
        let Pattern { start, turn } = self.pattern;
        (0..self.times).map(move |gaps| start + Pattern::passed(turn, gaps))
    }
}

/// What rates are sought for.
struct Search {
    line: Line,
    times: u32,
    first: Option<u32>,
    grid: Grid,
}

impl Search {
    /// Behind the first shaping round there are so many gaps.
    const fn gaps(&self) -> u32 {
        self.times - 1
    }

    /// The two gaps on either side of the line's own.
    fn two_gaps(&self) -> [u32; 2] {
        let unit = self.grid.every;
        let short = (self.line.span / self.line.gaps / unit * unit).max(unit);
        [short, short + unit]
    }

    /// A turn laid where it strays least, if there is room for it.
    fn laid(&self, turn: [Rate; 2]) -> Option<Fitted> {
        let latest = self.grid.end.checked_sub(Pattern::passed(turn, self.gaps()))?;
        let strays_from = |start: u32| {
            let behind = move |corner: u32| self.line.behind(corner + 1, start + Pattern::passed(turn, corner));
            corners(turn, self.gaps()).map(behind)
        };
        let start = match self.first {
            Some(plain) => plain + 1,
            None => {
                let (least, most) = ends(strays_from(1));
                // Half of what it strays to one side more than to the other, in whole rounds.
                let shift = (-(least + most)).div_euclid(2 * self.line.parts_of_round());
                let shifts = [shift, shift + 1].map(|shift| 1 + shift.max(0) as u32);
                let within = shifts.map(|start| start.min(latest).max(1));
                let [one, other] = within.map(|start| farthest(strays_from(start)));
                if other < one { within[1] } else { within[0] }
            }
        };
        (start > 0 && start <= latest).then(|| Fitted {
            pattern: Pattern { start, turn },
            times: self.times,
            strays: farthest(strays_from(start)),
            growth: self.line.parts_of_gap(),
        })
    }

    /// Of these turns the one that strays least; the earlier of two that stray as far.
    fn best(&self, turns: impl Iterator<Item = [Rate; 2]>) -> Option<Fitted> {
        turns
            .filter_map(|turn| self.laid(turn))
            .min_by_key(|found| found.strays)
    }

    /// Each of the two gaps for all.
    fn one_rate(&self) -> Option<Fitted> {
        let all = |every| {
            let times = self.gaps();
            [Rate { every, times }, Rate { every, times: 0 }]
        };
        self.best(self.two_gaps().into_iter().map(all))
    }

    /// Turns of so many gaps, the short ones first or the long ones.
    fn turns(&self, of: u32) -> impl Iterator<Item = [Rate; 2]> {
        let [short, long] = self.two_gaps();
        let rates = move |one, other, times| {
            let rest = of - times;
            [
                Rate { every: one, times },
                Rate {
                    every: other,
                    times: rest,
                },
            ]
        };
        (1..of).flat_map(move |times| [rates(short, long, times), rates(long, short, times)])
    }

    /// The easiest that is near: one rate, two one after the other, two by turns.
    fn easiest(&self) -> Option<Fitted> {
        let gaps = self.gaps();
        let one_after_the_other = std::iter::once_with(|| self.best(self.turns(gaps)));
        let by_turns = (2..=longest_turn(gaps)).map(|of| self.best(self.turns(of)));
        let kinds = std::iter::once_with(|| self.one_rate())
            .chain(one_after_the_other)
            .chain(by_turns);
        kinds.flatten().find(Fitted::is_near)
    }
}

/// The least and the most of them.
fn ends(values: impl Iterator<Item = i64>) -> (i64, i64) {
    values.fold((i64::MAX, i64::MIN), |(least, most), value| {
        (least.min(value), most.max(value))
    })
}

/// How far the farthest of them is.
fn farthest(values: impl Iterator<Item = i64>) -> i64 {
    values.map(i64::abs).max().unwrap_or(0)
}

/// The easiest rates for so many shaping rounds that nowhere stray as far as one round's growth; none where no two rates
/// on the grid keep so near.
pub(super) fn easiest(rounds: Rounds, rhythm: Rhythm, times: u32, grid: Grid) -> Option<Fitted> {
    let line = rounds.line(rhythm, times);
    if times < 2 {
        return Some(Fitted {
            pattern: Pattern {
                start: line.round(1),
                turn: [Rate { every: 1, times: 1 }; 2],
            },
            times,
            strays: 0,
            growth: line.parts_of_gap(),
        });
    }
    let first = rounds.first;
    let search = Search {
        line,
        times,
        first,
        grid,
    };
    search.easiest()
}
