//! What can be chosen in the panel: what becomes of each field, how the frame looks, and the address. All of it is kept.

use super::chosen::{Chosen, Language, OfTool, Row, SHEET, Setting, Use, becoming};
use super::heights::WIDTHS;
use super::lines::bring_into_sight;
use crate::desk::Desk;
use crate::frame::{Light, Units};
use crate::page::embed::no_accent;
use crate::part::plain::{element, element_with, folded, list, text_element};
use crate::part::{Label, selected};
use crate::store::{Entry, Typed};
use crate::words::{Worded, panel as words};
use loopwright::choice::{Choice, Key};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// The choices of the panel for one tool.
pub struct Panes<'a> {
    /// Where they are kept.
    pub desk: &'a Desk,
    /// The tool's id.
    pub id: &'static str,
    /// What is chosen.
    pub chosen: &'a Chosen,
}

impl Panes<'_> {
    /// What stands in the frame, and where the cursor is.
    pub fn fields(&self) -> Html {
        let rows = self.chosen.rows.iter().filter(|row| row.standing.is_some());
        let (typed, started): (Vec<&Row>, Vec<&Row>) = rows.partition(|row| row.is_typed);
        let mut pane = vec![text_element("h2", "", words::FIELDS)];
        if typed.is_empty() {
            pane.push(text_element("p", "quiet", words::NOTHING_FILLED));
        }
        pane.push(self.rows(&typed));
        if !started.is_empty() {
            pane.push(folded("starts", words::STARTS, vec![self.rows(&started)]));
        }
        pane.push(element("div", "line", vec![self.cursor()]));
        if self.chosen.placed.options.cursor.is_some() {
            pane.push(text_element("p", "practice", words::CURSOR_MAYBE));
        }
        element("section", "", pane)
    }

    fn rows(&self, rows: &[&Row]) -> Html {
        element("div", "uses", rows.iter().map(|row| self.row(row)).collect())
    }

    /// A field, what stands in it, and what becomes of that.
    fn row(&self, row: &Row) -> Html {
        let id = [SHEET, "-use-", &row.key].concat();
        let can_become = |becomes: &Use| *becomes != Use::Left || row.is_typed;
        let name = |becomes: Use| match becomes {
            Use::Open if row.is_typed => words::USE_OPEN,
            Use::Open => words::USE_NONE,
            Use::Locked => words::USE_LOCKED,
            Use::Left => words::USE_LEFT,
        };
        let options = Use::ALL.iter().copied().filter(can_become);
        let options = options.map(|becomes| (becomes.key().to_owned(), name(becomes).to_owned()));
        let label = element_with(
            "label",
            &[("for", &id)],
            vec![
                text_element("span", "", row.label.clone()),
                text_element("strong", "", row.standing.clone().unwrap_or_default()),
            ],
        );
        let onchange = self.becoming(row);
        list(vec![label, select(id, options.collect(), row.becomes.key(), onchange)])
    }

    fn becoming(&self, row: &Row) -> Callback<String> {
        let (desk, id) = (self.desk.clone(), self.id);
        let (chosen, key) = (self.chosen.clone(), row.key.clone());
        Callback::from(move |becomes: String| {
            let lists = becoming(&chosen, &key, Use::from_key(&becomes).unwrap_or(Use::START));
            let entry = |(which, keys): (OfTool, Option<Typed>)| Entry::new(SHEET, which.stored(id), keys);
            desk.write_many(lists.map(entry).into());
        })
    }

    fn cursor(&self) -> Html {
        let open = self.chosen.rows.iter().filter(|row| row.becomes != Use::Locked);
        let mut options = vec![(String::new(), words::NO_CURSOR.to_owned())];
        options.extend(open.map(|row| (row.key.clone(), row.label.clone())));
        let chosen = self.chosen.placed.options.cursor.clone().unwrap_or_default();
        let onchange = self.writing(OfTool::Cursor.stored(self.id));
        let id = [SHEET, "-cursor"].concat();
        let label = Label::Shown(words::CURSOR).draw(&id);
        list(vec![label, select(id, options, &chosen, onchange)])
    }

    /// How the frame looks.
    pub fn look(&self) -> Html {
        let options = &self.chosen.placed.options;
        let light = self.choice(Setting::Light, words::LIGHT, options.light);
        let units = options.units.unwrap_or(Units::Centimetres);
        let units = self.choice(Setting::Units, words::UNITS, units);
        let language = match options.language {
            Some(_) => Language::This,
            None => Language::OfCopy,
        };
        let language = self.choice(Setting::Language, words::LANGUAGE, language);
        let buttons = self.choice(Setting::Buttons, words::BUTTONS, self.chosen.buttons);
        let widths = WIDTHS.map(|width| (width.to_string(), words::pixels(width)));
        let width = self.chosen.placed.width.to_string();
        let width = self.chosen_from(Setting::Width, words::WIDTH, widths.into(), &width);
        let pane = vec![
            text_element("h2", "", words::LOOK),
            element(
                "div",
                "fields",
                vec![light, self.accent(), units, width, buttons, language],
            ),
        ];
        element("section", "", pane)
    }

    fn accent(&self) -> Html {
        let wrong = self.chosen.no_accent.as_ref().map(no_accent);
        let field = self.text(Setting::Accent, words::ACCENT, words::ACCENT_EXAMPLE, wrong);
        let options = &self.chosen.placed.options;
        // No colour can be read in both lights.
        let only = options.accent.filter(|_| options.light == Light::Host);
        let only = only.map_or_else(Html::default, |accent| {
            let only = if accent.by_day() {
                words::ONLY_BY_DAY
            } else {
                words::ONLY_AT_DUSK
            };
            text_element("p", "practice", only)
        });
        list(vec![field, only])
    }

    /// The address of the copy that the frame comes from.
    pub fn address(&self, here: &str, advice: Option<&'static str>) -> Html {
        let here = here.split('#').next().unwrap_or_default();
        let example = if here.starts_with("file:") {
            words::ADDRESS_EXAMPLE
        } else {
            here
        };
        let field = self.text(Setting::Address, words::ADDRESS, example, advice.map(str::to_owned));
        element("section", "wide", vec![field])
    }

    fn choice<C: Choice + Worded>(&self, setting: Setting, label: &'static str, chosen: C) -> Html {
        let options = C::ALL
            .iter()
            .map(|choice| (choice.key().to_owned(), choice.words().to_owned()));
        self.chosen_from(setting, label, options.collect(), chosen.key())
    }

    fn chosen_from(&self, setting: Setting, label: &'static str, options: Vec<(String, String)>, chosen: &str) -> Html {
        let id = [SHEET, "-", setting.key()].concat();
        let label = Label::Shown(label).draw(&id);
        let onchange = self.writing(setting.key().to_owned());
        list(vec![label, select(id, options, chosen, onchange)])
    }

    /// A field for text, and what has to change in it.
    fn text(&self, setting: Setting, label: &'static str, example: &str, wrong: Option<String>) -> Html {
        let id = [SHEET, "-", setting.key()].concat();
        let problem = [&id, "-problem"].concat();
        let value = self
            .desk
            .text(SHEET, setting.key())
            .map_or_else(String::new, |typed| typed.text);
        let write = self.writing(setting.key().to_owned());
        let oninput = move |event: InputEvent| write.emit(event.target_unchecked_into::<HtmlInputElement>().value());
        let said = wrong.as_ref().map_or_else(Html::default, |sentence| {
            html! { <p class="problem" id={problem.clone()}>{ sentence }</p> }
        });
        html! {
            <>
                { Label::Shown(label).draw(&id) }
                <input {id} {value} {oninput} onfocus={bring_into_sight} type="text" placeholder={example.to_owned()}
                    autocomplete="off" autocapitalize="none" spellcheck="false" aria-invalid={wrong.is_some().then_some("true")}
                    aria-describedby={wrong.is_some().then_some(problem)} />
                { said }
            </>
        }
    }

    /// Keeps what is chosen or typed; what is emptied is as if it had never been.
    fn writing(&self, field: String) -> Callback<String> {
        let desk = self.desk.clone();
        Callback::from(move |text: String| {
            let typed = (!text.is_empty()).then(|| Typed::plain(text));
            desk.write(SHEET, &field, typed);
        })
    }
}

/// A choice: each option by its key and its words.
fn select(id: String, options: Vec<(String, String)>, chosen: &str, onchange: Callback<String>) -> Html {
    let onchange = move |event: Event| onchange.emit(event.target_unchecked_into::<HtmlSelectElement>().value());
    selected(id, options, chosen, onchange.into())
}
