//! The named states: each branch of the answer once.

use crate::tool::State;

/// The named states.
pub const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new("which-measure", "bust=91&sizes=XS 85, S 91, M 97, L 103, XL 111"),
    State::new(
        "filled",
        "bust=91&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment",
    ),
    State::new("to-fit", "bust=94&sizes=S 81-86, M 91-97, L 102-107&listed=body"),
    State::new(
        "to-fit-between",
        "bust=88&sizes=S 81-86, M 91-97, L 102-107&listed=body",
    ),
    State::new(
        "to-fit-with-stitches",
        "bust=94&sizes=S 81-86, M 91-97, L 102-107&listed=body&stitches=184 (204, 228)&pattern_stitches=20",
    ),
    State::new(
        "standard-list",
        "bust=94&sizes=XXS: 66-74, XS: 74-82, S: 82-90, M: 90-98, L: 98-107, XL: 107-119, XXL: 119-131, 3XL: 131-143&listed=body",
    ),
    State::new(
        "to-fit-on-the-edge",
        "bust=96.5&sizes=34-36 (38-40, 42-44) in&listed=body",
    ),
    State::new("beyond", "bust=130&sizes=S 81-86, M 91-97, L 102-107&listed=body"),
    State::new("tie", "bust=86.5&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment"),
    State::new(
        "tie-drapes",
        "bust=86.5&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment&cloth=drapes",
    ),
    State::new(
        "own-ease",
        "bust=91&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment&fit=ease&ease=-6",
    ),
    State::new(
        "too-tight",
        "bust=112&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment&fit=more&percent=-15%",
    ),
    State::new(
        "own-gauge",
        "bust=91&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment&pattern_stitches=22&pattern_rows=30&own_stitches=20.5&own_rows=29&stitches=188 (200, 214, 226, 244)",
    ),
    State::new("numbers-only", "bust=36 in&sizes=34 (36½, 38, 41)\"&listed=garment"),
    State::new(
        "as-she-measures",
        "bust=91&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment&fit=ease&ease=0",
    ),
    State::new(
        "both-lists",
        "bust=91&sizes=Size 8 10 12\nTo fit bust 86 91 97\nFinished bust 97 103 111&listed=garment",
    ),
    State::new(
        "small-bust",
        "bust=36&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment",
    ),
    State::new("one-size", "bust=91&sizes=One size 120&listed=garment"),
    State::new(
        "high-bust",
        "bust=104&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment&high_bust=94",
    ),
    State::new(
        "wrap",
        "bust=91&sizes=S 130, M 145, L 160&listed=garment&garment=wrap&neck=56",
    ),
    State::new(
        "wrap-binds",
        "bust=110&sizes=S 130, M 145, L 160&listed=garment&garment=wrap&round=172&neck=50&head=57",
    ),
    State::new(
        "wrap-to-fit",
        "bust=91&sizes=S 81-86, M 91-97, L 102-107&listed=body&garment=wrap&neck=60",
    ),
    State::new(
        "impossible",
        "bust=3&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment",
    ),
    State::new(
        "unreadable",
        "bust=91&sizes=S 86-91, M ?, L 97-102&listed=body&own_rows=28",
    ),
    State::new("left-over", "bust=96.5&sizes=81: (86, 91, 97)&listed=body"),
    State::new(
        "too-far",
        "bust=300&sizes=XS 85, S 91, M 97, L 103, XL 111&listed=garment&fit=more&percent=200",
    ),
    State::new(
        "extreme",
        "bust=300&listed=garment&fit=more&percent=60&sizes=A very long name 80, 86, 92, 98, 104, 112, 120, 128, 136, 144, 152, 220",
    ),
];
