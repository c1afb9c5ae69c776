//! The named states of the tail.

use crate::tool::State;

type Fields = &'static [(&'static str, &'static str)];

const fn state(name: &'static str, fields: Fields) -> State {
    State { name, fields }
}

/// The named states.
pub const STATES: &[State] = &[
    state("empty", &[]),
    state("filled", &[("stitches", "120"), ("yarn", "medium")]),
    state(
        "three-ways",
        &[
            ("stitches", "120"),
            ("yarn", "medium"),
            ("needle", "5"),
            ("width", "60"),
            ("measured_stitches", "20"),
            ("measured_used", "44"),
        ],
    ),
    state(
        "few-measured",
        &[
            ("stitches", "96"),
            ("wraps", "9"),
            ("needle", "4"),
            ("second", "4"),
            ("measured_stitches", "10"),
            ("measured_used", "17"),
        ],
    ),
    state(
        "twisted",
        &[
            ("stitches", "64"),
            ("method", "twisted"),
            ("yarn", "super fine"),
            ("needle", "2.5"),
        ],
    ),
    state("cable", &[("stitches", "80"), ("method", "cable")]),
    state("tubular", &[("stitches", "81"), ("method", "tubular")]),
    state("two-strands", &[("stitches", "300"), ("method", "two strands")]),
    state(
        "tight",
        &[
            ("stitches", "120"),
            ("yarn", "medium"),
            ("left_tail", "1.25"),
            ("left_to_go", "40"),
        ],
    ),
    state(
        "short",
        &[
            ("stitches", "120"),
            ("yarn", "medium"),
            ("left_tail", "0.9"),
            ("left_to_go", "40"),
        ],
    ),
    state(
        "impossible",
        &[
            ("stitches", "120"),
            ("yarn", "medium"),
            ("wraps", "300"),
            ("left_tail", "1"),
            ("left_to_go", "121"),
        ],
    ),
    state(
        "unreadable",
        &[
            ("stitches", "12z"),
            ("yarn", "medium"),
            ("end", "long"),
            ("measured_used", "40"),
        ],
    ),
    state(
        "extreme",
        &[
            ("stitches", "100000"),
            ("yarn", "jumbo"),
            ("needle", "50"),
            ("second", "50"),
        ],
    ),
];
