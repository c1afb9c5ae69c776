//! The named states of the tail.

use crate::tool::State;

/// The named states.
pub(super) const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "stitches=120&yarn=medium"),
    State::new(
        "three-ways",
        "stitches=120&yarn=medium&needle=5&width=60&measured_stitches=20&measured_used=44",
    ),
    State::new("by-gauge", "stitches=120&yarn=medium&gauge=20"),
    State::new(
        "few-measured",
        "stitches=96&wraps=9&needle=4&second=4&measured_stitches=10&measured_used=17",
    ),
    State::new("twisted", "stitches=64&method=twisted&yarn=super-fine&needle=2.5"),
    State::new("cable", "stitches=80&method=cable"),
    State::new("tubular", "stitches=81&method=tubular"),
    State::new("two-strands", "stitches=300&method=two-strands"),
    State::new(
        "left",
        "wanted=left&stitches=120&yarn=medium&left_tail=1.5&left_to_go=40",
    ),
    State::new("left-waiting", "wanted=left&stitches=120&yarn=medium"),
    State::new("left-cable", "wanted=left&stitches=120&method=cable&left_tail=0.15"),
    State::new("tight", "stitches=120&yarn=medium&left_tail=1.25&left_to_go=40"),
    State::new("short", "stitches=120&yarn=medium&left_tail=0.9&left_to_go=40"),
    State::new(
        "impossible",
        "stitches=120&yarn=medium&wraps=300&left_tail=1&left_to_go=121",
    ),
    State::new("unreadable", "stitches=12z&yarn=medium&end=long&measured_used=40"),
    State::new("extreme", "stitches=100000&yarn=jumbo&needle=50&second=50"),
];
