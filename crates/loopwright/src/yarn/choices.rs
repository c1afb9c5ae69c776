//! The names of the fields by which the yarn is asked for, and what can be chosen in them.

use super::BindOff;
use crate::fabric::Fabric;

/// A field of the question that belongs to no section, or a place for what is wrong with several fields together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// What it is worked out from.
    From,
    /// Balls that the pattern asks for.
    Balls,
    /// Yarn on the pattern's ball.
    PatternLength,
    /// What the pattern's ball weighs.
    PatternMass,
    /// Yarn that the pattern asks for.
    Length,
    /// All sections together.
    Sections,
    /// A section that is measured, and the swatch that is to be measured for it.
    Measured,
    /// Whether the swatch was measured or weighed.
    By,
    /// What the swatch is knitted in.
    SwatchFabric,
    /// The swatch as what the sections are worked out from.
    Swatch,
    /// Stitches of a stockinette gauge.
    SwatchStitches,
    /// Rows of a stockinette gauge.
    SwatchRows,
    /// Stitches of a gauge in another fabric.
    OwnStitches,
    /// Rows of a gauge in another fabric.
    OwnRows,
    /// Stitches of a weighed swatch.
    WeighedStitches,
    /// Rows of a weighed swatch.
    WeighedRows,
    /// What the swatch weighs.
    SwatchMass,
    /// How the swatch came to rest.
    Rest,
    /// How much larger it is pinned out.
    Pinned,
    /// Yarn on the ball that is bought.
    BallLength,
    /// What that ball weighs.
    BallMass,
    /// Reserve for mistakes.
    Reserve,
    /// Whether the swatch is knitted from the same balls.
    CountSwatch,
    /// Whether ends are left at each change of ball.
    CountJoins,
    /// Length of all seams.
    Seams,
    /// Any other yarn.
    Other,
}

crate::field_names!(Name {
    From = "from",
    Balls = "balls",
    PatternLength = "pattern_length",
    PatternMass = "pattern_mass",
    Length = "length",
    Sections = "sections",
    Measured = "measured",
    By = "by",
    SwatchFabric = "swatch_fabric",
    Swatch = "swatch",
    SwatchStitches = "swatch_stitches",
    SwatchRows = "swatch_rows",
    OwnStitches = "own_stitches",
    OwnRows = "own_rows",
    WeighedStitches = "w_stitches",
    WeighedRows = "w_rows",
    SwatchMass = "swatch_mass",
    Rest = "rest",
    Pinned = "pinned",
    BallLength = "ball_length",
    BallMass = "ball_mass",
    Reserve = "reserve",
    CountSwatch = "count_swatch",
    CountJoins = "count_joins",
    Seams = "seams",
    Other = "other",
});

impl Name {
    /// The stitches and the rows of a gauge in this fabric. Stockinette has its own, so that no other fabric's figures
    /// are taken for it.
    pub const fn gauge_in(fabric: Fabric) -> [Self; 2] {
        match fabric {
            Fabric::Stockinette => [Self::SwatchStitches, Self::SwatchRows],
            Fabric::Garter | Fabric::Rib | Fabric::Cable | Fabric::Lace | Fabric::Stranded => {
                [Self::OwnStitches, Self::OwnRows]
            }
        }
    }
}

/// A field that every section has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SectionName {
    /// Whether the section is in the piece.
    On,
    /// How it is measured out in stitches.
    Shape,
    /// Stitches at the beginning, or all of them.
    Stitches,
    /// Stitches at the end.
    To,
    /// How many rows.
    Rows,
    /// How wide.
    Width,
    /// How long.
    Length,
    /// What is knitted.
    Fabric,
    /// How often it is worked.
    Times,
    /// How it begins.
    CastOn,
    /// How it ends.
    BindOff,
    /// What she calls it.
    Name,
    /// Which yarn it is knitted with.
    Yarn,
}

crate::field_names!(SectionName in "sections" stored "s" {
    On = "on",
    Shape = "shape",
    Stitches = "stitches",
    To = "to",
    Rows = "rows",
    Width = "width",
    Length = "length",
    Fabric = "fabric",
    Times = "times",
    CastOn = "cast_on",
    BindOff = "bind_off",
    Name = "name",
    Yarn = "yarn",
});

/// What the yarn is worked out from: an [`Ask`](super::Ask) without its figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Source {
    /// What is knitted.
    Piece,
    /// The balls that a pattern asks for.
    Balls,
    /// The length that a pattern asks for.
    Length,
}

crate::choice!(Source starts Piece { Piece = "stitches", Balls = "balls", Length = "length" });

/// Whether a section is in the piece. One that is taken out keeps what was typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Presence {
    /// In the piece.
    In,
    /// Taken out, or never put in.
    Out,
}

crate::choice!(Presence starts Out { In = "yes", Out = "no" });

/// How a section is measured out in stitches: a [`Shape`](super::Shape) without its figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShapeKind {
    /// As wide everywhere.
    Straight,
    /// Evenly wider or narrower from one end to the other.
    Tapered,
    /// Measured instead of counted.
    Measured,
    /// So many stitches.
    Summed,
}

crate::choice!(ShapeKind starts Straight {
    Straight = "straight",
    Tapered = "taper",
    Measured = "measured",
    Summed = "sum",
});

/// How a section begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Beginning {
    /// With a cast-on.
    CastOn,
    /// From live stitches.
    Live,
}

crate::choice!(Beginning starts CastOn { CastOn = "yes", Live = "no" });

/// How a section ends: a [`BindOff`], or none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// The plain chain.
    Plain,
    /// A bind-off that stretches.
    Elastic,
    /// An i-cord along the edge.
    ICord,
    /// With live stitches.
    Live,
}

// What was stored before is read with this start; the page asks, and starts with live stitches.
crate::choice!(Ending starts Plain { Plain = "plain", Elastic = "elastic", ICord = "icord", Live = "no" });

impl Ending {
    /// How it is bound off; not at all where the stitches stay live.
    pub const fn bind_off(self) -> Option<BindOff> {
        match self {
            Self::Plain => Some(BindOff::Plain),
            Self::Elastic => Some(BindOff::Elastic),
            Self::ICord => Some(BindOff::ICord),
            Self::Live => None,
        }
    }
}

/// How the swatch was looked at: a [`Swatch`](super::Swatch) without its figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SwatchKind {
    /// Measured for its gauge.
    Measured,
    /// Put on the scale.
    Weighed,
}

crate::choice!(SwatchKind starts Measured { Measured = "gauge", Weighed = "weighed" });

/// How the swatch came to rest: a [`Rest`](super::Rest) without its percent.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RestKind {
    /// Washed and dried flat.
    Washed,
    /// Not washed.
    Unwashed,
    /// Pinned out.
    PinnedOut,
}

crate::choice!(RestKind starts Washed { Washed = "washed", Unwashed = "unwashed", PinnedOut = "pinned" });

/// Whether something that takes yarn beside the knitting is counted in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Counted {
    /// Counted in.
    In,
    /// Left out.
    Out,
}

crate::choice!(Counted starts In { In = "yes", Out = "no" });
