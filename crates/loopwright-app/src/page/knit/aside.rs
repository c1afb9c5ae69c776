//! What she looks for now and then: a row by its number, her pace, what she tapped, counters, and what helps her.

use super::Page;
use crate::form::{HAND, SETTINGS, Settings};
use crate::knit::awake::Awake;
use crate::knit::{Comfort, Counter, MOST_COUNTERS, Tapped, can_buzz};
use crate::part::plain::{button, element, folded, items, option, text_element};
use crate::project::PACE;
use crate::store::Typed;
use crate::words::{Worded, intl, knit as words};
use loopwright::choice::Key;
use loopwright::terms::Hand;
use loopwright_project::knitting::Tap;
use loopwright_project::stored::PROJECT;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// Taps that are listed at first.
const FEW: usize = 12;

/// All of it.
pub fn aside(page: &Page, counter: &Counter, awake: Awake, earlier: &UseStateHandle<bool>) -> Html {
    let content = vec![
        jump(page, counter),
        pace(page, counter),
        folded("history", words::HISTORY, history(page, counter, earlier)),
        folded("counters", words::COUNTERS, counters(page)),
        folded("comfort", words::COMFORT, comfort(page, awake)),
    ];
    element("section", "beside-it", content)
}

/// Another row by its number. What is typed stays until she goes there.
fn jump(page: &Page, counter: &Counter) -> Html {
    let typed = page.subject.jump(page.desk);
    let row = typed.trim().parse::<u32>().ok();
    let row = row.filter(|row| (1..=page.rows.plan.rows).contains(row));
    let oninput = {
        let (desk, subject) = (page.desk.clone(), page.subject);
        Callback::from(move |event: InputEvent| {
            subject.set_jump(&desk, event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let go = match row {
        Some(row) => {
            let (jump, desk, subject) = (
                page.tapper.jumping(counter.number, row),
                page.desk.clone(),
                page.subject,
            );
            let onclick = Callback::from(move |event| {
                jump.emit(event);
                subject.set_jump(&desk, String::new());
            });
            button(words::JUMP_GO.into(), onclick)
        }
        None if typed.trim().is_empty() => Html::default(),
        None => text_element("p", "advice", words::jump_wrong(page.rows.plan.rows)),
    };
    html! {
        <div class="line jump">
            <label for="jump">{ words::jump(page.rows.plan.knitting) }</label>
            <input id="jump" type="text" inputmode="numeric" autocomplete="off" value={typed} {oninput} />
            { go }
        </div>
    }
}

fn pace(page: &Page, counter: &Counter) -> Html {
    let plan = &page.rows.plan;
    let said = match (counter.is_timing(), counter.pace(plan)) {
        (true, _) => words::STARTED.to_owned(),
        (false, Some(pace)) => words::time_left(pace.time_for(counter.left(plan))),
        (false, None) => words::NO_PACE.to_owned(),
    };
    let start = page.tapper.tapping(counter.number, |_, _| Some(Tap::Start));
    let mut content = vec![
        text_element("p", "quiet", said),
        button(words::START_TIMING.into(), start),
    ];
    content.extend(counter.a_minute(plan).map(|pace| {
        let desk = page.desk.clone();
        let take = move |_| desk.write(PROJECT, PACE, Some(Typed::plain(pace.to_string())));
        button(words::pace_for_project(pace), Callback::from(take))
    }));
    element("div", "pace", content)
}

fn history(page: &Page, counter: &Counter, earlier: &UseStateHandle<bool>) -> Vec<Html> {
    let history = counter.history();
    if history.is_empty() {
        return vec![text_element("p", "quiet", words::NOTHING_TAPPED)];
    }
    let shown = if **earlier {
        history.len()
    } else {
        FEW.min(history.len())
    };
    let lines = history.iter().take(shown).map(|tapped| line(page, tapped));
    let (desk, subject, number) = (page.desk.clone(), page.subject, counter.number);
    let take_back = Callback::from(move |_| subject.take_back(&desk, number));
    let mut content = vec![button(words::TAKE_BACK.into(), take_back), items("ul", lines.collect())];
    if shown < history.len() {
        let earlier = earlier.clone();
        content.push(button(
            words::MORE_TAPS.into(),
            Callback::from(move |_| earlier.set(true)),
        ));
    }
    content
}

fn line(page: &Page, tapped: &Tapped) -> String {
    let knitting = page.rows.plan.knitting;
    let what = match tapped.tap {
        Tap::Rows(1) => words::tapped_on(tapped.rows, knitting),
        Tap::Quick => words::tapped_on(tapped.rows, knitting) + words::TAPPED_QUICK,
        Tap::Rows(_) => words::tapped_to(tapped.rows.saturating_add(1), knitting),
        Tap::Again { by, .. } if by < 0 => words::TAPPED_REPEAT_BACK.to_owned(),
        Tap::Again { .. } => words::TAPPED_REPEAT.to_owned(),
        Tap::Start => words::TAPPED_START.to_owned(),
    };
    words::tapped(&intl::time_of_day(tapped.at), &what)
}

fn counters(page: &Page) -> Vec<Html> {
    let count = page.followed.counters.len() as u32;
    let have = |counters: u32, label: &'static str| {
        let (desk, subject) = (page.desk.clone(), page.subject);
        button(
            label.into(),
            Callback::from(move |_| subject.have_counters(&desk, counters)),
        )
    };
    let mut content = Vec::new();
    if count < MOST_COUNTERS {
        content.push(have(count + 1, words::COUNTER_MORE));
    }
    if count > 1 {
        content.push(have(count - 1, words::COUNTER_LESS));
    }
    content
}

fn comfort(page: &Page, awake: Awake) -> Vec<Html> {
    let mut content = vec![
        switch(page, Comfort::Awake),
        text_element("p", "quiet awake", awake.words()),
    ];
    if can_buzz() {
        content.push(switch(page, Comfort::Buzz));
    }
    content.push(switch(page, Comfort::Rest));
    content.push(leading_hand(page));
    content.push(text_element("p", "quiet", words::HAND_WHY));
    content.push(text_element("p", "quiet", words::KEYS));
    content
}

fn switch(page: &Page, comfort: Comfort) -> Html {
    let desk = page.desk.clone();
    let checked = comfort.is_on(&desk);
    let onchange = Callback::from(move |event: Event| {
        comfort.switch(&desk, event.target_unchecked_into::<HtmlInputElement>().checked());
    });
    html! {
        <label class="switch">
            <input type="checkbox" {checked} {onchange} />
            { comfort.words() }
        </label>
    }
}

fn leading_hand(page: &Page) -> Html {
    let chosen = Settings::new(page.desk.fields(SETTINGS)).hand();
    let desk = page.desk.clone();
    let onchange = Callback::from(move |event: Event| {
        let key = event.target_unchecked_into::<HtmlSelectElement>().value();
        desk.write(SETTINGS, HAND, Some(Typed::plain(key)));
    });
    let drawn = |hand: &Hand| option(hand.key(), words::hand(*hand).to_owned(), *hand == chosen);
    let options = Hand::ALL.iter().map(drawn);
    html! {
        <label class="line">
            { words::HAND }
            <select {onchange}>{ for options }</select>
        </label>
    }
}
