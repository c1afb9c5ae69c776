//! The named states. Every text in them is invented for this page.

use crate::tool::State;

/// A short pattern, and the fields behind it.
macro_rules! pattern {
    ($more:literal) => {
        concat!(
            "pattern_text=Hedge pullover, invented to try this page%0A",
            "Sizes: XS (S, M, L, XL)%0A",
            "Finished bust: 85 (91, 97, 103, 111) cm%0A",
            "%0A",
            "Body%0A",
            "Cast on 160 (172, 184, 196, 212) sts and join in the round.%0A",
            "Rnd 1: *K2, p2; rep from * to end.%0A",
            "Work 8 (8, 9, 9, 10) rnds in rib.%0A",
            "Dec 8 sts evenly: 152 (164, 176, 188, 204) sts.%0A",
            "Sizes L and XL only: knit 4 more rnds.%0A",
            "%0A",
            "Sleeve%0A",
            "Cast on 40 (44, 44, 48, 52) sts.%0A",
            "Inc every 8th rnd 6 (7, 7, 9, 10) times.%0A",
            "Work even until it is 44 (44, 45, 46, 46) cm long.%0A",
            "%0A",
            "Neck%0A",
            "Bind off 30 (32, 32, 34, 36) sts.%0A",
            "Bind off - (-, 2, 4, 6) sts on each side.",
            $more
        )
    };
}

/// Lines that could be something else.
macro_rules! doubtful {
    ($more:literal) => {
        concat!(
            "pattern_text=A few doubtful lines, invented to try this page%0A",
            "Sizes: S (M, L)%0A",
            "Cast on 96 (108, 120) sts.%0A",
            "Work 6 (7) rnds.%0A",
            "Work 6 (7, 8, 9) rnds.%0A",
            "Knit to 40 (4, 44) cm.%0A",
            "Purl 12 (10, 14) sts.%0A",
            "Bind off 30 (32, 34) sts.",
            $more
        )
    };
}

/// Twelve sizes, in every way that lists are printed.
const MANY: &str = concat!(
    "pattern_text=Twelve sizes, invented to try this page%0A",
    "Sizes: 1 (2, 3, 4, 5, 6) (7, 8, 9, 10, 11, 12)%0A",
    "Cast on 80 (88, 96, 104, 112, 120) (128, 136, 144, 152, 160, 168) sts.%0A",
    "Work 10/10/12/12/14/14/16/16/18/18/20/20 rows.%0A",
    "Inc 4:4:5:5:6:6:7:7:8:8:9:9 sts in the next row, without a word between the numbers and as long a line as a ",
    "knitter may find in a pattern that somebody wrote in one go late at night.%0A",
    "Work until it is 30 (31, 32, 33, 34, 35) (36, 37, 38, 39, 40, 41) cm long.%0A",
    "Bind off 20 (20, 22, 22, 24, 24) (26, 26, 28, 28, 30, 30) sts.",
    "&size=12"
);

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
