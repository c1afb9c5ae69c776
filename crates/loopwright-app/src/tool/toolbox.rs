//! The tools as a project needs them: which facts they ask for, what they take, and what they answer, all without drawing
//! anything. With it the sheet of a whole project is derived as it is, in tests as on the page.

use super::next::Gift;
use super::{Entry, Tool, ask, find, page};
use crate::desk::Desk;
use crate::form::{Field, Fields, Kind, SETTINGS, Settings};
use crate::part::Frame;
use crate::store;
use loopwright::follow::Plan;
use loopwright::problem::Problem;
use loopwright_project::stored::{from_sheet, read_references};
use loopwright_project::{Answered, Given, Outcome, Step, Texts, Toolbox, Totals, Trouble, Typed, given};
use std::collections::BTreeMap;

/// All tools, for a knitter who measures as these settings say.
pub struct Tools {
    settings: Settings,
}

impl Tools {
    /// The tools as this desk has them set.
    pub fn on(desk: &Desk) -> Self {
        Self::measuring(Settings::new(desk.fields(SETTINGS)))
    }

    /// The tools under these settings.
    pub const fn measuring(settings: Settings) -> Self {
        Self { settings }
    }

    /// The answer of a step row by row, with what is given to its fields; nothing where it has no rows, or there is none.
    pub fn plan(&self, step: &Step, given: &Given) -> Option<Plan<String>> {
        let tool = find(&step.tool)?;
        let fields = self.fields(tool, &step.fields).with_given(given.clone());
        (tool.plan)(&fields)
    }

    fn fields(&self, tool: &Entry, texts: &Texts) -> Fields {
        Fields::new(tool.fields, texts.clone(), self.settings.clone())
    }
}

impl Toolbox for Tools {
    fn asks(&self, tool: &str, texts: &Texts) -> Vec<(String, String)> {
        let Some(tool) = find(tool) else {
            return Vec::new();
        };
        let fields = self.fields(tool, texts);
        // What is only to be taken by a tap is several counts, or what is only hoped for.
        let asking = fields.table(None).filter(|field| !field.take_only);
        let asked = |field: &'static Field| {
            let facts = field.asked_facts(&fields).into_iter();
            facts.map(|fact| (field.key.to_owned(), fact.key().to_owned()))
        };
        asking.flat_map(asked).collect()
    }

    fn takes(&self, tool: &str, field: &str, typed: &Typed) -> bool {
        takes(tool, field, typed)
    }

    fn answer(&self, tool: &str, texts: &Texts) -> Answered {
        let tool = find(tool).ok_or_else(|| vec![Trouble::NoSuchTool])?;
        (tool.outcome)(&self.fields(tool, texts))
    }
}

/// Whether a tool takes a text in a field. Lists it reads itself.
pub fn takes(tool: &str, key: &str, typed: &Typed) -> bool {
    let Some(tool) = find(tool) else {
        return false;
    };
    let fields = Fields::new(tool.fields, Texts::new(), Settings::default());
    let field = fields.stored_as(key);
    field.is_some_and(|(_, field)| matches!(field.kind, Kind::List(_)) || field.takes(typed))
}

/// What a tool answers to its fields, for the sheet of a project.
pub fn outcome<T: Tool>(fields: &Fields) -> Answered {
    let question = ask::read::<T>(fields).map_err(|problems| troubles::<T>(fields, None, &problems))?;
    let answer = T::answer(&question).map_err(|problems| troubles::<T>(fields, Some(&question), &problems))?;
    let summary = T::summary(fields, &question, &answer);
    let gifts = page::given::<T>(&question, &answer).into_iter();
    let gifts: Texts = gifts.map(|(gift, typed)| (gift.key().to_owned(), typed)).collect();
    let count = |gift: Gift| gifts.get(gift.key()).and_then(|typed| typed.text.parse().ok());
    let bought = T::bought(&answer);
    let cords = T::cords(fields, &question, &answer).into_iter();
    let cords = cords.map(|(length, called)| (u64::try_from(length.to_nm()).unwrap_or_default(), called));
    Ok(Outcome {
        headline: T::in_a_list(&summary),
        totals: Totals {
            before: count(Gift::Before),
            after: count(Gift::After),
            rows: count(Gift::Rows),
            yarn_mm: bought.map(|bought| millimetres(bought.need.to_nm())),
            balls: bought.map(|bought| bought.balls),
        },
        gifts,
        cords: cords.collect(),
    })
}

/// The answer of a tool to its fields row by row.
pub fn plan<T: Tool>(fields: &Fields) -> Option<Plan<String>> {
    let question = ask::read::<T>(fields).ok()?;
    let answer = T::answer(&question).ok()?;
    T::plan(fields, &question, &answer)
}

fn millimetres(nm: i64) -> u64 {
    u64::try_from(nm).unwrap_or_default() / 1_000_000
}

fn troubles<T: Tool>(fields: &Fields, question: Option<&T::Question>, problems: &[Problem]) -> Vec<Trouble> {
    let trouble = |problem: &Problem| Trouble::Field {
        field: problem.field.stored(),
        sentence: ask::sentence::<T>(fields, question, problem),
    };
    problems.iter().map(trouble).collect()
}

/// The fields of a tool as they stand on the desk, with what the project gives to them; inside another page there is no
/// project.
pub fn fields_on(desk: &Desk, tool: &'static Entry, frame: Option<&Frame>) -> Fields {
    fields_with(desk, tool, frame, desk.fields(tool.id))
}

/// The same, with these texts in the fields.
pub fn fields_with(desk: &Desk, tool: &'static Entry, frame: Option<&Frame>, typed: store::Fields) -> Fields {
    let given = match frame {
        Some(_) => Given::new(),
        None => given_on(desk, tool.id, &typed),
    };
    let settings = Settings::new(desk.fields(SETTINGS));
    Fields::new(tool.fields, typed, settings).with_given(given)
}

/// The texts of a link, with nothing in the fields that the project would fill: a link is the question of whoever sent it,
/// and has the same answer in every project. Beside such a field the project's value is a tap away.
pub fn as_sent(desk: &Desk, tool: &'static Entry, mut link: store::Fields) -> store::Fields {
    let from = BTreeMap::new();
    let given = given(&desk.project(), &Tools::on(desk), tool.id, &link, &from);
    for field in given.into_keys() {
        link.entry(field).or_insert_with(|| Typed::plain(""));
    }
    link
}

fn given_on(desk: &Desk, tool: &str, typed: &Texts) -> Given {
    let from = read_references(&desk.fields(&from_sheet(tool)));
    given(&desk.project(), &Tools::on(desk), tool, typed, &from)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::Settings;

    fn unread(tool: &str, typed: &[(&str, &str)], known: &[(&str, &str)]) -> Vec<&'static str> {
        let texts = |pairs: &[(&str, &str)]| -> store::Fields {
            let text = |(key, text): &(&str, &str)| ((*key).to_owned(), Typed::plain(*text));
            pairs.iter().map(text).collect()
        };
        let fields = Fields::new(find(tool).unwrap().fields, texts(typed), Settings::default());
        let found = fields.unread_facts(&texts(known)).into_iter();
        found.map(|(kept, _)| kept.key()).collect()
    }

    #[test]
    fn what_cannot_be_read_is_found_where_the_field_stands_empty() {
        let known = [("neck", "about a hundred"), ("cast_on", "96"), ("multiple", "8 + 3")];
        // The cast-on is no way round a neck that cannot be read.
        assert_eq!(unread("yoke", &[], &known), ["neck"]);
        assert_eq!(unread("yoke", &[("from", "90")], &known), [""; 0]);
        assert_eq!(unread("yoke", &[], &[("neck", " "), ("cast_on", "96")]), [""; 0]);
        assert_eq!(unread("cast_on", &[], &known), [""; 0]);
        assert_eq!(unread("cast_on", &[], &[("multiple", "eight")]), ["multiple"]);
        assert_eq!(
            unread("tail", &[], &[("yarn_class", "sock"), ("needle", "4x")]),
            ["yarn_class", "needle"]
        );
        // What is not asked as the fields stand is no matter.
        assert_eq!(unread("tail", &[("method", "cable")], &[("needle", "4x")]), [""; 0]);
        assert_eq!(unread("sizing", &[], &[("sizes", "86, ninety")]), [""; 0]);
    }
}
