//! The words of the fields of yarn needed.

use crate::words::Worded;
use loopwright::fabric::Fabric;
use loopwright::yarn::{
    Beginning, Counted, Ending, Name, Presence, RestKind, SectionName, ShapeKind, Source, SwatchKind,
};

pub const WORK_FROM: &str = "Work it out from";
pub const I_KNIT: &str = "I knit";
pub const TIMES: &str = "×";
pub const OF: &str = "of";
pub const WITH_YARN: &str = "with yarn or colour number";
pub const FROM: &str = "from";
pub const TO: &str = "to";
pub const STITCHES: &str = "stitches";
pub const STITCHES_OVER: &str = "stitches over";
pub const STITCHES_IN_ALL: &str = "stitches in all";
pub const ROWS: &str = "rows";
pub const EXAMPLE_NAME: &str = "front";
pub const ADD: &str = "Add a section";
pub const BRING_BACK: &str = "Bring back what I took out";
pub const TAKE_OUT: &str = "Take it out";
pub const I: &str = "I";
pub const A_SWATCH_OF: &str = "a swatch of";
pub const THE_PATTERN_ASKS: &str = "The pattern asks for";
pub const BALLS: &str = "balls";
pub const TAKE_STOCKINETTE: &str = "Type a stockinette gauge";
pub const TAKE_WEIGHED: &str = "Weigh a swatch";

/// What a field is called that belongs to no section.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::From => "From",
        Name::Balls => "Balls",
        Name::PatternLength => "On the pattern's ball",
        Name::PatternMass => "The pattern's ball weighs, if you know",
        Name::Length => "Yarn the pattern asks for",
        Name::Sections => "All sections",
        Name::Measured => "A measured piece",
        Name::By => "Measured or weighed",
        Name::SwatchFabric => "Fabric of the swatch",
        Name::Swatch => "The swatch",
        Name::SwatchStitches | Name::OwnStitches => "Its stitches",
        Name::SwatchRows | Name::OwnRows => "Its rows",
        Name::WeighedStitches => "Stitches in the swatch",
        Name::WeighedRows => "Rows in the swatch",
        Name::SwatchMass => "It weighs",
        Name::Rest => "The swatch was",
        Name::Pinned => "How much larger each way, pinned out, in percent",
        Name::BallLength => "On the ball I buy",
        Name::BallMass => ball_mass_label(true),
        Name::Reserve => "Reserve for mistakes, in percent",
        Name::CountSwatch => "Count the swatch in",
        Name::CountJoins => "Count the ends at each new ball",
        Name::Seams => "All seams together",
        Name::Other => "Other yarn, such as fringe",
    }
}

/// What the weight of the ball is called: without a weighed swatch it may stay out.
pub const fn ball_mass_label(is_needed: bool) -> &'static str {
    if is_needed {
        "That ball weighs"
    } else {
        "That ball weighs, if you know"
    }
}

/// What a field of a section is called.
pub const fn section_label(name: SectionName) -> &'static str {
    match name {
        SectionName::On => "In the piece",
        SectionName::Shape => "Shape",
        SectionName::Stitches => "Stitches",
        SectionName::To => "Stitches at the end",
        SectionName::Rows => "Rows",
        SectionName::Width => "Its width",
        SectionName::Length => "Its length",
        SectionName::Fabric => "Fabric",
        SectionName::Times => "Worked how often",
        SectionName::CastOn => "It begins with",
        SectionName::BindOff => "It ends with",
        SectionName::Name => "called",
        SectionName::Yarn => "Number of the yarn or colour",
    }
}

impl Worded for Source {
    fn words(self) -> &'static str {
        match self {
            Self::Piece => "what I knit",
            Self::Balls => "a pattern's balls",
            Self::Length => "a pattern's length",
        }
    }
}

impl Worded for Presence {
    fn words(self) -> &'static str {
        match self {
            Self::In => "yes",
            Self::Out => "no",
        }
    }
}

impl Worded for ShapeKind {
    fn words(self) -> &'static str {
        match self {
            Self::Straight => "a straight piece",
            Self::Tapered => "a tapered piece",
            Self::Measured => "a measured piece",
            Self::Summed => "stitches I summed",
        }
    }
}

impl Worded for Beginning {
    fn words(self) -> &'static str {
        match self {
            Self::CastOn => "a cast-on",
            Self::Live => "live stitches",
        }
    }
}

/// How a section begins that comes after another.
pub const fn beginning_after(beginning: Beginning) -> &'static str {
    match beginning {
        Beginning::CastOn => "a cast-on",
        Beginning::Live => "live stitches of the one before",
    }
}

impl Worded for Ending {
    fn words(self) -> &'static str {
        match self {
            Self::Plain => "a plain bind-off",
            Self::Elastic => "a stretchy bind-off",
            Self::ICord => "an i-cord bind-off",
            Self::Live => "live stitches, not bound off",
        }
    }
}

impl Worded for SwatchKind {
    fn words(self) -> &'static str {
        match self {
            Self::Measured => "measured",
            Self::Weighed => "weighed",
        }
    }
}

impl Worded for RestKind {
    fn words(self) -> &'static str {
        match self {
            Self::Washed => "washed and dried flat",
            Self::Unwashed => "not washed",
            Self::PinnedOut => "pinned out",
        }
    }
}

impl Worded for Counted {
    fn words(self) -> &'static str {
        match self {
            Self::In => "yes",
            Self::Out => "no",
        }
    }
}

impl Worded for Fabric {
    fn words(self) -> &'static str {
        match self {
            Self::Stockinette => "stockinette",
            Self::Garter => "garter",
            Self::Rib => "rib",
            Self::Cable => "cables",
            Self::Lace => "lace",
            Self::Stranded => "two colours",
        }
    }
}
