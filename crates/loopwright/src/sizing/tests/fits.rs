//! How a garment sits: the word for its ease, ties and close calls, and what is odd about a list.

use super::*;

#[test]
fn an_ease_has_one_word_even_on_an_edge_or_in_a_gap() {
    let fit = |ease: Length| {
        let list = vec![Size::new("", Span::one(mm(900).saturating_add(ease)))];
        let answer = found(&Question {
            listed: Some(Listed::Garment),
            ..Question::about(mm(900), list)
        });
        answer.ranked[0].fit
    };
    let half_inch = Length::from_sixty_fourths(32);
    // By the printed ranges 2 in are close and standard at once, and half an inch is nothing.
    assert_eq!(fit(Length::from_inches(2)), Some(Fit::Standard));
    assert_eq!(fit(half_inch), Some(Fit::Close));
    assert_eq!(fit(Length::ZERO), Some(Fit::Close));
    assert_eq!(fit(Length::from_nm(-half_inch.to_nm())), Some(Fit::VeryClose));
    assert_eq!(fit(mm(75)), Some(Fit::Standard));
}

#[test]
fn negative_ease_has_its_share_and_is_cautioned_past_a_tenth() {
    let at = |garment: i64, bust: i64| {
        let list = vec![Size::new("", Span::one(mm(garment)))];
        let ask = Ask::Percent(PerMille(-100));
        let answer = found(&Question {
            listed: Some(Listed::Garment),
            ask,
            ..Question::about(mm(bust), list)
        });
        let (share, too_tight) = (
            answer.ranked[0].share,
            has(&answer, |note| matches!(note, Note::TooTight { .. })),
        );
        (share, too_tight, answer.target)
    };
    assert_eq!(at(900, 1000), (PerMille(-100), false, Some(mm(900))));
    assert_eq!(at(899, 1000), (PerMille(-101), true, Some(mm(900))));
    // Rounded to thousandths it is -100; it is past it all the same.
    let (share, too_tight, _) = at(899, 999);
    assert_eq!((share, too_tight), (PerMille(-100), true));
}

#[test]
fn past_a_tenth_smaller_is_never_what_very_close_means() {
    let question = about(1000, "87, 101", Listed::Garment);
    let ask = Ask::Fit(Fit::VeryClose);
    let found = found(&Question { ask, ..question });
    // By its band alone 87 cm is very close and 101 is not: the obvious pick is 13 % smaller than the body.
    assert_eq!(found.ranked[1].fit, Some(Fit::VeryClose));
    assert_eq!((found.pick, found.ranked[1].share), (1, PerMille(-130)));
    assert!(!found.ranked[1].suits);
}

#[test]
fn a_close_call_does_not_go_past_what_knitting_bears() {
    let question = about(1000, "88, 101", Listed::Garment);
    let ask = Ask::Fit(Fit::VeryClose);
    let found = found(&Question { ask, ..question });
    // 88 cm is as near as a tape can tell, and the cloth stretches: the obvious pick is 12 % smaller than the body.
    assert_eq!((found.pick, found.why), (1, Why::Nearest));
}

#[test]
fn a_tie_goes_down_for_stretch_and_up_for_drape_and_is_shown() {
    let tie = about(910, "95, 102", Listed::Garment);
    let tie = Question {
        ask: Ask::Ease(mm(75)),
        ..tie
    };
    let pick = |cloth| found(&Question { cloth, ..tie.clone() });
    let (down, up) = (pick(Cloth::Stretches), pick(Cloth::Drapes));
    assert_eq!(
        (down.pick, down.why, tied(&down)),
        (0, Why::Tie(Cloth::Stretches), vec![1])
    );
    assert_eq!((up.pick, up.why, up.runner_up()), (1, Why::Tie(Cloth::Drapes), Some(0)));
    // On the shared edge of two ranges the body is in both.
    let edge = |cloth| {
        found(&Question {
            cloth,
            ..about(910, "S 86-91, M 91-97", Listed::Body)
        })
    };
    assert_eq!((edge(Cloth::Stretches).pick, edge(Cloth::Drapes).pick), (0, 1));
    assert_eq!(edge(Cloth::Drapes).why, Why::Tie(Cloth::Drapes));
    // Nearly as near, the other way off: no tape can tell.
    let near = |cloth| {
        found(&Question {
            cloth,
            ..about(914, "86-90, 93-97", Listed::Body)
        })
    };
    assert_eq!((near(Cloth::Stretches).pick, near(Cloth::Drapes).pick), (0, 1));
    assert_eq!(near(Cloth::Stretches).why, Why::CloseCall(Cloth::Stretches));
    // The same way off is no tie: the nearer is better.
    let outside = found(&about(1100, "96, 96.5", Listed::Body));
    assert_eq!((outside.pick, outside.why), (1, Why::Nearest));
}

#[test]
fn one_size_unsorted_overlapping_and_doubled_lists() {
    let one = found(&about(910, "One size 120", Listed::Garment));
    assert_eq!((one.why, one.runner_up()), (Why::OnlySize, None));
    assert!(one.notes.contains(&Note::OneSize));
    assert_eq!(one.ranked[0].ease, Some(mm(290)));
    let unsorted = found(&about(910, "L 111, S 97, M 103", Listed::Garment));
    assert_eq!(unsorted.pick, 1);
    assert!(unsorted.notes.contains(&Note::Unsorted));
    let overlap = found(&about(900, "S 80-92, M 88-100", Listed::Body));
    assert!(overlap.notes.contains(&Note::Overlap { first: 0, second: 1 }));
    assert_eq!((overlap.why, tied(&overlap)), (Why::Tie(Cloth::Stretches), vec![1]));
    let alike = found(&about(895, "97, 97, 103", Listed::Garment));
    assert_eq!((alike.why, tied(&alike)), (Why::Tie(Cloth::Stretches), vec![1]));
    let edge = found(&about(900, "S 80-90, M 90-100", Listed::Body));
    assert!(!has(&edge, |note| matches!(note, Note::Overlap { .. })));
}

#[test]
fn what_is_outside_its_bounds_is_told_by_field() {
    let wrong = Question {
        bust: Length::ZERO,
        ask: Ask::Ease(mm(9_000)),
        sizes: vec![
            Size::new("", Span::one(Length::MAX)),
            Size::new("", Span::one(Length::MAX)),
        ],
        ..about(910, "97", Listed::Garment)
    };
    let fields: Vec<_> = answer(&wrong)
        .unwrap_err()
        .iter()
        .filter_map(|problem| problem.field.name::<Name>())
        .collect();
    assert_eq!(fields, [Name::Bust, Name::Ease, Name::Sizes]);
    let none = Question {
        sizes: Vec::new(),
        ..about(910, "97", Listed::Garment)
    };
    assert_eq!(answer(&none), Err(vec![Problem::new(Name::Sizes, Kind::Missing)]));
    let small = Question {
        bust: mm(49),
        ..about(910, "97", Listed::Garment)
    };
    let kind = Kind::TooSmall {
        least: Amount::Length(GIRTH.least),
    };
    assert_eq!(answer(&small), Err(vec![Problem::new(Name::Bust, kind)]));
}
