//! The lower half of the window: one place to tap for each counter, and a smaller one that goes back. Its number is drawn in
//! outline until what was tapped is kept.

use super::Page;
use super::now::{repeat_done, repeats_in, row_done};
use crate::knit::Counter;
use crate::part::plain::element;
use crate::words::knit as words;
use loopwright::follow::repeats;
use yew::prelude::*;

/// Numbers of more signs than this are drawn smaller, so that they stay in their place.
const LARGE: usize = 3;

/// The places to tap.
pub fn pad(page: &Page) -> Html {
    let counters = page.followed.counters.iter().map(|counter| one(page, counter));
    let class = match (page.is_kept, page.followed.counters.len() > 1) {
        (true, false) => "pad",
        (true, true) => "pad several",
        (false, false) => "pad unkept",
        (false, true) => "pad several unkept",
    };
    element("div", class, counters.collect())
}

fn one(page: &Page, counter: &Counter) -> Html {
    let plan = &page.rows.plan;
    let several = page.followed.counters.len() > 1;
    let is_active = several && counter.number == page.followed.active;
    let class = if is_active { "counter active" } else { "counter" };
    let back = page.tapper.tapping(counter.number, super::tapper::back);
    let disabled = counter.back().is_none();
    let mut content = vec![html! {
        <button type="button" class="step-back" onclick={back} {disabled}>{ words::back(plan.rows, plan.knitting) }</button>
    }];
    content.extend(again(page, counter));
    content.push(place(page, counter, several));
    element("div", class, content)
}

/// The repeats of this row, where it has some: each has a tap of its own, and takes none from the rows.
fn again(page: &Page, counter: &Counter) -> Option<Html> {
    let at = page.rows.plan.at(counter.row());
    let times = repeats_in(&repeats(at.event?.written.as_ref()?));
    if times == 0 {
        return None;
    }
    let done = counter.repeats().min(times);
    let onclick = page.tapper.tapping(counter.number, repeat_done);
    Some(html! {
        <button type="button" class="again" {onclick} disabled={done == times}>
            <strong>{ words::repeats_short(done, times) }</strong>
            { words::REPEAT_DONE }
        </button>
    })
}

fn place(page: &Page, counter: &Counter, several: bool) -> Html {
    let plan = &page.rows.plan;
    let is_done = plan.is_done(counter.done);
    let at = plan.at(counter.row());
    let row = words::row(at.row, plan.knitting, at.side);
    let counters = if several {
        page.followed.counters.len() as u32
    } else {
        1
    };
    let label = words::tap(&row, counter.number, counters);
    let above = match is_done {
        true => words::DONE.to_owned(),
        false => words::row_and_side(plan.knitting, at.side).to_owned(),
    };
    let onclick = {
        let (tapped, desk, subject) = (row_done(page, counter), page.desk.clone(), page.subject);
        let (number, is_active) = (counter.number, counter.number == page.followed.active);
        Callback::from(move |event: MouseEvent| {
            if !is_active {
                subject.activate(&desk, number);
            }
            tapped.emit(event);
        })
    };
    let shown = words::count(if is_done { counter.done } else { at.row });
    let size = if shown.len() > LARGE { "long" } else { "" };
    html! {
        <button type="button" class="tap" {onclick} disabled={is_done} aria-label={label} data-done={counter.done.to_string()}>
            if several { <span class="quiet">{ words::counter(counter.number) }</span> }
            <span>{ above }</span>
            <strong class={size}>{ shown }</strong>
            <span>{ words::of(plan.rows) }</span>
            if !is_done { <span class="quiet hint">{ words::tap_when_done(plan.rows, plan.knitting) }</span> }
        </button>
    }
}
