//! Girths on one scale: the body as a line from top to bottom, the wanted girth as a broken one, and a row for each size
//! with the girth it measures or the bodies it fits. The distance from the body's line to a garment is its ease. The
//! size to knit and the next best are told by their words, their weight and their shape.

use super::path::{Path, Point};
use super::picture::picture;
use crate::part::plain::{self, element, element_with, text};
use loopwright::sizing::Span;
use loopwright::units::{Length, LengthUnit};
use yew::prelude::*;

const LEFT: f64 = 16.0;
const RIGHT: f64 = 344.0;
/// Where the first row begins, and how high one is.
const TOP: f64 = 34.0;
const ROW: f64 = 50.0;
/// The scale of a row, below its words.
const SCALE: f64 = 33.0;

/// One size.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// What it is called.
    pub name: String,
    /// How it sits.
    pub caption: String,
    /// The bodies it fits, or its girth.
    pub girth: Span,
    /// Its place from best to worse.
    pub place: usize,
}

/// A girth with its words.
pub type Mark = (Length, String);

/// The sizes with the body among them.
#[derive(Clone, Debug, PartialEq)]
pub struct Girths {
    /// The body.
    pub body: Mark,
    /// The garment that was looked for.
    pub target: Option<Mark>,
    /// The sizes.
    pub rows: Vec<Row>,
    /// All of it in words.
    pub words: String,
}

impl Girths {
    /// The least and the most of all that is drawn, in millimetres; never the same.
    fn ends(&self) -> (f64, f64) {
        let body = mm(self.body.0);
        let target = self.target.as_ref().map_or(body, |target| mm(target.0));
        let mut ends = (body.min(target), target.max(body + 1.0));
        for row in &self.rows {
            ends = (ends.0.min(mm(row.girth.from)), ends.1.max(mm(row.girth.to)));
        }
        ends
    }
}

fn mm(length: Length) -> f64 {
    length.in_unit(LengthUnit::Mm)
}

/// The drawing.
pub fn girths(girths: &Girths) -> Html {
    let (least, most) = girths.ends();
    let at = |length: Length| LEFT + 8.0 + (mm(length) - least) / (most - least) * 312.0;
    let body = at(girths.body.0);
    let target = girths.target.as_ref().map(|(target, caption)| (at(*target), caption));
    let mut content = vec![words("you", body, 17.0, &girths.body.1)];
    let mut top = TOP;
    content.push(upright("you", body, top - 10.0, top + 2.0));
    for row in &girths.rows {
        // The lines of the body and of what is wanted leave out the words of each row.
        let (above, below) = (top + 23.0, top + ROW + 2.0);
        content.push(upright("you", body, above, below));
        if let Some((target, _)) = target {
            content.push(upright("wanted", target, above, below));
        }
        content.push(drawn(row, top, body, &at));
        top += ROW;
    }
    if let Some((target, caption)) = target {
        top += 24.0;
        content.push(words("", target, top, caption));
    }
    picture("girths", (360, (top + 8.0).round() as u32), &girths.words, content)
}

/// One size: its words, and below them its scale.
fn drawn(row: &Row, top: f64, body: f64, at: &dyn Fn(Length) -> f64) -> Html {
    let class = match row.place {
        0 => "size pick",
        1 => "size next",
        _ => "size",
    };
    let line = top + SCALE;
    let (from, to) = (at(row.girth.from), at(row.girth.to));
    let mut content = vec![stroke("rule", &[[(LEFT, line), (RIGHT, line)]])];
    if from < to {
        let (high, low) = (line - 7.0, line + 7.0);
        let ends = [
            [(from, high), (from, low)],
            [(from, line), (to, line)],
            [(to, high), (to, low)],
        ];
        content.push(stroke("bar", &ends));
    } else {
        content.push(stroke("bar", &[[(body, line), (to, line)]]));
        content.push(dot(to, line));
    }
    content.push(words("name", LEFT, top + 18.0, &row.name));
    content.push(words("said", RIGHT, top + 18.0, &row.caption));
    element("g", class, content)
}

fn upright(class: &str, x: f64, from: f64, to: f64) -> Html {
    stroke(class, &[[(x, from), (x, to)]])
}

fn stroke(class: &str, lines: &[[Point; 2]]) -> Html {
    let mut path = Path::default();
    for line in lines {
        path.line(line);
    }
    plain::path(class, &path.written())
}

fn dot(x: f64, y: f64) -> Html {
    let attributes = [("class", "dot"), ("cx", &*whole(x)), ("cy", &whole(y)), ("r", "6")];
    element_with("circle", &attributes, Vec::new())
}

/// Words at a place; near an edge of the drawing they grow away from it.
pub(super) fn words(class: &str, x: f64, y: f64, words: &str) -> Html {
    let (anchor, x) = match x {
        ..100.0 => ("start", (x - 8.0).max(LEFT)),
        100.0..260.0 => ("middle", x),
        _ => ("end", (x + 8.0).min(RIGHT)),
    };
    let attributes = [
        ("class", class),
        ("text-anchor", anchor),
        ("x", &*whole(x)),
        ("y", &whole(y)),
    ];
    element_with("text", &attributes, vec![text(words.to_owned().into())])
}

/// A coordinate to the whole unit, which is less than a pixel.
pub(super) fn whole(value: f64) -> String {
    (value.round() as i32).to_string()
}

/// The small picture: three sizes about a body.
pub fn sign() -> Html {
    let content = vec![
        plain::path("you", "M40 8V96"),
        plain::path("bar", "M40 24H22M22 18V30M40 76H92M92 70V82"),
        plain::path("bar thick", "M40 50H58M58 42V58"),
    ];
    picture("girths sign", (104, 104), "", content)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_scale_holds_all_that_is_drawn_and_is_never_empty() {
        let cm = |cm| Length::of(cm, LengthUnit::Cm);
        let mut girths = Girths {
            body: (cm(91), "you 91 cm".into()),
            target: None,
            rows: Vec::new(),
            words: String::new(),
        };
        assert_eq!(girths.ends(), (910.0, 911.0));
        girths.target = Some((cm(98), "wanted 98 cm".into()));
        girths.rows.push(Row {
            name: "M: knit this".into(),
            caption: "+12 cm loose".into(),
            girth: Span::one(cm(103)),
            place: 0,
        });
        assert_eq!(girths.ends(), (910.0, 1030.0));
    }
}
