//! A pattern written as it was read, each thing in one way: what is read from that is the same again.

use super::line::{
    Amount, Count, Counted, Doing, Figure, Item, Line, Often, Pattern, Reach, Repeat, RowsAgain, RowsOften, Said,
    Share, Stitches, WhichRows,
};
use super::name::{Manner, StitchName};
use super::technique::Sort;
use std::fmt::{Display, Formatter, Result};

impl Display for Pattern {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        self.lines.iter().try_for_each(|line| writeln!(f, "{line}"))
    }
}

impl Display for Line {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        if let Some(label) = &self.label {
            write!(f, "{}: ", label.called)?;
        }
        all(&self.items, f)
    }
}

fn all(items: &[Item], f: &mut Formatter<'_>) -> Result {
    for (place, item) in items.iter().enumerate() {
        let joint = match (place, &item.doing) {
            (0, _) => "",
            (_, Doing::RowsAgain(_) | Doing::Said(_)) => ". ",
            _ => ", ",
        };
        write!(f, "{joint}{}", item.doing)?;
    }
    Ok(())
}

impl Display for Doing {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            Self::Stitches(stitches) => stitches.fmt(f),
            Self::Repeat(repeat) => repeat.fmt(f),
            Self::IntoOne(body) => {
                f.write_str("(")?;
                all(body, f)?;
                f.write_str(") in next st")
            }
            Self::PlaceMarker => f.write_str("pm"),
            Self::SlipMarker => f.write_str("sm"),
            Self::RemoveMarker => f.write_str("rm"),
            Self::BindOff(Share::Of(amount)) => write!(f, "BO {amount}"),
            Self::BindOff(Share::Rest) => f.write_str("BO all sts"),
            Self::CastOn(amount) => write!(f, "CO {amount}"),
            Self::Hold(Share::Of(amount)) => write!(f, "place next {amount} sts on holder"),
            Self::Hold(Share::Rest) => f.write_str("place rem sts on holder"),
            Self::Return => f.write_str("return held sts to needle"),
            Self::AtStartOfRows(inner, rows) => write!(f, "{} at beg of next {rows} rows", inner.doing),
            Self::Join => f.write_str("join"),
            Self::Turn => f.write_str("turn"),
            Self::WrapAndTurn => f.write_str("w&t"),
            Self::Rows(name, rows) => write!(f, "{name} {rows} rows"),
            Self::RowsToLength(name, length) => write!(f, "{name} {}", length.written),
            Self::RowsAgain(again) => again.fmt(f),
            Self::Said(said) => said.fmt(f),
        }
    }
}

impl Display for Stitches {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        let is_plain = self.name.sort() == Sort::Plain;
        write!(f, "{}", self.name)?;
        match &self.count {
            Count::One => {}
            // A word of more letters than one stands apart from its number.
            Count::Of(amount) if is_plain && self.name.is_one_letter() => write!(f, "{amount}")?,
            Count::Of(amount) if is_plain => write!(f, " {amount}")?,
            Count::Of(amount) => write!(f, " {}", Times(amount))?,
            Count::Reach(reach) => write!(f, " {reach}")?,
        }
        self.manner
            .iter()
            .try_for_each(|manner| write!(f, " {}", manner.written()))
    }
}

impl Display for StitchName {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            Self::Known(technique) => f.write_str(technique.written),
            Self::Counted { family, over } => {
                let (before, behind) = family.around();
                write!(f, "{before}{over}{behind}")
            }
            Self::Cable { parts, crossing } => {
                let parts: Vec<String> = parts.iter().filter(|part| **part > 0).map(u32::to_string).collect();
                write!(f, "{} {}", parts.join("/"), crossing.small().to_uppercase())
            }
            Self::Own(own) => f.write_str(&own.word),
        }
    }
}

impl StitchName {
    fn is_one_letter(&self) -> bool {
        matches!(self, Self::Known(technique) if technique.written.len() == 1)
    }
}

impl Manner {
    const fn written(self) -> &'static str {
        match self {
            Self::ThroughBack => "tbl",
            Self::YarnInFront => "wyif",
            Self::YarnInBack => "wyib",
            Self::Purlwise => "pwise",
            Self::Knitwise => "kwise",
        }
    }
}

/// `7`, `6 (7, 8)`, `- (4, 6)`.
impl Display for Amount {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        let written = |figure: &Figure| figure.value.map_or_else(|| "-".to_owned(), |value| value.to_string());
        let Some((first, others)) = self.figures.split_first() else {
            return Ok(());
        };
        f.write_str(&written(first))?;
        if others.is_empty() {
            return Ok(());
        }
        let others: Vec<String> = others.iter().map(written).collect();
        write!(f, " ({})", others.join(", "))
    }
}

/// `3 times`, `twice`.
struct Times<'a>(&'a Amount);

impl Display for Times<'_> {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        write!(f, "{} times", self.0)
    }
}

fn times(amount: &Amount, counted: Counted, f: &mut Formatter<'_>) -> Result {
    write!(f, "{}", Times(amount))?;
    match counted {
        Counted::Unsaid => Ok(()),
        Counted::More => f.write_str(" more"),
        Counted::All => f.write_str(" in all"),
    }
}

impl Display for Reach {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            Self::End => f.write_str("to end"),
            Self::Last(amount) => write!(f, "to last {amount} sts"),
            Self::Marker(None) => f.write_str("to m"),
            Self::Marker(Some(amount)) => write!(f, "to {amount} sts before m"),
        }
    }
}

impl Display for Often {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            Self::Times(amount, counted) => times(amount, *counted, f),
            Self::Reach(reach) => reach.fmt(f),
        }
    }
}

impl Display for Repeat {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        if let Some(stars) = self.stars {
            let stars = "*".repeat(usize::from(stars));
            f.write_str(&stars)?;
            all(&self.body, f)?;
            return write!(f, "; rep from {stars} {}", self.often);
        }
        f.write_str("(")?;
        all(&self.body, f)?;
        write!(f, ") {}", self.often)?;
        let Some(but) = &self.but else { return Ok(()) };
        let at: Vec<String> = but.at.iter().map(|time| format!("{time}th")).collect();
        write!(f, ", but {} the {} time", but.instead, at.join(", "))
    }
}

impl Display for RowsAgain {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        f.write_str("rep ")?;
        match &self.rows {
            WhichRows::Last(many) => write!(f, "last {many} rows")?,
            WhichRows::Numbered(rows) => {
                let range = |(first, last): &(u32, u32)| match first == last {
                    true => first.to_string(),
                    false => format!("{first}-{last}"),
                };
                let rows: Vec<String> = rows.iter().map(range).collect();
                write!(f, "rows {}", rows.join(", "))?;
            }
        }
        match &self.often {
            RowsOften::Times(amount, counted) => {
                f.write_str(" ")?;
                times(amount, *counted, f)
            }
            RowsOften::Until(amount) => write!(f, " until {amount} sts rem"),
            RowsOften::ToLength(length) => write!(f, " {}", length.written),
            RowsOften::Named => Ok(()),
        }
    }
}

impl Display for Said {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            Self::Total(amount) => write!(f, "{amount} sts"),
            Self::Gained(amount) => write!(f, "{amount} sts increased"),
            Self::Lost(amount) => write!(f, "{amount} sts decreased"),
        }
    }
}
