//! What holds for every question.

use super::*;

fn any_ask() -> impl Strategy<Value = Ask> {
    use Fit::{Close, Loose, Oversized, Standard, VeryClose};
    prop_oneof![
        prop::sample::select(vec![VeryClose, Close, Standard, Loose, Oversized]).prop_map(Ask::Fit),
        (-200..300_i64).prop_map(|ease| Ask::Ease(mm(ease))),
        (-150..250_i32).prop_map(|share| Ask::Percent(PerMille(share))),
    ]
}

fn any_question() -> impl Strategy<Value = Question> {
    let size = (500..1600_i64, 0..80_i64, prop::option::of(100..400_u32));
    let list = prop::collection::vec(size, 1..9);
    let rows = || prop_oneof![Just(0_u32), 10..400_u32];
    let gauge = || prop::option::of((150..300_u32, rows(), any::<bool>()));
    (
        500..1500_i64,
        list,
        any::<[bool; 3]>(),
        any_ask(),
        gauge(),
        gauge(),
        prop::option::of(200..500_i64),
    )
        .prop_map(|(bust, list, [body, drapes, wrap], ask, pattern, own, arm)| {
            let size = |(from, more, stitches): (i64, i64, Option<u32>)| Size {
                stitches,
                ..Size::new("", Span::new(mm(from), mm(from + more)))
            };
            let span = |inches| {
                if inches { Gauge::FOUR_INCHES } else { Gauge::TEN_CM }
            };
            let gauge = |g: Option<(u32, u32, bool)>| g.and_then(|(s, r, inches)| gauges(s, r, span(inches)));
            Question {
                listed: Some(if body { Listed::Body } else { Listed::Garment }),
                cloth: if drapes { Cloth::Drapes } else { Cloth::Stretches },
                garment: if wrap {
                    Garment::Wrap(Wrap {
                        upper_arm: arm.map(mm),
                        ..Wrap::default()
                    })
                } else {
                    Garment::Sweater
                },
                ask,
                pattern: gauge(pattern),
                own: gauge(own),
                ..Question::about(mm(bust), list.into_iter().map(size).collect())
            }
        })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1500))]
    #[test]
    fn every_size_is_ranked_once_and_none_is_better_than_the_pick(question in any_question()) {
        let answer = found(&question);
        let mut ranked: Vec<usize> = answer.ranked.iter().map(|ranked| ranked.size).collect();
        prop_assert_eq!(ranked.first(), Some(&answer.pick));
        prop_assert_eq!(ranked.get(1).copied(), answer.runner_up());
        ranked.sort_unstable();
        prop_assert_eq!(ranked, (0..question.sizes.len()).collect::<Vec<_>>());
        let best = answer.ranked[0];
        for other in &answer.ranked[1..] {
            prop_assert!(best.suits || !other.suits);
            let better = other.suits == best.suits && other.away() < best.away();
            let close = best.away().saturating_sub(other.away()) <= CLOSE_CALL;
            prop_assert!(!better || close && matches!(answer.why, Why::CloseCall(_)), "{:?}", answer);
        }
        for pair in answer.ranked[1..].windows(2) {
            prop_assert!((!pair[0].suits, pair[0].away()) <= (!pair[1].suits, pair[1].away()));
        }
    }

    #[test]
    fn ease_is_the_garment_less_the_body_and_its_word_is_its_band(question in any_question()) {
        let answer = found(&question);
        let best = answer.ranked[0];
        let tight = best.fit.and(best.ease).is_some_and(|ease| ease.to_nm() * 10 < -question.bust.to_nm());
        prop_assert_eq!(has(&answer, |note| matches!(note, Note::TooTight { .. })), tight);
        for ranked in answer.ranked {
            let (Some(ease), Some(fit), share) = (ranked.ease, ranked.fit, ranked.share) else { continue };
            prop_assert_eq!(question.bust.saturating_add(ease), ranked.garment.unwrap());
            prop_assert!(fit.band().has(ease));
            prop_assert!((i64::from(share.0) * question.bust.to_nm() - ease.to_nm() * 1000).abs() * 2 <= question.bust.to_nm());
        }
    }

    #[test]
    fn the_order_of_the_list_changes_nothing_but_places(question in any_question()) {
        let mut turned = question.clone();
        turned.sizes.reverse();
        let (one, two) = (found(&question), found(&turned));
        let last = question.sizes.len() - 1;
        let girth = |q: &Question, at: usize| q.sizes[at].girth;
        if tied(&one).is_empty() && tied(&two).is_empty() {
            prop_assert_eq!(girth(&question, one.pick), girth(&turned, two.pick));
            prop_assert_eq!(one.pick, last - two.pick);
        }
        prop_assert_eq!(one.why, two.why);
    }

    #[test]
    fn a_larger_body_is_never_given_a_smaller_size(question in any_question(), more in 0..200_i64) {
        // Ranges of bodies in any order and overlap can hide a range in another; girths of garments cannot.
        let question = Question { listed: Some(Listed::Garment), pattern: None, own: None, ..question };
        let larger = Question { bust: question.bust.saturating_add(mm(more)), ..question.clone() };
        let girth = |q: &Question| q.sizes[found(q).pick].girth.middle();
        prop_assert!(girth(&question) <= girth(&larger));
    }

    #[test]
    fn any_question_at_all_has_an_answer_or_problems(
        bust: i64, high: Option<i64>, girths in prop::collection::vec((any::<i64>(), any::<i64>(), any::<Option<u32>>()), 0..4),
        near: bool, ease: i64, share: i32, body: Option<bool>, arms: [Option<i64>; 4], wrap: bool,
        counts: [(u32, i64); 4],
    ) {
        let nm = |value: i64| Length::from_nm(if near { value % 6_000_000_000 } else { value });
        let gauge = |(count, span): (u32, i64)| Gauge::new(count, nm(span));
        let pair = |s, r| gauge(s).map(|stitches| Gauges { stitches, rows: gauge(r) });
        let sizes: Vec<Size> = girths.iter().map(|(from, to, stitches)| Size {
            stitches: *stitches,
            ..Size::new("", Span { from: nm(*from), to: nm(*to) })
        }).collect();
        for ask in [Ask::Ease(nm(ease)), Ask::Percent(PerMille(share)), Ask::Fit(Fit::VeryClose)] {
            let [round, upper_arm, neck, head] = arms.map(|arm| arm.map(nm));
            let question = Question {
                high_bust: high.map(nm),
                listed: body.map(|body| if body { Listed::Body } else { Listed::Garment }),
                garment: if wrap { Garment::Wrap(Wrap { round, upper_arm, neck, head }) } else { Garment::Sweater },
                ask,
                pattern: pair(counts[0], counts[1]),
                own: pair(counts[2], counts[3]),
                ..Question::about(nm(bust), sizes.clone())
            };
            match answer(&question) {
                Ok(answer) => prop_assert_eq!(answer.ranked.len(), sizes.len()),
                Err(problems) => prop_assert!(!problems.is_empty()),
            }
        }
    }
}
