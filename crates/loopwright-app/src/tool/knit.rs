//! "Knit this": the way from an answer that has rows to the page on which she follows them.

use crate::part::View;
use crate::part::plain::{element, link, text, text_element};
use crate::route::{self, Route};
use crate::words::knit as words;
use yew::prelude::*;

/// The way there. Not inside another page, nor from an example, where no place could be kept.
pub fn knit_offer(view: &View, has_rows: bool) -> Html {
    let sheet = &view.sheet;
    if !has_rows || sheet.frame.is_some() || sheet.desk.is_guest() {
        return Html::default();
    }
    let route = match sheet.desk.step() {
        Some(step) => Route::KnitStep(step),
        None => Route::Knit(sheet.id.to_owned()),
    };
    let content = vec![
        link(route::print(&route), vec![text(words::KNIT_THIS.into())]),
        text_element("span", "quiet", words::KNIT_WHY),
    ];
    element("section", "knit-this", content)
}
