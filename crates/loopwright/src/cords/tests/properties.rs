//! No fewer cords will do, by trying every set of them; and what holds for every piece.

use super::*;

/// The fewest cords of a set that serve every count which any of them serves, by trying every subset.
fn fewest(counts: &[u32], cords: &[i64], flat: bool) -> usize {
    let holds = |cord: i64, count: u32| {
        let half_cm = i64::from(count);
        (flat || 2 * cord <= half_cm) && half_cm <= 4 * cord
    };
    let served: Vec<u32> = counts
        .iter()
        .copied()
        .filter(|count| cords.iter().any(|cord| holds(*cord, *count)))
        .collect();
    let subsets = (0_u32..1 << cords.len()).filter(|subset| {
        let chosen = |count: &u32| (0..cords.len()).any(|i| subset & 1 << i != 0 && holds(cords[i], *count));
        served.iter().all(chosen)
    });
    subsets.map(|subset| subset.count_ones() as usize).min().unwrap()
}

/// The fewest changes with these cords, by going through the rounds with every cord at once.
fn fewest_stretches(counts: &[u32], picks: &[Length], flat: bool) -> usize {
    let holds = |cord: Length, count: u32| {
        let (cord, girth) = (cord.to_nm(), i64::from(count) * 5_000_000);
        (flat || cord <= girth) && girth <= 2 * cord
    };
    // What it takes to end a round on each cord; the last is no cord at all, where none holds.
    let mut ways = vec![0_usize; picks.len() + 1];
    let mut begun = false;
    for count in counts {
        let least = *ways.iter().min().unwrap();
        let none = !picks.iter().any(|cord| holds(*cord, *count));
        let next = (0..ways.len()).map(|i| {
            let fits = picks.get(i).map_or(none, |cord| holds(*cord, *count));
            let stay = if begun { ways[i] } else { usize::MAX };
            if fits {
                stay.min(least.saturating_add(1))
            } else {
                usize::MAX / 2
            }
        });
        ways = next.collect();
        begun = true;
    }
    *ways.iter().min().unwrap()
}

proptest! {
    #[test]
    fn no_set_of_cords_is_smaller(
        counts in prop::collection::vec(20_u32..700, 1..40),
        cords in prop::collection::vec(20_i64..180, 1..9),
        flat: bool,
    ) {
        let question = Question { flat, ..round(Around::Rounds(counts.clone()), &cords) };
        let answer = answer(&question).unwrap();
        prop_assert_eq!(answer.picks.len(), fewest(&counts, &cords, flat));
        prop_assert!(answer.picks.is_sorted());
        prop_assert_eq!(answer.plan.len(), fewest_stretches(&counts, &answer.picks, flat));
    }

    #[test]
    fn every_change_within_its_window_works(
        counts in prop::collection::vec(60_u32..400, 1..60),
        cords in prop::collection::vec(20_i64..180, 1..9),
        flat: bool,
        pick in 0_u32..100,
    ) {
        let question = Question { flat, ..round(Around::Rounds(counts.clone()), &cords) };
        let answer = answer(&question).unwrap();
        // Knit it: change at some round of each window, and look at every round whether the cord serves it.
        let mut on = Vec::new();
        let mut before = 0;
        for part in &answer.plan {
            prop_assert!(before < part.earliest && part.earliest <= part.latest && part.latest <= part.last);
            before = part.latest;
            let change = part.earliest + pick % (part.latest - part.earliest + 1);
            on.truncate(change as usize - 1);
            on.resize(part.last as usize, part.by);
        }
        prop_assert_eq!(on.len(), counts.len());
        for (round, by) in (1..).zip(on) {
            let serves = |cord: &Cord| cord.runs.iter().any(|run| (run.from..=run.to).contains(&round));
            match by {
                By::Cord(length) => prop_assert!(answer.cords.iter().any(|cord| cord.length == length && serves(cord))),
                By::Gap(gap) => {
                    prop_assert!(!answer.cords.iter().any(serves));
                    let girth = Length::from_mm(5 * i64::from(counts[round as usize - 1]));
                    prop_assert!(gap.least <= girth && girth <= gap.most);
                    prop_assert_eq!(gap.cord.is_some(), gap.sold.is_some());
                    if let Some((shortest, longest)) = gap.cord.and(gap.sold) {
                        prop_assert!(shortest <= longest && gap.most <= shortest.saturating_mul(2));
                        prop_assert!(flat || longest <= gap.least);
                    }
                }
            }
        }
    }

    #[test]
    fn every_change_with_one_cord_more_works(
        from in 60_u32..200,
        to in 60_u32..400,
        rounds in 2_u32..80,
        cords in prop::collection::vec(30_i64..120, 2..7),
        pick in 0_u32..100,
    ) {
        let answer = answer(&round(Around::Even { from, to, rounds }, &cords)).unwrap();
        let Some(easier) = answer.easier else { return Ok(()) };
        let mut on = Vec::new();
        for part in &easier.plan {
            prop_assert!(part.earliest <= part.latest && part.latest <= part.last);
            let change = part.earliest + pick % (part.latest - part.earliest + 1);
            on.truncate(change as usize - 1);
            on.resize(part.last as usize, part.by);
        }
        prop_assert_eq!(on.len(), rounds as usize);
        for (round, by) in (1..).zip(on) {
            let serves = |cord: &Cord| cord.runs.iter().any(|run| (run.from..=run.to).contains(&round));
            prop_assert!(answer.cords.iter().any(|cord| By::Cord(cord.length) == by && serves(cord)));
        }
    }

    #[test]
    fn lengths_twice_as_long_change_no_round(
        counts in prop::collection::vec(20_u32..700, 1..30),
        thousandths in 5_000_u32..60_000,
        cords in prop::collection::vec(150_000_000_i64..2_000_000_000, 1..9),
        flat: bool,
    ) {
        let scaled = |times: i64| {
            let question = Question {
                unwashed: Gauge::new(thousandths, Gauge::FOUR_INCHES.saturating_mul(times)),
                cords: cords.iter().map(|nm| Length::from_nm(nm * times)).collect(),
                flat,
                ..Question::about(Around::Rounds(counts.clone()))
            };
            let answer = answer(&question).unwrap();
            let runs: Vec<_> = answer.cords.into_iter().map(|cord| (cord.stitches, cord.runs)).collect();
            let plan: Vec<_> = answer.plan.iter().map(|part| (part.earliest, part.latest, part.last)).collect();
            (runs, plan)
        };
        prop_assert_eq!(scaled(1), scaled(2));
    }

    #[test]
    fn nothing_panics(
        lengths: [i64; 4],
        numbers: [u32; 3],
        counts in prop::collection::vec(any::<u32>(), 0..20),
        thousandths: u32,
        flat: bool,
        text in ".*|[0-9 ,;incmad]{0,16}",
    ) {
        let [a, b, c, d] = lengths.map(Length::from_nm);
        let [from, to, rounds] = numbers;
        let small = Around::Even { from: from % 100_000 + 1, to: to % 100_000 + 1, rounds: rounds % 300 + 2 };
        let girth = Around::Girth(Length::from_nm(a.to_nm() % GIRTH.most.to_nm()));
        for around in [Around::Girth(a), Around::Even { from, to, rounds }, Around::Rounds(counts), small, girth] {
            let question = Question {
                around,
                unwashed: Gauge::new(thousandths, b),
                washed: Gauge::new(thousandths % 400_000, Gauge::SPANS.least),
                flat,
                cords: vec![c, d],
                tip: Some(c),
                needle: Some(a),
            };
            let _ = answer(&question);
            let _ = answer(&Question { unwashed: None, cords: vec![], tip: None, ..question });
        }
        let _ = read_list(&text, LengthUnit::Inch);
    }

    #[test]
    fn a_list_of_cords_is_read_in_every_way_of_writing(
        cords in prop::collection::vec(15_i64..300, 1..9),
        between in prop::sample::select(&[" ", ", ", ",", "; ", "\n", " and ", " cm, ", "cm "][..]),
    ) {
        let texts: Vec<String> = cords.iter().map(i64::to_string).collect();
        let lengths: Vec<Length> = cords.iter().map(|length| cm(*length)).collect();
        prop_assert_eq!(read_list(&texts.join(between), LengthUnit::Cm), Ok(lengths));
    }
}
