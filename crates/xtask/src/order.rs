//! Puts functions that are alike beside each other.
//!
//! The page travels compressed, and what is alike costs less the nearer it stands. The compiler's order knows nothing of
//! that. Which order it is changes nothing else: every mention of a function follows it to its new number.

use anyhow::{Result, anyhow};
use std::{collections::HashMap, convert::Infallible};
use wasm_encoder::{
    CodeSection, FunctionSection, Module,
    reencode::{Error, Reencode, utils},
};
use wasmparser::{CodeSectionReader, FunctionBody, FunctionSectionReader, Parser, Payload, TypeRef};

/// Bytes that are looked at together: an instruction with its operand, mostly.
const PIECE: usize = 4;

/// The module with its functions in an order that compresses well. The same module gives the same order.
///
/// # Errors
/// When it is no module.
pub fn order(wasm: &[u8]) -> Result<Vec<u8>> {
    let mut imported = 0;
    let mut pieces = Vec::new();
    for payload in Parser::new(0).parse_all(wasm) {
        match payload? {
            Payload::ImportSection(section) => {
                for import in section.into_imports() {
                    imported += u32::from(matches!(import?.ty, TypeRef::Func(_)));
                }
            }
            Payload::CodeSectionEntry(body) => pieces.push(pieces_of(body.as_bytes())),
            _ => {}
        }
    }
    let order = chain(&pieces);
    let mut numbers: HashMap<u32, u32> = HashMap::new();
    for (new, old) in (0..).zip(&order) {
        numbers.insert(imported + u32::try_from(*old)?, imported + new);
    }
    let mut module = Module::new();
    let mut reorder = Reorder { order, numbers };
    reorder
        .parse_core_module(&mut module, Parser::new(0), wasm)
        .map_err(|error| anyhow!("the functions could not be put in order: {error}"))?;
    Ok(module.finish())
}

/// The pieces a function is made of, each once, in order.
fn pieces_of(body: &[u8]) -> Vec<u32> {
    let mut pieces: Vec<u32> = body
        .windows(PIECE)
        .map(|piece| piece.iter().fold(0, |all, byte| all << 8 | u32::from(*byte)))
        .collect();
    pieces.sort_unstable();
    pieces.dedup();
    pieces
}

/// A way through all of them that goes on to the one most like the last, from the smallest.
fn chain(pieces: &[Vec<u32>]) -> Vec<usize> {
    let mut left: Vec<usize> = (0..pieces.len()).collect();
    let mut order = Vec::new();
    let smallest = left.iter().min_by_key(|place| pieces[**place].len()).copied();
    let mut next = smallest;
    while let Some(last) = next {
        order.push(last);
        left.retain(|place| *place != last);
        let (mut nearest, mut most) = (left.first().copied(), 0.0);
        for place in &left {
            let (here, there) = (&pieces[last], &pieces[*place]);
            let both = (here.len() + there.len()).max(1) as f64;
            // No more can be shared than the shorter has.
            if here.len().min(there.len()) as f64 / both > most {
                let alike = shared(here, there) as f64 / both;
                if alike > most {
                    (nearest, most) = (Some(*place), alike);
                }
            }
        }
        next = nearest;
    }
    order
}

/// How many pieces two have in common.
fn shared(here: &[u32], there: &[u32]) -> usize {
    let (mut at, mut count) = (0, 0);
    for piece in here {
        while there.get(at).is_some_and(|other| other < piece) {
            at += 1;
        }
        count += usize::from(there.get(at) == Some(piece));
    }
    count
}

/// Writes a module again, its functions in another order.
struct Reorder {
    /// The old place of each function, in the new order.
    order: Vec<usize>,
    /// The new number of each function, by its old one.
    numbers: HashMap<u32, u32>,
}

impl Reencode for Reorder {
    type Error = Infallible;

    fn function_index(&mut self, function: u32) -> Result<u32, Error<Infallible>> {
        Ok(self.numbers.get(&function).copied().unwrap_or(function))
    }

    fn parse_function_section(
        &mut self,
        functions: &mut FunctionSection,
        section: FunctionSectionReader<'_>,
    ) -> Result<(), Error<Infallible>> {
        let types = section.into_iter().collect::<Result<Vec<u32>, _>>()?;
        for old in &self.order {
            functions.function(types[*old]);
        }
        Ok(())
    }

    fn parse_code_section(
        &mut self,
        code: &mut CodeSection,
        section: CodeSectionReader<'_>,
    ) -> Result<(), Error<Infallible>> {
        let bodies = section.into_iter().collect::<Result<Vec<FunctionBody<'_>>, _>>()?;
        for old in self.order.clone() {
            utils::parse_function_body(self, code, bodies[old].clone())?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use walrus::ir::{Const, Instr, Value};
    use walrus::{FunctionBuilder, ModuleConfig};

    /// A module whose exported functions give these numbers, each so many times over.
    fn module(numbers: &[i32]) -> Vec<u8> {
        let mut module = walrus::Module::with_config(ModuleConfig::new());
        for number in numbers {
            let mut builder = FunctionBuilder::new(&mut module.types, &[], &[walrus::ValType::I32]);
            let mut body = builder.func_body();
            for _ in 0..number % 7 {
                body.i32_const(*number).drop();
            }
            body.i32_const(*number);
            let function = builder.finish(Vec::new(), &mut module.funcs);
            module.exports.add(&number.to_string(), function);
        }
        module.emit_wasm()
    }

    #[test]
    fn an_export_keeps_its_function() {
        let wasm = module(&[1_000_003, 5, 70_001, 1_000_009, 6, 70_002]);
        let ordered = walrus::Module::from_buffer(&order(&wasm).unwrap()).unwrap();
        for export in ordered.exports.iter() {
            let walrus::ExportItem::Function(function) = export.item else {
                panic!("{} is no function", export.name);
            };
            let body = ordered.funcs.get(function).kind.unwrap_local();
            let last = &body.block(body.entry_block()).instrs.last().unwrap().0;
            let number: i32 = export.name.parse().unwrap();
            let gives = matches!(last, Instr::Const(Const { value: Value::I32(value) }) if *value == number);
            assert!(gives, "{} gives {last:?}", export.name);
        }
        assert_eq!(order(&wasm).unwrap(), order(&wasm).unwrap());
    }

    #[test]
    fn what_is_alike_stands_together() {
        let alike = [
            pieces_of(b"abcdefgh"),
            pieces_of(b"12345678"),
            pieces_of(b"abcdefgi"),
            pieces_of(b"1234567"),
        ];
        assert_eq!(chain(&alike), [3, 1, 0, 2]);
    }
}
