//! The fields as they are drawn: a sentence or two, and the rest folded away. What stands where is a table of items,
//! which weighs less than the calls that would draw them one by one.

use super::ask::{self, Slot, gauge_fields, is};
use super::items::{
    BALL, BEGINS, ENDS, EXTRAS, FROM, GOES_ON, Item, KNIT, MEASURED, PATTERN, PATTERN_BALL, RESERVE, REST, STATED,
    STRAIGHT, SUMMED, SWATCH, SWATCH_COUNTS, SWATCH_MASS, TAPERED, What,
};
use crate::part::plain::{button, el, folded, list, says, tells};
use crate::part::{Advice, Choice, Label, Sheet, TAPE, WEIGHT, YARN, advice, field, gauge, known, more, select};
use crate::words::yarn as words;
use loopwright::fabric::Fabric;
use loopwright::problem::{Kind, Problem};
use yew::prelude::*;

/// What the fields are drawn from.
pub struct Form<'a> {
    /// The sheet they lie on.
    pub sheet: &'a Sheet,
    /// What is wrong.
    pub problems: &'a [Problem],
}

impl Form<'_> {
    /// Draws the question.
    pub fn draw(&self) -> Html {
        let mut rest = RESERVE;
        let asked = if is(self.sheet, "from", "balls") {
            list(vec![self.row("line", PATTERN, None), self.row("", PATTERN_BALL, None)])
        } else if is(self.sheet, "from", "length") {
            self.row("", STATED, None)
        } else {
            rest = EXTRAS;
            self.piece()
        };
        list(vec![
            self.row("line", FROM, None),
            asked,
            self.row("", BALL, None),
            more(self.each(rest, None)),
        ])
    }

    /// The sections and the swatch.
    fn piece(&self) -> Html {
        let slots = ask::on(self.sheet);
        let many = slots.len() > 1;
        let mut sections = Vec::new();
        for (place, slot) in (1..).zip(slots) {
            sections.push(self.section(slot, if many { place } else { 0 }));
        }
        let swatch = if is(self.sheet, "by", "weighed") {
            list(vec![
                self.row("line counts", SWATCH_COUNTS, None),
                self.row("", SWATCH_MASS, None),
            ])
        } else {
            self.gauge()
        };
        let taps = vec![
            self.brings(words::ADD, ask::off(self.sheet, false)),
            self.brings(words::BRING_BACK, ask::off(self.sheet, true)),
        ];
        list(vec![
            list(sections),
            el("div", "line", taps),
            self.row("line", SWATCH, None),
            swatch,
            self.trouble(),
        ])
    }

    /// One section, with its number when there are several.
    fn section(&self, slot: &'static Slot, place: u32) -> Html {
        let head = if place > 0 {
            let named = tells("h2", "", words::section(place));
            let out = self.tap(words::TAKE_OUT, slot.field("on"), "no");
            el("div", "line", vec![named, out])
        } else {
            Html::default()
        };
        let shape = slot.field("shape");
        let (class, counts) = if is(self.sheet, shape, "taper") {
            ("line", TAPERED)
        } else if is(self.sheet, shape, "measured") {
            ("", MEASURED)
        } else if is(self.sheet, shape, "sum") {
            ("line", SUMMED)
        } else {
            ("line counts", STRAIGHT)
        };
        // Of stitches that were summed no edge is known.
        let edges = if is(self.sheet, shape, "sum") {
            Html::default()
        } else {
            let begins = if place > 1 { GOES_ON } else { BEGINS };
            let mut edges = self.each(begins, Some(slot));
            edges.append(&mut self.each(ENDS, Some(slot)));
            folded("edges", words::EDGES, vec![el("div", "fields", edges)])
        };
        let content = vec![
            head,
            self.row("line", KNIT, Some(slot)),
            self.row(class, counts, Some(slot)),
            edges,
        ];
        el("div", "section", content)
    }

    /// The swatch's gauge, and how it came to rest.
    fn gauge(&self) -> Html {
        let sheet = self.sheet;
        let fabric = ask::fabric(sheet, "swatch_fabric");
        let kept = if is(sheet, "rest", "unwashed") {
            ["gauge_stitches_unwashed", "gauge_rows_unwashed"]
        } else {
            ["gauge_stitches", "gauge_rows"]
        };
        let labels = [words::LABEL_GAUGE_STITCHES, words::LABEL_GAUGE_ROWS];
        let asked = ["swatch_stitches", "swatch_rows"];
        let mut drawn = Vec::new();
        for (place, field) in gauge_fields(fabric).into_iter().enumerate() {
            drawn.push(gauge(sheet, field, labels[place], self.advice(asked[place])));
            // What is kept for all tools is a stockinette gauge.
            if fabric == Fabric::Stockinette {
                drawn.push(known(sheet, field, kept[place]));
            }
        }
        let rest = if is(sheet, "rest", "pinned") { REST } else { &REST[..1] };
        drawn.push(self.row("fields", rest, None));
        list(drawn)
    }

    /// What is wrong with several fields together, and for a swatch that cannot tell, two ways out.
    fn trouble(&self) -> Html {
        let is_it = |problem: &&Problem| matches!(problem.field.key(), "sections" | "swatch" | "measured");
        let Some(problem) = self.problems.iter().find(is_it) else {
            return Html::default();
        };
        let mut content = vec![tells("p", "", words::problem(problem))];
        if problem.kind == Kind::NeedsSwatch {
            content.push(self.tap(words::TAKE_STOCKINETTE, "swatch_fabric", "stockinette"));
            content.push(self.tap(words::TAKE_WEIGHED, "by", "weighed"));
        }
        el("div", "problem", content)
    }

    /// A button that brings a section, if there is one to bring.
    fn brings(&self, label: &'static str, slot: Option<&Slot>) -> Html {
        slot.map_or_else(Html::default, |slot| self.tap(label, slot.field("on"), "yes"))
    }

    /// A button that sets a field.
    fn tap(&self, label: &'static str, field: &'static str, text: &'static str) -> Html {
        button(label.into(), self.sheet.sets(vec![(field, text.into())]))
    }

    #[inline(never)]
    fn advice(&self, name: &'static str) -> Option<Advice> {
        advice(self.problems, name, &words::problem)
    }

    /// Items in a box of this class.
    #[inline(never)]
    fn row(&self, class: &'static str, items: &[Item], slot: Option<&Slot>) -> Html {
        el("div", class, self.each(items, slot))
    }

    #[inline(never)]
    fn each(&self, items: &[Item], slot: Option<&Slot>) -> Vec<Html> {
        let mut content = Vec::new();
        for item in items {
            content.push(self.one(item, slot));
        }
        content
    }

    fn one(&self, item: &Item, slot: Option<&Slot>) -> Html {
        let sheet = self.sheet;
        let name = slot.map_or(item.name, |slot| slot.field(item.name));
        let label = match item.what {
            What::Number | What::Choice(_) => Label::Unseen(item.label),
            _ => Label::Shown(item.label),
        };
        if let What::Word = item.what {
            return says("span", "", item.name);
        }
        if let What::Choice(keyed) | What::Chosen(keyed) = item.what {
            return select(sheet, name, label, Choice::keyed(keyed), "");
        }
        let advice = self.advice(name);
        match item.what {
            What::Weight => WEIGHT.field(sheet, name, item.label, item.start, advice),
            What::Tape => TAPE.field(sheet, name, item.label, item.start, advice),
            What::Yarn => YARN.field(sheet, name, item.label, item.start, advice),
            _ => field(sheet, name, label, item.start, advice),
        }
    }
}
