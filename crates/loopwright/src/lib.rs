//! The arithmetic of hand knitting: exact, total, and explained.
//!
//! This is a short textbook with programs for sums. Every tool is a question with one answer, and each has one module of
//! the same shape, so that who has read one has read all: a `Question` of typed quantities, an `Answer` of plain data
//! with its working, and a pure function `answer` between them that never panics. A module opens with its question in a
//! knitter's words, the sum, where the rule comes from, and an example that runs. What is wrong with a question comes back
//! as [`problem::Problem`]s: the field, and the nearest value that would be right. There are no sentences here; a page
//! makes them.
//!
//! # From the swatch to the last row
//!
//! | chapter | what it answers | the sum |
//! |---|---|---|
//! | [`swatch`] | how large a swatch is | half the span again on each side |
//! | [`gauge`] | how many stitches and rows lie in 10 cm, how sure that is, which needle is next | stitches counted over width counted |
//! | [`sizing`] | which size fits, with how much ease | garment less body |
//! | [`regauge`] | a pattern's counts at another gauge | count times own gauge over the pattern's |
//! | [`needles`] | what a needle is called elsewhere | a table, by millimetres |
//! | [`cords`] | which cord serves which rounds | from a cord's length to twice it |
//! | [`yarn`] | how many balls | yarn in a stitch times stitches |
//! | [`cast_on`] | how many stitches make a width | width times gauge, to the pattern's multiple |
//! | [`tail`] | how long a tail | turns round the needle times stitches |
//! | [`spacing`] | changes spread over one row | runs within one stitch of each other |
//! | [`rows`] | how many rows make a length | length times row gauge |
//! | [`shaping`] | changes spread over many rows | rows over gaps |
//! | [`stairs`] | a slope in bind-off steps or short rows | stitches over steps |
//! | [`flare`] | how fast a round may grow to lie flat | 2 pi times row height over stitch width |
//! | [`yoke`], [`raglan`] | from the underarm to the neck and back | counts on a straight line; two targets |
//! | [`sizes_in_text`] | which numbers of a pattern are one's own | lists with a number for each size |
//! | [`written`] | whether each line of a pattern comes out, in every size | stitches used over stitches there |
//!
//! # Units, and how exact they are
//!
//! A [`units::Length`] is a whole number of nanometres and a [`units::Mass`] of nanograms: inch, 1/64 inch, yard and ounce
//! are exact, so that six balls of 125 m are six. A [`units::Gauge`] is a count *and* the span it was counted over, since
//! 10 cm and 4 in are 1.6 % apart. Floating point stays inside geometry and is rounded once on its way out. Text becomes a
//! quantity in [`units`] only, as people write it: `7 1/2`, `7½`, `7.5`, `7,5`.
//!
//! # Names
//!
//! A field of a question and a thing to choose are types with a key ([`mod@choice`]), and a [`problem::Problem`] says by them
//! where it is: `amount`, `sections[2].stitches`. What is stored or linked under a key is read for ever. Words that several
//! tools share, such as sides and repeats, stand in [`terms`].
//!
//! # How sure a number is
//!
//! Published values stand in [`tables`], each row with its [`tables::Source`], which cannot be made without saying whether
//! it was read there, is as others quote it or is from memory; a fact of the trade that nobody publishes says "common
//! practice, no source" ([`tables::Certainty`]). An answer that rests on a measurement
//! carries a range: a count is read to the half stitch, so a width `W` over `N` stitches lies between `W / (1 + 0.5 / N)`
//! and `W / (1 - 0.5 / N)`. The swatch decides.
//!
//! # Rows that are knitted before they are printed
//!
//! [`row`] is the written row: stitches, writer, reader, and a simulated needle. Every instruction of [`spacing`] is
//! written, read back and worked on it, and every schedule of [`shaping`] is executed row by row, and must give the
//! promised count. [`written`] reads the lines of a whole pattern, as the trade writes them, and says for each size whether
//! each comes out. [`bounds`] are limits as data.
//!
//! ```
//! use loopwright::spacing::{Ask, Question, answer};
//!
//! // I have 132 stitches and want to lose 12 evenly in this round.
//! let answer = answer(&Question { ask: Ask::Lose(12), ..Question::about(132) }).unwrap();
//! assert_eq!(answer.ways[0].row.to_string(), "K4, k2tog, (K9, k2tog) 11 times, K5");
//! assert_eq!(answer.after, 120);
//! ```
//!
//! # One size marked through a pattern
//!
//! [`sizes_in_text`] finds every list of a pattern's text that has a number for each size, in whichever style it is
//! printed, marks hers, and points at what it cannot decide.
//!
//! ```
//! use loopwright::sizes_in_text::{Hers, find, plain_text};
//!
//! let text = "Cast on 96 (108, 120) sts. Knit 8 rows (4 ridges).";
//! let found = find(text, &["S", "M", "L"]);
//! assert_eq!(plain_text(text, &found, &Hers::one(1), &[]), "Cast on 108 sts. Knit 8 rows (4 ridges).");
//! ```
//!
//! # Row by row
//!
//! Every answer that has rows makes a [`follow::Plan`] of itself, with the function `plan` of its module: which row is next,
//! what happens in it, how many stitches are on the needle before and after, and how many plain rows there are until
//! something happens again. Where a row is written out, [`follow::repeats`] counts its repeats and [`follow::stretches`] says
//! how far each of its runs lies along it; [`row::Row::left_handed`] is the same row for a left-handed knitter.
//!
//! ```
//! use loopwright::follow::repeats;
//! use loopwright::yoke::{Question, answer, plan};
//!
//! let question = Question { multiple: 8, ..Question::about(96, 320, 60) };
//! let plan = plan(&question, &answer(&question).unwrap());
//! let row = plan.at(10).event.unwrap().written.as_ref().unwrap();
//! assert_eq!((row.uses(), row.gives()), (96, 152));
//! let times: Vec<u32> = repeats(row).iter().map(|group| group.times).collect();
//! assert_eq!(times, [1, 7, 9, 1]);
//! ```

#[macro_use]
pub mod tools;

pub mod bounds;
mod check;
pub mod choice;
mod every;
pub mod fabric;
pub mod follow;
pub mod problem;
pub mod row;
pub mod tables;
pub mod terms;
pub mod units;

/// One module for each tool of the list.
macro_rules! modules {
    ($($tool:ident in $group:ident,)*) => {
        $(pub mod $tool;)*
    };
}
each_tool!(modules);
