//! The named states: lines of our own, made up.

use crate::tool::State;

const FILLED: &str = "pattern_text=Sizes: S (M, L)\n\
CO 42 (46, 50) sts.\n\
Row 1 (RS): K2, *k2, p2; rep from * to last 4 sts, k4.\n\
Row 2: P4, *k2, p2; rep from * to last 2 sts, p2.\n\
Rep rows 1-2 4 times more.\n\
Row 11: K3, (k2tog, yo) to last 3 sts, k3.\n\
Row 12: Purl.\n\
Row 13: K1, ssk, k to last 3 sts, k2tog, k1. 40 (44, 48) sts\n\
BO all sts.";

const RUNS_OUT: &str = "stitches=53&pattern_text=Row 1 (RS): K1, *k4, k2tog; rep from * 8 times more.\n\
Row 2: Purl.";

const LEFT_OVER: &str = "pattern_text=Sizes: S (M)\n\
CO 40 (42) sts, join in the round.\n\
Rnd 1: *K2, p2; rep from * to end.\n\
Rnd 2: K1, m1, k to end. 42 (44) sts";

const MANY: &str = "pattern_text=Sizes: 1 (2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12)\n\
CO 400 (404, 408, 412, 416, 420, 424, 428, 432, 436, 440, 441) sts, join in the round.\n\
Rnd 1: *K2, p2; rep from * to end.\n\
Rnd 2: (K4, p1) to end.\n\
Rnd 3: *K2tog, yo; rep from * to last st, k1.\n\
Rnd 4: Knit.";

/// The named states.
pub const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("filled", FILLED),
    State::new(
        "comes-out",
        "stitches=23&pattern_text=K2, *k2tog, yo; rep from * to last 3 sts, k3",
    ),
    State::new("left-over", LEFT_OVER),
    State::new("runs-out", RUNS_OUT),
    State::new(
        "doubtful",
        "stitches=20&pattern_text=Row 1: *K2tog, k3; rep from * 3 times.\nRow 2: BO 5, k to end.",
    ),
    State::new(
        "own-stitch",
        "stitches=20&own_stitches=bobbly uses 1 gives 3&pattern_text=K4, bobbly, k to end. 22 sts\nK to last 3 sts, wibble, k2.",
    ),
    State::new(
        "one-size",
        "size=2&pattern_text=Sizes: S (M)\nCO 20 (22) sts.\nRow 1: (K2, p2) to end.",
    ),
    State::new("many", MANY),
    State::new("missing", "pattern_text=K10, k2tog, k8"),
    State::new(
        "unreadable",
        "sizes=?&stitches=many&pattern_text=Materials: four balls of wool\nHave fun",
    ),
];
