//! The traps of choosing a size, each with the obvious sum beside ours, and what holds for every question.

use super::*;
use crate::problem::Kind;
use crate::tables::body::{EN_WOMEN, WOMEN};
use crate::units::print::{Step as PrintStep, print};
use crate::units::{Amount, LengthUnit};
use proptest::prelude::*;

fn mm(mm: i64) -> Length {
    Length::from_mm(mm)
}

fn sizes(text: &str) -> Vec<Size> {
    read_sizes(text, LengthUnit::Cm).unwrap()
}

fn about(bust: i64, list: &str, listed: Listed) -> Question {
    Question {
        listed: Some(listed),
        ..Question::about(mm(bust), sizes(list))
    }
}

fn gauges(stitches: u32, rows: u32, span: Length) -> Option<Gauges> {
    let gauge = |tenths: u32| Gauge::new(tenths * 100, span).unwrap();
    Some(Gauges {
        stitches: gauge(stitches),
        rows: (rows > 0).then(|| gauge(rows)),
    })
}

/// The sizes that are as good as the pick.
fn tied(answer: &Answer) -> Vec<usize> {
    let tied = answer.ranked.iter().filter(|ranked| ranked.tied);
    tied.map(|ranked| ranked.size).collect()
}

/// The size whose listed girth is nearest to a wanted one: the obvious sum.
fn nearest_listed(question: &Question, wanted: Length) -> usize {
    let away = |at: &usize| question.sizes[*at].girth.middle().saturating_sub(wanted).to_nm().abs();
    (0..question.sizes.len()).min_by_key(away).unwrap()
}

fn has(answer: &Answer, is_meant: impl Fn(&Note) -> bool) -> bool {
    answer.notes.iter().any(is_meant)
}

fn found(question: &Question) -> Answer {
    answer(question).unwrap_or_else(|problems| panic!("{problems:?}"))
}

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
    assert!(has(&upper, |note| matches!(note, Note::OnEdge { size: 2, is_lower: false, .. })));
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

fn about_wrap(bust: i64, list: &str, wrap: Wrap) -> Question {
    Question {
        garment: Garment::Wrap(wrap),
        ..about(bust, list, Listed::Garment)
    }
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
fn one_gauge_alone_says_what_is_missing() {
    let answered = |pattern: bool, own: bool| {
        let gauge = |there: bool| gauges(210, 0, Gauge::TEN_CM).filter(|_| there);
        let found = found(&Question {
            pattern: gauge(pattern),
            own: gauge(own),
            ..about(910, "97, 103", Listed::Garment)
        });
        [Note::PatternGaugeUnused, Note::OwnGaugeUnused].map(|note| found.notes.contains(&note))
    };
    assert_eq!(answered(true, false), [true, false]);
    assert_eq!(answered(false, true), [false, true]);
    assert_eq!((answered(true, true), answered(false, false)), ([false; 2], [false; 2]));
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

#[test]
fn the_pick_is_made_on_what_a_size_measures_at_her_own_gauge() {
    let listed = about(910, "S 97, M 103, L 111", Listed::Garment);
    let known = with_stitches(listed.sizes.clone(), "204, 216, 234").unwrap();
    let question = Question {
        sizes: known,
        pattern: gauges(210, 280, Gauge::TEN_CM),
        own: gauges(225, 264, Gauge::TEN_CM),
        ..listed.clone()
    };
    let (naive, ours) = (found(&listed), found(&question));
    assert_eq!((naive.pick, ours.pick), (0, 1));
    assert!(ours.notes.contains(&Note::PickMoved { size: 0 }));
    // 216 stitches at 22.5 to 10 cm are 96 cm.
    assert_eq!(ours.ranked[0].garment, Some(mm(960)));
    assert!(ours.ranked.iter().all(|ranked| ranked.from_stitches));
    // The stitches count, not the listed girth by the gauges: the pattern rounded, and 208 are 1.9 cm more.
    let rounded = with_stitches(question.sizes.clone(), "208, 216, 234").unwrap();
    let girth = |sizes: Vec<Size>| {
        let answer = found(&Question {
            sizes,
            own: gauges(210, 280, Gauge::TEN_CM),
            ..question.clone()
        });
        answer
            .ranked
            .iter()
            .find(|ranked| ranked.size == 0)
            .unwrap()
            .garment
            .unwrap()
    };
    let (exact, scaled) = (girth(rounded), girth(listed.sizes.clone()));
    assert!(exact.saturating_sub(scaled) > mm(20), "{exact:?} {scaled:?}");
    assert!(
        found(&Question {
            sizes: listed.sizes,
            ..question
        })
        .notes
        .contains(&Note::StitchesUnknown)
    );
}

#[test]
fn her_own_gauge_moves_lengths_and_yarn_too() {
    let moves = |own| {
        let pattern = gauges(210, 280, Gauge::TEN_CM);
        found(&Question {
            pattern,
            own,
            ..about(910, "97, 103", Listed::Garment)
        })
        .moves
        .unwrap()
    };
    // 6 % off in rows over 22 cm is 1.3 cm: what the rows of the pattern do, while lengths by measure hold.
    let six = moves(gauges(210, 264, Gauge::TEN_CM));
    let off = six.armhole_by_rows.unwrap().saturating_sub(ARMHOLE);
    assert_eq!(print(off, LengthUnit::Cm, PrintStep::Tenth), "1.3");
    // A tenth more stitches to the area is 4.9 % more yarn, not 10 %.
    let tenth = moves(gauges(231, 280, Gauge::TEN_CM));
    assert_eq!((tenth.stitches, tenth.rows), (PerMille(100), Some(PerMille(0))));
    assert_eq!(tenth.yarn_same_measure, PerMille(49));
    assert!(
        tenth.yarn_same_size < PerMille(0),
        "the same stitches, each with less yarn"
    );
    let unknown = moves(gauges(231, 0, Gauge::TEN_CM));
    assert!(unknown.rows.is_none() && unknown.armhole_by_rows.is_none());
    assert_eq!(
        (unknown.yarn_same_measure, unknown.yarn_same_size),
        (PerMille(100), PerMille(0))
    );
}

#[test]
fn ten_centimetres_and_four_inches_meet_in_two_gauges() {
    let listed = sizes("S 97, M 103, L 111");
    let with = with_stitches(listed, "204, 216, 234").unwrap();
    let question = |own| Question {
        sizes: with.clone(),
        ask: Ask::Ease(mm(10)),
        pattern: gauges(210, 0, Gauge::TEN_CM),
        own,
        ..about(1000, "97", Listed::Garment)
    };
    let same_count = found(&question(gauges(210, 0, Gauge::FOUR_INCHES)));
    let largest = same_count.ranked.iter().find(|ranked| ranked.size == 2).unwrap();
    // 234 / 21 x 10.16 cm; by the counts alone it would be 111.4.
    let (ours, naive) = (largest.garment.unwrap(), mm(1114));
    assert_eq!(print(ours, LengthUnit::Cm, PrintStep::Tenth), "113.2");
    assert!(ours.saturating_sub(naive) > mm(15));
    assert_eq!(same_count.moves.unwrap().stitches, PerMille(-16));
    // 21.336 in 4 inches is 21 in 10 cm: nothing moves, whatever the counts look like.
    let same = Gauge::new(21_336, Gauge::FOUR_INCHES).map(|stitches| Gauges { stitches, rows: None });
    let moves = found(&question(same)).moves.unwrap();
    assert_eq!((moves.stitches, moves.yarn_same_measure), (PerMille(0), PerMille(0)));
}

#[test]
fn rows_over_ten_centimetres_and_four_inches_meet_too() {
    let rows = |count: u32, span: Length| {
        let stitches = Gauge::of(21, Gauge::TEN_CM);
        let rows = Some(Gauge::of(count, span));
        Some(Gauges { stitches, rows })
    };
    let question = Question {
        pattern: rows(28, Gauge::TEN_CM),
        own: rows(28, Gauge::FOUR_INCHES),
        ..about(910, "97, 103", Listed::Garment)
    };
    let moves = found(&question).moves.unwrap();
    // By the counts alone nothing moves; 22 cm by the pattern's rows are 22.4.
    assert_eq!(moves.rows, Some(PerMille(-16)));
    assert_eq!(moves.armhole_by_rows, Some(Length::from_nm(223_520_000)));
    assert_eq!(
        (moves.yarn_same_measure, moves.yarn_same_size),
        (PerMille(-8), PerMille(-8))
    );
}

#[test]
fn what_is_printed_is_never_fed_forward() {
    let bust = mm(931);
    let printed = print(bust, LengthUnit::Cm, PrintStep::Half);
    let again = sizes(&printed)[0].girth.from;
    let pick = |bust| {
        found(&Question {
            bust,
            ..about(0, "97, 103", Listed::Garment)
        })
        .pick
    };
    assert_eq!(printed, "93");
    assert_ne!(pick(bust), pick(again), "a printed bust would give another size");
    // A list in eighths of an inch is held exactly: 38 3/8 in less 36 3/8 in is 2 in, not what their centimetres give.
    let list = read_sizes("38 3/8, 42", LengthUnit::Inch).unwrap();
    let inches = Question {
        listed: Some(Listed::Garment),
        ..Question::about(Length::from_sixty_fourths(36 * 64 + 24), list)
    };
    assert_eq!(found(&inches).ranked[0].ease, Some(Length::from_inches(2)));
}

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
fn stitches_that_cannot_be_are_not_reckoned_with() {
    let with = |stitches: &str| {
        let sizes = with_stitches(sizes("97, 103"), stitches).unwrap();
        let pattern = gauges(210, 0, Gauge::TEN_CM);
        found(&Question {
            sizes,
            pattern,
            own: pattern,
            ..about(910, "97", Listed::Garment)
        })
    };
    let half = with("102, 108");
    // 102 stitches of 21 to 10 cm are 48.6 cm, not 97: those of the front alone.
    assert!(has(&half, |note| matches!(note, Note::StitchesLeftOut { size: 0, .. })));
    assert_eq!(half.ranked[0].garment, Some(mm(970)));
    assert!(!has(&with("208, 216"), |note| matches!(
        note,
        Note::StitchesLeftOut { .. }
    )));
    let unused = Question {
        own: gauges(220, 0, Gauge::TEN_CM),
        ..about(910, "97", Listed::Garment)
    };
    assert!(found(&unused).notes.contains(&Note::OwnGaugeUnused));
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

#[test]
fn the_standards_sizes_meet_without_a_gap() {
    let spans: Vec<Span> = EN_WOMEN.iter().map(|code| Size::from_code(code).girth).collect();
    for girth in 660..=1430 {
        let of = spans.iter().filter(|span| span.off(mm(girth)) == Length::ZERO).count();
        let on_edge = EN_WOMEN[1..].iter().any(|code| code.from == mm(girth));
        assert_eq!(of, 1 + usize::from(on_edge), "{girth}");
    }
}
