//! Lines of a pattern worked before they are knitted: "does row 7 come out in every size, and if not, where?"
//!
//! [`read`] makes data of the text, one line at a time, and points at every word it does not know; [`work`] works the lines
//! one after the other on a simulated needle, for one size, and says of each how many stitches there are before it, how
//! many it uses and how many there are after; [`nearest`] says what would come out where a line does not. The sums are
//! additions. What is counted follows from how a stitch is made, and the names are those that the trade writes
//! ([`TECHNIQUES`], each with how sure it is).
//!
//! ```
//! use loopwright::written::{Outcome, Start, read, work};
//!
//! let text = "CO 23 sts.\n\
//!             Row 1 (RS): K2, *k2tog, yo; rep from * to last 3 sts, k3.\n\
//!             Row 2: Purl.";
//! let (pattern, faults) = read(text, 1, &[]);
//! assert!(faults.is_empty());
//! let worked = work(&pattern, &Start::with(0), 0);
//! assert!(worked.iter().all(|line| line.outcome == Outcome::ComesOut));
//!
//! // A line alone, on 22 stitches: one repeat more would leave two for the last three.
//! let (pattern, _) = read("K2, *k2tog, yo; rep from * to last 3 sts, k3", 1, &[]);
//! let worked = work(&pattern, &Start::with(22), 0);
//! assert_eq!(worked[0].outcome, Outcome::ToLast { wanted: 3, leaves: 2, before: 4, repeats: 8 });
//! ```
//!
//! [`answer`] does all of that for every size at once: the sizes are those that the text names, lines that are no rows are
//! left where they stand, and each line that does not come out is opened with the nearest that would.
//!
//! ```
//! use loopwright::written::{Question, answer};
//!
//! let text = "Sizes: S (M)\nCO 20 (22) sts.\nRow 1: (K2, p2) to end.";
//! let answer = answer(&Question::about(text)).unwrap();
//! assert_eq!((answer.worked, answer.failing), (2, 1));
//! assert_eq!(answer.sizes[answer.failures[0].size], "M");
//! ```
//!
//! # The grammar
//!
//! Large and small letters are the same. Words in quotation marks stand for all their forms: "st" for `sts`, `stitches`.
//!
//! ```text
//! pattern    = { line end-of-line }                a line that ends in a comma or in an open bracket goes on
//! line       = [ label ] items
//! label      = rows [ [ "(" ] "and" ("all" | "every") every [ ")" ] ] [ side ] (":" | "." | "-")   Row 1 (RS):
//!            | [ "all" ] every [ side ] ":"                                          Even rows:  All WS rows:
//!            | words ":"                                                             Next 4 rows:  Dec rnd:  Yoke:
//! rows       = ("row" | "rnd") range { ("," | "and") range }  |  ordinal { "," ordinal } ("row" | "rnd")
//! range      = number [ "-" number ]
//! every      = ("even" | "odd" | "RS" | "WS") "rows"  |  "alt rows"                  of the same kind as the first
//!
//! items      = { item | advice | "," | ";" | "." | "-" | "and" | "then" }
//! advice     = "being careful not to twist" [ "st" ] | "loosely" | "slipping markers" | ...    how, not how many: passed
//!            | ("using" | "with") words ("method" | "needles" | "yarn" | "MC" | "CC")
//! item       = stitches | bracket | starred | again | bind-off | cast-on | hold | marker | said
//!            | "join" [ ("to" | "for") "work" ] [ "in the rnd" ] | "turn" | "w&t" | "wrap next st and turn"
//!            | "return held sts to needle"
//! stitches   = plain [ fabric ] [ amount [ "st" ] [ fabric ] | reach | rows | length ] { manner } [ times ]
//!            | change { manner } [ times | reach | "in each st" ]                    k2tog 3 times
//!            | amount "/" amount [ "/" amount ] ("RC" | "LC" | "RPC" | "LPC")        2/2 RC
//!            | ("k" | "p") amount "tog"                                              k2tog in three words
//!            | "k the knit sts and p the purl sts"
//! plain      = "k" | "p" | "sl" | "patt" | "work" | "rib" | "ktbl" | "ptbl" | her own that uses and gives one
//! change     = any other technique | "k4tog" | "C4F" | her own
//! manner     = "tbl" | "wyif" | "wyib" | "pwise" | "kwise"
//! fabric     = "in" ("patt" | "rib" | [ "rev" ] "St st" | "garter st" | ...) [ "as set" ] | "as set" | "even"
//! rows       = [ "for" ] amount ("rows" | "rnds") [ "even" ] [ fabric ]               knit 4 rows
//! length     = [ "every row" ] ("for" | "until" words "measures") amount unit [ "more" ]
//!              [ "from" words ] [ fabric ] [ side-end ]
//! side-end   = [ "," ] "ending" ("with" | "on" | "after") [ side ] "row" [ number ]
//!
//! bracket    = "(" items ")" ( times | reach | "in next st" ) [ "," "but" stitches [ "the" ] ordinals "time" ]
//! starred    = "*" items ( "rep from *" [ "to *" ] often | "*" [ "rep" ... ] often )     as many asterisks as you like
//! often      = times | reach | nothing, at the end of the line
//! times      = ("once" | "twice" | amount "times" | "x" amount) [ "more" ] [ "in all" ]  |  amount "more times"
//! reach      = "to end" [ "of row" ] | "across" | "around" | "back" | "all sts" | "rem sts"
//!            | "to last" [ amount ] "st" | "until" amount "sts rem"
//!            | "to" [ amount "sts before" ] [ "next" ] "m"                           "all" alone is "all sts"
//! again      = "rep" (rows | "last" [ number ] "rows") [ times | length | until [ side-end ] ]
//!            | [ "work" ] ("as" | "same as") [ "for" ] rows                           Row 4: As row 2.
//! until      = "until" ( amount "sts rem" | ("there are" | "you have") amount "sts" | amount "sts on the needle" )
//!
//! bind-off   = ("BO" | "bind off" | "cast off") (amount | "all" | "rem") [ "st" ] [ "in patt" ] [ at-rows ]
//!            | ("BO" | "bind off" | "cast off") [ "in patt" ] { manner } { advice }     alone in what is left of a line: all
//! cast-on    = ("CO" | "cast on") amount [ "st" ] [ at-rows ]
//! at-rows    = "at beg of next" amount "rows"
//! hold       = ("place" | "sl") [ "next" ] (amount | "rem") "sts" ("on" | "to") ("holder" | "waste yarn")
//! marker     = "pm" | "sm" | "rm" | "place marker" | "slip marker" | "remove marker"
//! said       = amount "sts" [ "rem" | "now" | "inc'd" | "dec'd" ]                    also in a bracket
//! amount     = number | one for each size: 6 (7, 8)  6[7:8]  6 (7) [8]  6/7/8  - (4, 6)
//! ```
//!
//! A bracket of numbers behind a number holds the other sizes if there are as many; any other bracket is repeated, and
//! says how often. [`Pattern::brackets`] tells what each was taken for. A plain stitch alone in its line, without a number,
//! goes to the end (`Row 2: Purl.`).
//!
//! # Rows as before
//!
//! A line that names its rows and is nothing but rows of before is worked row by row: `Rows 5-8: Rep rows 1-4`, `Row 4: As
//! row 2`, `Next 4 rows: Rep last 2 rows`. How often follows from the rows it names; where it says so too, both have to
//! agree ([`Outcome::OtherRows`]). Where no row is named, how often has to be said.
//!
//! How many rows make a length is not known here. Rows that leave the count as it is do so however many they are, and an
//! even number of them is worked, after which the work is on the side on which it was; those that change the count are not
//! told ([`Outcome::ByLength`]).
//!
//! # What may be meant in two ways
//!
//! `Rep from * 3 times` is four in all to most, and three to some; after `BO 5` one stitch stands on the right needle, which
//! is the first of the next `k10` to most; stitches cast on at the start of a row are worked in it by some; a row among those
//! of `rep rows 1-4` that says "rep row 1 twice more" by itself is worked with that by most. Each is worked in the usual way
//! first and then in the other; where only one comes out it is taken, and what comes of the other is said
//! ([`Worked::otherwise`]).

mod choices;
mod drawn;
mod fault;
mod key;
mod line;
mod name;
mod near;
mod needle;
mod own;
mod place;
mod print;
mod question;
mod read;
mod sizes;
mod technique;
mod token;
mod vocabulary;
mod work;

pub use crate::tables::Certainty;
pub use choices::Name;
pub use drawn::{Cell, CellKind, Drawn, MOST_DRAWN, drawn};
pub use fault::{Fault, FaultKind};
pub use line::{
    Amount, Bracketed, But, Count, Counted, Doing, Every, Figure, Item, Label, Length, Line, Often, Pattern, Reach,
    Repeat, RowsAgain, RowsOften, Said, Share, Stitches, WhichRows,
};
pub use name::{Crossing, Family, Manner, OwnStitch, StitchName};
pub use near::{Edit, Near, Way, nearest};
pub use own::{OWN, read_own};
pub use place::Place;
pub use question::{Answer, Failure, LineKind, LineWorked, MOST_OPENED, Question, STITCHES, answer};
pub use read::read;
pub use sizes::{SIZES, read_sizes, sizes_of};
pub(crate) use technique::LIST;
pub use technique::{Sort, TECHNIQUES, Technique};
pub use work::{Doubt, MOST_ROWS, MOST_STEPS, Otherwise, Outcome, Start, Worked, work};

#[cfg(test)]
mod tests;
