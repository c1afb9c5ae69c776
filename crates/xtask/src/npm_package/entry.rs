//! What a program imports: the functions of the maths, each of which says so when it is called before the start; and an
//! entry for node, which starts itself.
//!
//! The names are those of the declarations that the binding library writes, so that no function can be forgotten.

use super::Entry;
use anyhow::{Context, Result, ensure};
use std::fmt::Write;

/// The functions that start, declared here and not by the binding library, whose own declarations tell of its insides.
const START: &str = include_str!("start.d.ts");

/// What the sentences are, in the entry that has them.
const WORDS: &str = include_str!("words.d.ts");

/// A function of the maths: its name and what it takes.
struct Function<'a> {
    name: &'a str,
    arguments: Vec<&'a str>,
}

/// The declarations of the functions of the maths, as the binding library writes them, and of those that start.
pub fn declarations(bound: &str) -> Result<String> {
    let own = bound.split("export type InitInput").next().unwrap_or_default();
    ensure!(
        own.len() < bound.len(),
        "the binding library declares no start any more"
    );
    let own = own
        .replace("/* tslint:disable */\n", "")
        .replace("/* eslint-disable */\n", "");
    Ok(format!("{}\n\n{START}", own.trim()))
}

/// The declarations of the entry with sentences: its functions give what the others give, and what the app would say.
pub fn declarations_in_words(types: &str, bound: &str) -> Result<String> {
    let names = types.lines().filter_map(|line| {
        let rest = line
            .strip_prefix("export type ")
            .or(line.strip_prefix("export interface "))?;
        rest.split(|letter: char| !letter.is_alphanumeric()).next()
    });
    let names: Vec<&str> = names.collect();
    let own: Vec<String> = declarations(bound)?.lines().map(in_words).collect();
    Ok(format!(
        "import type {{\n  {},\n}} from \"./index.js\";\nexport type * from \"./index.js\";\n\n{WORDS}\n{}\n",
        names.join(",\n  "),
        own.join("\n")
    ))
}

/// A function that answers a question does so in words as well.
fn in_words(line: &str) -> String {
    let result = line.strip_suffix("Result;").and_then(|rest| rest.rsplit_once("): "));
    match result {
        Some((start, tool)) if line.starts_with("export function ") => format!("{start}): InWords<{tool}Result>;"),
        _ => line.to_owned(),
    }
}

/// The entry for browsers and bundlers.
pub fn browsers(bound: &str, entry: &Entry) -> Result<String> {
    let glue = entry.glue();
    let mut script = format!(
        "// The arithmetic of hand knitting. Everything is declared in index.d.ts.\n\
         import start, * as glue from \"./{glue}\";\n\n\
         let started = false;\n\n\
         /** Fetches the WebAssembly, or takes what it is given, and starts it; once is enough. */\n\
         export default async function init(source) {{\n  \
           await start(source === undefined ? undefined : {{ module_or_path: source }});\n  \
           started = true;\n\
         }}\n\n\
         /** Starts with the bytes of the WebAssembly, without waiting. */\n\
         export function initSync(source) {{\n  \
           glue.initSync({{ module: source }});\n  \
           started = true;\n\
         }}\n\n\
         function called(name) {{\n  \
           if (!started) throw new Error(`loopwright: call init first: \"await init()\" before ${{name}}`);\n\
         }}\n"
    );
    for function in functions(bound)? {
        let (name, arguments) = (function.name, function.arguments.join(", "));
        write!(
            script,
            "\nexport function {name}({arguments}) {{\n  called(\"{name}\");\n  return glue.{name}({arguments});\n}}\n"
        )?;
    }
    Ok(script)
}

/// The entry for node, which reads the WebAssembly from beside itself.
pub fn node(entry: &Entry) -> String {
    let (browsers, wasm) = (entry.scripts[0], entry.wasm());
    format!(
        "// Starts itself: in node the WebAssembly is a file beside this one.\n\
         import {{ readFileSync }} from \"node:fs\";\n\
         import {{ initSync }} from \"./{browsers}\";\n\n\
         initSync(readFileSync(new URL(\"./{wasm}\", import.meta.url)));\n\n\
         export * from \"./{browsers}\";\n\n\
         /** Nothing is left to be done: it has started. */\n\
         export default async function init() {{}}\n"
    )
}

/// The functions of the maths, by the declarations of the binding library.
fn functions(bound: &str) -> Result<Vec<Function<'_>>> {
    let lines = bound.lines().filter_map(|line| line.strip_prefix("export function "));
    let own = lines.filter(|line| !line.starts_with("initSync("));
    own.map(|line| function(line).with_context(|| format!("no function: {line}")))
        .collect()
}

/// `readGauge(text: string, over: Length): Reading<Gauge>;` takes `text` and `over`.
fn function(line: &str) -> Option<Function<'_>> {
    let (name, rest) = line.split_once('(')?;
    let (arguments, _) = rest.rsplit_once("):")?;
    let mut depth = 0_u32;
    let mut names = Vec::new();
    let parts = arguments.split(|letter| {
        match letter {
            '<' | '{' | '(' | '[' => depth += 1,
            '>' | '}' | ')' | ']' => depth = depth.saturating_sub(1),
            _ => {}
        }
        letter == ',' && depth == 0
    });
    for part in parts.filter(|part| !part.trim().is_empty()) {
        names.push(part.split_once(':')?.0.trim().trim_end_matches('?'));
    }
    Some(Function { name, arguments: names })
}

#[cfg(test)]
mod tests {
    use super::*;

    const BOUND: &str = "/* tslint:disable */\n/**\n * a\n */\nexport function hem(question: Asked<Q, 'a' | 'b'>): R;\n\
        export function print(length: Length, unit: Map<A, B>): string;\nexport type InitInput = 1;\n\
        export function initSync(module: { module: S } | S): InitOutput;\n";

    #[test]
    fn functions_have_their_names_and_arguments() {
        let script = browsers(BOUND, &super::super::DATA).unwrap();
        assert!(script.contains("from \"./loopwright.js\""), "{script}");
        assert!(script.contains("export function hem(question) {"), "{script}");
        assert!(script.contains("return glue.print(length, unit);"), "{script}");
        assert_eq!(script.matches("export function initSync").count(), 1);
    }

    #[test]
    fn a_tool_answers_in_words_and_other_functions_do_not() {
        let types = "export interface Hem {\nexport type HemResult = Result<Hem>;\n";
        let bound = "export function hem(question: Hem): HemResult;\nexport function print(a: A): string;\n\
            export type InitInput = 1;";
        let declared = declarations_in_words(types, bound).unwrap();
        assert!(
            declared.starts_with("import type {\n  Hem,\n  HemResult,\n} from"),
            "{declared}"
        );
        assert!(
            declared.contains("hem(question: Hem): InWords<HemResult>;"),
            "{declared}"
        );
        assert!(declared.contains("print(a: A): string;"), "{declared}");
    }

    #[test]
    fn the_insides_of_the_binding_are_not_declared() {
        let declared = declarations(BOUND).unwrap();
        assert!(
            declared.starts_with("/**\n * a\n */\nexport function hem"),
            "{declared}"
        );
        assert!(declared.contains("export default function init("), "{declared}");
        assert!(!declared.contains("InitOutput"), "{declared}");
        assert!(declarations("export function hem(): R;").is_err());
    }
}
