//! The form of a tool, drawn from its table of fields: the sentence that the tool writes around the first of them, a short
//! column, and what lies folded away. What is wrong with a field stands below it, in room
//! that is kept for it, so that no field moves while another is typed in.

use super::View;
use super::advice::{Advice, advice};
use super::control::{Labelled, control};
use super::offer::unread_sentence;
use super::plain::{element, folded, list, text_element};
use super::room::{Wrong, room};
use super::set::set_in;
use crate::form::{Field, Kind, Place};
use crate::words::page;
use loopwright::choice::{FieldName, GroupName};
use loopwright::problem::Kind::Missing;
use loopwright::problem::{FieldPath, Problem};
use yew::prelude::*;

/// The fields of a tool on their way to the screen.
pub struct Form<'a> {
    /// The sheet and the fields.
    pub view: &'a View,
    /// What is wrong.
    pub problems: &'a [Problem],
    /// The sentence for what is wrong.
    pub sentence: &'a dyn Fn(&Problem) -> String,
}

impl Form<'_> {
    /// What stands open below the sentence, and what is folded away, in the order of the table.
    pub fn columns(&self) -> Html {
        list(vec![self.open(None), self.folds(None)])
    }

    /// The open column.
    pub fn open(&self, group: Option<&'static GroupName>) -> Html {
        let open = self.column(group, Place::Open);
        if open.is_empty() {
            return Html::default();
        }
        element("div", "fields", open)
    }

    /// Every fold, one after the other.
    pub fn folds(&self, group: Option<&'static GroupName>) -> Html {
        let mut titles: Vec<&'static str> = Vec::new();
        for field in self.view.fields.table(group) {
            match field.place {
                Place::Folded(title) if !titles.contains(&title) => titles.push(title),
                _ => {}
            }
        }
        let fold = |title| {
            let fields = self.column(group, Place::Folded(title));
            if fields.is_empty() {
                return Html::default();
            }
            let fold = folded("more", title, vec![element("div", "fields", fields)]);
            list(vec![fold, self.set_in(self.here(group, Place::Folded(title)))])
        };
        list(titles.into_iter().map(fold).collect())
    }

    /// The fields that are asked in one place, with their labels.
    fn column(&self, group: Option<&'static GroupName>, place: Place) -> Vec<Html> {
        self.labelled_rows(&self.here(group, place))
    }

    /// The fields that are asked in one place.
    fn here(&self, group: Option<&'static GroupName>, place: Place) -> Vec<&'static Field> {
        let is_here = |field: &&'static Field| match field.place {
            // What stands beside the answer is drawn by it; where there is none because of it, it is mended here.
            Place::Answer => place == Place::Open && self.view.fields.is_strange(field),
            field_place => field_place == place,
        };
        let asked = |field: &&'static Field| is_here(field) && (field.asked)(&self.view.fields);
        self.view.fields.table(group).filter(asked).collect()
    }

    /// What is set in fields that may lie folded away, with a tap that clears it.
    fn set_in(&self, fields: Vec<&'static Field>) -> Html {
        let advised = |field: &&'static Field| {
            let sentence = self.advice(field)?.sentence;
            Some(page::of_field(field.label_in(&self.view.fields), &sentence))
        };
        let advice = fields.iter().find_map(advised);
        let unread = || fields.iter().find_map(|field| unread_sentence(self.view, field));
        let advice = advice.or_else(unread);
        set_in(self.view, &fields, advice)
    }

    /// The form as one member of the repeated group has it.
    pub fn member(&self, index: usize, draw: impl FnOnce(&Form) -> Html) -> Html {
        draw(&Form {
            view: &self.view.member(index),
            problems: self.problems,
            sentence: self.sentence,
        })
    }

    /// Of these fields those that are asked, with their labels.
    pub fn asked(&self, names: &[impl FieldName]) -> Vec<Html> {
        let fields = &self.view.fields;
        let rows = names.iter().filter_map(|name| self.row(*name));
        let asked: Vec<&'static Field> = rows.filter(|field| (field.asked)(fields)).collect();
        self.labelled_rows(&asked)
    }

    fn labelled_rows(&self, rows: &[&'static Field]) -> Vec<Html> {
        rows.iter().map(|field| self.draw(field, Labelled::Shown)).collect()
    }

    /// A line of a sentence with fields in it, and below it what is offered beside them.
    pub fn line(&self, parts: &[Part<impl FieldName>]) -> Html {
        self.line_of("line", parts)
    }

    /// The same, with a class of its own.
    pub fn line_of(&self, class: &'static str, parts: &[Part<impl FieldName>]) -> Html {
        let row = |part: &Part<_>| match *part {
            Part::Words(words) => Some(Part::Words(words)),
            Part::Field(name) => self.row(name).map(Part::Field),
            Part::Labelled(name) => self.row(name).map(Part::Labelled),
        };
        self.line_of_rows(class, parts.iter().filter_map(row).collect())
    }

    fn line_of_rows(&self, class: &'static str, parts: Vec<Part<&'static Field>>) -> Html {
        let fields: Vec<&'static Field> = parts.iter().filter_map(Part::field).collect();
        let first = self.first_wrong(&fields);
        let draw = |part| match part {
            Part::Words(words) => text_element("span", "", words),
            Part::Field(field) => self.control(field, Labelled::Unseen, first.as_ref()),
            Part::Labelled(field) => self.control(field, Labelled::Shown, first.as_ref()),
        };
        let line = element("div", class, parts.into_iter().map(draw).collect());
        list(vec![line, remarks(&fields), room(self.view, &fields, first)])
    }

    /// A field with its label.
    pub fn labelled(&self, name: impl FieldName) -> Html {
        let row = self.row(name);
        row.map_or_else(Html::default, |field| self.draw(field, Labelled::Shown))
    }

    fn row(&self, name: impl FieldName) -> Option<&'static Field> {
        self.view.fields.row(self.view.fields.path(name))
    }

    /// One field, its remark, and the room below it. Each has its place whether it is there or not: else the field that is
    /// typed in would be drawn anew.
    fn draw(&self, field: &'static Field, labelled: Labelled) -> Html {
        let here = [field];
        let wrong = self.first_wrong(&here);
        let control = self.control(field, labelled, wrong.as_ref());
        list(vec![control, remarks(&here), room(self.view, &here, wrong)])
    }

    fn control(&self, field: &'static Field, labelled: Labelled, wrong: Option<&Wrong>) -> Html {
        let wrong = wrong.is_some_and(|wrong| wrong.path == self.view.fields.path_of(field));
        control(self.view, field, labelled, wrong)
    }

    /// What is wrong first with fields that stand beside each other: there is room for one sentence below them.
    fn first_wrong(&self, fields: &[&'static Field]) -> Option<Wrong> {
        self.problems.iter().find_map(|problem| {
            let path = |field: &&&'static Field| self.view.fields.path_of(field) == problem.field;
            let field = fields.iter().find(path)?;
            let advice = self.advice(field)?;
            Some(Wrong {
                path: problem.field,
                advice,
            })
        })
    }

    /// What to type instead in a field, if anything.
    fn advice(&self, field: &'static Field) -> Option<Advice> {
        let path = self.view.fields.path_of(field);
        if matches!(field.kind, Kind::Choice(_)) && self.is_missing(path) {
            // What is still to be chosen needs no more advice than what is still to be typed.
            return None;
        }
        let mut advice = advice(self.problems, path, self.sentence)?;
        if matches!(field.kind, Kind::List(_)) {
            // A number that would be right is one of the list, and never put in place of all.
            advice.nearest.clear();
        }
        Some(advice)
    }

    fn is_missing(&self, path: FieldPath) -> bool {
        let missing = |problem: &Problem| problem.field == path && problem.kind == Missing;
        self.problems.iter().any(missing)
    }
}

/// The remarks of some fields.
fn remarks(fields: &[&'static Field]) -> Html {
    let remarked = fields.iter().filter(|field| !field.remark.is_empty());
    list(
        remarked
            .map(|field| text_element("p", "practice", field.remark))
            .collect(),
    )
}

/// A piece of a sentence with fields in it.
pub enum Part<N> {
    /// Words.
    Words(&'static str),
    /// A field.
    Field(N),
    /// A field whose label is a piece of the sentence itself.
    Labelled(N),
}

impl<N: Copy> Part<N> {
    /// The field, if it is one.
    fn field(&self) -> Option<N> {
        match self {
            Self::Words(_) => None,
            Self::Field(field) | Self::Labelled(field) => Some(*field),
        }
    }
}
