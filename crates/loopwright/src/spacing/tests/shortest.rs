//! No text is shorter, by trying every beginning and every bracket.

use super::*;

/// Every place the ring of runs may be cut, written in every way: the fewest terms of all.
fn fewest_over_all_beginnings(question: &Question, answer: &Answer, row: &Row) -> usize {
    let runs = plain_runs(row);
    let (first, between, last) = (runs[0], &runs[1..runs.len() - 1], runs[runs.len() - 1]);
    let ring: Vec<u32> = std::iter::once(first + last).chain(between.iter().copied()).collect();
    let longest = *ring.iter().max().unwrap();
    let whole = matches!(question.knitting, Knitting::Round { end_on_change: true });
    (0..ring.len())
        .filter(|at| whole || ring[*at] >= 2 || longest < 2 && ring[*at] == longest)
        .map(|at| {
            let turned = [&ring[at..], &ring[..at]].concat();
            let (head, tail) = if whole {
                (turned[0], 0)
            } else {
                (turned[0] / 2, turned[0] - turned[0] / 2)
            };
            let mut text = Vec::new();
            for plain in std::iter::once(&head).chain(&turned[1..]) {
                text.extend([Run::new(Stitch::Knit, *plain), Run::new(answer.change, 1)]);
            }
            text.push(Run::new(Stitch::Knit, tail));
            fewest_terms(&text)
        })
        .min()
        .unwrap()
}

#[test]
fn no_text_is_shorter_up_to_forty_stitches() {
    for stitches in 1..=40 {
        for end_on_change in [false, true] {
            let knitting = Knitting::Round { end_on_change };
            let about = Question {
                knitting,
                ..Question::about(stitches)
            };
            let downs = [Decrease::K2tog, Decrease::Sk2p].map(|d| Question { decrease: d, ..about });
            let ups = [Increase::M1, Increase::Kfb].map(|i| Question { increase: i, ..about });
            let asks = (1..=stitches).flat_map(|k| {
                let down = downs.map(|q| Question {
                    ask: Ask::Decreases(k),
                    ..q
                });
                let up = ups.map(|q| Question {
                    ask: Ask::Increases(k),
                    ..q
                });
                [down, up].concat()
            });
            for question in asks {
                let Ok(answer) = answer(&question) else {
                    continue;
                };
                if end_on_change && answer.change.is_in_gap() {
                    continue;
                }
                for way in &answer.ways {
                    let fewest = fewest_over_all_beginnings(&question, &answer, &way.row);
                    let is_varied = way.row.items.iter().any(|item| matches!(item, row::Item::Varied(_)));
                    let terms = way.row.terms();
                    assert!(
                        if is_varied { terms < fewest } else { terms == fewest },
                        "{question:?} {}",
                        way.row
                    );
                }
            }
        }
    }
}
