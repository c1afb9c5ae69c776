//! The dimensional constants of plain knitting, and a published sum worked with them.
//!
//! Source: Munden, "The geometry and dimensional properties of plain-knit fabrics", J. Text. Inst. 50 (1959) T448, as
//! tabulated in Spencer, *Knitting Technology*, section 22.5; GATE 2015, Textile Engineering and Fibre Science,
//! question 54; Texcoms *Textile Technical Handbook*; ISO 1144; Peirce 1937. All as others quote or copy them: see the
//! README beside this file.

use crate::marks::{Marked, all, value};
use loopwright::fabric::{Density, MUNDEN, State, least_diameter, tex};
use loopwright::tables::{Certainty, Taken};
use loopwright::units::{Gauge, Length, LengthUnit, Mass};

/// How sure each value is that is checked here.
pub const MARKS: &[Marked] = &[
    all(Taken::LoopLength, Certainty::Quoted),
    all(Taken::LoopConstants, Certainty::Quoted),
    all(Taken::ArealMass, Certainty::Quoted),
    all(Taken::Tex, Certainty::Quoted),
    all(Taken::YarnDiameter, Certainty::Quoted),
    value("worked example, 92 loops", Certainty::Quoted),
    value("that others added the third state later", Certainty::FromMemory),
    value(
        "loops at 22 x 30, areal mass, tex of labels, products",
        Certainty::Computed,
    ),
];

/// As others quote it, in a transcription of Spencer's table: courses, wales, stitches, for each state. From memory is
/// only that the third was added later, by others.
const TABLE: [(State, f64, f64, f64); 3] = [
    (State::DryRelaxed, 5.0, 3.8, 19.0),
    (State::WetRelaxed, 5.3, 4.1, 21.6),
    (State::FullyRelaxed, 5.5, 4.2, 23.1),
];

fn close(value: f64, to: f64, within: f64) {
    assert!((value - to).abs() <= within, "{value} is not {to}");
}

fn density(stitches: u32, rows: u32) -> Density {
    Density::of(Gauge::of(stitches, Gauge::TEN_CM), Gauge::of(rows, Gauge::TEN_CM))
}

#[test]
fn table() {
    assert_eq!(TABLE.len(), MUNDEN.len());
    for (state, courses, wales, product) in TABLE {
        let ours = state.constants();
        assert_eq!((ours.courses, ours.wales, ours.product), (courses, wales, product));
        assert_eq!(ours.source, Taken::LoopConstants.quoted());
    }
}

/// Computed: the products as printed are rounded, 5.3 x 4.1 being 21.73, and within 1 % of the product.
#[test]
fn products_are_as_printed() {
    for constants in MUNDEN {
        let product = constants.courses * constants.wales;
        close(constants.product / product, 1.0, 0.01);
    }
}

/// As others quote it, in a copy of the question paper: wales 4.2, courses 5.5, loop length 0.5 cm; the published
/// answer is 92 loops in a square centimetre.
#[test]
fn published_worked_example() {
    let constants = State::FullyRelaxed.constants();
    let half_a_centimetre = Length::from_mm(5);
    let loops = Density::from_loop(half_a_centimetre, constants.courses * constants.wales);
    close(loops.0, 92.4, 1e-9);
    assert_eq!(loops.0.round(), 92.0);
    assert_eq!(loops.loop_length(constants.product), Some(half_a_centimetre));
}

/// Computed: 22 stitches and 30 rows in 10 cm have loops of 1.697 cm dry, 1.809 cm washed, 1.871 cm tumbled.
#[test]
fn a_hand_knitters_gauge() {
    for (state, cm) in [
        (State::DryRelaxed, 1.697),
        (State::WetRelaxed, 1.809),
        (State::FullyRelaxed, 1.871),
    ] {
        let loop_length = density(22, 30).loop_length(state.constants().product);
        close(loop_length.expect("a length").in_unit(LengthUnit::Cm), cm, 5e-4);
    }
}

/// Computed, by a formula as others copy it: that fabric in 400 tex weighs 478 g to the square metre.
#[test]
fn areal_mass() {
    let loop_length = density(22, 30).loop_length(21.6).expect("a length");
    let tex = tex(Mass::from_grams(50), Length::of(125, LengthUnit::M)).expect("a length above zero");
    close(density(22, 30).grams_per_square_metre(loop_length, tex), 478.0, 0.5);
}

/// As others quote it: the definition, grams in 1000 m. Computed: 400, 500 and 238.1 for three labels.
#[test]
fn tex_of_a_label() {
    for (grams, metres, count) in [(50, 125, 400.0), (100, 200, 500.0), (50, 210, 238.1)] {
        let tex = tex(Mass::from_grams(grams), Length::of(metres, LengthUnit::M));
        close(tex.expect("a length above zero"), count, 0.05);
    }
}

/// As others quote it: Peirce's diameter of a 400 tex yarn is 0.75 mm. It is a lower bound, and lies far below what
/// wraps in an inch give for such a yarn.
#[test]
fn peirce_is_a_lower_bound() {
    let least = least_diameter(400.0).expect("a length");
    close(least.in_unit(LengthUnit::Mm), 0.75, 0.005);
    let wrapped = loopwright::tables::yarn_weight::diameter(11);
    assert!(wrapped > least.saturating_mul(3));
}
