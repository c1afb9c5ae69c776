//! Flat work that is taken up again: which side faces her? The number of the row says which it should be, and her eyes say
//! which it is.

use super::Page;
use crate::knit::{Counter, Subject};
use crate::part::plain::{button, element, text_element};
use crate::words::knit as words;
use loopwright::shaping::Knitting;
use yew::prelude::*;

/// What she has said about the side, since this page was opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Turned {
    /// Nothing yet.
    Unasked,
    /// As it should be.
    Right,
    /// The other side faces her.
    Other,
}

/// What she has said; asked anew for each piece.
#[hook]
pub fn use_turned(subject: Subject) -> UseStateHandle<Turned> {
    let turned = use_state(|| Turned::Unasked);
    let setter = turned.setter();
    use_effect_with(subject, move |_| setter.set(Turned::Unasked));
    turned
}

/// How many rows were done when this page was opened: where she has tapped since, she knows where she is.
#[hook]
pub fn use_done_at_first(subject: Subject, done: u32) -> u32 {
    *use_memo(subject, |_| done)
}

/// The question, as long as it is open. Nothing in the round, where every round is a right-side one.
pub fn side(page: &Page, counter: &Counter, done_at_first: u32, turned: &UseStateHandle<Turned>) -> Html {
    let plan = &page.rows.plan;
    let is_flat = matches!(plan.knitting, Knitting::Flat { .. });
    let is_taken_up = done_at_first > 0 && counter.done == done_at_first && !plan.is_done(counter.done);
    if !is_flat || !is_taken_up {
        return Html::default();
    }
    let set = |value: Turned| {
        let turned = turned.clone();
        Callback::from(move |_: MouseEvent| turned.set(value))
    };
    let at = plan.at(counter.row());
    let content = match **turned {
        Turned::Right => return Html::default(),
        Turned::Unasked => vec![
            text_element("p", "", words::does_it_face_you(at.row, at.side)),
            button(words::YES_IT_DOES.into(), set(Turned::Right)),
            button(words::NO_OTHER_SIDE.into(), set(Turned::Other)),
        ],
        Turned::Other => {
            let mut content = vec![text_element("p", "", words::other_side(at.row))];
            let rows = [at.row.checked_sub(1).filter(|row| *row > 0), Some(at.row + 1)];
            let rows = rows.into_iter().flatten().filter(|row| *row <= plan.rows);
            content.extend(rows.map(|row| {
                let (jump, seen) = (page.tapper.jumping(counter.number, row), set(Turned::Right));
                let onclick = Callback::from(move |event: MouseEvent| {
                    jump.emit(event.clone());
                    seen.emit(event);
                });
                button(words::i_am_in(row, plan.knitting), onclick)
            }));
            content
        }
    };
    element("div", "facing advice", content)
}
