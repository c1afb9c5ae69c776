//! The words about what is known of a project.

pub const TITLE: &str = "What you know";

pub const SWATCH: &str = "The swatch before it was washed";
pub const BODY: &str = "More of the body";
pub const PATTERN: &str = "The pattern";
pub const KIT: &str = "Cords in your kit";
pub const YARN: &str = "The ball";

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
