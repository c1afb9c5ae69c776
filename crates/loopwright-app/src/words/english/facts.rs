//! The words about what is known of a project.

pub const TITLE: &str = "What you know";

pub const SWATCH: &str = "The swatch before it was washed";
pub const BODY: &str = "More of the body";
pub const PATTERN: &str = "The pattern";
pub const KIT: &str = "Needles and cords in your kit";
pub const YARN: &str = "The ball";
pub const COUNTS: &str = "Stitches of each part";

pub const GAUGE_STITCHES: &str = "Stitches in your washed swatch";
pub const GAUGE_ROWS: &str = "Rows in your washed swatch";
pub const BUST: &str = "Bust";
pub const NEEDLE: &str = "Needle";
pub const YARN_CLASS: &str = "Yarn class";
pub const CAST_ON: &str = "Stitches cast on";
pub const GAUGE_STITCHES_UNWASHED: &str = "Stitches before washing";
pub const GAUGE_ROWS_UNWASHED: &str = "Rows before washing";
pub const UPPER_ARM: &str = "Upper arm";
pub const HEAD: &str = "Head";
pub const SIZES: &str = "Sizes as the pattern lists them";
pub const EXAMPLE_SIZES: &str = "86 (94: 102: 110: 118)";
pub const PATTERN_STITCHES: &str = "Stitches of the pattern\u{2019}s gauge";
pub const PATTERN_ROWS: &str = "Rows of the pattern\u{2019}s gauge";
pub const CORDS: &str = "Lengths of the cords";
pub const EXAMPLE_CORDS: &str = "40, 60, 80, 100";
pub const TIP: &str = "Length of a tip";
pub const BALL_LENGTH: &str = "Yarn on a ball";
pub const BALL_MASS: &str = "Weight of a ball";
pub const BALL_PRICE: &str = "Price of a ball";
pub const EXAMPLE_PRICE: &str = "6.50";
pub const WRAPS: &str = "Wraps of the yarn in an inch";
pub const SHOULDER: &str = "Across the shoulders";
pub const WAIST_TO_UNDERARM: &str = "From the waist up to the underarm";
pub const CAST_ON_NEEDLE: &str = "Needle for the cast-on, if it is another one";
pub const GIRTH: &str = "Finished girth of your size";
pub const EDGE: &str = "Edge stitches, at each edge";
pub const MULTIPLE: &str = "Stitches of one repeat";
pub const NECK: &str = "Stitches at the neck";
pub const BODY_STITCHES: &str = "Stitches round the body, below the underarm";
pub const SLEEVE: &str = "Stitches round a sleeve, below the underarm";
pub const UNDERARM: &str = "Stitches cast on at each underarm";

// As short as they stand before a number: "body 206".
pub const CALLED_CAST_ON: &str = "cast-on";
pub const CALLED_NECK: &str = "neck";
pub const CALLED_BODY: &str = "body";
pub const CALLED_SLEEVE: &str = "sleeve";
pub const CALLED_UNDERARM: &str = "underarm";
pub const CALLED_GIRTH: &str = "finished girth";
pub const CALLED_EDGE: &str = "edge stitches";
pub const CALLED_MULTIPLE: &str = "repeat";

pub const OWN_COUNTS: &str = "Counts by a name of your own";
pub const OWN_WHY: &str =
    "For whatever else has its own number of stitches. The tools offer it by this name wherever they ask for stitches.";
pub const OWN_NAME: &str = "What do you call it?";
pub const OWN_NAME_EXAMPLE: &str = "hood";
pub const OWN_STITCHES: &str = "Stitches";
pub const ADD_COUNT: &str = "Add a count";
pub const TAKE_AWAY: &str = "Take away";
pub const NO_NAME: &str = "Give it a name, so that you know it again in the tools.";
pub const SAME_NAME: &str =
    "Another count here is called the same. The tools would show both, and only the number tells them apart.";

/// More counts than are shown.
pub fn more_counts(more: usize) -> String {
    match more {
        1 => "One more is kept, and not shown here.".into(),
        more => format!("{more} more are kept, and not shown here."),
    }
}

/// What is taken away.
pub fn taking_away(name: &str) -> String {
    format!("took away {name}")
}
