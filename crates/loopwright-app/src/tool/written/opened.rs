//! Each line that does not come out, opened: its text with the failing place marked, the row as far as it goes, and the
//! nearest that would come out.

use crate::drawing::written as drawing;
use crate::part::plain::{element, link, list, text, text_element};
use crate::route::{self, Route};
use crate::store::{Fields, Typed};
use crate::words::written as words;
use loopwright::spacing;
use loopwright::terms::Working;
use loopwright::written::{Answer, Failure, Near, Outcome, Place, Question, Way};
use yew::prelude::*;

/// All that fail; the first with its drawing.
pub fn failures(question: &Question, answer: &Answer) -> Html {
    if answer.failures.is_empty() {
        return Html::default();
    }
    let mut content = vec![text_element("h3", "", words::DOES_NOT)];
    for (place, failure) in answer.failures.iter().enumerate() {
        content.push(failed(question, answer, failure, place == 0));
    }
    let opened = u32::try_from(answer.failures.len()).unwrap_or(u32::MAX);
    if let more @ 1.. = answer.failing.saturating_sub(opened) {
        content.push(text_element("p", "quiet", words::not_opened(more)));
    }
    element("section", "failures", content)
}

fn failed(question: &Question, answer: &Answer, failure: &Failure, is_first: bool) -> Html {
    let Some(line) = answer.lines.get(failure.line) else {
        return Html::default();
    };
    let mut content = vec![
        text_element("h4", "", words::failed(answer, failure, &question.text)),
        marked(&question.text, line.place, failure.worked.place),
        repeated(question, answer, line.place, failure.worked.place),
    ];
    let said = [
        words::in_sizes(answer, failure),
        words::stands_on(answer, &failure.worked),
    ];
    content.extend(said.into_iter().flatten().map(|said| text_element("p", "quiet", said)));
    if let (true, Some(drawn)) = (is_first, &failure.drawn) {
        let picture = drawing::row(drawn, &words::drawn(drawn));
        let key = words::drawn_key(drawn);
        let key = text_element("figcaption", "quiet", key);
        content.push(element("figure", "row-drawn", vec![picture, key]));
    }
    content.push(nearest(question, failure, line.place));
    element("article", "failure", content)
}

/// The row that is repeated, with the place marked, where it is in that one that a line does not come out.
fn repeated(question: &Question, answer: &Answer, line: Place, place: Option<Place>) -> Html {
    let holds = |line: &Place, place: &Place| line.start <= place.start && place.end <= line.end;
    let elsewhere = place.filter(|place| !holds(&line, place));
    let mut lines = answer.lines.iter().map(|line| line.place);
    match elsewhere.and_then(|place| lines.find(|line| holds(line, &place))) {
        None => Html::default(),
        Some(other) => element(
            "div",
            "",
            vec![
                text_element("p", "quiet", words::IN_THIS_ROW),
                marked(&question.text, other, place),
            ],
        ),
    }
}

/// The line, with the place marked.
fn marked(all: &str, line: Place, place: Option<Place>) -> Html {
    let place = place.filter(|place| line.start <= place.start && place.end <= line.end && place.start < place.end);
    let Some(place) = place else {
        return text_element("p", "as-written", line.text(all).to_owned());
    };
    let [before, behind] = [(line.start, place.start), (place.end, line.end)]
        .map(|(start, end)| Place { start, end }.text(all).to_owned());
    let parts = vec![
        text(before.into()),
        text_element("mark", "", place.text(all).to_owned()),
        text(behind.into()),
    ];
    element("p", "as-written", parts)
}

/// What would come out, and the way to even spacing where only a count is missed.
fn nearest(question: &Question, failure: &Failure, line: Place) -> Html {
    let near = |near: &Near| {
        let mut parts = vec![text_element("p", "", words::nearest(near))];
        if let Some(written) = near.text(&question.text, line) {
            parts.push(text_element("p", "as-written", written));
        }
        if let Way::Spaced(_) = near.way {
            parts.push(evenly(question, failure.worked.before, near.after));
        }
        element("li", "", parts)
    };
    let nearest: Vec<Html> = failure.nearest.iter().map(near).collect();
    let is_spaced = failure.nearest.iter().any(|near| matches!(near.way, Way::Spaced(_)));
    let missed = match failure.worked.outcome {
        Outcome::Differs { said, .. } if !is_spaced => evenly(question, failure.worked.before, said),
        _ => Html::default(),
    };
    list(vec![element("ul", "nearest", nearest), missed])
}

/// Even spacing with the two counts.
fn evenly(question: &Question, before: u64, after: u64) -> Html {
    use spacing::Name;
    let knitting = match question.working {
        Working::Round => Working::Round.key(),
        Working::Flat => Working::Flat.key(),
    };
    let fields = [
        (Name::Stitches.key(), before.to_string()),
        (Name::Ask.key(), spacing::Asked::Reach.key().to_owned()),
        (Name::Amount.key(), after.to_string()),
        (Name::Knitting.key(), knitting.to_owned()),
    ];
    let fields: Fields = fields
        .into_iter()
        .map(|(key, text)| (key.to_owned(), Typed::plain(text)))
        .collect();
    let href = route::print(&Route::tool("spacing", &fields));
    element("p", "", vec![link(href, vec![text(words::EVENLY.into())])])
}
