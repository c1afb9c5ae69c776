//! Two projects side by side: what each knows and what each step comes to, by the names of the steps, with a mark where they
//! differ. Two sizes are two projects: a copy, with another bust in it.

use super::Page;
use super::facts::{named, own_named};
use super::projects::named as named_project;
use super::steps::answer_of;
use crate::part::Label;
use crate::part::plain::{element, folded, list, option, text_element};
use crate::project::{self, Listed, Standing};
use crate::store::{PROJECTS, ProjectId, Typed};
use crate::tool::Tools;
use crate::words::project as words;
use loopwright_project::{Project, Sheet, Texts, derive};
use std::collections::BTreeMap;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// The field that says which other project stands beside the open one.
pub const BESIDE: &str = "beside";
/// The key of none.
const NONE: &str = "";

/// A line of the comparison: what it is about, and what each project says.
#[derive(Debug, PartialEq, Eq)]
struct Compared {
    name: String,
    here: String,
    there: String,
}

/// The choice of another project, and the comparison with it. Nothing where there is no other.
pub fn beside(page: &Page) -> Html {
    let open = page.desk.project_id();
    let all = project::list(&page.desk.newest());
    let others: Vec<&Listed> = all
        .iter()
        .filter(|other| other.id != open && other.standing == Standing::Here)
        .collect();
    if others.is_empty() {
        return Html::default();
    }
    let chosen = page
        .desk
        .text(PROJECTS, BESIDE)
        .and_then(|typed| ProjectId::parse(&typed.text));
    let chosen = chosen.and_then(|id| others.iter().find(|other| other.id == id));
    let content = match chosen {
        Some(other) => list(vec![choosing(page, &others, Some(other.id)), compared(page, other)]),
        None => choosing(page, &others, None),
    };
    folded("beside", words::BESIDE, vec![content])
}

fn choosing(page: &Page, others: &[&Listed], chosen: Option<ProjectId>) -> Html {
    let mut options = vec![(NONE.to_owned(), words::BESIDE_NONE.to_owned())];
    options.extend(others.iter().map(|other| (other.id.to_string(), named_project(other))));
    let desk = page.desk.clone();
    let onchange = Callback::from(move |event: Event| {
        let key = event.target_unchecked_into::<HtmlSelectElement>().value();
        desk.write(PROJECTS, BESIDE, Some(Typed::plain(key)));
    });
    let chosen = chosen.map_or_else(String::new, |id| id.to_string());
    let drawn = |(key, name): (String, String)| option(&key, name, key == chosen);
    let select = html! { <select id="beside" {onchange}>{ for options.into_iter().map(drawn) }</select> };
    element(
        "div",
        "quantity",
        vec![Label::Shown(words::BESIDE_WHICH).draw("beside"), select],
    )
}

fn compared(page: &Page, other: &Listed) -> Html {
    let there = Project::from_sheets(&page.desk.newest().of_project(other.id));
    let there_sheet = derive(&there, &Tools::on(page.desk));
    let lines = lines((&page.project, &page.sheet), (&there, &there_sheet));
    let row = |line: Compared| {
        let differs = line.here != line.there;
        let mark = if differs { words::DIFFERS } else { "" };
        let cells = vec![
            text_element("th", "", line.name),
            text_element("td", "", line.here),
            text_element("td", "", line.there),
            text_element("td", "mark", mark),
        ];
        element("tr", if differs { "differs" } else { "" }, cells)
    };
    let head = [
        String::new(),
        words::THIS_ONE.into(),
        named_project(other),
        String::new(),
    ];
    let head = element(
        "tr",
        "",
        head.into_iter().map(|name| text_element("th", "", name)).collect(),
    );
    let body = lines.into_iter().map(row).collect();
    element(
        "table",
        "",
        vec![element("thead", "", vec![head]), element("tbody", "", body)],
    )
}

/// What both know, and what each step of either comes to; a step that only one of them has says nothing on the other side.
fn lines(here: (&Project, &Sheet), there: (&Project, &Sheet)) -> Vec<Compared> {
    let mut lines = Vec::new();
    for (name, key, print) in named() {
        let said = |project: &Project| project.facts.get(key).map_or_else(String::new, &print);
        let (here, there) = (said(here.0), said(there.0));
        if !(here.is_empty() && there.is_empty()) {
            let name = name.to_owned();
            lines.push(Compared { name, here, there });
        }
    }
    lines.extend(own_lines(&here.0.facts, &there.0.facts));
    let mut names: Vec<&str> = Vec::new();
    for step in here.0.steps.iter().chain(&there.0.steps) {
        if !names.contains(&&*step.name) {
            names.push(&step.name);
        }
    }
    lines.extend(names.into_iter().map(|name| Compared {
        name: name.to_owned(),
        here: answer_by_name(here, name),
        there: answer_by_name(there, name),
    }));
    lines
}

/// The counts to which she gave names of her own, by these names.
fn own_lines(here: &Texts, there: &Texts) -> Vec<Compared> {
    let here = own_named(here);
    let mut there: BTreeMap<String, String> = own_named(there).into_iter().collect();
    let mut lines: Vec<Compared> = Vec::new();
    for (name, here) in here {
        let there = there.remove(&name).unwrap_or_default();
        lines.push(Compared { name, here, there });
    }
    let only_there = there.into_iter().map(|(name, there)| Compared {
        name,
        here: String::new(),
        there,
    });
    lines.extend(only_there);
    lines
}

fn answer_by_name((project, sheet): (&Project, &Sheet), name: &str) -> String {
    let step = project.steps.iter().find(|step| step.name == name);
    let answered = step.and_then(|step| Some((step, sheet.step(step.id)?)));
    answered.map_or_else(String::new, |(step, derived)| {
        answer_of(step, &derived.answered).unwrap_or_else(|why| why)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::Settings;
    use crate::project::demo::pullover;

    #[test]
    fn two_sizes_differ_where_the_bust_is_another() {
        let tools = Tools::measuring(Settings::default());
        let (here, mut there) = (pullover(), pullover());
        there.set_fact("bust", Some(Typed::with_unit("110", "cm")));
        let [here_sheet, there_sheet] = [&here, &there].map(|project| derive(project, &tools));
        let lines = lines((&here, &here_sheet), (&there, &there_sheet));
        let differing = lines.iter().filter(|line| line.here != line.there);
        let names: Vec<&str> = differing.map(|line| &*line.name).collect();
        assert_eq!(names[..2], ["Bust", "Size"]);
        assert!(!names.contains(&"Neck, cast on"), "{names:?}");
        assert!(lines.iter().any(|line| line.name == "Neck, cast on"));
    }

    #[test]
    fn her_own_counts_are_compared_by_their_names() {
        let facts = |facts: &[(&str, &str)]| -> Texts {
            let fact = |(key, text): &(&str, &str)| ((*key).to_owned(), Typed::plain(*text));
            facts.iter().map(fact).collect()
        };
        let here = facts(&[("count_1", "96"), ("count_1_name", "hood")]);
        let there = facts(&[
            ("count_1", "40"),
            ("count_1_name", "cuff"),
            ("count_2", "90"),
            ("count_2_name", "hood"),
        ]);
        let told: Vec<[String; 3]> = own_lines(&here, &there)
            .into_iter()
            .map(|line| [line.name, line.here, line.there])
            .collect();
        assert_eq!(told, [["hood", "96", "90"], ["cuff", "", "40"]]);
    }
}
