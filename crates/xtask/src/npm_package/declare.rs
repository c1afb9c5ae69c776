//! Writes TypeScript declarations from the Rust types, with their words: made from the sources, never copied by hand.
//!
//! Only what the tools' questions and answers reach is written. A type of a tool carries the tool's name, one that the
//! tools share does not. What cannot be told for certain is an error, not a guess.

use super::sources::{Type, check, words};
use anyhow::{Context, Result, bail};
use std::collections::BTreeMap;
use std::fmt::Write;
use syn::{Fields, GenericArgument, Item, PathArguments, PathSegment};

/// What every tool shares and no Rust type says.
const SHARED: &str = include_str!("shared.d.ts");

/// Types that the functions beside the tools need.
const ROOTS: [(&str, &str); 6] = [
    ("problem", "Problem"),
    ("units", "Unreadable"),
    ("units", "Unit"),
    ("units", "Length"),
    ("units", "Mass"),
    ("units", "Gauge"),
];

/// The declarations for these tools.
pub fn declarations(types: &[Type], tools: &[String]) -> Result<String> {
    let mut writer = Writer {
        types,
        tools,
        wanted: Vec::new(),
        seen: BTreeMap::new(),
    };
    let mut text = SHARED.to_owned();
    for (room, name) in ROOTS {
        writer.want(writer.exactly(room, name)?)?;
    }
    for tool in tools {
        for name in ["Question", "Answer"] {
            writer.want(writer.exactly(tool, name)?)?;
        }
        let tool = pascal(tool);
        write!(text, "\nexport type {tool}Result = Result<{tool}Answer>;\n")?;
    }
    while let Some(at) = writer.wanted.pop() {
        text.push('\n');
        text.push_str(&writer.declared(&types[at])?);
    }
    Ok(text)
}

struct Writer<'a> {
    types: &'a [Type],
    tools: &'a [String],
    /// Types still to be written, by their place.
    wanted: Vec<usize>,
    /// Names already taken, so that each is written once.
    seen: BTreeMap<String, usize>,
}

impl Writer<'_> {
    /// The name in TypeScript; the type is written in its turn.
    fn want(&mut self, at: usize) -> Result<String> {
        let name = self.name(&self.types[at]);
        match self.seen.insert(name.clone(), at) {
            None => self.wanted.push(at),
            Some(before) if before == at => {}
            Some(_) => bail!("two types would be called {name}"),
        }
        Ok(name)
    }

    fn name(&self, named: &Type) -> String {
        if self.tools.contains(&named.room) {
            format!("{}{}", pascal(&named.room), named.name)
        } else {
            named.name.clone()
        }
    }

    fn exactly(&self, room: &str, name: &str) -> Result<usize> {
        let is_it = |at: &usize| self.types[*at].room == room && self.types[*at].name == name;
        let mut found = (0..self.types.len()).filter(is_it);
        match (found.next(), found.next()) {
            (Some(only), None) => Ok(only),
            (None, _) => bail!("no serialised {name} in {room}"),
            _ => bail!("more than one {name} in {room}"),
        }
    }

    /// The type a name means in the file of `user`: imported there, or of the same room.
    fn named(&mut self, name: &str, user: &Type) -> Result<String> {
        let (room, name) = match user.imports.get(name) {
            Some((room, name)) => (room.as_str(), name.as_str()),
            None => (user.room.as_str(), name),
        };
        let at = self.exactly(room, name).or_else(|missing| {
            // A room may hand on another's type.
            let mut others = (0..self.types.len()).filter(|at| self.types[*at].name == name);
            match (others.next(), others.next()) {
                (Some(only), None) => Ok(only),
                _ => Err(missing.context(format!("in {} of {}", user.name, user.room))),
            }
        })?;
        self.want(at)
    }

    fn declared(&mut self, declared: &Type) -> Result<String> {
        let name = self.name(declared);
        match &declared.item {
            Item::Struct(item) => {
                check(&item.attrs, &name)?;
                let says = comment(&words(&item.attrs), "");
                let body = self.fields(&item.fields, declared, "  ")?;
                let body = body.unwrap_or_else(|| "null".to_owned());
                Ok(if matches!(item.fields, Fields::Named(_)) {
                    format!("{says}export interface {name} {body}\n")
                } else {
                    format!("{says}export type {name} = {body};\n")
                })
            }
            Item::Enum(item) => {
                check(&item.attrs, &name)?;
                let mut text = format!("{}export type {name} =", comment(&words(&item.attrs), ""));
                for variant in &item.variants {
                    check(&variant.attrs, &name)?;
                    let body = self.fields(&variant.fields, declared, "      ")?;
                    let choice = match body {
                        None => format!("\"{}\"", variant.ident),
                        Some(body) => format!("{{ {}: {body} }}", variant.ident),
                    };
                    let says = comment(&words(&variant.attrs), "  ");
                    write!(text, "\n{says}  | {choice}")?;
                }
                text.push_str(";\n");
                Ok(text)
            }
            _ => bail!("{name} is neither a struct nor an enum"),
        }
    }

    /// What stands in a struct or a variant; nothing for one without fields.
    fn fields(&mut self, fields: &Fields, user: &Type, indent: &str) -> Result<Option<String>> {
        Ok(match fields {
            Fields::Unit => None,
            Fields::Unnamed(fields) if fields.unnamed.len() == 1 => Some(self.typed(&fields.unnamed[0].ty, user)?),
            Fields::Unnamed(fields) => {
                let all: Result<Vec<String>> = fields.unnamed.iter().map(|field| self.typed(&field.ty, user)).collect();
                Some(format!("[{}]", all?.join(", ")))
            }
            Fields::Named(fields) => {
                let mut text = "{\n".to_owned();
                for field in &fields.named {
                    let name = field.ident.as_ref().context("a field without a name")?;
                    check(&field.attrs, &name.to_string())?;
                    let says = comment(&words(&field.attrs), indent);
                    writeln!(text, "{says}{indent}{name}: {};", self.typed(&field.ty, user)?)?;
                }
                write!(text, "{}}}", &indent[2..])?;
                Some(text)
            }
        })
    }

    fn typed(&mut self, typed: &syn::Type, user: &Type) -> Result<String> {
        match typed {
            syn::Type::Path(path) => {
                let last = path.path.segments.last().context("a type without a name")?;
                self.segment(last, user)
            }
            syn::Type::Reference(to) => self.typed(&to.elem, user),
            syn::Type::Array(array) => Ok(format!("{}[]", self.typed(&array.elem, user)?)),
            syn::Type::Tuple(tuple) => {
                let all: Result<Vec<String>> = tuple.elems.iter().map(|one| self.typed(one, user)).collect();
                Ok(format!("[{}]", all?.join(", ")))
            }
            _ => bail!("a type of {} that is not known in JavaScript", user.name),
        }
    }

    fn segment(&mut self, segment: &PathSegment, user: &Type) -> Result<String> {
        let inner = |writer: &mut Self| match &segment.arguments {
            PathArguments::AngleBracketed(list) => match list.args.first() {
                Some(GenericArgument::Type(inner)) => writer.typed(inner, user),
                _ => bail!("{} of nothing in {}", segment.ident, user.name),
            },
            _ => bail!("{} of nothing in {}", segment.ident, user.name),
        };
        Ok(match segment.ident.to_string().as_str() {
            "u8" | "u16" | "u32" | "u64" | "usize" | "i8" | "i16" | "i32" | "i64" | "f32" | "f64" => {
                "number".to_owned()
            }
            "bool" => "boolean".to_owned(),
            // A path in the question crosses as its text: `sections[2].stitches`.
            "str" | "String" | "char" | "FieldPath" => "string".to_owned(),
            "Option" => format!("{} | null", inner(self)?),
            "Box" => inner(self)?,
            // `A | null` needs its brackets; a name does well without.
            "Vec" => match inner(self)? {
                one if one.contains(' ') => format!("({one})[]"),
                one => format!("{one}[]"),
            },
            // From a place on to another, as the standard library has it: one of ours has no type inside.
            "Range" if matches!(segment.arguments, PathArguments::AngleBracketed(_)) => {
                let inner = inner(self)?;
                format!("{{ start: {inner}; end: {inner} }}")
            }
            "Self" => self.named(&user.name, user)?,
            name => self.named(name, user)?,
        })
    }
}

/// `cast_on` is `CastOn`.
fn pascal(tool: &str) -> String {
    tool.split('_')
        .map(|part| {
            let (first, rest) = part.split_at(part.len().min(1));
            first.to_uppercase() + rest
        })
        .collect()
}

/// Words as a comment; links to Rust names keep the name.
fn comment(words: &[String], indent: &str) -> String {
    let plain = |line: &String| line.replace("[`", "`").replace("`]", "`").replace("*/", "* /");
    match words {
        [] => String::new(),
        [one] => format!("{indent}/** {} */\n", plain(one)),
        many => {
            let lines: String = many
                .iter()
                .map(|line| format!("{indent} * {}", plain(line)).trim_end().to_owned() + "\n")
                .collect();
            format!("{indent}/**\n{lines}{indent} */\n")
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(room: &str, source: &str) -> Vec<Type> {
        let file = syn::parse_file(source).unwrap();
        let typed = |item: Item| Type {
            room: room.to_owned(),
            name: match &item {
                Item::Struct(item) => item.ident.to_string(),
                Item::Enum(item) => item.ident.to_string(),
                _ => unreachable!("only types are tried"),
            },
            item,
            imports: BTreeMap::new(),
        };
        file.items.into_iter().map(typed).collect()
    }

    fn declared(source: &str) -> Result<String> {
        let mut types = of("problem", "struct Problem(u8);");
        types.extend(of(
            "units",
            "struct Unreadable; struct Unit; struct Length(i64); struct Mass(i64); struct Gauge(u8);",
        ));
        types.extend(of("cast_on", source));
        declarations(&types, &["cast_on".to_owned()])
    }

    #[test]
    fn every_kind_of_type_is_written_as_it_crosses() {
        let text = declared(
            "/// Words.\nstruct Question { /// How far.\n a: Option<Length>, b: Vec<Option<u8>>, c: Vec<Range<usize>>, ask: Ask }\n\
             enum Ask { Plain, One(u32), Two(Length, bool), Many { of: [u8; 3] } }\nstruct Answer;",
        )
        .unwrap();
        for piece in [
            "/** Words. */\nexport interface CastOnQuestion {\n  /** How far. */\n  a: Length | null;\n",
            "  b: (number | null)[];\n  c: ({ start: number; end: number })[];\n  ask: CastOnAsk;\n}",
            "export type CastOnAsk =\n  | \"Plain\"\n  | { One: number }\n  | { Two: [Length, boolean] }\n  | { Many: {\n      of: number[];\n    } };",
            "export type Length = number;",
            "export type CastOnResult = Result<CastOnAnswer>;",
        ] {
            assert!(text.contains(piece), "{piece}\nis not in\n{text}");
        }
    }

    #[test]
    fn what_cannot_be_told_is_an_error() {
        for wrong in [
            "struct Question { a: Nobody } struct Answer;",
            "struct Question;",
            "struct Question { #[serde(rename = \"b\")] a: u8 } struct Answer;",
            "struct Question { a: fn() } struct Answer;",
        ] {
            assert!(declared(wrong).is_err(), "{wrong}");
        }
    }
}
