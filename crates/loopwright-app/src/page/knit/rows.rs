//! The rows that follow, and those that lie behind her.

use super::Page;
use crate::knit::Counter;
use crate::part::plain::{element, folded, items, text_element};
use crate::words::knit as words;
use loopwright::follow::Plan;
use yew::prelude::*;

/// So many rows are shown ahead of her.
const AHEAD: u32 = 10;

/// So many of those behind her, the last ones.
const BEHIND: u32 = 100;

/// The next rows, with those that are done folded away.
pub fn upcoming(page: &Page, counter: &Counter) -> Html {
    let plan = &page.rows.plan;
    let first = counter.row().saturating_add(1);
    let last = plan.rows.min(counter.row().saturating_add(AHEAD));
    let mut content = Vec::new();
    if first <= last {
        content.push(text_element("h2", "", words::ROWS_HEADING));
        content.push(items("ul", (first..=last).map(|row| line(plan, row)).collect()));
    }
    if counter.done > 0 {
        let from = counter.done.saturating_sub(BEHIND).saturating_add(1);
        let done = items("ul", (from..=counter.done).map(|row| line(plan, row)).collect());
        content.push(folded("past", words::PAST, vec![done]));
    }
    element("section", "ahead", content)
}

/// A row in a line: its number, what happens, and the count after it.
fn line(plan: &Plan<String>, row: u32) -> String {
    let at = plan.at(row);
    match at.event {
        Some(event) => words::row_and_doing(&words::row(row, plan.knitting, at.side), &event.doing),
        None => words::plain_rows(row, row, plan.knitting),
    }
}
