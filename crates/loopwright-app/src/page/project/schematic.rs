//! The piece as it is drawn: a picture for each part of the garment that has rows and stitches.

use super::Page;
use crate::drawing::schematic::{Drawn, schematic as drawing};
use crate::form::{Fields, SETTINGS, Settings};
use crate::part::plain::{element, text_element};
use crate::project::schematic::{Part, Shape, parts};
use crate::words::{project as words, schedule};
use loopwright::units::Length;
use yew::prelude::*;

/// The pictures; nothing where nothing can be drawn.
pub fn schematic(page: &Page) -> Html {
    let parts = parts(&page.project, &page.sheet, &page.knitted);
    if parts.is_empty() {
        return Html::default();
    }
    let fields = Fields::new(&[], Default::default(), Settings::new(page.desk.fields(SETTINGS)));
    let shapes = parts.iter().flat_map(|part| &part.shapes);
    let widest = shapes
        .flat_map(|shape| [shape.first.1, shape.last.1])
        .max()
        .unwrap_or(Length::ZERO);
    let pictures = parts.iter().map(|part| picture(&fields, part, widest)).collect();
    let content = vec![
        text_element("h2", "", words::SCHEMATIC),
        text_element("p", "quiet", words::SCHEMATIC_SCALE),
        element("div", "pictures", pictures),
    ];
    element("section", "piece", content)
}

fn picture(fields: &Fields, part: &Part, widest: Length) -> Html {
    let size = |length: Length| length.to_nm() as f64;
    let counted = |(stitches, wide): (u32, Length)| words::stitches_wide(stitches, &fields.tape(wide));
    let mut before = None;
    let drawn = part.shapes.iter().map(|shape: &Shape| {
        let goes_on = before.replace(shape.last) == Some(shape.first);
        Drawn {
            first: size(shape.first.1),
            last: size(shape.last.1),
            height: size(shape.rows.1),
            above: if goes_on { String::new() } else { counted(shape.first) },
            below: counted(shape.last),
            beside: [schedule::rows(shape.rows.0, false), fields.tape(shape.rows.1)],
        }
    });
    let drawn: Vec<Drawn> = drawn.collect();
    let told = part.shapes.iter().map(|shape| {
        let rows = words::rows_long(shape.rows.0, &fields.tape(shape.rows.1));
        words::told(&shape.name, &counted(shape.first), &counted(shape.last), &rows)
    });
    let told = told.collect::<Vec<_>>().join(" ");
    let name = if part.name.is_empty() {
        words::NO_SECTION
    } else {
        &part.name
    };
    let caption = text_element("figcaption", "", name.to_owned());
    element("figure", "", vec![caption, drawing(&drawn, size(widest), &told)])
}
