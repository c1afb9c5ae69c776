//! The same on paper: every row in which something happens in a line of its own, plain rows together, each with a box to tick.

use crate::knit::Rows;
use crate::part::plain::{element, element_with, text, text_element};
use crate::words::knit as words;
use loopwright::follow::Plan;
use std::rc::Rc;
use yew::prelude::*;

/// Of longer stretches of plain rows ten share a box: nobody ticks a thousand.
const MOST_BOXES: u32 = 200;

/// What is printed.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The rows.
    pub rows: Rc<Rows>,
}

/// The list that is printed; the page on the screen does not show it. It is drawn once and not at every tap.
#[component]
pub fn Paper(props: &Props) -> Html {
    let plan = &props.rows.plan;
    let mut lines = Vec::new();
    let mut next = 1;
    for event in &plan.events {
        lines.extend(plain(plan, next, event.row));
        lines.push(shaped(plan, event.row, &event.doing));
        next = event.row.saturating_add(1);
    }
    lines.extend(plain(plan, next, plan.rows.saturating_add(1)));
    element("section", "to-tick", vec![element("ul", "", lines)])
}

fn shaped(plan: &Plan<String>, row: u32, doing: &str) -> Html {
    let at = plan.at(row);
    let said = words::row_and_doing(&words::row(row, plan.knitting, at.side), doing);
    let mut content = vec![boxes(1), text(said.into())];
    if let Some(after) = at.after {
        content.push(text_element("span", "quiet", words::then_count(after)));
    }
    element("li", "", content)
}

/// The plain rows from one to before another; none where there are none.
fn plain(plan: &Plan<String>, from: u32, before: u32) -> Option<Html> {
    let rows = before.checked_sub(from).filter(|rows| *rows > 0)?;
    let said = words::plain_rows(from, before.saturating_sub(1), plan.knitting);
    let mut content = vec![text(said.into())];
    if rows > MOST_BOXES {
        content.insert(0, boxes(rows.div_ceil(10)));
        content.push(text_element("span", "quiet", words::A_BOX_FOR_TEN));
    } else {
        content.insert(0, boxes(rows));
    }
    Some(element("li", "", content))
}

/// A box for each row. They are drawn, so that a reader is not told of each.
fn boxes(rows: u32) -> Html {
    let one = || element("i", "", Vec::new());
    element_with(
        "span",
        &[("class", "boxes"), ("aria-hidden", "true")],
        (0..rows).map(|_| one()).collect(),
    )
}
