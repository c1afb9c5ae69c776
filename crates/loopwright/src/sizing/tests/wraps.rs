//! Wraps, which hang from neck and arms.

use super::*;

#[test]
fn a_wrap_is_chosen_by_the_girth_round_bust_and_arms() {
    let sweater = about(910, "S 110, M 140, L 155, XL 175", Listed::Garment);
    let arms = Wrap {
        upper_arm: Some(mm(300)),
        ..Wrap::default()
    };
    let wrap = Question {
        garment: Garment::Wrap(arms),
        ..sweater.clone()
    };
    let (naive, ours) = (found(&sweater), found(&wrap));
    assert_eq!((naive.pick, ours.pick), (0, 2));
    assert_eq!(ours.body, mm(910 + 600));
    assert_eq!((ours.ranked[0].ease, ours.ranked[0].fit), (Some(mm(40)), None));
    // By bust ease the first size has 20 cm to spare; round the arms it lacks 41.
    let first = ours.ranked.iter().find(|ranked| ranked.size == naive.pick).unwrap();
    assert_eq!((first.ease, first.suits), (Some(mm(-410)), false));
    assert!(ours.notes.contains(&Note::RoundEstimated { upper_arm: mm(300) }));
    // Flared, its hem would tell nothing.
    assert!(ours.notes.contains(&Note::GirthAtUnderarm) && !naive.notes.contains(&Note::GirthAtUnderarm));
    // Measured is measured; more room is had by asking for it.
    let measured = Wrap {
        round: Some(mm(1380)),
        ..arms
    };
    let measured = Question {
        garment: Garment::Wrap(measured),
        ..sweater
    };
    assert_eq!(found(&measured).pick, 1);
    assert_eq!(
        found(&Question {
            ask: Ask::Ease(mm(150)),
            ..measured
        })
        .pick,
        2
    );
    // What binds by a centimetre is nearer than what has 9 to spare, and is not picked for it.
    let binds = found(&about_wrap(910, "150, 160", arms));
    assert_eq!(
        (
            binds.pick,
            nearest_listed(&about(910, "150, 160", Listed::Garment), mm(1510))
        ),
        (1, 0)
    );
    assert!(binds.ranked[0].suits && !binds.ranked[1].suits);
    // Nothing is wide enough.
    let tight = found(&about_wrap(1200, "110, 140", Wrap::default()));
    assert_eq!(tight.pick, 1);
    assert!(has(&tight, |note| matches!(note, Note::NoneLargeEnough { .. })));
}

#[test]
fn a_wrap_for_bodies_is_chosen_by_the_bust_and_shows_no_other_sum() {
    let arms = Wrap {
        upper_arm: Some(mm(300)),
        neck: Some(mm(620)),
        ..Wrap::default()
    };
    let list = with_stitches(sizes("S 81-86, M 91-97"), "220, 240").unwrap();
    let wrap = found(&Question {
        garment: Garment::Wrap(arms),
        sizes: list,
        pattern: gauges(180, 0, Gauge::TEN_CM),
        ..about(910, "97", Listed::Body)
    });
    assert_eq!((wrap.pick, wrap.why, wrap.body), (1, Why::Within, mm(910)));
    assert!(wrap.ranked.iter().all(|ranked| ranked.ease.is_none()));
    let [Step::Inside { size: 1, body, .. }, Step::Outside { size: 0, .. }] = wrap.steps[..] else {
        panic!("{:?}", wrap.steps);
    };
    assert_eq!(body, mm(910));
    let is_of_wrap = |note: &Note| {
        matches!(
            note,
            Note::RoundEstimated { .. } | Note::GirthAtUnderarm | Note::EaseUnknown
        )
    };
    assert!(!has(&wrap, is_of_wrap), "{:?}", wrap.notes);
}

#[test]
fn the_neck_of_a_wrap_has_to_pass_the_head() {
    let neck = |neck: i64, head: Option<i64>| {
        let wrap = Wrap {
            neck: Some(mm(neck)),
            head: head.map(mm),
            ..Wrap::default()
        };
        let found = found(&about_wrap(910, "160", wrap));
        let is_of_neck = |note: &Note| matches!(note, Note::NeckBinds { .. } | Note::NeckUnsure { .. });
        found.notes.into_iter().find(is_of_neck)
    };
    assert_eq!(neck(530, None), Some(Note::NeckBinds { short: mm(10) }));
    assert_eq!(neck(570, None), Some(Note::NeckUnsure { heads: HEAD }));
    assert_eq!(neck(600, None), None);
    assert_eq!(neck(570, Some(570)), None);
    assert_eq!(neck(570, Some(580)), Some(Note::NeckBinds { short: mm(10) }));
    let unknown = found(&about_wrap(910, "160", Wrap::default()));
    assert!(unknown.notes.contains(&Note::NeckUnknown));
    assert!(
        unknown.ranked.iter().all(|ranked| ranked.fit.is_none()),
        "no fit words for a wrap"
    );
}
