//! The named states. Every text in them, in the files beside this one, is invented for this page.

use crate::tool::State;

/// A short pattern, and the fields behind it.
macro_rules! pattern {
    ($more:literal) => {
        concat!("pattern_text=", include_str!("pullover.txt"), $more)
    };
}

/// Lines that could be something else.
macro_rules! doubtful {
    ($more:literal) => {
        concat!("pattern_text=", include_str!("doubtful.txt"), $more)
    };
}

/// Twelve sizes, in every way that lists are printed.
const MANY: &str = concat!("pattern_text=", include_str!("many.txt"), "&size=12");

/// All of them.
pub const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("pasted", pattern!("")),
    State::new("filled", pattern!("&size=3")),
    State::new("no-step", pattern!("&size=1")),
    State::new("only", pattern!("&size=4&show=only")),
    State::new("printed", pattern!("&size=3&show=all")),
    State::new("kept", pattern!("&size=3&keep=device")),
    State::new("doubtful", doubtful!("&size=2")),
    State::new(
        "decided",
        doubtful!("&size=2&decided=2%3D2 0 0 Work 6 (7) rnds.%0Alist 0 0 Purl 12 (10, 14) sts."),
    ),
    State::new("choosing", pattern!("&size=3&next=4")),
    State::new(
        "by-part",
        pattern!("&size=3&other_sizes=4 0 Sleeve%0A2 0 Neck%0A1 0 Hood"),
    ),
    State::new("many", MANY),
    State::new("unreadable", "pattern_text=Cast on 96 (108, 120) sts.%0AKnit."),
    State::new("impossible", "pattern_text=Size: one%0ACast on 96 sts."),
    State::new("extreme", MANY),
];
