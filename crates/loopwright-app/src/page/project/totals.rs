//! What all steps come to together, how long that takes, and the tap that makes the yarn's sections of them.

use super::{Page, names, pace};
use crate::form::{Fields, SETTINGS, Settings, YARN};
use crate::knit::Subject;
use crate::part::plain::{button, element, items, text_element};
use crate::project::together::Knitted;
use crate::project::whole::{Whole, whole};
use crate::project::{steps, yarn};
use crate::words::{project as words, whole as whole_words};
use loopwright::units::print::Step;
use loopwright::units::{Length, LengthUnit};
use yew::prelude::*;

/// The totals; nothing while there are no steps.
pub fn totals(page: &Page) -> Html {
    if page.project.steps.is_empty() {
        return Html::default();
    }
    let whole = whole(&page.project, &page.sheet, &page.knitted, |one| done(page, one));
    let mut lines = lines(page, &whole);
    if lines.is_empty() {
        lines.push(words::TOTALS_NONE.into());
    }
    let mut content = vec![text_element("h2", "", words::TOTALS), items("ul", lines)];
    if whole.stitches > 0 {
        content.push(pace::pace(page.desk, &whole));
    }
    content.push(yarn_from_steps(page));
    element("section", "totals", content)
}

/// Stitches of what is knitted together that are done, on all its counters.
fn done(page: &Page, one: &Knitted) -> u64 {
    let (Ok(rows), Some(step)) = (&one.rows, page.project.step(one.bundle.first)) else {
        return 0;
    };
    let Some(subject) = Subject::of_step(&page.project, step.id) else {
        return 0;
    };
    let plan = &rows.plan;
    let each = subject.done_on_each(page.desk, plan.rows, step.times().unwrap_or(1));
    each.into_iter().filter_map(|rows| plan.worked(rows)).sum()
}

fn lines(page: &Page, whole: &Whole) -> Vec<String> {
    let all = &whole.all;
    let mut lines = Vec::new();
    lines.extend(all.widest.map(words::widest));
    lines.extend((all.rows > 0).then(|| words::all_rows(all.rows)));
    lines.extend((whole.stitches > 0).then(|| whole_words::stitches(whole.stitches)));
    lines.extend((whole.knitted > 0).then(|| whole_words::knitted(whole.knitted)));
    if !whole.uncounted.is_empty() {
        let uncounted = names(&page.project, whole.uncounted.iter().copied());
        lines.push(whole_words::uncounted(&uncounted));
    }
    if all.balls > 0 {
        let settings = Settings::new(page.desk.fields(SETTINGS));
        let fields = Fields::new(&[], Default::default(), settings);
        let millimetres = u32::try_from(all.yarn_mm).unwrap_or(u32::MAX);
        let used = fields.print_to(&YARN, Length::of(millimetres.into(), LengthUnit::Mm), Step::Whole);
        lines.push(words::all_yarn(all.balls, &used));
    }
    if !all.cords.is_empty() {
        let cord = |(called, steps): &(String, u32)| whole_words::cord(called, *steps);
        let cords: Vec<String> = all.cords.values().map(cord).collect();
        lines.push(whole_words::cords(&cords));
    }
    lines
}

/// The tap, and what it will do; nothing where no step makes a section.
fn yarn_from_steps(page: &Page) -> Html {
    let sections = yarn::sections(&page.project, &page.sheet);
    if sections.count == 0 {
        return Html::default();
    }
    let desk = page.desk.clone();
    let tap = button(
        whole_words::YARN_FROM_STEPS.into(),
        Callback::from(move |_| steps::fill_yarn(&desk)),
    );
    let mut about = vec![whole_words::sections(sections.count), whole_words::YARN_HOW.into()];
    if !sections.left_out.is_empty() {
        about.push(whole_words::left_out(&sections.left_out));
    }
    if yarn::is_there(&page.project) {
        about.push(whole_words::YARN_REPLACES.into());
    }
    let content = vec![tap, text_element("p", "quiet", about.join(" "))];
    element("div", "yarn-from-steps", content)
}
