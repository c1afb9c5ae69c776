//! The words of the raglan.

use super::Title;
use super::intl::{fill_pattern, fill_pattern_with, stitches};
use super::{rounds, schedule};
use loopwright::raglan::{Answer, FULL, Name, PART, Question};

pub const TITLE: Title = Title {
    name: "Raglan",
    asks: "Which rounds add to body and sleeves, each to its own count.",
};
pub const WAITING: &str = "The raglan rounds appear here.";
pub const ANSWER: &str = "From neck to underarm";

/// What a field is called.
pub const fn label(name: Name) -> &'static str {
    match name {
        Name::Body => "Body at the neck, front and back with the lines",
        Name::Sleeve => "One sleeve at the neck",
        Name::BodyTo => "Body round below the underarm",
        Name::SleeveTo => "Sleeve round below the underarm",
        Name::Rounds => "Rounds from neck to underarm",
        Name::Underarm => "Stitches cast on at each underarm",
        Name::First => "Plain rounds before the first raglan round",
        Name::Last => "Plain rounds at the end, at least",
    }
}

/// The rounds of a schedule that change so many.
fn rounds_of(answer: &Answer, change: u32) -> Vec<u32> {
    let rounds = answer.schedule.rows().filter(|shaped| shaped.change == change);
    rounds.map(|shaped| shaped.row).collect()
}

/// Whether the headline names all raglan rounds; otherwise it sends to the counts below it.
pub fn names_rounds(answer: &Answer) -> bool {
    [FULL, PART]
        .into_iter()
        .all(|change| rounds::are_named(rounds_of(answer, change).len()))
}

/// What to knit: the rounds that add to both, and those that add to one of the two.
pub fn headline(answer: &Answer) -> String {
    let (full, part) = (rounds_of(answer, FULL), rounds_of(answer, PART));
    let mut sentences = Vec::new();
    if !full.is_empty() {
        sentences.push(fill_pattern_with("Increase 8 in @.", &[], &[&rounds::named(&full)]));
    }
    if !part.is_empty() {
        let only = if answer.body_only > 0 { "body" } else { "sleeves" };
        let pattern = "Increase 4, on the @ only, in @.";
        sentences.push(fill_pattern_with(pattern, &[], &[only, &rounds::named(&part)]));
    }
    if sentences.is_empty() {
        return schedule::written(&answer.schedule);
    }
    sentences.join(" ")
}

/// What it comes to.
pub fn outcome(answer: &Answer) -> (String, String) {
    (
        "Before the sleeves are put aside there are".into(),
        stitches(answer.needle),
    )
}

/// At the underarm.
pub fn underarm(question: &Question, answer: &Answer) -> String {
    let numbers = [answer.aside, question.underarm, question.body_to, question.sleeve_to];
    fill_pattern(
        "Put # aside for each sleeve and cast on # at each underarm: # round the body, # round each sleeve.",
        &numbers,
    )
}

/// What the drawing shows.
pub fn drawing(answer: &Answer) -> String {
    [KEY, " ", &headline(answer)].concat()
}

pub const KEY: &str = "All stitches round by round, the neck above.";

/// What a round is; and that some follow each other at once, where they do.
pub fn lines(question: &Question, answer: &Answer) -> String {
    let mut sentence = String::from(
        "At each of four lines, whose own stitches count with the body, a full round adds a stitch on either side; the others only on the side named.",
    );
    if answer.every_other > question.rounds {
        let pattern = " Most raglans keep a plain round between two of them, which takes # rounds here (common practice, no source).";
        sentence += &fill_pattern(pattern, &[answer.every_other]);
    }
    sentence
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
        full,
        body_only,
        sleeves_only,
        front_and_back,
        aside,
        needle,
        ..
    } = *answer;
    vec![
        fill_pattern(
            "Body: # + 4 × (# + #) + 2 × # cast on = #.",
            &[body, full, body_only, underarm, body_to],
        ),
        fill_pattern(
            "Each sleeve: # + 2 × (# + #) + # cast on = #.",
            &[sleeve, full, sleeves_only, underarm, sleeve_to],
        ),
        fill_pattern(
            "On the needle before that: # + 2 × # = #.",
            &[front_and_back, aside, needle],
        ),
    ]
}

pub const SOURCE: &str =
    "The sum is arithmetic. Four lines, a stitch on either side, a plain round at the end: common practice, no source.";

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::raglan::answer;

    #[test]
    fn both_targets_are_told() {
        let question = Question {
            underarm: 8,
            ..Question::about([80, 12], [160, 70], 50)
        };
        let answer = answer(&question).unwrap();
        let sentence = headline(&answer);
        assert!(sentence.starts_with("Increase 8 in rounds "), "{sentence}");
        assert!(
            sentence.contains("Increase 4, on the sleeves only, in rounds "),
            "{sentence}"
        );
        assert_eq!(
            steps(&question, &answer),
            [
                "Body: 80 + 4 × (16 + 0) + 2 × 8 cast on = 160.",
                "Each sleeve: 12 + 2 × (16 + 9) + 8 cast on = 70.",
                "On the needle before that: 144 + 2 × 62 = 268."
            ]
        );
    }

    /// What is cast on at the underarm is not among the stitches that are put aside.
    #[test]
    fn a_sleeve_is_put_aside_without_its_underarm() {
        let question = Question {
            underarm: 8,
            ..Question::about([80, 12], [160, 70], 50)
        };
        assert_eq!(
            underarm(&question, &answer(&question).unwrap()),
            "Put 62 aside for each sleeve and cast on 8 at each underarm: 160 round the body, 70 round each sleeve."
        );
    }

    #[test]
    fn nothing_to_increase_is_plain() {
        let question = Question {
            underarm: 8,
            ..Question::about([80, 16], [96, 24], 60)
        };
        assert_eq!(headline(&answer(&question).unwrap()), "Work 60 rounds plain.");
    }
}
