//! What is said and offered beside a field whose text was taken: how it was read where that is not plain from the text,
//! and what else may be meant by it. Nothing is changed but by a tap, and a tap writes the text that leaves no doubt.

use super::pair::{self, opposite};
use super::takes::gauge_text;
use super::{Field, Fields, Keeping, Kind, NEEDLE, SETTINGS, SPANS, Scale, Settings, kept::Kept, read_needle};
use crate::store::{Entry, Typed};
use crate::words::doubt as words;
use crate::words::page::certainty;
use loopwright::bounds::Bounds;
use loopwright::problem::FieldPath;
use loopwright::tables::needle::{Bare, read_across_as};
use loopwright::units::gauge_text::{Counted, read_several};
use loopwright::units::meant::Meant;
use loopwright::units::parse::{Unreadable, Wanted};
use loopwright::units::{Gauge, Length, Measure, doubt};

/// One thing that is said or offered beside a field.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Beside {
    /// What is said; nothing if it is empty.
    pub sentence: String,
    /// How sure what is said is; nothing if it is empty.
    pub mark: &'static str,
    /// What a tap does.
    pub tap: Option<Tap>,
}

/// A tap that writes into a field.
#[derive(Clone, Debug, PartialEq)]
pub struct Tap {
    /// What stands on it.
    pub label: String,
    /// Where it writes.
    pub field: FieldPath,
    /// What it writes; none empties the field.
    pub typed: Option<Typed>,
    /// What it chooses as well: the unit that is shown beside the field, where that would not follow the text.
    pub chosen: Option<Entry>,
}

impl Beside {
    fn said(sentence: String) -> Self {
        Self {
            sentence,
            ..Self::default()
        }
    }

    fn offered(label: String, field: FieldPath, typed: Typed) -> Self {
        let tap = Some(Tap {
            label,
            field,
            typed: Some(typed),
            chosen: None,
        });
        Self { tap, ..Self::default() }
    }
}

/// All that is said and offered beside a field as the fields stand.
pub fn beside(fields: &Fields, field: &'static Field) -> Vec<Beside> {
    let mut found = Vec::new();
    let path = fields.path_of(field);
    if let Some(typed) = fields.typed_as_read(field).filter(|typed| field.takes(typed)) {
        let typed = &typed;
        match field.kind {
            Kind::Length(scale, bounds) if scale.named.is_some() => {
                found.extend(of_needle(fields.settings(), path, typed, bounds));
            }
            Kind::Length(scale, bounds) => found.extend(of_unit(fields, path, typed, scale, bounds, usual(field))),
            Kind::Mass(scale, bounds) => found.extend(of_unit(fields, path, typed, scale, bounds, None)),
            Kind::Gauge | Kind::Gauges => found.extend(of_gauge(fields, field, typed)),
            Kind::Count(_) | Kind::Choice(_) | Kind::List(_) | Kind::Text | Kind::Pattern | Kind::Whole => {}
        }
    }
    found.extend(named_beside(fields, field));
    found
}

/// How long what stands in a field usually is, where that is known.
fn usual(field: &Field) -> Option<Bounds<Length>> {
    match field.kept {
        Keeping::As(Kept::Bust) => Some(doubt::BUST),
        Keeping::Nothing
        | Keeping::As(_)
        | Keeping::Either(..)
        | Keeping::By(_)
        | Keeping::Offered(_)
        | Keeping::Counts => None,
    }
}

/// A needle that was typed by its number, in millimetres; or a thickness that is no needle's but is a number.
fn of_needle(settings: &Settings, path: FieldPath, typed: &Typed, bounds: Bounds<Length>) -> Option<Beside> {
    let read = read_needle(typed, bounds).ok()?;
    if let Some((system, numbered)) = read.named {
        return Some(Beside {
            mark: certainty(numbered.certainty),
            ..Beside::said(words::needle(system, &numbered))
        });
    }
    let also = read.also.or_else(|| us_needle(settings, typed, bounds))?;
    let typed = Typed {
        text: also.text(),
        ..typed.clone()
    };
    Some(Beside::offered(words::perhaps(&words::way(also)), path, typed))
}

/// The US needle of a number that was typed as millimetres before US needles were chosen.
fn us_needle(settings: &Settings, typed: &Typed, bounds: Bounds<Length>) -> Option<Meant> {
    if !NEEDLE.by_us_number(settings) {
        return None;
    }
    match read_across_as(&typed.text, bounds, Bare::MillimetresOrUs) {
        Err(Unreadable::Ambiguous(readings)) => readings.ways().find(|way| matches!(way, Meant::Needle { .. })),
        Err(_) | Ok(_) => None,
    }
}

/// The other unit of the scale, where it is likely that the choice was left as it was.
fn of_unit<T: Measure>(
    fields: &Fields,
    path: FieldPath,
    typed: &Typed,
    scale: &'static Scale<T>,
    bounds: Bounds<T>,
    usual: Option<Bounds<T>>,
) -> Option<Beside> {
    let unit = scale.unit_beside(typed).ok()?;
    let other = scale.units().find(|other| other.unit != unit)?;
    // What is shown in another unit than it was typed in is no longer in doubt: the number is seen converted.
    let is_shown_as_typed = scale.shown(fields.settings()).unit == unit;
    if !is_shown_as_typed || !doubt::is_other_unit(&typed.text, &Wanted { bounds, unit }, other.unit, usual) {
        return None;
    }
    let text = typed.text.trim();
    let label = words::perhaps(&[text, " ", other.key].concat());
    let typed = Typed::with_unit(text, other.key);
    let follows = scale.shown_beside(fields.settings(), Some(&typed)).unit == other.unit;
    let chosen = (!follows).then(|| Entry::new(SETTINGS, scale.setting, Some(Typed::plain(other.key))));
    let tap = Tap {
        label,
        field: path,
        typed: Some(typed),
        chosen,
    };
    Some(Beside {
        tap: Some(tap),
        ..Beside::default()
    })
}

/// How a gauge was read that says more than a count.
fn of_gauge(fields: &Fields, field: &'static Field, typed: &Typed) -> Vec<Beside> {
    let path = fields.path_of(field);
    let mut found = Vec::new();
    let Ok(read) = gauge_text(typed) else {
        found.extend(over_other_span(fields, field, typed));
        return found;
    };
    if let Some(Counted {
        gauge,
        range: Some(ends),
    }) = read.of(field.counts)
    {
        found.push(Beside::said(words::middle(gauge, ends)));
    }
    match read.span {
        Some(span) if span != fields.gauge(path).1.length => found.push(Beside::said(words::as_typed_over(span))),
        Some(_) => {}
        None => found.extend(over_other_span(fields, field, typed)),
    }
    if let (Some(other), None) = (read.other(field.counts), pair::other_field(fields, field)) {
        found.push(Beside::said(words::not_needed(other.gauge, opposite(field.counts))));
    }
    found
}

/// The same text over another span, where all its counts are seldom knitted and over that they are usual.
fn over_other_span(fields: &Fields, field: &'static Field, typed: &Typed) -> Option<Beside> {
    let path = fields.path_of(field);
    let span = fields.gauge(path).1.length;
    let gauges = read_several(&typed.text, span, field.counts).ok()?;
    let others: Vec<Option<Length>> = gauges.into_iter().map(|gauge| other_span(gauge, span)).collect();
    let other = (*others.first()?)?;
    let choice = SPANS.iter().find(|choice| choice.length == other)?;
    if others.iter().any(|another| *another != Some(other)) {
        return None;
    }
    let text = typed.text.trim();
    let label = words::perhaps(&words::over(text, other));
    Some(Beside::offered(label, path, Typed::with_unit(text, choice.key)))
}

/// Over what a gauge may have been counted instead; none where the text names its span.
fn other_span(gauge: Gauge, chosen: Length) -> Option<Length> {
    (gauge.span() == chosen).then(|| doubt::other_span(gauge)).flatten()
}

/// What the text in the field of the other direction names for this one.
fn named_beside(fields: &Fields, field: &'static Field) -> Option<Beside> {
    let pair::Named {
        filling,
        text,
        stands_here,
    } = pair::named_beside(fields, field)?;
    let path = fields.path_of(field);
    if !stands_here {
        let label = words::take_from(&filling.text, &text);
        return Some(Beside::offered(label, path, filling));
    }
    let tap = Tap {
        label: words::CLEAR.into(),
        field: path,
        typed: None,
        chosen: None,
    };
    Some(Beside {
        tap: Some(tap),
        ..Beside::said(words::filled_from(&text))
    })
}

#[cfg(test)]
mod tests;
