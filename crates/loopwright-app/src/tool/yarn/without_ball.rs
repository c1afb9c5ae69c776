//! The yarn that it takes, as long as the ball is not known: how many balls that makes hangs on the ball, how much yarn it
//! is hardly does.

use super::read;
use super::show::{lines, printed};
use crate::form::Reader;
use crate::part::plain::{list, text_element};
use crate::part::{View, answered};
use crate::words::yarn::{self as words, Printer};
use loopwright::problem::{Kind, Problem};
use loopwright::units::parse::Unreadable;
use loopwright::yarn::{Answer, BALL_LENGTH, Ball, Name, Question, answer};
use yew::prelude::*;

/// The yarn that it takes, where nothing but the yarn on a ball is still to be typed.
pub fn yarn(view: &View, problems: &[Problem]) -> Option<Html> {
    let is_missing = |problem: &Problem| {
        problem.field == Name::BallLength.into() && problem.kind == Kind::Unreadable(Unreadable::Empty)
    };
    if !problems.iter().all(is_missing) {
        return None;
    }
    let question = on_one_ball(view)?;
    let answer = answer(&question).ok()?;
    Some(printed(view, |print| drawn(&question, &answer, print)))
}

/// The question with the longest ball there may be: on it no end comes at a new ball.
fn on_one_ball(view: &View) -> Option<Question> {
    let mut reader = Reader::new(&view.fields);
    let question = Question {
        ask: read::ask(&mut reader),
        ball: Ball {
            length: BALL_LENGTH.most,
            mass: None,
        },
        reserve: reader.count(Name::Reserve),
        yarns: read::yarns(&mut reader),
    };
    reader.done(question).ok()
}

fn drawn(question: &Question, answer: &Answer, print: &Printer) -> Html {
    let line = text_element("p", "row", words::takes(answer, print));
    list(vec![
        answered(words::title(question), line, words::used(question, answer, print)),
        text_element("p", "", words::STILL_THE_BALL),
        lines(question, answer, print),
    ])
}
