//! The named states of shaping.

use crate::tool::State;

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "amount=18&rows=66"),
    State::new(
        "sleeve",
        "ask=reach&amount=84&rows=96&stitches=56&knitting=round&increase=kfb&first=",
    ),
    State::new(
        "any-row",
        "amount=13&rows=40&stitches=15&edge=3&rest=fewer&sides=any&first=2",
    ),
    State::new("mixed", "amount=24&rows=80&order=mixed"),
    State::new("one-edge", "amount=8&rows=16&each=1"),
    State::new("cramped", "amount=75&rows=80&stitches=80&edge=3&rest=fewer"),
    State::new("once", "ask=gain&amount=2&rows=12"),
    State::new("impossible", "amount=80&rows=66"),
    State::new("no-count", "ask=reach&amount=40&rows=66"),
    State::new("unreadable", "amount=18 cm&rows=many&each=0"),
    State::new("extreme", "ask=gain&amount=9998&rows=10000&order=mixed&sides=any"),
];
