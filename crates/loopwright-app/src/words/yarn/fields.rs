//! The words of the fields of yarn needed.

/// Before the choice of what it is worked out from.
pub const WORK_FROM: &str = "Work it out from";
/// The label of that choice.
pub const LABEL_FROM: &str = "From";
/// Before how often a section is worked.
pub const I_KNIT: &str = "I knit";
/// Between that and the choice of shape.
pub const TIMES: &str = "×";
/// The label of that choice.
pub const LABEL_SHAPE: &str = "Shape";
/// Before a fabric.
pub const OF: &str = "of";
/// The label of the choice of fabric.
pub const LABEL_FABRIC: &str = "Fabric";
/// Before the first count of a tapered piece.
pub const FROM: &str = "from";
/// Between its counts.
pub const TO: &str = "to";
/// After a count of stitches.
pub const STITCHES: &str = "stitches";
/// Between the counts of a tapered piece and its rows.
pub const STITCHES_OVER: &str = "stitches over";
/// After a number of stitches.
pub const STITCHES_IN_ALL: &str = "stitches in all";
/// After a number of rows.
pub const ROWS: &str = "rows";
/// The label of a count of stitches.
pub const LABEL_STITCHES: &str = "Stitches";
/// The label of the second count of a tapered piece.
pub const LABEL_TO: &str = "Stitches at the end";
/// The label of a count of rows.
pub const LABEL_ROWS: &str = "Rows";
/// The label of a measured width.
pub const LABEL_WIDTH: &str = "Its width";
/// The label of a measured length.
pub const LABEL_LENGTH: &str = "Its length";
/// What lies folded below a section.
pub const EDGES: &str = "How it begins and ends";
/// The label of how often a section is worked.
pub const LABEL_TIMES: &str = "Worked how often";
/// The label of the cast-on.
pub const LABEL_CAST_ON: &str = "It begins with";
/// The label of the bind-off.
pub const LABEL_BIND_OFF: &str = "It ends with";
/// Adds a section.
pub const ADD: &str = "Add a section";
/// Brings back one that was taken out.
pub const BRING_BACK: &str = "Bring back what I took out";
/// Takes a section out.
pub const TAKE_OUT: &str = "Take it out";
/// Before the choice of how the swatch was looked at.
pub const I: &str = "I";
/// The label of that choice.
pub const LABEL_BY: &str = "Measured or weighed";
/// Between that and the swatch's fabric.
pub const A_SWATCH_OF: &str = "a swatch of";
/// The label of the swatch's fabric.
pub const LABEL_SWATCH_FABRIC: &str = "Fabric of the swatch";
/// The label of the swatch's stitches.
pub const LABEL_SWATCH_STITCHES: &str = "Stitches in the swatch";
/// The label of the swatch's rows.
pub const LABEL_SWATCH_ROWS: &str = "Rows in the swatch";
/// The label of its gauge.
pub const LABEL_GAUGE_STITCHES: &str = "Its stitches";
/// The label of its gauge.
pub const LABEL_GAUGE_ROWS: &str = "Its rows";
/// The label of its weight.
pub const LABEL_SWATCH_MASS: &str = "It weighs";
/// The label of how it came to rest.
pub const LABEL_REST: &str = "The swatch was";
/// The label of how far it is pinned out.
pub const LABEL_PINNED: &str = "Larger each way than unpinned, in percent";
/// Before the pattern's balls.
pub const THE_PATTERN_ASKS: &str = "The pattern asks for";
/// After them.
pub const BALLS: &str = "balls";
/// The label of the pattern's balls.
pub const LABEL_BALLS: &str = "Balls";
/// The label of the pattern's length.
pub const LABEL_STATED: &str = "Yarn the pattern asks for";
/// The label of the pattern's ball.
pub const LABEL_PATTERN_LENGTH: &str = "On the pattern's ball";
/// The label of its weight.
pub const LABEL_PATTERN_MASS: &str = "The pattern's ball weighs";
/// The label of the ball.
pub const LABEL_BALL_LENGTH: &str = "On the ball I buy";
/// The label of its weight.
pub const LABEL_BALL_MASS: &str = "That ball weighs";
/// The label of the reserve.
pub const LABEL_RESERVE: &str = "Reserve for mistakes, in percent";
/// The label of the swatch's yarn.
pub const LABEL_COUNT_SWATCH: &str = "Count the swatch in";
/// The label of the ends.
pub const LABEL_COUNT_JOINS: &str = "Count the ends at each new ball";
/// The label of the seams.
pub const LABEL_SEAMS: &str = "All seams together";
/// The label of other yarn.
pub const LABEL_OTHER: &str = "Other yarn, such as fringe";
/// Takes a stockinette gauge instead.
pub const TAKE_STOCKINETTE: &str = "Type a stockinette gauge";
/// Takes a weighed swatch instead.
pub const TAKE_WEIGHED: &str = "Weigh a swatch";

/// What it is worked out from, by the key it is stored under.
pub const FROMS: [(&str, &str); 3] = [
    ("stitches", "what I knit"),
    ("balls", "a pattern's balls"),
    ("length", "a pattern's length"),
];
/// The shapes.
pub const SHAPES: [(&str, &str); 4] = [
    ("straight", "a straight piece"),
    ("taper", "a tapered piece"),
    ("measured", "a measured piece"),
    ("sum", "stitches I summed"),
];
/// How the swatch was looked at.
pub const BYS: [(&str, &str); 2] = [("gauge", "measured"), ("weighed", "weighed")];
/// How it came to rest.
pub const RESTS: [(&str, &str); 3] = [
    ("washed", "washed and dried flat"),
    ("unwashed", "not washed"),
    ("pinned", "pinned out"),
];
/// Yes, from the start.
pub const YES: [(&str, &str); 2] = [("yes", "yes"), ("no", "no")];
/// How a section begins.
pub const CAST_ONS: [(&str, &str); 2] = [("yes", "a cast-on"), ("no", "live stitches")];
/// How one begins that comes after another: it goes on.
pub const GOES_ON: [(&str, &str); 2] = [("no", "live stitches of the one before"), ("yes", "a cast-on")];
/// How it ends.
pub const BIND_OFFS: [(&str, &str); 4] = [
    ("plain", "a plain bind-off"),
    ("elastic", "a stretchy bind-off"),
    ("icord", "an i-cord bind-off"),
    ("no", "live stitches"),
];

/// The fabrics.
pub const FABRICS: [(&str, &str); 6] = [
    ("stockinette", "stockinette"),
    ("garter", "garter"),
    ("rib", "rib"),
    ("cable", "cables"),
    ("lace", "lace"),
    ("stranded", "two colours"),
];
