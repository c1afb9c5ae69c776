//! The named states of the flare.

use crate::tool::State;

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "neck=96&depth=30&gauge=21&row_gauge=28"),
    State::new("cone", "neck=96&depth=30&gauge=21&row_gauge=28&hem=girth&girth=120"),
    State::new("ruffle", "neck=96&depth=30&gauge=21&row_gauge=28&hem=girth&girth=3 m"),
    State::new(
        "tube",
        "neck=96&depth=12&gauge=21&row_gauge=28&hem=stitches&stitches=96",
    ),
    State::new(
        "scattered",
        "neck=96&depth=12&gauge=21&row_gauge=42&each=20&lines=scattered",
    ),
    State::new(
        "impossible",
        "neck=96&depth=20&gauge=21&row_gauge=28&hem=girth&girth=3 m&each=4",
    ),
    State::new(
        "once",
        "neck=96&depth=40&gauge=21&row_gauge=28&hem=stitches&stitches=104",
    ),
    State::new(
        "listed",
        "neck=96&depth=40&gauge=21&row_gauge=28&hem=stitches&stitches=624",
    ),
    State::new("multiple", "neck=97&depth=30&gauge=21&row_gauge=28&multiple=8"),
    State::new("unreadable", "neck=many&depth=deep&gauge=21 cm&multiple=0"),
    State::new("extreme", "neck=40000&depth=5 m&gauge=100&row_gauge=200"),
];
