//! What all steps come to together.

use super::Page;
use crate::form::{Fields, SETTINGS, Settings, YARN};
use crate::part::plain::{element, items, text_element};
use crate::words::project as words;
use loopwright::units::print::Step;
use loopwright::units::{Length, LengthUnit};
use loopwright_project::sum;
use yew::prelude::*;

/// The totals; nothing while there are no steps.
pub fn totals(page: &Page) -> Html {
    if page.project.steps.is_empty() {
        return Html::default();
    }
    let all = sum(&page.project, &page.sheet);
    let mut lines = Vec::new();
    lines.extend(all.widest.map(words::widest));
    lines.extend((all.rows > 0).then(|| words::all_rows(all.rows)));
    if all.balls > 0 {
        let settings = Settings::new(page.desk.fields(SETTINGS));
        let fields = Fields::new(&[], Default::default(), settings);
        let millimetres = u32::try_from(all.yarn_mm).unwrap_or(u32::MAX);
        let used = fields.print_to(&YARN, Length::of(millimetres.into(), LengthUnit::Mm), Step::Whole);
        lines.push(words::all_yarn(all.balls, &used));
    }
    if lines.is_empty() {
        lines.push(words::TOTALS_NONE.into());
    }
    element(
        "section",
        "totals",
        vec![text_element("h2", "", words::TOTALS), items("ul", lines)],
    )
}
