//! The named states of a pattern at another gauge: each branch of the answer once.

use crate::tool::State;

/// The named states.
pub const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "pattern=20&own=22&counts=180 (196, 212)"),
    State::new("one", "pattern=20&own=22&counts=121&knitting=extra&multiple=12"),
    State::new(
        "follow",
        "pattern=20&own=22&counts=180 (196, 212)&wanted=91&pattern_rows=28&own_rows=30",
    ),
    State::new("tied", "pattern=20&own=22&counts=198, 220&wanted=95"),
    State::new(
        "flat",
        "pattern=20&own=22&counts=187&multiple=8 + 3&knitting=flat&edge=1",
    ),
    State::new(
        "rows",
        "pattern=20&own=22&pattern_rows=28&own_rows=30&rows=40 (46, 52)&length=22&row_repeat=6",
    ),
    State::new(
        "shaping",
        "pattern=20&own=22&pattern_rows=28&own_rows=30&knitting=flat&from=60&to=42&shaping_rows=56",
    ),
    State::new(
        "too-steep",
        "pattern=20&own=22&pattern_rows=28&own_rows=26&from=100&to=40&shaping_rows=31",
    ),
    State::new("rows-wait", "pattern=20&own=22&counts=180&rows=40"),
    State::new(
        "shaping-waits",
        "pattern=20&own=22&counts=180 (196, 212)&pattern_rows=28&own_rows=30&from=60&shaping_rows=56",
    ),
    State::new("the-same", "pattern=20&own=20&counts=180"),
    State::new(
        "stitches-and-rows",
        "pattern=20&own=22&counts=180&pattern_rows=28&own_rows=30&rows=84",
    ),
    State::new(
        "impossible",
        "pattern=20&own=22&counts=180&rows=40&from=60&to=41&shaping_rows=30",
    ),
    State::new("unreadable", "pattern=20&own=22 cm&counts=180 (19x, 212)"),
    State::new(
        "extreme",
        "pattern=400&own=1&counts=100000, 99999, 88888, 77777, 66666, 55555, 1000, 400",
    ),
];
