//! The named states of yarn needed.

use crate::tool::State;

/// The named states.
pub const NAMED: &[State] = &[
    State::new("empty", ""),
    State::new(
        "filled",
        "s1_stitches=40&s1_rows=400&s1_fabric=garter&swatch_stitches=21&swatch_rows=28&ball_length=125&ball_mass=50&s1_bind_off=plain",
    ),
    State::new(
        "without-ball",
        "s1_stitches=40&s1_rows=400&s1_fabric=garter&swatch_stitches=21&swatch_rows=28&s1_bind_off=plain",
    ),
    State::new(
        "sections",
        "s1_stitches=110&s1_rows=120&s1_times=2&s1_name=front and back&s1_bind_off=plain&s2_on=yes&s2_name=sleeve&s2_cast_on=yes&s2_shape=taper&s2_stitches=31&s2_to=46&s2_rows=25&s3_on=yes&s3_stitches=90&s3_rows=8&s3_fabric=rib&s3_bind_off=elastic&swatch_stitches=21&swatch_rows=28&seams=300 cm&other=12&ball_length=125&ball_mass=50",
    ),
    State::new(
        "measured",
        "s1_shape=measured&s1_width=50&s1_length=180&swatch_stitches=21&swatch_rows=28&ball_length=125",
    ),
    State::new(
        "measured-otherwise",
        "s1_shape=measured&s1_fabric=garter&s1_width=50&s1_length=180&swatch_stitches=21&swatch_rows=28&ball_length=125&ball_mass=50",
    ),
    State::new(
        "weighed",
        "s1_stitches=200&s1_rows=150&by=weighed&w_stitches=40&w_rows=60&swatch_mass=12&ball_length=125&ball_mass=50",
    ),
    State::new(
        "needs-swatch",
        "s1_stitches=120&s1_rows=60&s1_fabric=rib&swatch_fabric=rib&own_stitches=34&own_rows=28&ball_length=125&ball_mass=50",
    ),
    State::new(
        "lace-pinned",
        "s1_stitches=61&s1_rows=500&s1_fabric=lace&swatch_fabric=lace&own_stitches=20&own_rows=28&rest=pinned&ball_length=125&ball_mass=50",
    ),
    State::new(
        "two-colours",
        "s1_shape=sum&s1_stitches=24640&s1_fabric=stranded&swatch_stitches=24&swatch_rows=32&rest=unwashed&ball_length=125&ball_mass=50",
    ),
    State::new(
        "two-yarns",
        "s1_stitches=40&s1_rows=400&s1_name=main&s2_on=yes&s2_stitches=40&s2_rows=120&s2_yarn=2&s2_name=stripe&s3_on=yes&s3_stitches=40&s3_rows=60&swatch_stitches=21&swatch_rows=28&ball_length=125&ball_mass=50",
    ),
    State::new(
        "balls",
        "from=balls&balls=7&pattern_length=125&pattern_mass=50&ball_length=210&ball_mass=50",
    ),
    State::new("just-over", "from=length&length=503&ball_length=125"),
    State::new("just-under", "from=length&length=750&ball_length=125"),
    State::new(
        "unreadable",
        "s1_stitches=4o&s1_rows=400&swatch_stitches=21 1/&swatch_rows=900&ball_length=50 g",
    ),
    State::new(
        "impossible",
        "s1_shape=taper&s1_stitches=0&s1_to=0&s1_rows=5&ball_length=125&ball_mass=50",
    ),
    State::new(
        "extreme",
        "s1_stitches=10000&s1_rows=4000&swatch_stitches=20&swatch_rows=28&ball_length=50",
    ),
];
