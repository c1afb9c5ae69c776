//! What raglan, flare and yoke say in every named state, read as a knitter reads it and knitted on the simulated row: their
//! headlines fit in three lines, their rounds are those of the answer, and every count is the one that is promised.

use super::flare::Flare;
use super::raglan::Raglan;
use super::tests::{fields_of, lines_of};
use super::yoke::Yoke;
use super::{State, Tool};
use crate::words;
use loopwright::row::{read, work};
use loopwright::spacing::{self, Ask};
use loopwright::{flare, raglan, yoke};

/// So many letters stand in a line of the answer beside a question.
const WIDE: usize = 55;

/// The answers of a tool's named states, with their questions; of those that are called so there is none.
fn answered<T: Tool>() -> Vec<(&'static State, T::Question, T::Answer)> {
    let mut answered = Vec::new();
    for state in T::STATES {
        let question = T::read(&fields_of::<T>(state)).ok();
        match question.and_then(|question| T::answer(&question).ok().map(|answer| (question, answer))) {
            Some((question, answer)) => answered.push((state, question, answer)),
            None => assert!(
                matches!(
                    state.name,
                    "empty" | "impossible" | "plain-end" | "multiple" | "unreadable"
                ),
                "{} in {}",
                state.name,
                T::ID
            ),
        }
    }
    answered
}

/// Three lines in all; where body and sleeves each have two rates of their own, two lines for either.
fn fits_in_three_lines(state: &State, headline: &[String]) {
    let lines: Vec<usize> = headline.iter().map(|line| lines_of(line, WIDE)).collect();
    let are_apart = state.name == "apart" && lines == [2, 2];
    assert!(
        lines.iter().sum::<usize>() <= 3 || are_apart,
        "{}: {lines:?}: {headline:?}",
        state.name
    );
}

/// The numbers of a text, without the marks that part thousands.
fn numbers(text: &str) -> Vec<u32> {
    let words = text.split([' ', '\u{a0}', ';', '.', ':']);
    let digits = |word: &str| word.chars().filter(char::is_ascii_digit).collect::<String>();
    let is_number = |word: &&str| word.starts_with(|mark: char| mark.is_ascii_digit());
    words
        .filter(is_number)
        .filter_map(|word| digits(word).parse().ok())
        .collect()
}

/// How often, said as `twice` or `12 times`.
fn times(text: &str) -> u32 {
    match text {
        _ if text.contains("twice") => 2,
        _ if text.contains("once") => 1,
        _ => numbers(text).last().copied().unwrap_or(1),
    }
}

/// Rounds from one to the next, and how often: `every 2nd round 17 times more`, `once 4 rounds later`, `2 rounds later`.
fn rate(text: &str) -> (u32, u32) {
    if text.starts_with("in the next") {
        return (1, 1);
    }
    if text.contains(" later") {
        return (numbers(text)[0], 1);
    }
    let rest = text.strip_prefix("every ").unwrap_or_else(|| panic!("no rate: {text}"));
    let (gap, often) = rest.split_once("round").unwrap_or_else(|| panic!("no rounds: {text}"));
    (numbers(gap).first().copied().unwrap_or(1), times(often))
}

/// The rounds that a phrase says: `now, then every 2nd round 31 times more`, `in round 3. Then 11 times over: 2 rounds
/// later, then 4 rounds later; 22 in all`.
fn rounds(phrase: &str) -> Vec<u32> {
    let (start, rest) = match phrase.split_once(". Then ") {
        Some((start, turns)) => (start, Some(turns)),
        None => (phrase, None),
    };
    let mut rates = start.split(", then ");
    let first = rates.next().unwrap_or_default();
    let first = if first.ends_with("now") { 1 } else { numbers(first)[0] };
    let mut rounds = vec![first];
    let go_on = |rounds: &mut Vec<u32>, (every, many): (u32, u32)| {
        for _ in 0..many {
            rounds.push(rounds[rounds.len() - 1] + every);
        }
    };
    rates.for_each(|each| go_on(&mut rounds, rate(each)));
    if let Some(turns) = rest {
        let (often, turn) = turns
            .split_once(" over: ")
            .unwrap_or_else(|| panic!("no turns: {turns}"));
        let (turn, all) = turn
            .split_once("; ")
            .map_or((turn, None), |(turn, all)| (turn, Some(all)));
        for _ in 0..times(often) {
            turn.split(", then ").for_each(|each| go_on(&mut rounds, rate(each)));
        }
        if let Some(all) = all {
            rounds.truncate(numbers(all)[0] as usize);
        }
    }
    rounds
}

/// The rounds of a headline's line, or of the list that it sends to.
fn said_or_listed(line: &str, listed: impl Iterator<Item = u32>) -> Vec<u32> {
    if line.contains("as listed") {
        return listed.collect();
    }
    if line.contains("no increases") {
        return Vec::new();
    }
    let phrase = line.strip_suffix('.').unwrap_or(line);
    let start = [" now", " in round", " once, "]
        .iter()
        .filter_map(|start| phrase.find(start))
        .min();
    let phrase = start.and_then(|start| phrase.get(start + 1..)).unwrap_or_default();
    let phrase = phrase.split("; in the last of them").next().unwrap_or_default();
    rounds(phrase)
}

/// Stitches after a row that is read back and worked over all of these.
fn worked(text: &str, on_needle: u32) -> u32 {
    let row = read(text).unwrap_or_else(|misread| panic!("{text}: {misread:?}"));
    let worked = work(&row, on_needle).unwrap_or_else(|stuck| panic!("{text}: {stuck:?}"));
    assert_eq!(worked.left_over, 0, "{text}");
    u32::try_from(worked.on_needle).unwrap()
}

#[test]
fn a_raglan_is_knitted_from_what_it_says() {
    let states = answered::<Raglan>();
    assert!(states.len() >= 7, "{}", states.len());
    for (state, question, answer) in states {
        let headline = words::raglan::headline(&answer);
        fits_in_three_lines(state, &headline);
        let track = |name: &str, track: &loopwright::shaping::Track| {
            let line = headline.iter().find(|line| line.starts_with(name)).or(headline.first());
            let rows = track.schedule.rows().map(|shaped| shaped.row);
            let said = if track.schedule.blocks.is_empty() {
                Vec::new()
            } else {
                said_or_listed(line.map_or("", String::as_str), rows.clone())
            };
            assert!(rows.eq(said.iter().copied()), "{}: {headline:?}: {said:?}", state.name);
            said
        };
        let (body, sleeves) = (track("Body", &answer.body), track("Sleeves", &answer.sleeves));
        let raglan::Question {
            body: front_and_back,
            sleeve,
            ..
        } = question;
        let mut counts = [front_and_back / 2, sleeve, front_and_back - front_and_back / 2, sleeve];
        for round in 1..=question.rounds {
            let grows = [body.contains(&round), sleeves.contains(&round)];
            if grows.contains(&true) {
                counts = raglan_round(counts, grows);
            }
        }
        let [front, one, back, other] = counts;
        let below = [
            front + back + 2 * question.underarm,
            one + question.underarm,
            other + question.underarm,
        ];
        assert_eq!(
            below,
            [question.body_to, question.sleeve_to, question.sleeve_to],
            "{}",
            state.name
        );
    }
}

/// A round with an increase at either end of front and back, of both sleeves, or of all: each piece is worked by itself, a
/// stitch of its line at either end of a body piece.
fn raglan_round(counts: [u32; 4], [body, sleeves]: [bool; 2]) -> [u32; 4] {
    let grown = |place: usize, count: u32| match (place % 2, count) {
        (0, 3..) if body => worked(&format!("K1, M1, K{}, M1, K1", count - 2), count),
        (1, _) if sleeves => worked(&format!("M1, K{count}, M1"), count),
        _ => worked(&format!("K{count}"), count),
    };
    [0, 1, 2, 3].map(|place| grown(place, counts[place]))
}

#[test]
fn a_flare_is_knitted_from_what_it_says() {
    let states = answered::<Flare>();
    assert!(states.len() >= 9, "{}", states.len());
    for (state, question, answer) in states {
        let flare::Question { neck, each, .. } = question;
        let headline = words::flare::headline(&question, &answer);
        fits_in_three_lines(state, std::slice::from_ref(&headline));
        let rows = answer.schedule.rows().map(|shaped| shaped.row);
        let said = if answer.gain == 0 {
            Vec::new()
        } else {
            said_or_listed(&headline, rows.clone())
        };
        assert!(rows.eq(said.iter().copied()), "{}: {headline}: {said:?}", state.name);
        let mut count = neck;
        for (place, _) in said.iter().enumerate() {
            let is_last = place + 1 == said.len();
            let gain = answer.rest.filter(|_| is_last).unwrap_or(each);
            // The longest needles are spaced in their own tests.
            count = match count {
                0..10_000 => worked(&spaced(count, gain), count),
                _ => count + gain,
            };
        }
        assert_eq!(
            (count, said.last() <= Some(&answer.rounds)),
            (answer.hem, true),
            "{}",
            state.name
        );
    }
}

/// One round that gains so many, evenly spaced, as it is written.
fn spaced(stitches: u32, gain: u32) -> String {
    let question = spacing::Question {
        ask: Ask::Gain(gain),
        ..spacing::Question::about(stitches)
    };
    let spaced = spacing::answer(&question).unwrap();
    spaced.ways[spaced.suggested].row.to_string()
}

#[test]
fn a_yoke_is_knitted_from_what_it_says() {
    let states = answered::<Yoke>();
    assert!(states.len() >= 7, "{}", states.len());
    for (state, question, answer) in states {
        let headline = words::yoke::headline(&answer);
        fits_in_three_lines(state, std::slice::from_ref(&headline));
        says_its_rounds(state, &headline, &answer);
        let mut count = question.from;
        for round in &answer.rounds {
            let listed = words::yoke::listed(&question, round);
            count = worked(&round.row.to_string(), count);
            assert_eq!(
                numbers(&listed),
                [round.round, round.change, round.percent, count],
                "{}",
                state.name
            );
        }
        assert_eq!(count, question.to, "{}", state.name);
    }
}

/// The rounds that the headline names, what they change and what is plain at the underarm, or how many rounds are listed.
fn says_its_rounds(state: &State, headline: &str, answer: &yoke::Answer) {
    let [changes, named]: [Vec<u32>; 2] = [
        answer.rounds.iter().map(|round| round.change).collect(),
        answer.rounds.iter().map(|round| round.round).collect(),
    ];
    let (start, end) = (headline.find("crease ").unwrap_or(0), headline.find(", then work"));
    let shaping = headline.get(start..end.unwrap_or(headline.len())).unwrap_or_default();
    let plain = [headline.get(..start), end.and_then(|end| headline.get(end..))];
    let plain: Vec<u32> = plain.into_iter().flatten().flat_map(numbers).collect();
    assert_eq!(
        plain,
        Vec::from_iter(Some(answer.plain).filter(|plain| *plain > 0)),
        "{}",
        state.name
    );
    let (said_changes, said_rounds) = shaping.split_once(" evenly in ").unwrap_or_default();
    let said = (numbers(said_changes), numbers(said_rounds));
    if headline.contains("as listed") {
        let [least, most] = [changes.iter().min(), changes.iter().max()].map(|change| *change.unwrap());
        let ends = if least == most { vec![most] } else { vec![least, most] };
        assert_eq!(said, (ends, vec![named.len() as u32]), "{}", state.name);
    } else {
        let alike = changes.windows(2).all(|two| two[0] == two[1]);
        let changes = if alike { changes[..1].to_vec() } else { changes };
        assert_eq!(said, (changes, named), "{}", state.name);
    }
}
