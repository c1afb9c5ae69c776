//! The traps of yarn sums, each by its subject.

mod apart;
mod balls;

use super::*;
use crate::fabric::Fabric;
use crate::problem::Kind;
use crate::units::{Gauge, MassUnit};

fn metres(count: i64) -> Length {
    Length::of(count, LengthUnit::M)
}

fn gauge(stitches: u32, rows: u32) -> (Gauge, Gauge) {
    (Gauge::of(stitches, Gauge::TEN_CM), Gauge::of(rows, Gauge::TEN_CM))
}

fn swatch(stitches: u32, rows: u32) -> Swatch {
    let (stitches, rows) = gauge(stitches, rows);
    Swatch::stockinette(stitches, rows)
}

fn swatch_of(fabric: Fabric, (stitches, rows): (Gauge, Gauge), rest: Rest) -> Swatch {
    Swatch::Gauge {
        fabric,
        stitches,
        rows,
        rest,
    }
}

fn rectangle(stitches: u32, rows: u32) -> Shape {
    Shape::rectangle(stitches, rows)
}

fn weighed(fabric: Fabric, stitches: u32, rows: u32, grams: i64) -> Swatch {
    Swatch::Weighed {
        fabric,
        stitches,
        rows,
        mass: Mass::from_grams(grams),
    }
}

/// The knitting alone, no edges and no extras.
fn bare(fabric: Fabric, shape: Shape) -> Section {
    Section {
        cast_on: false,
        bind_off: None,
        ..Section::of(fabric, shape)
    }
}

fn only(sections: Vec<Section>, swatch: Swatch) -> Question {
    Question {
        ask: Ask::Piece(Piece {
            sections,
            swatch,
            extras: Extras::NONE,
        }),
        ..Question::about(Vec::new(), swatch)
    }
}

fn expected(fabric: Fabric, swatch: Swatch) -> f64 {
    let question = only(vec![bare(fabric, Shape::Stitches(StitchSum::of(10_000)))], swatch);
    answer(&question).unwrap().length.expected.in_unit(LengthUnit::M)
}

fn kinds(question: &Question) -> Vec<(Name, Kind)> {
    let problems = answer(question).err().unwrap_or_default();
    let named = |problem: Problem| (problem.field.name().expect("a field of no section"), problem.kind);
    problems.into_iter().map(named).collect()
}

/// Garter's own gauge in the stockinette sum is 18 % short.
#[test]
fn garter_takes_the_stockinette_loop() {
    let right = expected(Fabric::Garter, swatch(21, 28));
    assert!((right - 191.7).abs() < 0.1, "{right}");
    let naive = expected(Fabric::Stockinette, swatch(21, 42));
    assert!((1.0 - naive / right - 0.18).abs() < 0.005, "{naive}");
    // With only a garter gauge there is a number for it, and it is marked.
    let garter = swatch_of(Fabric::Garter, gauge(21, 42), Rest::Washed);
    assert!((expected(Fabric::Garter, garter) / right - 1.0).abs() < 0.01);
    let question = only(vec![bare(Fabric::Garter, rectangle(40, 400))], garter);
    let answered = answer(&question).unwrap();
    assert_eq!(answered.per_stitch.unwrap().certainty, Certainty::Practice);
    assert!(answered.notes.contains(&Note::GarterIsPractice));
}

/// Rib and cable take more than stockinette, and with no stockinette gauge nothing is said.
#[test]
fn rib_and_cable_without_a_stockinette_gauge_are_refused() {
    let plain = expected(Fabric::Stockinette, swatch(21, 28));
    for fabric in [Fabric::Rib, Fabric::Cable] {
        assert!(expected(fabric, swatch(21, 28)) > 1.02 * plain);
        let own = swatch_of(fabric, gauge(34, 28), Rest::Washed);
        let garter = swatch_of(Fabric::Garter, gauge(21, 42), Rest::Washed);
        for swatch in [own, garter] {
            let question = only(vec![bare(fabric, rectangle(40, 40))], swatch);
            assert_eq!(kinds(&question), [(Name::Swatch, Kind::NeedsSwatch)]);
        }
        // On the scale it may be anything.
        let weighed = weighed(fabric, 40, 40, 20);
        assert!(answer(&only(vec![bare(fabric, rectangle(40, 40))], weighed)).is_ok());
    }
    // The obvious sum from the rib's own gauge is a fifth short.
    let naive = expected(Fabric::Stockinette, swatch(34, 28));
    assert!(naive < 0.8 * plain);
}

/// The constants alone move the loop by -6 % to +3 %; the range is a tenth either way at the least.
#[test]
fn the_range_is_wider_than_the_state_of_rest() {
    let question = only(vec![bare(Fabric::Stockinette, rectangle(100, 100))], swatch(21, 28));
    let answered = answer(&question).unwrap();
    let m = |length: Length| length.in_unit(LengthUnit::M);
    let (least, expected, most) = (
        m(answered.length.least),
        m(answered.length.expected),
        m(answered.length.most),
    );
    assert!(least < 0.9 * expected && most > 1.1 * expected);
    let per_stitch = answered.per_stitch.unwrap();
    let Found::Geometry { dry, wet, fully, .. } = per_stitch.found else {
        panic!("{per_stitch:?}");
    };
    assert!((m(dry) / m(wet) - 0.938).abs() < 1e-3 && (m(fully) / m(wet) - 1.034).abs() < 1e-3);
    // Half a stitch in 21 and half a row in 28 are 2.1 % by themselves.
    assert!((per_stitch.reading - 2.083).abs() < 1e-3);
    // Balls come from the top, and the reserve is on the top.
    assert_eq!(answered.need.to_nm(), (answered.length.most.to_nm() * 11 + 9) / 10);
}

/// Off the needle and never washed it is not yet as dense: the washed number would buy 6 % too much.
#[test]
fn an_unwashed_gauge_has_its_own_number_and_is_marked() {
    let (plain, own) = (Fabric::Stockinette, gauge(21, 28));
    let unwashed = swatch_of(plain, own, Rest::Unwashed);
    let naive = expected(plain, swatch_of(plain, own, Rest::Washed));
    assert!((expected(plain, unwashed) / naive - 0.938).abs() < 1e-3);
    let answered = answer(&only(vec![bare(plain, rectangle(10, 10))], unwashed)).unwrap();
    assert!(answered.notes.contains(&Note::Unwashed));
}

/// Lace pinned out by a quarter each way would overstate the yarn by a quarter.
#[test]
fn a_pinned_out_gauge_is_brought_back_to_rest() {
    let rest = gauge(25, 35);
    let pinned = gauge(20, 28);
    let right = expected(Fabric::Lace, swatch_of(Fabric::Lace, rest, Rest::Washed));
    let naive = expected(Fabric::Lace, swatch_of(Fabric::Lace, pinned, Rest::Washed));
    assert!((naive / right - 1.25).abs() < 1e-6);
    // So it is asked whenever lace was measured.
    let unasked = only(
        vec![bare(Fabric::Lace, rectangle(10, 10))],
        swatch_of(Fabric::Lace, pinned, Rest::Washed),
    );
    assert!(answer(&unasked).unwrap().notes.contains(&Note::LaceAsStockinette));
    let asked = swatch_of(Fabric::Lace, pinned, Rest::PinnedOut { percent: 25 });
    assert!((expected(Fabric::Lace, asked) / right - 1.0).abs() < 1e-6);
    let answered = answer(&only(vec![bare(Fabric::Lace, rectangle(10, 10))], asked)).unwrap();
    assert!(answered.notes.contains(&Note::PinnedOut));
}

/// 31 to 46 over 25 rows is 962 1/2, and two such are 1,925, not 1,924 or 1,926.
#[test]
fn halves_of_a_stitch_are_kept() {
    let sleeve = Section {
        times: 2,
        ..bare(
            Fabric::Stockinette,
            Shape::Trapezoid {
                stitches: 31,
                to: 46,
                rows: 25,
            },
        )
    };
    assert_eq!((sleeve.once().whole(), sleeve.once().has_half()), (962, true));
    let both = answer(&only(vec![sleeve.clone()], swatch(21, 28))).unwrap();
    assert_eq!(both.stitches, Some(StitchSum::of(1_925)));
    assert_ne!(2 * sleeve.once().whole(), 1_925);
    assert_ne!(2 * (sleeve.once().whole() + 1), 1_925);
}

/// Where there is a schedule it is summed: 60 to 100 by twos over 40 rows is 3,200 only on paper.
#[test]
fn a_schedule_is_summed_row_by_row() {
    let early: Vec<Level> = (1..=20)
        .map(|step| Level {
            stitches: 60 + 2 * step,
            rows: if step < 20 { 1 } else { 21 },
        })
        .collect();
    let late: Vec<Level> = (0..=20)
        .map(|step| Level {
            stitches: 60 + 2 * step,
            rows: if step > 0 { 1 } else { 20 },
        })
        .collect();
    let sum = |shape: Shape| Section::stockinette(shape).once().whole();
    let warned = |shape: &Shape| {
        let answered = answer(&only(vec![bare(Fabric::Stockinette, shape.clone())], swatch(21, 28))).unwrap();
        answered.notes.contains(&Note::SumTheSchedule)
    };
    let trapezoid = Shape::Trapezoid {
        stitches: 60,
        to: 100,
        rows: 40,
    };
    // An eighth either way is said where no schedule is known.
    assert!(warned(&trapezoid) && !warned(&rectangle(60, 40)) && !warned(&Shape::Rows(early.clone())));
    assert_eq!(sum(trapezoid), 3_200);
    assert_eq!(sum(Shape::Rows(early)), 3_620);
    assert_eq!(sum(Shape::Rows(late)), 2_820);
}

/// Edges, joins and the swatch are on from the start, each a line of its own.
#[test]
fn edges_and_ends_are_lines_of_their_own() {
    let question = Question::about(vec![Section::garter(rectangle(40, 400))], swatch(21, 28));
    let answered = answer(&question).unwrap();
    let parts: Vec<Part> = answered.lines.iter().map(|line| line.part).collect();
    let all = [
        Part::Knitting { section: 0 },
        Part::CastOn,
        Part::BindOff,
        Part::Swatch,
        Part::Joins,
        Part::Reserve,
    ];
    assert_eq!(parts, all);
    let joins = answered.lines.iter().find(|line| line.part == Part::Joins).unwrap();
    assert_eq!(
        joins.length.most,
        practice::JOIN.saturating_mul(i64::from(answered.balls) - 1)
    );
    // Two ends of 15 cm at each of three changes; the obvious sum has one.
    assert_eq!((answered.balls, joins.length.most), (4, Length::from_mm(900)));
    let bare = only(vec![bare(Fabric::Garter, rectangle(40, 400))], swatch(21, 28));
    assert!(answered.need > answer(&bare).unwrap().need);
}

/// Seams take more than they are long, and what is typed beside them is taken as typed.
#[test]
fn seams_and_other_yarn_are_lines_of_their_own() {
    let mut question = only(vec![bare(Fabric::Stockinette, rectangle(40, 40))], swatch(21, 28));
    if let Ask::Piece(piece) = &mut question.ask {
        (piece.extras.seams, piece.extras.other) = (metres(2), metres(5));
    }
    let answered = answer(&question).unwrap();
    let line = |part: Part| answered.lines.iter().find(|line| line.part == part).unwrap().length;
    // The obvious sum is 2 m for 2 m of seam.
    let seams = line(Part::Seams);
    assert_eq!((seams.least, seams.most), (metres(3), metres(4)));
    assert_eq!(seams.expected, Length::from_mm(3_500));
    assert_eq!(line(Part::Other).expected, metres(5));
}

/// Each end of a section has its own stitches, every time it is worked, and an end to weave in.
#[test]
fn edges_are_reckoned_each_at_its_own_end_and_every_time() {
    let sleeves = |kind: BindOff| {
        let shape = Shape::Trapezoid {
            stitches: 40,
            to: 60,
            rows: 80,
        };
        let section = Section {
            times: 2,
            bind_off: Some(kind),
            ..Section::stockinette(shape)
        };
        let answered = answer(&only(vec![section], swatch(21, 28))).unwrap();
        let line = |part: Part| answered.lines.iter().find(|line| line.part == part).unwrap().length;
        [Part::CastOn, Part::BindOff].map(|part| line(part).expected.in_unit(LengthUnit::Cm))
    };
    // Loops of 1.917 cm: 40 stitches of 2.3, 60 of 0.9, and 20 cm, twice. One sleeve, or 40 stitches at both ends, are
    // the obvious sums.
    let close = |found: f64, loops: f64| (found - 2.0 * (loops * 1.916_6 + 20.0)).abs() < 0.1;
    let [cast_on, plain] = sleeves(BindOff::Plain);
    assert!(close(cast_on, 40.0 * 2.3), "{cast_on}");
    assert!(close(plain, 60.0 * 0.9), "{plain}");
    let [_, elastic] = sleeves(BindOff::Elastic);
    assert!(close(elastic, 60.0 * 1.25), "{elastic}");
    let [_, cord] = sleeves(BindOff::ICord);
    assert!(close(cord, 60.0 * 2.0), "{cord}");
}

/// A schedule from 60 stitches to 100 is bound off over 100. The obvious sum has its edges alike.
#[test]
fn a_schedule_is_bound_off_over_its_last_row() {
    let levels = [60, 80, 100].map(|stitches| Level { stitches, rows: 10 });
    let section = Section::stockinette(Shape::Rows(levels.to_vec()));
    let answered = answer(&only(vec![section], swatch(21, 28))).unwrap();
    let line = |part: Part| answered.lines.iter().find(|line| line.part == part).unwrap().length;
    // Loops of 1.917 cm: 60 stitches of 2.3, 100 of 0.9, and an end of 20 cm each.
    for (part, loops) in [(Part::CastOn, 60.0 * 2.3), (Part::BindOff, 100.0 * 0.9)] {
        let found = line(part).expected.in_unit(LengthUnit::Cm);
        assert!((found - (loops * 1.916_6 + 20.0)).abs() < 0.1, "{part:?}: {found}");
    }
}

/// 21 and 28 in 4 in are another loop than in 10 cm, by 1.6 %.
#[test]
fn four_inches_are_another_loop_than_ten_centimetres() {
    let inches = Swatch::stockinette(Gauge::of(21, Gauge::FOUR_INCHES), Gauge::of(28, Gauge::FOUR_INCHES));
    let metric = swatch(21, 28);
    let plain = Fabric::Stockinette;
    assert!((expected(plain, inches) / expected(plain, metric) - 1.016).abs() < 1e-6);
    // Nor are the bounds those of the count alone: 201 in 5 cm are 402 in 10, and 401 in 4 in are not.
    let fine = |count, span| Swatch::stockinette(Gauge::of(count, span), Gauge::of(28, Gauge::TEN_CM));
    let wrong = |swatch| kinds(&only(vec![bare(plain, rectangle(1, 1))], swatch));
    let five = wrong(fine(201, Length::of(5, LengthUnit::Cm)));
    assert_eq!(five, [(Name::SwatchStitches, Kind::TooMany { most: 200 })]);
    assert_eq!(wrong(fine(401, Gauge::FOUR_INCHES)), []);
}

#[test]
fn a_weighed_swatch_shares_its_yarn_between_its_loops() {
    // 24 g of 50 g / 125 m is 60 m; 40 x 60 and its edges are 2,528 loops.
    let plain = Fabric::Stockinette;
    let weigh = |stitches, rows, grams| {
        let swatch = weighed(plain, stitches, rows, grams);
        answer(&only(vec![bare(plain, rectangle(100, 100))], swatch)).unwrap()
    };
    let answered = weigh(40, 60, 24);
    let per_stitch = answered.per_stitch.unwrap();
    assert_eq!(per_stitch.length.to_nm(), 23_734_177);
    assert_eq!(per_stitch.found, Found::Weighing { loops: 2_528.0 });
    assert_eq!(per_stitch.spread, 10.0);
    assert!(answered.notes.contains(&Note::Weighed));
    // Weight comes out as it went in, whatever the length on the band.
    let grams = answered.mass.unwrap().in_unit(MassUnit::Gram);
    assert!((grams - 24.0 * 10_000.0 / 2_528.0).abs() < 1e-4, "{grams}");
    // A light one on a coarse scale says less.
    let answered = weigh(20, 20, 5);
    assert_eq!(answered.per_stitch.unwrap().spread, 25.0);
    assert!(answered.notes.contains(&Note::WeighMore));
}

#[test]
fn a_swatch_in_the_fabric_itself_needs_no_factor() {
    let weigh = |fabric| weighed(fabric, 40, 60, 24);
    let own = expected(Fabric::Rib, weigh(Fabric::Rib));
    assert_eq!(own, expected(Fabric::Stockinette, weigh(Fabric::Stockinette)));
    assert!(expected(Fabric::Stockinette, weigh(Fabric::Rib)) < own);
    // Both yarns of a colour-work swatch were weighed; beside a plain one they are a loop and a float.
    let both = |swatch| expected(Fabric::Stranded, weigh(swatch)) / own;
    assert!((both(Fabric::Stranded) - 1.0).abs() < 1e-9);
    assert!((both(Fabric::Stockinette) - 1.244).abs() < 1e-3);
}

#[test]
fn every_wrong_quantity_is_named() {
    let good = Question::about(vec![Section::stockinette(rectangle(1, 1))], swatch(21, 28));
    assert!(answer(&good).is_ok());
    let with = |change: fn(&mut Question)| {
        let mut question = good.clone();
        change(&mut question);
        kinds(&question).into_iter().map(|(field, _)| field).collect::<Vec<_>>()
    };
    assert_eq!(with(|q| q.reserve = 101), [Name::Reserve]);
    assert_eq!(with(|q| q.ball.length = Length::ZERO), [Name::BallLength]);
    assert_eq!(with(|q| q.ball.mass = Some(Mass::ZERO)), [Name::BallMass]);
    assert_eq!(with(|q| q.ask = Ask::Length(Length::ZERO)), [Name::Length]);
    assert_eq!(
        kinds(&Question::about(Vec::new(), swatch(21, 28))),
        [(Name::Sections, Kind::TooFew { least: 1 })]
    );
    let nothing = Shape::Trapezoid {
        stitches: 0,
        to: 0,
        rows: 5,
    };
    assert_eq!(Section::stockinette(nothing).problems(0).len(), 1);
    let vast = Section {
        times: 100,
        ..Section::stockinette(rectangle(100_000, 100_000))
    };
    assert_eq!(
        kinds(&Question::about(vec![vast], swatch(21, 28))),
        [(Name::Sections, Kind::TooMany { most: 50_000_000 })]
    );
    assert_eq!(
        kinds(&Question::about(
            vec![Section::stockinette(rectangle(1, 1))],
            swatch(401, 28)
        )),
        [(Name::SwatchStitches, Kind::TooMany { most: 400 })]
    );
}

/// What is wrong with a section says which one it is, and a gauge is wrong where it was typed.
#[test]
fn a_problem_says_which_section_and_which_gauge() {
    let good = Section::stockinette(rectangle(1, 1));
    let wide = Section::stockinette(rectangle(100_001, 1));
    let problems = answer(&Question::about(vec![good.clone(), good.clone(), wide], swatch(21, 28))).unwrap_err();
    assert_eq!(problems[0].field, SectionName::Stitches.at(2));
    assert_eq!(problems[0].field.to_string(), "sections[2].stitches");
    let lace = swatch_of(Fabric::Lace, gauge(401, 28), Rest::Washed);
    let wrong = kinds(&Question::about(vec![good], lace));
    assert_eq!(wrong, [(Name::OwnStitches, Kind::TooMany { most: 400 })]);
}

#[test]
fn bands_follow_each_other_to_the_end_of_the_balls() {
    let scarf = Question::about(vec![Section::garter(rectangle(40, 400))], swatch(21, 28));
    let bands = answer(&scarf).unwrap().bands();
    let names: Vec<Band> = bands.iter().map(|(band, _)| *band).collect();
    assert_eq!(
        names,
        [Band::Sure, Band::Likely, Band::Perhaps, Band::Reserve, Band::Left]
    );
    assert!(bands.windows(2).all(|pair| pair[0].1 < pair[1].1));
    // Six balls that are known exactly are one band.
    let six = answer(&Question::from_pattern(Ask::Length(metres(750)))).unwrap();
    assert_eq!(six.bands(), [(Band::Sure, metres(750))]);
}

/// Each section is a line of the list, so that a name can stand before what it takes.
#[test]
fn each_section_is_a_line_of_its_own() {
    let sections = [40, 80].map(|stitches| bare(Fabric::Stockinette, rectangle(stitches, 100)));
    let answered = answer(&only(sections.to_vec(), swatch(21, 28))).unwrap();
    let of = |section| {
        let line = answered
            .lines
            .iter()
            .find(|line| line.part == Part::Knitting { section });
        line.unwrap().length.expected.to_nm()
    };
    assert!((of(1) - 2 * of(0)).abs() <= 2);
    assert_eq!(Length::from_nm(of(0) + of(1)), answered.length.expected);
}

/// Live stitches from which the next section goes on are no edge; those from which nothing does are told, with what
/// binding them off would take.
#[test]
fn a_section_that_is_left_open_is_told() {
    let open = bare(Fabric::Stockinette, rectangle(100, 10));
    let section = |cast_on, bind_off| Section {
        cast_on,
        bind_off,
        ..open.clone()
    };
    let told = |sections: &[Section]| {
        let answered = answer(&only(sections.to_vec(), swatch(21, 28))).unwrap();
        let left = |note: &Note| match note {
            Note::LeftOpen { section, bind_off } => Some((*section, bind_off.in_unit(LengthUnit::Cm).round())),
            _ => None,
        };
        answered.notes.iter().filter_map(left).collect::<Vec<_>>()
    };
    let plain = Some(BindOff::Plain);
    // 100 loops of 1.917 cm, 0.9 a stitch, and an end of 20 cm.
    let takes = (100.0_f64 * 0.9 * 1.916_6 + 20.0).round();
    assert_eq!(told(&[section(true, None)]), [(0, takes)]);
    assert_eq!(told(&[section(true, plain)]), []);
    assert_eq!(told(&[section(true, None), section(false, plain)]), []);
    assert_eq!(
        told(&[section(true, None), section(true, None)]),
        [(0, takes), (1, takes)]
    );
}

/// Only a swatch on the scale asks what a ball weighs.
#[test]
fn a_balls_weight_is_asked_for_a_weighed_swatch_only() {
    let ask = |swatch| Question {
        ball: Ball {
            mass: None,
            ..Ball::USUAL
        },
        ..only(vec![bare(Fabric::Stockinette, rectangle(40, 400))], swatch)
    };
    assert_eq!(answer(&ask(swatch(21, 28))).unwrap().mass, None);
    let weighed = weighed(Fabric::Stockinette, 40, 60, 24);
    assert_eq!(kinds(&ask(weighed)), [(Name::BallMass, Kind::Missing)]);
}
