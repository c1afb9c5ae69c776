//! What stands where among the fields of yarn needed, as tables.

use crate::words::yarn as words;

/// One thing in a line or a list of fields.
pub struct Item {
    /// What it is.
    pub what: What,
    /// The field's name; in a section, the name it has in every section. For words, the words.
    pub name: &'static str,
    /// What the field is called.
    pub label: &'static str,
    /// What stands in it from the start.
    pub start: &'static str,
}

type Keyed = &'static [(&'static str, &'static str)];

/// What it is.
#[derive(Clone, Copy)]
pub enum What {
    /// Words of the sentence.
    Word,
    /// A number inside a sentence.
    Number,
    /// A number with its label.
    Labelled,
    /// A choice inside a sentence.
    Choice(Keyed),
    /// A choice with its label.
    Chosen(Keyed),
    /// A length of a tape.
    Tape,
    /// A length of yarn.
    Yarn,
    /// A weight.
    Weight,
}

const fn item(what: What, name: &'static str, label: &'static str, start: &'static str) -> Item {
    Item {
        what,
        name,
        label,
        start,
    }
}

const fn word(words: &'static str) -> Item {
    item(What::Word, words, "", "")
}

const fn number(name: &'static str, label: &'static str) -> Item {
    item(What::Number, name, label, "")
}

/// What it is worked out from.
pub const FROM: &[Item] = &[
    word(words::WORK_FROM),
    item(What::Choice(&words::FROMS), "from", words::LABEL_FROM, ""),
];
/// The pattern's balls.
pub const PATTERN: &[Item] = &[
    word(words::THE_PATTERN_ASKS),
    number("balls", words::LABEL_BALLS),
    word(words::BALLS),
];
/// The pattern's ball.
pub const PATTERN_BALL: &[Item] = &[
    item(What::Yarn, "pattern_length", words::LABEL_PATTERN_LENGTH, "125"),
    item(What::Weight, "pattern_mass", words::LABEL_PATTERN_MASS, "50"),
];
/// The pattern's length.
pub const STATED: &[Item] = &[item(What::Yarn, "length", words::LABEL_STATED, "")];
/// The ball that is bought.
pub const BALL: &[Item] = &[
    item(What::Yarn, "ball_length", words::LABEL_BALL_LENGTH, "125"),
    item(What::Weight, "ball_mass", words::LABEL_BALL_MASS, "50"),
];
/// How often a section is worked, its shape and its fabric.
pub const KNIT: &[Item] = &[
    word(words::I_KNIT),
    item(What::Number, "times", words::LABEL_TIMES, "1"),
    word(words::TIMES),
    item(What::Choice(&words::SHAPES), "shape", words::LABEL_SHAPE, ""),
    word(words::OF),
    item(What::Choice(&words::FABRICS), "fabric", words::LABEL_FABRIC, ""),
];
/// A straight section.
pub const STRAIGHT: &[Item] = &[
    number("stitches", words::LABEL_STITCHES),
    word(words::STITCHES),
    number("rows", words::LABEL_ROWS),
    word(words::ROWS),
];
/// A tapered one.
pub const TAPERED: &[Item] = &[
    word(words::FROM),
    number("stitches", words::LABEL_STITCHES),
    word(words::TO),
    number("to", words::LABEL_TO),
    word(words::STITCHES_OVER),
    number("rows", words::LABEL_ROWS),
    word(words::ROWS),
];
/// A measured one.
pub const MEASURED: &[Item] = &[
    item(What::Tape, "width", words::LABEL_WIDTH, ""),
    item(What::Tape, "length", words::LABEL_LENGTH, ""),
];
/// One whose stitches were summed.
pub const SUMMED: &[Item] = &[number("stitches", words::LABEL_STITCHES), word(words::STITCHES_IN_ALL)];
/// How the first section begins.
pub const BEGINS: &[Item] = &[item(
    What::Chosen(&words::CAST_ONS),
    "cast_on",
    words::LABEL_CAST_ON,
    "",
)];
/// How one after it begins.
pub const GOES_ON: &[Item] = &[item(What::Chosen(&words::GOES_ON), "cast_on", words::LABEL_CAST_ON, "")];
/// How a section ends.
pub const ENDS: &[Item] = &[item(
    What::Chosen(&words::BIND_OFFS),
    "bind_off",
    words::LABEL_BIND_OFF,
    "",
)];
/// How the swatch was looked at.
pub const SWATCH: &[Item] = &[
    word(words::I),
    item(What::Choice(&words::BYS), "by", words::LABEL_BY, ""),
    word(words::A_SWATCH_OF),
    item(
        What::Choice(&words::FABRICS),
        "swatch_fabric",
        words::LABEL_SWATCH_FABRIC,
        "",
    ),
];
/// A weighed swatch.
pub const SWATCH_COUNTS: &[Item] = &[
    number("w_stitches", words::LABEL_SWATCH_STITCHES),
    word(words::STITCHES),
    number("w_rows", words::LABEL_SWATCH_ROWS),
    word(words::ROWS),
];
/// Its weight.
pub const SWATCH_MASS: &[Item] = &[item(What::Weight, "swatch_mass", words::LABEL_SWATCH_MASS, "")];
/// How the swatch came to rest; the second only for one that is pinned out.
pub const REST: &[Item] = &[
    item(What::Chosen(&words::RESTS), "rest", words::LABEL_REST, ""),
    item(What::Labelled, "pinned", words::LABEL_PINNED, "25"),
];
/// A pattern's figure has its reserve in it.
pub const RESERVE: &[Item] = &[item(What::Labelled, "reserve", words::LABEL_RESERVE, "0")];
/// What takes yarn beside the knitting.
pub const EXTRAS: &[Item] = &[
    item(What::Labelled, "reserve", words::LABEL_RESERVE, "10"),
    item(What::Chosen(&words::YES), "count_swatch", words::LABEL_COUNT_SWATCH, ""),
    item(What::Chosen(&words::YES), "count_joins", words::LABEL_COUNT_JOINS, ""),
    item(What::Tape, "seams", words::LABEL_SEAMS, "0"),
    item(What::Yarn, "other", words::LABEL_OTHER, "0"),
];

/// The fields that lie folded away.
pub const FOLDED: &[&str] = &["reserve", "seams", "other"];
