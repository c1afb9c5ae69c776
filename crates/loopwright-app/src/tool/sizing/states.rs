//! The named states: each branch of the answer once.

use crate::tool::State;

const FINISHED: (&str, &str) = ("sizes", "XS 85, S 91, M 97, L 103, XL 111");
const TO_FIT: (&str, &str) = ("sizes", "S 81-86, M 91-97, L 102-107");
const GARMENT: (&str, &str) = ("listed", "garment");
const BODY: (&str, &str) = ("listed", "body");

macro_rules! states {
    ($($name:literal: $($field:expr),*;)*) => {
        /// The named states.
        pub const STATES: &[State] = &[$(State::new($name, &[$($field),*])),*];
    };
}

states! {
    "empty": ;
    "which-measure": ("bust", "91"), FINISHED;
    "filled": ("bust", "91"), FINISHED, GARMENT;
    "to-fit": ("bust", "94"), TO_FIT, BODY;
    "to-fit-between": ("bust", "88"), TO_FIT, BODY;
    "to-fit-with-stitches": ("bust", "94"), TO_FIT, BODY, ("stitches", "184 (204, 228)"), ("pattern_stitches", "20");
    "beyond": ("bust", "130"), TO_FIT, BODY;
    "tie": ("bust", "86.5"), FINISHED, GARMENT;
    "tie-drapes": ("bust", "86.5"), FINISHED, GARMENT, ("cloth", "drapes");
    "own-ease": ("bust", "91"), FINISHED, GARMENT, ("fit", "ease"), ("ease", "-6");
    "too-tight": ("bust", "112"), FINISHED, GARMENT, ("fit", "more"), ("percent", "-15%");
    "own-gauge": ("bust", "91"), FINISHED, GARMENT, ("pattern_stitches", "22"), ("pattern_rows", "30"),
        ("own_stitches", "20.5"), ("own_rows", "29"), ("stitches", "188 (200, 214, 226, 244)");
    "numbers-only": ("bust", "36 in"), ("sizes", "34 (36½, 38, 41)\""), GARMENT;
    "as-she-measures": ("bust", "91"), FINISHED, GARMENT, ("fit", "ease"), ("ease", "0");
    "both-lists": ("bust", "91"), ("sizes", "Size 8 10 12\nTo fit bust 86 91 97\nFinished bust 97 103 111"), GARMENT;
    "small-bust": ("bust", "36"), FINISHED, GARMENT;
    "one-size": ("bust", "91"), ("sizes", "One size 120"), GARMENT;
    "high-bust": ("bust", "104"), FINISHED, GARMENT, ("high_bust", "94");
    "wrap": ("bust", "91"), ("sizes", "S 130, M 145, L 160"), GARMENT, ("garment", "wrap"),
        ("neck", "56");
    "wrap-binds": ("bust", "110"), ("sizes", "S 130, M 145, L 160"), GARMENT, ("garment", "wrap"), ("round", "172"),
        ("neck", "50"), ("head", "57");
    "wrap-to-fit": ("bust", "91"), TO_FIT, BODY, ("garment", "wrap"), ("neck", "60");
    "impossible": ("bust", "3"), FINISHED, GARMENT;
    "unreadable": ("bust", "91"), ("sizes", "S 86-91, M ?, L 97-102"), BODY, ("own_rows", "28");
    "too-far": ("bust", "300"), FINISHED, GARMENT, ("fit", "more"), ("percent", "200");
    "extreme": ("bust", "300"), GARMENT, ("fit", "more"), ("percent", "60"),
        ("sizes", "A very long name 80, 86, 92, 98, 104, 112, 120, 128, 136, 144, 152, 220");
}
