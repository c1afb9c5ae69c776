//! Collects the types that cross into JavaScript from the sources: what is serialised, with its words and its room.

use crate::files;
use anyhow::{Context, Result, bail, ensure};
use std::collections::BTreeMap;
use std::path::Path;
use syn::{Attribute, Expr, Item, Lit, Meta, UseTree};

/// A struct or an enum that is written out as data.
pub struct Type {
    /// The module of the crate it belongs to: a tool, or a room the tools share.
    pub room: String,
    /// Its name in Rust.
    pub name: String,
    /// The item itself.
    pub item: Item,
    /// What its file imports: local name to room and name.
    pub imports: BTreeMap<String, (String, String)>,
}

/// Every type of the maths, then those of the bindings, which stand in for the former of the same room and name.
pub fn types(maths: &Path, bindings: &Path) -> Result<Vec<Type>> {
    let mut types = in_folder(maths)?;
    for made in in_folder(bindings)? {
        types.retain(|known| (&known.room, &known.name) != (&made.room, &made.name));
        types.push(made);
    }
    Ok(types)
}

/// The tools that have a binding, each a file with a function of its own name.
pub fn tools(bindings: &Path) -> Result<Vec<String>> {
    let mut tools = Vec::new();
    for (path, bytes) in files::read(bindings)? {
        let file = syn::parse_file(std::str::from_utf8(&bytes)?)?;
        let room = room(&path).to_owned();
        if file
            .items
            .iter()
            .any(|item| matches!(item, Item::Fn(f) if f.sig.ident == room))
        {
            tools.push(room);
        }
    }
    ensure!(!tools.is_empty(), "no tool has a binding");
    Ok(tools)
}

fn in_folder(folder: &Path) -> Result<Vec<Type>> {
    let mut types = Vec::new();
    // Beside the sources of a tool stand the tables of its tests.
    let sources = files::read(folder)?
        .into_iter()
        .filter(|(path, _)| path.ends_with(".rs"));
    for (path, bytes) in sources {
        let file = syn::parse_file(std::str::from_utf8(&bytes)?).with_context(|| format!("{path} cannot be parsed"))?;
        let room = room(&path).to_owned();
        let mut imports = BTreeMap::new();
        for item in &file.items {
            if let Item::Use(import) = item {
                gather(&import.tree, &mut Vec::new(), &room, &mut imports);
            }
        }
        for item in file.items {
            let (name, attributes) = match &item {
                Item::Struct(item) => (item.ident.to_string(), &item.attrs),
                Item::Enum(item) => (item.ident.to_string(), &item.attrs),
                _ => continue,
            };
            // A type that takes types is made by hand where it is needed.
            let generic = matches!(&item, Item::Struct(s) if !s.generics.params.is_empty())
                || matches!(&item, Item::Enum(e) if !e.generics.params.is_empty());
            if !generic && is_serialised(attributes) {
                let (room, imports) = (room.clone(), imports.clone());
                types.push(Type {
                    room,
                    name,
                    item,
                    imports,
                });
            }
        }
    }
    Ok(types)
}

/// Modules within a tool that answer a question of their own, so that each has a function and is a room.
const WITHIN: [(&str, &str); 1] = [("stairs/raise", "raise")];

/// The module right under the crate, or the one within it that is a room by itself.
fn room(path: &str) -> &str {
    let within = WITHIN.iter().find(|(start, _)| path.starts_with(start));
    let first = path.split('/').next().unwrap_or(path);
    within.map_or(first.strip_suffix(".rs").unwrap_or(first), |(_, room)| room)
}

fn is_serialised(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|attribute| match &attribute.meta {
        Meta::List(list) => {
            let text = list.tokens.to_string();
            let derives = attribute.path().is_ident("derive") || attribute.path().is_ident("cfg_attr");
            derives && text.contains("Serialize")
        }
        _ => false,
    })
}

/// Follows a `use` to its names.
fn gather(tree: &UseTree, path: &mut Vec<String>, room: &str, imports: &mut BTreeMap<String, (String, String)>) {
    let mut keep = |local: String, name: String, path: &[String]| {
        let from = match path.first().map(String::as_str) {
            Some("crate" | "loopwright") => path.get(1).cloned(),
            // `super`, `self` and a module of its own are all within the room.
            _ => Some(room.to_owned()),
        };
        imports.insert(local, (from.unwrap_or_default(), name));
    };
    match tree {
        UseTree::Path(step) => {
            path.push(step.ident.to_string());
            gather(&step.tree, path, room, imports);
            path.pop();
        }
        UseTree::Name(name) => keep(name.ident.to_string(), name.ident.to_string(), path),
        UseTree::Rename(name) => keep(name.rename.to_string(), name.ident.to_string(), path),
        UseTree::Group(group) => {
            for tree in &group.items {
                gather(tree, path, room, imports);
            }
        }
        UseTree::Glob(_) => {}
    }
}

/// The words above an item, line by line.
pub fn words(attributes: &[Attribute]) -> Vec<String> {
    let text = |attribute: &Attribute| match &attribute.meta {
        Meta::NameValue(pair) if pair.path.is_ident("doc") => match &pair.value {
            Expr::Lit(literal) => match &literal.lit {
                Lit::Str(text) => Some(text.value().trim().to_owned()),
                _ => None,
            },
            _ => None,
        },
        _ => None,
    };
    attributes.iter().filter_map(text).collect()
}

/// Refuses what would change how a type is written out and is not known here.
pub fn check(attributes: &[Attribute], name: &str) -> Result<()> {
    for attribute in attributes {
        let Meta::List(list) = &attribute.meta else {
            continue;
        };
        let text = list.tokens.to_string().replace(' ', "");
        let own = attribute.path().is_ident("serde") && text != "transparent";
        let behind = text
            .split("serde(")
            .nth(1)
            .is_some_and(|rest| !rest.starts_with("transparent)"));
        if own || behind {
            bail!("{name}: the declarations know no serde attribute but `transparent`: {text}");
        }
    }
    Ok(())
}
