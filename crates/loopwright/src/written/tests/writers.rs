//! Everything that the writers of this crate write is read, and comes to the count that was promised.

use super::*;
use crate::row::Row;
use crate::spacing::{self, Ask, Decrease, Edge, Fabric, Face, Increase, Knitting};
use crate::{raglan, shaping, yoke};
use proptest::prelude::*;
use proptest::sample::select;

/// Works a row as it is written, and says what is on the needle then.
fn after(row: &Row, before: u64) -> Result<u64, String> {
    let text = row.to_string();
    let (pattern, faults) = read(&text, 1, &[]);
    if !faults.is_empty() {
        return Err(format!("{text}: {faults:?}"));
    }
    let start = Start::with(u32::try_from(before).expect("as many as a needle holds"));
    let worked = work(&pattern, &start, 0);
    match worked.as_slice() {
        [line] if line.outcome == Outcome::ComesOut && line.otherwise.is_none() => Ok(line.after),
        other => Err(format!("{text} on {before}: {other:?}")),
    }
}

fn any_knitting() -> impl Strategy<Value = Knitting> {
    prop_oneof![
        any::<bool>().prop_map(|end_on_change| Knitting::Round { end_on_change }),
        Just(Knitting::Flat { edge: Edge::Half }),
        Just(Knitting::Flat { edge: Edge::Mirrored }),
        (0_u32..6).prop_map(|plain| Knitting::Flat {
            edge: Edge::AtLeast(plain)
        }),
    ]
}

proptest! {
    #[test]
    fn even_spacing(
        stitches in 4_u32..900,
        lose in any::<bool>(),
        amount in 1_u32..200,
        decrease in select(&[Decrease::K2tog, Decrease::Ssk, Decrease::P2tog, Decrease::Sk2p, Decrease::Cdd][..]),
        increase in select(&[Increase::M1, Increase::Yo, Increase::Kfb][..]),
        knitting in any_knitting(),
        face in select(&[Face::Knit, Face::Purl][..]),
        fabric in select(&[Fabric::Stockinette, Fabric::Garter, Fabric::Rib][..]),
    ) {
        let ask = if lose { Ask::Lose(amount) } else { Ask::Gain(amount) };
        let question = spacing::Question { stitches, ask, decrease, increase, knitting, face, fabric };
        let Ok(answer) = spacing::answer(&question) else { return Ok(()) };
        for way in &answer.ways {
            prop_assert_eq!(after(&way.row, u64::from(answer.before)), Ok(u64::from(answer.after)));
        }
    }

    #[test]
    fn yokes(from in 20_u32..300, to in 20_u32..300, rounds in 5_u32..90, shaping_rounds in 1_u32..8) {
        let question = yoke::Question { shaping_rounds, ..yoke::Question::about(from, to, rounds) };
        let Ok(answer) = yoke::answer(&question) else { return Ok(()) };
        for round in &answer.rounds {
            prop_assert_eq!(after(&round.row, u64::from(round.before)), Ok(u64::from(round.after)));
        }
    }

    #[test]
    fn shaping_rows(stitches in 8_u32..300, lose in any::<bool>(), amount in 1_u32..60, rows in 1_u32..120) {
        let ask = if lose { shaping::Ask::Lose(amount) } else { shaping::Ask::Gain(amount) };
        let question = shaping::Question { stitches: Some(stitches), ..shaping::Question::about(ask, rows) };
        let Ok(answer) = shaping::answer(&question) else { return Ok(()) };
        let plan = shaping::plan(&question, &answer);
        for event in &plan.events {
            let Some(row) = &event.written else { continue };
            prop_assert_eq!(after(row, row.uses()), Ok(row.gives()));
        }
    }

    /// The raglan writes no rows of its own; its rounds are told by four lines with markers, which are read here.
    #[test]
    fn raglan_rounds(front in 5_u32..60, sleeve in 4_u32..60) {
        let question = raglan::Question::about([2 * front, sleeve], [2 * front + 40, sleeve + 30], 60);
        let Ok(answer) = raglan::answer(&question) else { return Ok(()) };
        let before = 2 * (front + sleeve);
        let text = format!(
            "K{front}, pm, k{sleeve}, pm, k{front}, pm, k to end\n\
             Rnd 1: *K1, m1l, k to 1 st before m, m1r, k1, sm; rep from * 3 more times. ({} sts)", before + 8
        );
        let (pattern, faults) = read(&text, 1, &[]);
        prop_assert!(faults.is_empty() && answer.needle >= before);
        let start = Start { working: Working::Round, ..Start::with(before) };
        let worked = work(&pattern, &start, 0);
        prop_assert!(worked.iter().all(|line| line.outcome == Outcome::ComesOut), "{:?}", worked);
    }
}
