//! Every answer is written, the text is read back, and what was read is worked on a simulated needle.

mod limits;
mod mirrored;
mod shortest;
mod suggested;

use super::*;
use crate::problem::Kind;
use crate::row::shorten::tests::fewest_terms;
use crate::row::{self, Run, Worked};
use proptest::prelude::*;

const DECREASES: [Decrease; 5] = [
    Decrease::K2tog,
    Decrease::Ssk,
    Decrease::P2tog,
    Decrease::Sk2p,
    Decrease::Cdd,
];
const INCREASES: [Increase; 3] = [Increase::M1, Increase::Yo, Increase::Kfb];

fn any_knitting() -> impl Strategy<Value = Knitting> {
    prop_oneof![
        any::<bool>().prop_map(|end_on_change| Knitting::Round { end_on_change }),
        Just(Knitting::Flat { edge: Edge::Half }),
        Just(Knitting::Flat { edge: Edge::Mirrored }),
        (0_u32..12).prop_map(|plain| Knitting::Flat {
            edge: Edge::AtLeast(plain)
        }),
    ]
}

fn any_question() -> impl Strategy<Value = Question> {
    let stitches = prop_oneof![4 => 1_u32..300, 1 => 300_u32..=100_000];
    (
        stitches,
        any_knitting(),
        any::<bool>(),
        0_usize..5,
        0_usize..3,
        any::<bool>(),
        0_usize..3,
        0.0..1.0_f64,
    )
        .prop_map(|(stitches, knitting, down, dec, inc, knit, fabric, share)| {
            let changes = 1 + (f64::from(stitches) * share) as u32;
            Question {
                ask: if down {
                    Ask::Decreases(changes)
                } else {
                    Ask::Increases(changes)
                },
                decrease: DECREASES[dec],
                increase: INCREASES[inc],
                knitting,
                face: if knit { Face::Knit } else { Face::Purl },
                fabric: [Fabric::Stockinette, Fabric::Garter, Fabric::Rib][fabric],
                ..Question::about(stitches)
            }
        })
}

/// The answer, or the one for the most changes there is room for.
fn answer_near(question: Question) -> Option<(Question, Answer)> {
    let problems = match answer(&question) {
        Ok(answer) => return Some((question, answer)),
        Err(problems) => problems,
    };
    // Where it is the edges that leave no room, no number of changes fits.
    let Problem {
        field,
        kind: Kind::TooMany { most },
    } = problems[0]
    else {
        return None;
    };
    if field != Name::Amount.into() {
        return None;
    }
    let ask = match question.ask {
        Ask::Decreases(_) => Ask::Decreases(most),
        _ => Ask::Increases(most),
    };
    let question = Question { ask, ..question };
    Some((
        question,
        answer(&question).expect("the number that was said to be the most"),
    ))
}

/// Writes the row, reads the text, works what was read.
fn work_the_text(way: &Way, stitches: u32) -> (Row, Worked) {
    let row = row::read(&way.row.to_string()).expect("the reader reads what the writer wrote");
    let worked = row::work(&row, stitches).expect("enough stitches");
    (row, worked)
}

/// Plain stitches before, between and after the changes: one more than there are changes.
fn plain_runs(row: &Row) -> Vec<u32> {
    let mut plain = vec![0];
    for run in row.runs() {
        if run.stitch.is_plain() {
            plain[0] += run.count;
        } else {
            for _ in 0..run.count {
                plain.insert(0, 0);
            }
        }
    }
    plain.reverse();
    plain
}

fn spread_of(runs: &[u32]) -> u32 {
    runs.iter().max().unwrap_or(&0) - runs.iter().min().unwrap_or(&0)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(600))]
    #[test]
    fn the_text_read_back_and_worked_gives_the_promised_count(question in any_question()) {
        let Some((question, answer)) = answer_near(question) else { return Ok(()) };
        prop_assert!(answer.suggested < answer.ways.len());
        for way in &answer.ways {
            let (row, worked) = work_the_text(way, question.stitches);
            prop_assert_eq!((worked.on_needle, worked.left_over), (u64::from(answer.after), 0));
            prop_assert_eq!(row.changes().count() as u32, answer.changes);
            prop_assert!(row.depth() <= 1, "a bracket within a bracket: {}", row);
            check_runs(&question, &answer, &plain_runs(&row))?;
            let crowded = worked.crowded_gap || worked.ended_in_gap;
            let full = answer.changes == question.stitches;
            prop_assert!(!crowded || full, "an increase outside the edge stitch, or two in a gap: {}", row);
        }
    }
}

fn check_runs(question: &Question, answer: &Answer, runs: &[u32]) -> Result<(), TestCaseError> {
    let (first, last) = (runs[0], runs[runs.len() - 1]);
    let between = &runs[1..runs.len() - 1];
    let at_marker: Vec<u32> = between.iter().copied().chain([first + last]).collect();
    let gap = answer.change.is_in_gap();
    match question.knitting {
        Knitting::Round { end_on_change: true } if !gap => {
            prop_assert_eq!(last, 0);
            prop_assert!(spread_of(&at_marker) <= 1);
        }
        Knitting::Round { .. } | Knitting::Flat { edge: Edge::Half } => {
            prop_assert!(spread_of(&at_marker) <= 1);
            prop_assert!(first.abs_diff(last) <= 1);
            // No change beside the marker if any run has stitches for both sides of it.
            let can = at_marker.iter().any(|run| *run >= 2);
            prop_assert_eq!(first > 0 && last > 0, can);
        }
        Knitting::Flat {
            edge: Edge::AtLeast(plain),
        } => {
            prop_assert!(first >= plain && last >= plain);
            prop_assert!(spread_of(between) <= 1);
        }
        Knitting::Flat { edge: Edge::Mirrored } => prop_assert!(spread_of(between) <= 1),
    }
    Ok(())
}

#[test]
fn a_hundred_thousand_stitches_and_any_number_of_changes() {
    for changes in [1, 2, 7, 137, 9_999, 10_000, 33_333, 49_999, 50_000] {
        let question = Question {
            ask: Ask::Lose(changes),
            ..Question::about(100_000)
        };
        let answer = answer(&question).unwrap();
        for way in &answer.ways {
            let (_, worked) = work_the_text(way, 100_000);
            assert_eq!(worked.on_needle, u64::from(100_000 - changes));
        }
        assert!(answer.ways[answer.suggested].readable, "{changes}");
    }
}

#[test]
fn the_run_at_the_marker_is_one_run_in_two_pieces() {
    let question = Question {
        ask: Ask::Lose(12),
        ..Question::about(132)
    };
    let answer = answer(&question).unwrap();
    assert_eq!(answer.ways[0].row.to_string(), "K4, k2tog, (K9, k2tog) 11 times, K5");
    assert!(answer.notes.contains(&Note::SplitAtMarker { run: 9 }));
    let shorter = Question {
        knitting: Knitting::Round { end_on_change: true },
        ..question
    };
    assert_eq!(
        super::answer(&shorter).unwrap().ways[0].row.to_string(),
        "(K9, k2tog) 12 times"
    );
}

#[test]
fn an_increase_in_a_gap_is_kept_off_the_marker_even_when_asked() {
    let question = Question {
        ask: Ask::Gain(4),
        knitting: Knitting::Round { end_on_change: true },
        ..Question::about(40)
    };
    let answer = answer(&question).unwrap();
    assert_eq!(answer.ways[0].row.to_string(), "K5, M1, (K10, M1) 3 times, K5");
    assert!(answer.notes.contains(&Note::KeptOffMarker));
}

#[test]
fn m1_has_a_limit_too() {
    let most = |knitting, increase| {
        let question = Question {
            ask: Ask::Gain(999),
            knitting,
            increase,
            ..Question::about(20)
        };
        answer(&question).unwrap_err()[0].kind
    };
    let round = Knitting::Round { end_on_change: false };
    let flat = |edge| Knitting::Flat { edge };
    assert_eq!(most(round, Increase::M1), Kind::TooMany { most: 20 });
    assert_eq!(most(flat(Edge::Half), Increase::Yo), Kind::TooMany { most: 19 });
    assert_eq!(most(flat(Edge::AtLeast(0)), Increase::M1), Kind::TooMany { most: 19 });
    assert_eq!(most(flat(Edge::AtLeast(3)), Increase::M1), Kind::TooMany { most: 15 });
    assert_eq!(most(flat(Edge::Half), Increase::Kfb), Kind::TooMany { most: 20 });
}

#[test]
fn double_decreases_take_two_at_a_time() {
    let ask = |ask| {
        let question = Question {
            ask,
            decrease: Decrease::Cdd,
            ..Question::about(132)
        };
        answer(&question).map(|a| a.changes).map_err(|p| p[0].kind)
    };
    assert_eq!(ask(Ask::Reach(116)), Ok(8));
    assert_eq!(
        ask(Ask::Reach(117)),
        Err(Kind::NoExact {
            below: Some(116),
            above: Some(118)
        })
    );
    assert_eq!(
        ask(Ask::Lose(15)),
        Err(Kind::NoExact {
            below: Some(14),
            above: Some(16)
        })
    );
    assert_eq!(
        ask(Ask::Lose(1)),
        Err(Kind::NoExact {
            below: None,
            above: Some(2)
        })
    );
    assert_eq!(
        ask(Ask::Reach(131)),
        Err(Kind::NoExact {
            below: Some(130),
            above: None
        })
    );
}

#[test]
fn what_cannot_be_reached_comes_with_the_nearest_that_can() {
    for stitches in 1..=30_u32 {
        for target in 0..=70_u32 {
            let question = Question {
                ask: Ask::Reach(target),
                decrease: Decrease::Sk2p,
                ..Question::about(stitches)
            };
            let can = |count: &u32| {
                let down = (1..=stitches / 3).any(|k| stitches - 2 * k == *count);
                down || (1..=stitches).any(|k| stitches + k == *count)
            };
            let result = answer(&question);
            if can(&target) {
                assert_eq!(result.unwrap().after, target);
                continue;
            }
            let kind = result.unwrap_err()[0].kind;
            if target == stitches {
                assert_eq!(kind, Kind::Already);
                continue;
            }
            let side = |count: &u32| (*count < stitches) == (target < stitches);
            let below = (0..target).rev().filter(side).find(can);
            let above = (target + 1..=90).filter(side).find(can);
            assert_eq!(kind, Kind::NoExact { below, above }, "{stitches} to {target}");
        }
    }
}

#[test]
fn the_words_follow_the_side_of_the_fabric() {
    let text = |face, fabric, question: Question| {
        let answer = answer(&Question {
            face,
            fabric,
            ..question
        })
        .unwrap();
        (answer.ways[0].row.to_string(), answer.notes)
    };
    let lose = Question {
        ask: Ask::Lose(2),
        ..Question::about(20)
    };
    let gain = Question {
        ask: Ask::Gain(2),
        ..Question::about(20)
    };
    let (row, notes) = text(Face::Purl, Fabric::Garter, lose);
    assert_eq!(row, "P4, p2tog, P8, p2tog, P4");
    assert!(notes.contains(&Note::KnitRoundIsBetter));
    assert_eq!(text(Face::Purl, Fabric::Stockinette, gain).0, "P5, M1p, P10, M1p, P5");
    let (row, notes) = text(Face::Knit, Fabric::Rib, lose);
    assert_eq!(row, "rib 4, k2tog, rib 8, k2tog, rib 4");
    assert!(notes.contains(&Note::KeepToPurlRibs));
    let ssk = Question {
        decrease: Decrease::Ssk,
        ..lose
    };
    assert_eq!(text(Face::Purl, Fabric::Stockinette, ssk).0, "P4, ssp, P8, ssp, P4");
    let kfb = Question {
        increase: Increase::Kfb,
        ..gain
    };
    assert_eq!(text(Face::Purl, Fabric::Stockinette, kfb).0, "P4, pfb, P9, pfb, P5");
}

/// The obvious advice is one for all: "knit rows are better". A round of stockinette is never turned, and a knit round
/// needs no advice.
#[test]
fn the_side_that_shows_changes_is_advised_only_on_the_other() {
    let advice = |knitting, face, fabric| {
        let answer = answer(&Question {
            ask: Ask::Lose(2),
            knitting,
            face,
            fabric,
            ..Question::about(20)
        });
        let notes = answer.unwrap().notes;
        [Note::RightSideIsBetter, Note::KnitRoundIsBetter].map(|note| notes.contains(&note))
    };
    let flat = Knitting::Flat { edge: Edge::Half };
    let round = Knitting::Round { end_on_change: false };
    for fabric in [Fabric::Stockinette, Fabric::Garter] {
        assert_eq!(advice(flat, Face::Purl, fabric), [true, false]);
        assert_eq!(advice(flat, Face::Knit, fabric), [false, false]);
        assert_eq!(advice(round, Face::Knit, fabric), [false, false]);
    }
    assert_eq!(advice(round, Face::Purl, Fabric::Garter), [false, true]);
    assert_eq!(advice(round, Face::Purl, Fabric::Stockinette), [false, false]);
}

#[test]
fn a_multiple_with_edge_stitches_loses_them_in_the_round() {
    let ask = Ask::Multiple { of: 8, plus: 3 };
    let round = answer(&Question {
        ask,
        ..Question::about(131)
    })
    .unwrap();
    assert_eq!(round.after, 128);
    assert!(round.notes.contains(&Note::PlusDropped { plus: 3 }));
    let flat = Knitting::Flat { edge: Edge::Half };
    let flat = answer(&Question {
        ask,
        knitting: flat,
        ..Question::about(132)
    })
    .unwrap();
    let found = flat.multiples.unwrap();
    assert_eq!((flat.after, found.dropped), (131, 0));
    assert_eq!(found.below.map(|r| (r.stitches, r.changes)), Some((131, 1)));
    assert_eq!(found.above.map(|r| (r.stitches, r.changes)), Some((139, 7)));
}

#[test]
fn multiples_agree_with_looking_at_every_count() {
    for stitches in 1..=40_u32 {
        for (of, plus) in [(1, 0), (4, 0), (6, 1), (8, 3), (7, 6), (50, 0)] {
            for knitting in [
                Knitting::Round { end_on_change: false },
                Knitting::Flat { edge: Edge::Half },
            ] {
                let question = Question {
                    ask: Ask::Multiple { of, plus },
                    knitting,
                    ..Question::about(stitches)
                };
                let plus = if matches!(knitting, Knitting::Round { .. }) {
                    0
                } else {
                    plus
                };
                let gaps = if plus == 0 && matches!(knitting, Knitting::Round { .. }) {
                    stitches
                } else {
                    stitches - 1
                };
                let is_one = |count: &u32| *count >= plus.max(1) && (count - plus).is_multiple_of(of);
                let below = (stitches - stitches / 2..stitches).rev().find(is_one);
                let above = (stitches + 1..=stitches + gaps).find(is_one);
                let found = multiples(&question, of, plus);
                assert_eq!(found.below.map(|r| r.stitches), below, "{question:?}");
                assert_eq!(found.above.map(|r| r.stitches), above, "{question:?}");
            }
        }
    }
}

#[test]
fn a_needle_with_no_room_says_how_many_it_takes() {
    let problem = |question: Question| answer(&question).unwrap_err()[0];
    let short = Question {
        ask: Ask::Lose(1),
        ..Question::about(1)
    };
    assert_eq!(problem(short), Problem::new(Name::Stitches, Kind::TooFew { least: 2 }));
    let wide = Knitting::Flat {
        edge: Edge::AtLeast(30),
    };
    let edged = Question {
        ask: Ask::Gain(1),
        knitting: wide,
        ..Question::about(59)
    };
    assert_eq!(
        problem(edged),
        Problem::new(Name::EdgePlain, Kind::TooMany { most: 29 })
    );
    assert_eq!(problem(Question::about(0)).kind, Kind::TooFew { least: 1 });
    assert_eq!(problem(Question::about(100_001)).kind, Kind::TooMany { most: 100_000 });
}

#[test]
fn any_question_at_all_has_an_answer_or_a_problem() {
    let edges = [0, 1, 2, 3, 7, 99_999, 100_000, 100_001, u32::MAX - 1, u32::MAX];
    for stitches in edges {
        for amount in edges {
            for ask in [
                Ask::Lose(amount),
                Ask::Gain(amount),
                Ask::Decreases(amount),
                Ask::Increases(amount),
                Ask::Reach(amount),
                Ask::Multiple {
                    of: amount,
                    plus: stitches,
                },
            ] {
                for edge in [Edge::Half, Edge::Mirrored, Edge::AtLeast(amount)] {
                    let knitting = Knitting::Flat { edge };
                    let question = Question {
                        ask,
                        knitting,
                        ..Question::about(stitches)
                    };
                    assert!(answer(&question).is_ok_and(|a| a.after > 0) || answer(&question).is_err());
                }
            }
        }
    }
}
