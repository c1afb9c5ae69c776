//! Every line in every size: a mark with its word, and the stitches before, used and after where one size is looked at.

use crate::part::plain::{element, element_with, items, list, text, text_element};
use crate::part::{View, selected};
use crate::store::Typed;
use crate::words::written as words;
use loopwright::written::{Answer, LineKind, LineWorked, Name, Outcome, Question, Worked};
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// Lines beyond these are listed only where they do not come out.
const MOST_LISTED: usize = 150;

/// Sizes beyond these stand below their line, one behind the other: so many columns are wider than a page.
const MOST_COLUMNS: usize = 3;

/// Doubts that are said.
const MOST_DOUBTS: usize = 12;

/// What a cell is of, which its column says as well where there are columns.
const OF: &str = "data-of";

/// The table of all lines, with a choice of the size that is looked at.
pub fn table(view: &View, question: &Question, answer: &Answer) -> Html {
    let size = chosen(view, answer);
    let is_listed = |(at, line): &(usize, &LineWorked)| {
        is_row(line) && (*at < MOST_LISTED || line.sizes.iter().any(|worked| !worked.outcome.is_well()))
    };
    let lines = answer.lines.iter().enumerate();
    let rows: Vec<Html> = lines
        .filter(is_listed)
        .map(|(at, line)| row(question, answer, at, line, size))
        .collect();
    if rows.is_empty() {
        return Html::default();
    }
    let left = answer.lines.len().saturating_sub(MOST_LISTED);
    let note = match u32::try_from(left) {
        Ok(lines @ 1..) => text_element("p", "quiet", words::not_listed(lines)),
        _ => Html::default(),
    };
    let head = element("thead", "", vec![head(answer, size)]);
    let class = match size {
        None if answer.sizes.len() > MOST_COLUMNS => "lines many",
        None => "lines",
        Some(_) => "lines one",
    };
    let table = element("table", class, vec![head, element("tbody", "", rows)]);
    list(vec![
        text_element("h3", "", words::ALL_LINES),
        sizes(view, answer, size),
        element("div", "lines-of-sizes", vec![table]),
        note,
        text_element("p", "quiet", words::MARKS),
    ])
}

/// The size that is looked at; none for all of several.
fn chosen(view: &View, answer: &Answer) -> Option<usize> {
    if answer.sizes.len() == 1 {
        return Some(0);
    }
    let typed = view.fields.text(Name::Size.into());
    (0..answer.sizes.len()).find(|size| key(*size) == typed)
}

/// What stands for a size in its field: its place, as people count.
fn key(size: usize) -> String {
    words::place(size).to_string()
}

fn sizes(view: &View, answer: &Answer, size: Option<usize>) -> Html {
    if answer.sizes.len() == 1 {
        return Html::default();
    }
    let named = answer.sizes.iter().enumerate();
    let named = named.map(|(at, name)| (key(at), words::one_size(name)));
    let all = (String::new(), words::ALL_SIZES.to_owned());
    let options: Vec<(String, String)> = std::iter::once(all).chain(named).collect();
    let id = [view.sheet.id, "-", Name::Size.key()].concat();
    let sheet = view.sheet.clone();
    let onchange = Callback::from(move |event: Event| {
        let key = event.target_unchecked_into::<HtmlSelectElement>().value();
        sheet.desk.write(sheet.id, Name::Size.key(), Some(Typed::plain(key)));
    });
    let label = element_with("label", &[("for", &id)], vec![text(words::SIZE.into())]);
    let chosen = size.map_or_else(String::new, key);
    element("div", "line", vec![label, selected(id, options, &chosen, onchange)])
}

fn head(answer: &Answer, size: Option<usize>) -> Html {
    let column = |words: &str| element_with("th", &[("scope", "col")], vec![text(words.to_owned().into())]);
    let mut columns = vec![column(words::LINE)];
    match size {
        Some(_) => columns.extend([words::BEFORE, words::USED, words::AFTER].map(column)),
        None => columns.extend(answer.sizes.iter().map(|size| column(size))),
    }
    element("tr", "", columns)
}

fn row(question: &Question, answer: &Answer, at: usize, line: &LineWorked, size: Option<usize>) -> Html {
    let name = vec![
        text_element("b", "", words::line_name(line, at)),
        text_element(
            "span",
            "quiet",
            words::behind_name(line, line.place.text(&question.text)),
        ),
    ];
    let mut cells = vec![element_with("th", &[("scope", "row")], name)];
    match size.and_then(|size| line.sizes.get(size)) {
        Some(worked) => {
            cells.push(count(words::BEFORE, words::counted(worked.before)));
            cells.push(count(words::USED, words::used(worked)));
            cells.push(cell(answer, words::AFTER, worked));
        }
        None => {
            let named = answer.sizes.iter().zip(&line.sizes);
            cells.extend(named.map(|(size, worked)| cell(answer, size, worked)));
        }
    }
    element("tr", "", cells)
}

fn count(of: &str, stitches: String) -> Html {
    element_with("td", &[(OF, of)], vec![text(stitches.into())])
}

/// The mark of a line in one size, with its word; in brackets where it stands on one that does not come out.
fn cell(answer: &Answer, of: &str, worked: &Worked) -> Html {
    let class = match worked.outcome {
        Outcome::ComesOut | Outcome::NotWorked => "well",
        Outcome::Unread => "quiet",
        _ => "fails",
    };
    let mark = text_element("span", class, words::mark(worked));
    let said = text(words::short(worked).into());
    let why = words::stands_on(answer, worked);
    match why {
        Some(why) => element_with("td", &[(OF, of), ("title", &why)], vec![mark, said]),
        None => element_with("td", &[(OF, of)], vec![mark, said]),
    }
}

const fn is_row(line: &LineWorked) -> bool {
    match line.kind {
        LineKind::Row | LineKind::Unread => true,
        LineKind::Sentence | LineKind::Sizes | LineKind::Heading => false,
    }
}

/// What may be meant in two ways, with both counts: of each line the first size in which it is so.
pub fn doubts(answer: &Answer) -> Html {
    let lines = answer.lines.iter().enumerate();
    let doubt = |(at, line): (usize, &LineWorked)| {
        let mut sizes = line.sizes.iter().enumerate();
        sizes.find_map(|(size, worked)| {
            let other = worked.otherwise.as_ref()?;
            Some(words::doubt(answer, line, at, size, worked, other))
        })
    };
    let mut said: Vec<String> = lines.filter_map(doubt).collect();
    if said.is_empty() {
        return Html::default();
    }
    let more = said.len().saturating_sub(MOST_DOUBTS);
    said.truncate(MOST_DOUBTS);
    if let Ok(more @ 1..) = u32::try_from(more) {
        said.push(words::more_doubts(more));
    }
    let heading = text_element("h3", "", words::DOUBTS);
    element("section", "notes", vec![heading, items("ul", said)])
}
