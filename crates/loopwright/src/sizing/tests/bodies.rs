//! Lists of bodies: no ease is added, and a body at an edge, in a gap or outside is told so.

use super::*;

#[test]
fn ease_is_never_added_to_a_list_of_bodies() {
    let to_fit = about(910, "S 86-91, M 91-97, L 97-102", Listed::Body);
    let naive = nearest_listed(&to_fit, mm(910 + 60));
    let ours = found(&to_fit);
    assert_eq!((ours.pick, ours.target), (0, None));
    assert!(naive > ours.pick, "the obvious sum picks a size up");
    for ask in [
        Ask::Ease(mm(60)),
        Ask::Ease(mm(-100)),
        Ask::Percent(PerMille(200)),
        Ask::Fit(Fit::Oversized),
    ] {
        assert_eq!(found(&Question { ask, ..to_fit.clone() }), ours);
    }
    assert!(ours.notes.contains(&Note::EaseIsInTheList) && ours.notes.contains(&Note::EaseUnknown));
    assert_eq!(ours.ranked[0].ease, None);
    // The same body against what is finished: there the ease is asked and counts.
    let finished = about(910, "97, 103", Listed::Garment);
    let ours = found(&Question {
        ask: Ask::Ease(mm(60)),
        ..finished
    });
    assert_eq!((ours.pick, ours.ranked[0].ease), (0, Some(mm(60))));
}

#[test]
fn what_a_tape_cannot_tell_is_inside_a_range() {
    let inches = read_sizes("34-36 (38-40, 42-44)", LengthUnit::Inch).unwrap();
    let of = |bust| Question {
        listed: Some(Listed::Body),
        ..Question::about(bust, inches.clone())
    };
    // 38 in are 96.52 cm.
    let found = answer(&of(mm(965))).unwrap();
    assert_eq!((found.pick, found.why, found.ranked[0].suits), (1, Why::Within, true));
    let edge = Length::from_inches(38);
    let on_edge = Note::OnEdge {
        size: 1,
        edge,
        is_lower: true,
    };
    assert!(found.notes.contains(&on_edge), "{:?}", found.notes);
    assert!(!has(&found, |note| matches!(note, Note::BetweenSizes { .. })));
    // Past what a tape tells there is a gap; and inside there is nothing to say.
    let off = edge.saturating_sub(TAPE_MARK).saturating_sub(Length::from_nm(1));
    let between = answer(&of(off)).unwrap();
    assert!(has(&between, |note| matches!(note, Note::BetweenSizes { .. })) && !between.ranked[0].suits);
    let inside = answer(&of(edge)).unwrap();
    assert!(!has(&inside, |note| matches!(note, Note::OnEdge { .. })));
    let upper = answer(&of(mm(1_118))).unwrap();
    assert!(has(&upper, |note| matches!(
        note,
        Note::OnEdge {
            size: 2,
            is_lower: false,
            ..
        }
    )));
}

#[test]
fn what_the_list_measures_is_asked_and_not_guessed() {
    let unasked = Question::about(mm(910), sizes("97, 103"));
    assert_eq!(answer(&unasked), Err(vec![Problem::new(Name::Listed, Kind::Missing)]));
    let ranges = found(&about(910, "86-91, 91-97", Listed::Garment));
    assert!(ranges.notes.contains(&Note::LooksLikeBodies));
    assert!(
        !found(&about(910, "97, 103", Listed::Garment))
            .notes
            .contains(&Note::LooksLikeBodies)
    );
}

#[test]
fn a_bust_in_the_other_unit_is_asked_about() {
    let answered = |bust: i64| {
        let found = found(&about(bust, "97, 103", Listed::Garment));
        [Note::SmallBust, Note::LargeBust].map(|note| found.notes.contains(&note))
    };
    assert_eq!(answered(360), [true, false]);
    assert_eq!(answered(400), [false, false]);
    assert_eq!(answered(2_000), [false, false]);
    // 91 in inches.
    assert_eq!(answered(2_311), [false, true]);
}

#[test]
fn a_body_in_a_gap_or_outside_is_told_so() {
    let women = |bust: i64| {
        let list = WOMEN.iter().map(|row| Size::from_row(row, LengthUnit::Inch)).collect();
        found(&Question {
            listed: Some(Listed::Body),
            ..Question::about(Length::from_inches(bust), list)
        })
    };
    let gap = women(31);
    let between = Note::BetweenSizes {
        smaller: 0,
        larger: 1,
        gap: Length::from_inches(2),
    };
    assert!(gap.notes.contains(&between) && !gap.ranked[0].suits);
    assert_eq!(
        (gap.why, gap.pick, gap.runner_up()),
        (Why::Tie(Cloth::Stretches), 0, Some(1))
    );
    assert_eq!((women(37).pick, women(37).why), (2, Why::Within));
    let (lacks, over) = (Length::from_inches(3), Length::from_inches(2));
    for (bust, note, pick) in [
        (65, Note::NoneLargeEnough { lacks }, 8),
        (26, Note::NoneSmallEnough { over }, 0),
    ] {
        let beyond = women(bust);
        assert!(beyond.notes.contains(&note), "{:?}", beyond.notes);
        assert_eq!(beyond.pick, pick);
    }
    let garment = found(&about(1300, "97, 103", Listed::Garment));
    let lacks = mm(1375 - 1030);
    assert!(garment.notes.contains(&Note::NoneLargeEnough { lacks }));
    let none = found(&Question {
        ask: Ask::Fit(Fit::Close),
        ..about(910, "91, 97", Listed::Garment)
    });
    assert!(none.ranked[0].suits, "none at all is close");
}

#[test]
fn a_list_of_bodies_moves_with_her_gauge_by_as_much_as_the_garment_does() {
    let list = with_stitches(sizes("S 86-91, M 91-97, L 97-102"), "204, 216, 228").unwrap();
    let question = Question {
        pattern: gauges(210, 0, Gauge::TEN_CM),
        own: gauges(225, 0, Gauge::TEN_CM),
        sizes: list.clone(),
        ..about(890, "97", Listed::Body)
    };
    let ours = found(&question);
    // M is 216 stitches: 102.9 cm of the pattern's, 96 of hers. What was for 91 to 97 is now for 84.1 to 90.1.
    assert_eq!(ours.pick, 1);
    let fits = ours.ranked[0].girth;
    assert_eq!(print(fits.from, LengthUnit::Cm, PrintStep::Tenth), "84.1");
    assert!(ours.notes.contains(&Note::PickMoved { size: 0 }));
    // And since the garment is known, so is the ease.
    assert_eq!(ours.ranked[0].ease, Some(mm(70)));
    assert!(!ours.notes.contains(&Note::EaseUnknown));
    let no_stitches = found(&Question {
        sizes: sizes("S 86-91, M 91-97, L 97-102"),
        ..question
    });
    assert!(no_stitches.notes.contains(&Note::StitchesUnknown) && no_stitches.notes.contains(&Note::EaseUnknown));
}

#[test]
fn a_full_bust_is_shown_the_size_of_its_shoulders() {
    let question = about(1000, "S 86-91, M 91-97, L 97-102", Listed::Body);
    let high = |high: i64| {
        found(&Question {
            high_bust: Some(mm(high)),
            ..question.clone()
        })
    };
    let fuller = mm(70);
    assert!(high(930).notes.contains(&Note::HighBust { fuller, size: 1 }));
    assert!(!has(&high(950), |note| matches!(note, Note::HighBust { .. })));
    assert!(!has(&high(1010), |note| matches!(note, Note::HighBust { .. })));
}

#[test]
fn the_standards_sizes_meet_without_a_gap() {
    let spans: Vec<Span> = EN_WOMEN.iter().map(|code| Size::from_code(code).girth).collect();
    for girth in 660..=1430 {
        let of = spans.iter().filter(|span| span.off(mm(girth)) == Length::ZERO).count();
        let on_edge = EN_WOMEN[1..].iter().any(|code| code.from == mm(girth));
        assert_eq!(of, 1 + usize::from(on_edge), "{girth}");
    }
}
