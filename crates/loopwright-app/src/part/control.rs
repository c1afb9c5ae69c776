//! One field as it is drawn: the input, the list or the choice, with its label and its unit. What is wrong with it stands
//! below, in room that is kept for it (`room.rs`). The text is never rewritten.

use super::View;
use super::advice::advice_id;
use super::choice::{selected, selection, unit_setting};
use super::doubt::typing;
use super::fixed::fixed;
use super::plain::{button, element, element_with, list, text};
use crate::form::{Field, Kind, LIST_UNITS, List, Options, Place, SPANS, Scale, written_unit};
use crate::store::Typed;
use crate::words::{page, units as words};
use loopwright::problem::FieldPath;
use loopwright::units::Measure;
use loopwright::units::print::Step;
use web_sys::{HtmlInputElement, HtmlSelectElement, HtmlTextAreaElement};
use yew::prelude::*;

/// Whether the label of a field is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Labelled {
    /// It stands beside the field.
    Shown,
    /// The sentence around the field says it; the label is for those who cannot see that.
    Unseen,
}

/// Which keys a tablet shows. A decimal keypad has no slash and a numeric one no sign, so that fractions need all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Keys {
    Figures,
    All,
}

impl Keys {
    const fn input_mode(self) -> &'static str {
        match self {
            Self::Figures => "numeric",
            Self::All => "text",
        }
    }
}

/// Fractions that a decimal keypad has no slash for.
const EIGHTHS: [&str; 7] = ["1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];

/// The field; `wrong` says whether there is advice about it.
pub fn control(view: &View, field: &'static Field, labelled: Labelled, wrong: bool) -> Html {
    let control = Control {
        view,
        field,
        path: view.fields.path_of(field),
        id: view.sheet.element(&view.fields.path_of(field).stored()),
        labelled,
        wrong,
    };
    if view.sheet.locks(control.path) {
        return control.locked();
    }
    match &field.kind {
        Kind::Count(_) => control.count(),
        Kind::Pattern => element("div", "wide", vec![control.pattern()]),
        Kind::Text => boxed("quantity", field.place, vec![control.plain_text()]),
        Kind::Length(scale, _) => element("div", "quantity", vec![control.measure(scale)]),
        Kind::Mass(scale, _) => element("div", "quantity", vec![control.measure(scale)]),
        Kind::Gauge | Kind::Gauges => element("div", "quantity", vec![control.gauge()]),
        Kind::Choice(options) => control.choice(options),
        Kind::List(about) => element("div", "wide", vec![control.list(about)]),
        Kind::Whole => Html::default(),
    }
}

/// In a box of its own, but for a field that stands in a sentence.
fn boxed(class: &'static str, place: Place, content: Vec<Html>) -> Html {
    match place {
        Place::Sentence => list(content),
        Place::Open | Place::Folded(_) | Place::Answer => element("div", class, content),
    }
}

/// What there is to choose, with what is stored and is none of it in front: it is not replaced by another one unasked.
fn with_strange<'a>(options: Vec<(&'a str, String)>, strange: &'a str) -> Vec<(&'a str, String)> {
    [(strange, page::quoted(strange))].into_iter().chain(options).collect()
}

struct Control<'a> {
    view: &'a View,
    field: &'static Field,
    path: FieldPath,
    id: String,
    labelled: Labelled,
    wrong: bool,
}

impl Control<'_> {
    fn locked(&self) -> Html {
        let mut standing = self.view.fields.standing(self.field).unwrap_or_default();
        // Elsewhere a list is named without the unit that stands beside it.
        if matches!(self.field.kind, Kind::List(List { lengths: true, .. })) {
            let (_, unit) = self.view.fields.list_unit(self.path);
            let unit = self.strange_unit().map_or_else(|| words::list_unit(unit), page::quoted);
            standing += &[" ", &unit].concat();
        }
        list(vec![self.label(), fixed(&self.id, standing)])
    }

    fn count(&self) -> Html {
        let value = self.view.fields.text(self.path);
        let example = self.view.fields.example(self.path).text;
        list(vec![self.label(), self.input(value, Keys::Figures, None, example)])
    }

    fn plain_text(&self) -> Html {
        let value = self.view.fields.text(self.path);
        let example = self.view.fields.example(self.path).text;
        list(vec![self.label(), self.input(value, Keys::All, None, example)])
    }

    /// A length or a weight. Switching the unit shows the quantity converted; what was typed stays stored as typed.
    fn measure<T: Measure>(&self, scale: &'static Scale<T>) -> Html {
        let fields = &self.view.fields;
        let shown = scale.shown_beside(fields.settings(), fields.typed(self.path));
        let typed = fields
            .typed(self.path)
            .cloned()
            .unwrap_or_else(|| fields.start(self.path));
        let value = scale.shown_in(&typed, shown.unit, shown.step);
        let example = scale.shown_in(&fields.example(self.path), shown.unit, Step::Whole);
        let unit = if scale.by_us_number(fields.settings()) {
            words::MILLIMETRES_OR_US
        } else {
            (scale.name)(shown.unit)
        };
        let label = words::labelled(self.field.label_in(fields), unit);
        let stored = scale.stored_unit(fields.settings(), shown.key);
        let mut content = vec![
            self.label_of(&label),
            self.input(value.clone(), Keys::All, Some(stored), example),
        ];
        if scale.other.is_some() {
            content.push(self.unit_switch(scale, shown.key));
        }
        if shown.key == "in" {
            content.push(self.eighths(&value));
        }
        list(content)
    }

    /// The choice of unit: one setting for every field of this scale, and an id of its own beside each.
    fn unit_switch<T: Measure>(&self, scale: &'static Scale<T>, shown: &str) -> Html {
        unit_setting(self.view, scale, format!("{}-unit", self.id), words::UNIT, shown)
    }

    /// Taps that put a fraction behind the whole number that stands there.
    fn eighths(&self, value: &str) -> Html {
        let first = value.split(' ').next();
        let whole = first.filter(|whole| !whole.is_empty() && !whole.contains('/'));
        let chip = |eighth: &'static str| {
            let text = whole.map_or_else(|| eighth.to_owned(), |whole| format!("{whole} {eighth}"));
            let (sheet, field) = (self.view.sheet.clone(), self.path.stored());
            let put = move |_| {
                let typed = Typed::with_unit(text.clone(), "in");
                sheet.desk.write(sheet.id, &field, Some(typed));
            };
            button(eighth.into(), Callback::from(put))
        };
        element("div", "chips", EIGHTHS.into_iter().map(chip).collect())
    }

    fn gauge(&self) -> Html {
        let (text, span) = self.view.fields.gauge(self.path);
        let spans = SPANS.map(|span| (span.key, words::span(span.key)));
        list(vec![
            self.label(),
            self.input(text.to_owned(), Keys::All, Some(span.key), String::new()),
            self.unit_of_text(words::SPAN, spans.into(), span.key, text),
        ])
    }

    /// What stands as the unit of the text, where the field knows no such unit.
    fn strange_unit(&self) -> Option<&str> {
        let typed = self.view.fields.typed(self.path)?;
        self.field.strange_unit(typed).and_then(|_| written_unit(typed))
    }

    /// A list as it stands in a pattern: several lines if need be.
    fn list(&self, about: &List) -> Html {
        let value = self.view.fields.text(self.path);
        let unit = about.lengths.then(|| self.view.fields.list_unit(self.path).0);
        let (sheet, field) = (self.view.sheet.clone(), self.path.stored());
        let oninput = move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlTextAreaElement>().value();
            let unit = unit.map(Into::into);
            sheet.desk.write(sheet.id, &field, Some(Typed { text, unit }));
        };
        let mut content = vec![
            self.label(),
            html! {
                <textarea id={self.id.clone()} value={value.clone()} {oninput} rows="2" autocomplete="off"
                    spellcheck="false" placeholder={about.example} aria-invalid={self.wrong.then_some("true")}
                    aria-describedby={self.described_by()} data-kept={self.kept_as()} />
            },
        ];
        if let Some(unit) = unit {
            let units = LIST_UNITS.map(|(key, unit)| (key, words::list_unit(unit)));
            content.push(self.unit_of_text(words::UNIT, units.into(), unit, &value));
        }
        list(content)
    }

    /// The text of a pattern, which is long.
    fn pattern(&self) -> Html {
        let value = self.view.fields.text(self.path);
        let example = self.view.fields.example(self.path).text;
        let (sheet, field) = (self.view.sheet.clone(), self.path.stored());
        let oninput = move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlTextAreaElement>().value();
            sheet.desk.write(sheet.id, &field, Some(Typed::plain(text)));
        };
        list(vec![
            self.label(),
            html! {
                <textarea id={self.id.clone()} class="pattern" {value} {oninput} rows="6" autocomplete="off"
                    spellcheck="false" placeholder={example} aria-invalid={self.wrong.then_some("true")}
                    aria-describedby={self.described_by()} data-kept={self.kept_as()} />
            },
        ])
    }

    fn choice(&self, options: &Options) -> Html {
        let mut all = options.all();
        all.retain(|(key, _)| (self.field.offered)(&self.view.fields, key));
        let options: Vec<(&str, String)> = all.into_iter().map(|(key, words)| (key, words.to_owned())).collect();
        let onchange = self.view.sheet.choosing(&self.path.stored());
        let chosen = || self.view.fields.chosen(self.path);
        let drawn = match self.view.fields.strange_choice(self.field) {
            Some(strange) => selected(self.id.clone(), with_strange(options, strange), strange, onchange),
            None => selected(self.id.clone(), options, chosen().unwrap_or_default(), onchange),
        };
        list(vec![self.label(), drawn])
    }

    /// The choice of what a text was counted over or is written in, where that belongs to the text: it is stored as the
    /// text's unit, and another choice keeps the same text and converts nothing.
    fn unit_of_text(&self, label: &'static str, units: Vec<(&'static str, String)>, chosen: &str, typed: &str) -> Html {
        let write = typing(self.view, self.field);
        let typed = typed.to_owned();
        let onchange = Callback::from(move |event: Event| {
            let key = event.target_unchecked_into::<HtmlSelectElement>().value();
            write(Typed::with_unit(typed.clone(), key));
        });
        let id = format!("{}-unit", self.id);
        match self.strange_unit() {
            Some(strange) => selection(id, label, with_strange(units, strange), strange, onchange),
            None => selection(id, label, units, chosen, onchange),
        }
    }

    /// The field itself; an example of what may be typed stands in it as long as it is empty, and is no value.
    fn input(&self, value: String, keys: Keys, unit: Option<&'static str>, example: String) -> Html {
        let placeholder = (!example.is_empty()).then(|| page::example(&example));
        let write = typing(self.view, self.field);
        let oninput = move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            let unit = unit.map(Into::into);
            write(Typed { text, unit });
        };
        html! {
            <input id={self.id.clone()} {value} {oninput} type="text" inputmode={keys.input_mode()} autocomplete="off" {placeholder}
                enterkeyhint="done" aria-invalid={self.wrong.then_some("true")} aria-describedby={self.described_by()}
                data-kept={self.kept_as()} />
        }
    }

    fn kept_as(&self) -> String {
        self.view.sheet.desk.kept_as(self.view.sheet.id, &self.path.stored())
    }

    fn described_by(&self) -> Option<String> {
        self.wrong.then(|| advice_id(&self.id))
    }

    fn label(&self) -> Html {
        self.label_of(self.field.label_in(&self.view.fields))
    }

    fn label_of(&self, label: &str) -> Html {
        let attributes = [("for", self.id.as_str()), ("class", "unseen")];
        let shown = match self.labelled {
            Labelled::Shown => &attributes[..1],
            Labelled::Unseen => &attributes[..],
        };
        element_with("label", shown, vec![text(label.to_owned().into())])
    }
}
