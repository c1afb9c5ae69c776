//! The same list of tools for JavaScript: one function a tool, a question in as a plain object, an answer out as one.
//!
//! ```js
//! import init, { spacing } from "loopwright";
//! await init();
//! const { answer, problems } = spacing({ stitches: 132, ask: { Lose: 16 } });
//! if (answer) console.log(answer.ways[answer.suggested].text);
//! else console.log(problems); // [{ field: "amount", kind: { TooMany: { most: 66 } } }]
//! ```
//!
//! **Names.** Fields and choices are called what they are called in the Rust crate, here, in the declarations, and in
//! the `field` of a problem: one name for one thing. A choice with nothing to say is its name (`"Mirrored"`), one with
//! something to say is an object of one key (`{ AtLeast: 3 }`). What is not known is `null`. Types carry their tool's
//! name: `SpacingQuestion`, `SpacingAnswer`, `SpacingResult`.
//!
//! **Left out.** A field that has a usual start may be left out; the declaration says which may not.
//!
//! **Quantities.** A length is a whole number of nanometres and a weight a whole number of nanograms, in and out, so
//! that an answer can be put into the next question with nothing lost. Text becomes a quantity by [`read_length`],
//! [`read_mass`], [`read_count`], [`read_gauge`] and [`read_needle`], which read all that a knitter writes, and a quantity
//! becomes text by [`print_length`] and [`print_mass`]: `readLength("7 1/2 in", "Inch").value` is `190500000`.
//!
//! **What is wrong.** A question that has no answer is never an exception: `problems` has the field and the nearest
//! thing that would be right. An object that is no question at all (a field missing, unknown, or not of its kind, such
//! as half a stitch) is a mistake of the program: a `TypeError` whose sentence names the field. Numbers that a person
//! typed therefore go through `readCount` first.
//!
//! **In words.** With the feature `words`, which is the package's second entry, what comes out has `words` beside it: the
//! sentences that the app would say to that question.

mod bind;
mod given;
mod quantity;
#[cfg(feature = "words")]
mod told;
// The app's own sentences. It has no library, and what is not said here is of use there.
#[cfg(feature = "words")]
#[allow(dead_code, unused_imports)]
#[path = "../../loopwright-app/src/words/mod.rs"]
mod words;

pub use quantity::{print_length, print_mass, read_count, read_gauge, read_length, read_mass, read_needle};

#[cfg(feature = "words")]
pub use told::measure_in;

/// One file for each tool of the list, with a function of the tool's name: without it this does not compile.
macro_rules! bindings {
    ($($tool:ident in $group:ident,)*) => {
        $(
            mod $tool;
            pub use $tool::$tool;
        )*
    };
}
loopwright::each_tool!(bindings);
