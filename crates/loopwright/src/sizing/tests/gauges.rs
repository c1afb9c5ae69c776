//! Two gauges: the pick is made on what a size measures at her own.

use super::*;

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
