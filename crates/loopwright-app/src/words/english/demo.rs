//! The words of the example: what its project, its parts and its steps are called.

pub const NAME: &str = "Invented pullover";

pub const BEFORE: &str = "Before casting on";
pub const SWATCH: &str = "Swatch";
pub const SIZE: &str = "Size";
pub const BELOW: &str = "Stitches below the yoke";
pub const BODY_STITCHES: &str = "Body stitches for the size";
pub const WRIST: &str = "Wrist";

pub const NECKBAND: &str = "Neckband";
pub const NECK: &str = "Neck, cast on";
pub const TAIL: &str = "Tail for the neck";

pub const YOKE: &str = "Yoke";
pub const DEPTH: &str = "Depth of the yoke";
pub const CORDS: &str = "Cords through the yoke";

pub const BODY: &str = "Body";
pub const BODY_LENGTH: &str = "Body down to the hem";

pub const SLEEVE: &str = "Sleeves";
pub const SLEEVE_LENGTH: &str = "Length of a sleeve";
pub const SLEEVE_SHAPING: &str = "Sleeve decreases";

pub const FRONT: &str = "Front";
pub const ARMHOLE: &str = "Armhole";
pub const FRONT_NECK: &str = "Neck";
pub const TO_THE_SHOULDER: &str = "Up to the shoulder";

pub const AT_THE_END: &str = "At the shop";
pub const YARN: &str = "Yarn for all of it";
