//! Growth in steps, as a yoke has it.

use super::*;

/// 90 stitches, 120 after round 5, 160 after round 12, and 15 rounds in all.
fn in_steps(steps: &[(u32, u32)], rounds: u32) -> Around {
    let step = |&(round, stitches): &(u32, u32)| Step { round, stitches };
    Around::Steps {
        from: 90,
        steps: steps.iter().map(step).collect(),
        rounds,
    }
}

/// The obvious sum takes a yoke's growth as even: 160 stitches at 20 in 10 cm are then reached in the last round only.
#[test]
fn growth_in_steps_is_on_the_needle_after_its_round() {
    let counts: Vec<u32> = [vec![90; 4], vec![120; 7], vec![160; 4]].concat();
    let steps = round(in_steps(&[(5, 120), (12, 160)], 15), &[40, 60, 80]);
    let by_round = round(Around::Rounds(counts), &[40, 60, 80]);
    assert_eq!(answer(&steps).unwrap(), answer(&by_round).unwrap());
}

#[test]
fn steps_that_go_back_or_past_the_end_are_refused() {
    let names = |around| {
        let problems = answer(&round(around, &[40])).unwrap_err();
        problems
            .iter()
            .filter_map(|problem| problem.field.name())
            .collect::<Vec<Name>>()
    };
    assert_eq!(names(in_steps(&[(12, 120), (5, 160)], 15)), [Name::Steps]);
    assert_eq!(names(in_steps(&[(5, 120), (5, 160)], 15)), [Name::Steps]);
    assert_eq!(names(in_steps(&[(5, 120), (16, 160)], 15)), [Name::Rounds]);
    assert_eq!(names(in_steps(&[], 15)), [Name::Steps]);
}

/// Every number of a list of steps is read or the list is refused.
#[test]
fn a_list_of_steps_is_read_whole() {
    let read =
        |text: &str| read_steps(text).map(|steps| steps.iter().map(|step| (step.round, step.stitches)).collect());
    let both: Vec<(u32, u32)> = vec![(5, 120), (12, 160)];
    for text in [
        "5: 120, 12: 160",
        "5:120;12:160",
        "after round 5: 120, after round 12: 160",
        "After round 5 = 120 sts\nRow 12 to 160 stitches",
    ] {
        assert_eq!(read(text), Ok(both.clone()), "{text}");
    }
    for text in [
        "5",
        "5: 120, 160",
        "5 120 12 160",
        "5: 1,200",
        "five: 120",
        "5: 12q",
        "",
    ] {
        assert!(read(text).is_err(), "{text}");
    }
}
