//! How it is cast on, and what that does to the tail.

use super::*;

#[test]
fn the_method_of_casting_on_is_asked() {
    let tail = |method: Method| answer(&Question { method, ..worsted() }).unwrap();
    let long = tail(Method::LongTail);
    // The obvious sum is the same for all: 3.5 m for methods that need 20 cm.
    for method in [
        Method::Cable,
        Method::Knitted,
        Method::BackwardLoop,
        Method::CrochetChain,
    ] {
        let short = tail(method);
        assert_eq!((short.tail, short.strand), (cm(20), Strand::EndOnly), "{method:?}");
        assert_eq!((short.range.least, short.range.most), (cm(15), cm(20)));
        assert!(short.estimates.is_empty());
        assert!(long.tail > short.tail.saturating_mul(10));
    }
    let twisted = tail(Method::TwistedGerman);
    let stitches = |answer: &Answer| answer.tail.saturating_sub(USUAL_END);
    assert_eq!(
        stitches(&twisted).saturating_mul(100),
        stitches(&long).saturating_mul(130)
    );
    let range = by(&twisted, is_class).needs;
    assert_eq!(range.least, Length::from_inches(150));
    assert_eq!(range.most, Length::from_inches(156));
    let two = tail(Method::TwoStrand);
    assert_eq!((two.tail, two.strand), (cm(20), Strand::Second));
    let tubular = tail(Method::Tubular);
    assert_eq!(tubular.tail, cm(20));
    assert_eq!(tubular.waste, Some(60));
}

#[test]
fn half_of_an_odd_count_in_waste_yarn_is_rounded_up() {
    let question = Question {
        method: Method::Tubular,
        ..Question::about(121)
    };
    assert_eq!(answer(&question).unwrap().waste, Some(61));
}

#[test]
fn a_measured_piece_has_the_factor_of_its_method_in_it() {
    let question = Question {
        method: Method::TwistedGerman,
        measured: measured(20, cm(60)),
        ..worsted()
    };
    let answer = answer(&question).unwrap();
    // The obvious sum takes 130 % of what was cast on twisted already.
    assert_eq!(by(&answer, is_measured).needs.most, cm(360));
    assert_eq!(answer.tail, cm(360 + 18 + 20));
}

#[test]
fn the_extra_stitch_of_a_join_has_its_tail_too() {
    use crate::cast_on;
    let question = cast_on::Question {
        knitting: cast_on::Knitting::Round { extra: true },
        ..cast_on::Question::about(cm(60), Gauge::of(20, Gauge::TEN_CM))
    };
    let pick = cast_on::answer(&question).unwrap().pick;
    let tail = |stitches: u32| {
        let measured = measured(20, cm(34));
        let question = Question {
            measured,
            ..Question::about(stitches)
        };
        answer(&question).unwrap().tail
    };
    // 17 mm and 5 %, which the obvious sum for the 120 of the round leaves out.
    let one = tail(pick.cast_on).saturating_sub(tail(pick.worked));
    assert_eq!(one, Length::from_nm(17_850_000));
}

#[test]
fn two_strands_are_offered_above_a_count() {
    let offered = |stitches: u32| {
        let question = Question { stitches, ..worsted() };
        answer(&question).unwrap().two_strands
    };
    assert!(!offered(TWO_STRANDS_ABOVE) && offered(TWO_STRANDS_ABOVE + 1));
}
