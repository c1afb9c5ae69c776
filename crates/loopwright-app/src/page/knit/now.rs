//! This row: what to do in it, what is on the needle, what comes next, and how far she is.

use super::Page;
use super::tapper::{Moment, on};
use crate::drawing::{place as drawing, within};
use crate::form::{SETTINGS, Settings};
use crate::knit::{Comfort, Counter, Extent};
use crate::part::plain::{button, element, element_with, link, list, text, text_element};
use crate::route;
use crate::words::{followed, knit as words, row as row_words, tracks};
use loopwright::follow::{At, Group, Plan, repeats};
use loopwright_project::knitting::Tap;
use yew::prelude::*;

/// What to do now.
pub fn now(page: &Page, counter: &Counter) -> Html {
    let plan = &page.rows.plan;
    if plan.is_done(counter.done) {
        return done(page, counter);
    }
    let at = plan.at(counter.row());
    let mut content = vec![
        element_with(
            "p",
            &[("class", "doing"), ("role", "status")],
            vec![text(doing(plan, &at).into())],
        ),
        text_element("p", "count", count(&at)),
        text_element("p", "then", next(plan, &at)),
        progress(page, counter),
    ];
    content.extend(written(page, counter, &at));
    content.push(drawing::place(plan, counter.done, &drawn(plan, counter)));
    list(content)
}

fn done(page: &Page, counter: &Counter) -> Html {
    let plan = &page.rows.plan;
    let said = words::all_done(plan.rows, plan.knitting, plan.stitches_after(plan.rows));
    let mut content = vec![element_with(
        "p",
        &[("class", "doing"), ("role", "status")],
        vec![text(said.into())],
    )];
    if counter.beyond > 0 {
        content.push(text_element(
            "p",
            "advice",
            words::past_the_end(counter.beyond, plan.knitting),
        ));
    }
    if let Some((next, name)) = &page.rows.next {
        let next = link(route::print(&next.page()), vec![text(name.clone().into())]);
        content.push(element(
            "p",
            "then",
            vec![text(words::ON_NEXT.into()), text(" ".into()), next],
        ));
    }
    content.push(drawing::place(plan, counter.done, &drawn(plan, counter)));
    list(content)
}

/// What to do in a row.
fn doing(plan: &Plan<String>, at: &At<String>) -> String {
    match at.event {
        Some(event) => event.doing.clone(),
        None => words::plain(plan.knitting).to_owned(),
    }
}

fn count(at: &At<String>) -> String {
    match at.before.zip(at.after) {
        Some((before, after)) => words::on_needle(before, after),
        None => String::new(),
    }
}

fn next(plan: &Plan<String>, at: &At<String>) -> String {
    match &at.next {
        Some(next) => words::next(next.event.row, next.rows_between, plan.knitting, &next.event.doing),
        None if plan.is_done(at.row) => String::new(),
        None => words::NO_MORE.to_owned(),
    }
}

fn progress(page: &Page, counter: &Counter) -> Html {
    let plan = &page.rows.plan;
    let (value, most, said) = match counter.hundredths(plan) {
        Some(hundredths) => (hundredths, 100, words::progress(hundredths)),
        None => (
            counter.done,
            plan.rows,
            words::progress_in_rows(counter.done, plan.rows, plan.knitting),
        ),
    };
    let left = counter
        .pace(plan)
        .map(|pace| words::time_left(pace.time_for(counter.left(plan))));
    let left = left.map(|left| text_element("p", "quiet", left));
    html! {
        <div class="progress">
            <progress value={value.to_string()} max={most.to_string()} aria-label={said.clone()}></progress>
            { text_element("p", "quiet", said) }
            { left.unwrap_or_default() }
        </div>
    }
}

/// The row stitch by stitch, where it is written out, with the place among its repeats. A row that is too long to be told
/// above lies open.
fn written(page: &Page, counter: &Counter, at: &At<String>) -> Vec<Html> {
    let Some(row) = at.event.and_then(|event| event.written.as_ref()) else {
        return Vec::new();
    };
    let groups = repeats(row);
    let (done, times) = (counter.repeats(), repeats_in(&groups));
    let mut fold = vec![
        text_element("summary", "", words::WRITTEN),
        text_element("p", "row", row_words::line(row)),
    ];
    let mut content = Vec::new();
    if times > 0 {
        let done = done.min(times);
        let hand = Settings::new(page.desk.fields(SETTINGS)).hand();
        let said = words::repeats(done, times);
        content.push(text_element("p", "count", now_in_row(&groups, done, times)));
        content.push(within::within(&groups, done, hand, &said));
        fold.push(button(
            words::REPEAT_BACK.into(),
            page.tapper.tapping(counter.number, repeat_back),
        ));
    }
    let attributes = [("class", "written"), ("open", "")];
    let attributes = match followed::is_told(row) {
        true => &attributes[..1],
        false => &attributes[..],
    };
    content.push(element_with("details", attributes, fold));
    content
}

/// The repeat that comes next, with what stands before it; behind the last one what is left to the end.
fn now_in_row(groups: &[Group], done: u32, times: u32) -> String {
    let mut before = done;
    let mut between: Vec<String> = Vec::new();
    for group in groups {
        if group.times <= 1 {
            between.push(row_words::line(&group.each));
            continue;
        }
        if before < group.times {
            let each = row_words::line(group.time(before.saturating_add(1)));
            let first = if before == 0 { between.join(", ") } else { String::new() };
            return words::this_repeat(done.saturating_add(1), times, &first, &each);
        }
        before -= group.times;
        between.clear();
    }
    words::to_the_end(&between.join(", "))
}

/// All repeats of a row: brackets that are worked more than once.
pub fn repeats_in(groups: &[Group]) -> u32 {
    let times = groups.iter().map(|group| group.times).filter(|times| *times > 1);
    times.fold(0, u32::saturating_add)
}

/// A repeat of this row is done.
pub fn repeat_done(counter: &Counter, _: Moment) -> Option<Tap> {
    let row = counter.row();
    Some(Tap::Again { row, by: 1 })
}

fn repeat_back(counter: &Counter, _: Moment) -> Option<Tap> {
    let row = counter.row();
    (counter.repeats() > 0).then_some(Tap::Again { row, by: -1 })
}

fn drawn(plan: &Plan<String>, counter: &Counter) -> String {
    let Extent { rows, stitches } = Extent::of(plan);
    let extent = words::extent(rows, plan.knitting, stitches);
    words::drawing(&extent, &words::progress_in_rows(counter.done, rows, plan.knitting))
}

/// What she should know before she knits on: two taps in a moment, figures that have changed, hands that want a rest.
pub fn warnings(page: &Page, counter: &Counter) -> Html {
    let mut content = Vec::new();
    content.extend(quick(page, counter));
    content.extend(changed(page, counter));
    if let Some(meeting) = &page.rows.meeting {
        content.push(text_element("p", "advice", tracks::meet(meeting)));
    }
    if Comfort::Rest.is_on(page.desk) {
        content.extend(
            counter
                .rest_due(super::tapper::now())
                .map(|minutes| text_element("p", "advice", words::rest(minutes))),
        );
    }
    list(content)
}

fn quick(page: &Page, counter: &Counter) -> Option<Html> {
    let (desk, subject, number) = (page.desk.clone(), page.subject, counter.number);
    counter.was_quick().then(|| {
        let back = Callback::from(move |_| subject.take_back(&desk, number));
        let content = vec![
            text(words::BOTH_COUNTED.into()),
            text(" ".into()),
            button(words::TAKE_SECOND_BACK.into(), back),
        ];
        element("p", "advice", content)
    })
}

fn changed(page: &Page, counter: &Counter) -> Option<Html> {
    let plan = &page.rows.plan;
    let (was, is) = (page.followed.was?, Extent::of(plan));
    let extent = |extent: Extent| words::extent(extent.rows, plan.knitting, extent.stitches);
    let at = plan.at(counter.row());
    let row = words::row(at.row, plan.knitting, at.side);
    let (desk, subject) = (page.desk.clone(), page.subject);
    let accept = Callback::from(move |_| subject.accept(&desk, is));
    let content = vec![
        text_element("p", "", words::changed(&extent(was), &extent(is), &row)),
        button(words::SEEN.into(), accept),
        button(
            words::AGAIN_FROM_THE_START.into(),
            page.tapper.tapping(counter.number, |counter, _| counter.to(1)),
        ),
    ];
    Some(element("div", "advice", content))
}

/// A tap that says that the row is done.
pub fn row_done(page: &Page, counter: &Counter) -> Callback<MouseEvent> {
    page.tapper.tapping(counter.number, on)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(row: &str, done: u32) -> String {
        let groups = repeats(&loopwright::row::read(row).unwrap());
        now_in_row(&groups, done, repeats_in(&groups))
    }

    /// Nothing of the row is left out: what stands before, between and behind the repeats is told where it is worked.
    #[test]
    fn every_stitch_of_a_row_is_told_in_its_turn() {
        let row = "K4, k2tog, (K9, k2tog) 2 times, K1, (K8, k2tog) 2 times, K5";
        assert_eq!(told(row, 0), "First K4, k2tog. Then repeat 1 of 4: K9, k2tog");
        assert_eq!(told(row, 1), "Repeat 2 of 4: K9, k2tog");
        assert_eq!(told(row, 2), "First K1. Then repeat 3 of 4: K8, k2tog");
        assert_eq!(told(row, 4), "To the end: K5");
        assert_eq!(told("(K9, k2tog) 2 times", 2), "All repeats of this row are done.");
    }
}
