//! The words of the raglan.

use super::Title;
use super::intl::{fill_pattern, fill_pattern_with, number, stitches};
use super::schedule;
use loopwright::problem::{Kind, Problem};
use loopwright::raglan::{Adds, Answer, FULL, Name, Question, RaglanRound};
use loopwright::shaping::{Rates, Track};

pub const TITLE: Title = Title {
    name: "Raglan",
    asks: "When to increase body and sleeves, each to its own count.",
};
pub const WAITING: &str = "The raglan rounds appear here.";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Body => "Front and back at the neck, with the four lines",
        Name::Sleeve => "One sleeve at the neck",
        Name::BodyTo => "Body round below the underarm",
        Name::SleeveTo => "Sleeve round below the underarm",
        Name::Rounds => "Rounds from neck to underarm",
        Name::Underarm => "Stitches cast on at each underarm",
        Name::First => "Plain rounds before the first raglan round",
        Name::Last => "Plain rounds at the end, at least",
        Name::Rhythm => "The raglan rounds are",
    }
}

/// What to type instead, and why.
pub fn problem(question: Option<&Question>, problem: &Problem) -> String {
    let advice = || super::problem::sentence(&problem.kind);
    let in_rounds = |pattern, most| question.map(|question| fill_pattern(pattern, &[question.rounds, most]));
    let why = match (problem.field.name(), problem.kind) {
        (Some(Name::BodyTo), Kind::TooMany { most }) => {
            in_rounds("In # {round|rounds} the body grows to # at most.", most)
        }
        (Some(Name::SleeveTo), Kind::TooMany { most }) => {
            in_rounds("In # {round|rounds} a sleeve grows to # at most.", most)
        }
        (Some(Name::Rounds), Kind::TooFew { least }) => Some(fill_pattern(
            "To grow this far takes # {round|rounds} or more.",
            &[least],
        )),
        (Some(Name::First | Name::Last), Kind::TooMany { most }) if question.is_some() => Some(fill_pattern(
            "More than # leave too few rounds to increase in.",
            &[most],
        )),
        _ => None,
    };
    why.unwrap_or_else(advice)
}

/// Whether body and sleeves grow in the same rounds.
const fn is_one_track(answer: &Answer) -> bool {
    answer.body_only == 0 && answer.sleeves_only == 0
}

/// Whether there is no raglan round at all.
const fn is_plain(answer: &Answer) -> bool {
    is_one_track(answer) && answer.full == 0
}

/// Whether the headline tells all raglan rounds; otherwise it sends to the list.
pub fn tells_rounds(answer: &Answer) -> bool {
    let is_told = |track: &Track| Rates::of(&track.schedule) != Rates::Listed;
    is_told(&answer.body) && is_told(&answer.sleeves)
}

/// Above it.
pub fn title(answer: &Answer) -> &'static str {
    match is_one_track(answer) {
        true => "From neck to underarm",
        false => "Increase, from neck to underarm",
    }
}

/// What to knit: one line where body and sleeves grow together, else one for each.
pub fn headline(answer: &Answer) -> Vec<String> {
    if is_plain(answer) {
        return vec![schedule::written(&answer.schedule)];
    }
    if is_one_track(answer) {
        return vec![fill_pattern_with("Increase # @.", &[FULL], &[&in_rounds(&answer.body)])];
    }
    vec![
        track("Body", "Body: 4 @.", &answer.body),
        track("Sleeves", "Sleeves: 2 each @.", &answer.sleeves),
    ]
}

/// The line of one track.
fn track(name: &str, pattern: &str, track: &Track) -> String {
    if track.schedule.blocks.is_empty() {
        return fill_pattern_with("@: no increases.", &[], &[name]);
    }
    fill_pattern_with(pattern, &[], &[&in_rounds(track)])
}

/// When a track increases, behind how many.
fn in_rounds(track: &Track) -> String {
    let listed = || fill_pattern("in # rounds, as listed below", &[track.schedule.shaping_rows()]);
    schedule::phrase(&track.schedule).unwrap_or_else(listed)
}

/// How far either strays from an even slope; nothing where there is no slope.
pub fn drift(answer: &Answer) -> Option<String> {
    let (body, sleeves) = (&answer.body, &answer.sleeves);
    let grows = |track: &Track| track.schedule.shaping_rows() > 1;
    let of_body = || schedule::drift(Some("The body"), &body.drift, 4);
    let of_sleeves = || schedule::drift(Some("Each sleeve"), &sleeves.drift, 2);
    Some(match (grows(body), grows(sleeves)) {
        (false, false) => return None,
        (true, true) if is_one_track(answer) => schedule::drift(None, &body.drift, FULL),
        (true, true) if body.drift.is_within_a_round() && sleeves.drift.is_within_a_round() => {
            "Both grow evenly, to the round.".into()
        }
        (true, true) => [of_body(), of_sleeves()].join(" "),
        (true, false) => of_body(),
        (false, true) => of_sleeves(),
    })
}

/// The raglan rounds one by one, at most so many.
pub fn listed(answer: &Answer, most: usize) -> Vec<String> {
    let rounds = answer.rounds();
    let mut listed: Vec<String> = rounds.iter().take(most).map(one_round).collect();
    if rounds.len() > most {
        listed.push(schedule::AND_ON.into());
    }
    listed
}

/// One raglan round and the counts after it.
fn one_round(round: &RaglanRound) -> String {
    let adds = match round.adds {
        Adds::ToBoth => "body and sleeves",
        Adds::ToBody => "body",
        Adds::ToSleeves => "sleeves",
    };
    let numbers = [round.round, round.front_and_back, round.sleeve, round.needle()];
    fill_pattern_with("Round #, @: # + 2 × # = #", &numbers, &[adds])
}

/// What is done in a raglan round that is followed: "Add to body and sleeves: 8 stitches (body 72, each sleeve 24)."
pub fn followed(round: &RaglanRound) -> String {
    let to = match round.adds {
        Adds::ToBoth => "body and sleeves",
        Adds::ToBody => "the body only",
        Adds::ToSleeves => "the sleeves only",
    };
    let numbers = [round.adds.stitches(), round.front_and_back, round.sleeve];
    fill_pattern_with("Add to @: # stitches (body #, each sleeve #).", &numbers, &[to])
}

/// What it comes to.
pub fn outcome(question: &Question, answer: &Answer) -> (String, String) {
    let left = answer.schedule.left;
    let pattern = match left {
        _ if is_plain(answer) => "Before you divide there are",
        0 => "After # {round|rounds}, before you divide, there are",
        1 => "After # {round|rounds}, the last one plain, there are",
        _ => "After # {round|rounds}, the last # plain, there are",
    };
    (fill_pattern(pattern, &[question.rounds, left]), stitches(answer.needle))
}

/// At the underarm.
pub fn underarm(question: &Question, answer: &Answer) -> String {
    let Question {
        underarm,
        body_to,
        sleeve_to,
        ..
    } = *question;
    if underarm == 0 {
        let pattern = "Then put # aside for each sleeve and join the # of front and back.";
        return fill_pattern(pattern, &[answer.aside, body_to]);
    }
    let numbers = [answer.aside, underarm, body_to, sleeve_to];
    let pattern =
        "Then put # aside for each sleeve and cast on # at each underarm: # round the body, # round each sleeve.";
    fill_pattern(pattern, &numbers)
}

/// More raglan rounds than this have no lines of their own in the drawing.
const MOST_LINES: u32 = 80;

/// Whether the raglan rounds have lines of their own in the drawing.
pub fn has_lines(answer: &Answer) -> bool {
    let many = [&answer.body, &answer.sleeves].map(|track| track.schedule.shaping_rows());
    !is_plain(answer) && many.iter().all(|rounds| *rounds <= MOST_LINES)
}

/// The words in the drawing.
pub fn labels(question: &Question, answer: &Answer) -> Labels {
    let neck = question.body + 2 * question.sleeve;
    Labels {
        words: [&key(question, answer), " ", &headline(answer).join(" ")].concat(),
        neck: number(neck),
        back: "Back",
        front: "Front",
        sleeve: "Sleeve",
        // An odd stitch is at the back.
        front_to: number(question.body_to / 2),
        back_to: number(question.body_to.div_ceil(2)),
        sleeve_to: number(question.sleeve_to),
    }
}

/// What is written into the drawing.
pub struct Labels {
    /// For those who cannot see it.
    pub words: String,
    /// In the neck.
    pub neck: String,
    /// On the part behind.
    pub back: &'static str,
    /// On the part in front.
    pub front: &'static str,
    /// On each sleeve.
    pub sleeve: &'static str,
    /// Stitches of the front below the underarm.
    pub front_to: String,
    /// Those of the back.
    pub back_to: String,
    /// Below that of each sleeve.
    pub sleeve_to: String,
}

/// Below the drawing.
pub fn key(question: &Question, answer: &Answer) -> String {
    let numbers = [
        question.body + 2 * question.sleeve,
        question.body_to,
        question.sleeve_to,
    ];
    let mut sentence = fill_pattern(
        "From above, in stitches and rounds: the neck with # in the middle; outside, # round the body and # round each sleeve.",
        &numbers,
    );
    if has_lines(answer) {
        sentence += " A thin line for each raglan round.";
    }
    sentence += " The four lines run between the parts.";
    if question.underarm > 0 {
        sentence += " Thick at the corners: what you cast on.";
    }
    sentence
}

/// What a raglan round is, where there are any; and that some follow each other at once, where they do.
pub fn lines(question: &Question, answer: &Answer) -> Option<String> {
    if is_plain(answer) {
        return None;
    }
    let mut sentence = match (is_one_track(answer), answer.full) {
        (true, _) => String::from("At each of the four lines a stitch is added on either side."),
        (false, 0) => String::from("At each of the four lines a stitch is added, on the side that is named."),
        (false, _) => {
            String::from("At each of the four lines the body gains a stitch on its side, a sleeve one on its own.")
        }
    };
    sentence += " The lines’ own stitches count with the body.";
    if answer.every_other > question.rounds {
        let pattern = " Most raglans keep a plain round between two raglan rounds, which would take # rounds here (common practice, no source).";
        sentence += &fill_pattern(pattern, &[answer.every_other]);
    }
    Some(sentence)
}

/// The sum: both counts, from the neck to the target.
pub fn steps(question: &Question, answer: &Answer) -> Vec<String> {
    let Question {
        body,
        sleeve,
        body_to,
        sleeve_to,
        underarm,
        ..
    } = *question;
    let Answer {
        front_and_back,
        aside,
        needle,
        ..
    } = *answer;
    let times = |track: &Track| track.schedule.shaping_rows();
    vec![
        fill_pattern(
            "Body: # + # × 4 + 2 × # cast on = #.",
            &[body, times(&answer.body), underarm, body_to],
        ),
        fill_pattern(
            "Each sleeve: # + # × 2 + # cast on = #.",
            &[sleeve, times(&answer.sleeves), underarm, sleeve_to],
        ),
        fill_pattern(
            "On the needle before you divide: # + 2 × # = #.",
            &[front_and_back, aside, needle],
        ),
    ]
}

pub const SOURCE: &str =
    "The sum is arithmetic. Four lines, a stitch on either side, a plain round at the end: common practice, no source.";

#[cfg(test)]
mod tests;
