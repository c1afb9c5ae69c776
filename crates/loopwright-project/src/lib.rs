//! A knitter's project as data, without a page: what she knows (*facts*), the *steps* of the garment, and the *sheet* that
//! is derived from both.
//!
//! A step is a tool with its fields, and never an answer: whenever it is shown it is answered anew. What stands in a field
//! is what was typed there; where nothing was, it is what is *given*: a fact of the project that the field asks for, or a
//! value that another step hands on ([`Reference`]). So a changed fact moves every step that stands on it, and two sheets
//! of the same project, before and after, say what moved ([`change`]).
//!
//! This crate knows no tool. Whoever does hands over a [`Toolbox`].
//!
//! A project is kept as sheets of texts ([`stored`]), handed on as a file that can be read by eye ([`mod@file`]), and as a link
//! ([`link`]).
//!
//! ```
//! use loopwright_project::{Answered, Outcome, Project, Step, Texts, Toolbox, Typed, derive};
//!
//! /// One tool, which doubles a count. It asks for the fact "cast_on".
//! struct Doubling;
//!
//! impl Toolbox for Doubling {
//!     fn asks(&self, _: &str, _: &Texts) -> Vec<(String, String)> {
//!         vec![("stitches".into(), "cast_on".into())]
//!     }
//!     fn takes(&self, _: &str, _: &str, typed: &Typed) -> bool {
//!         typed.text.parse::<u32>().is_ok()
//!     }
//!     fn answer(&self, _: &str, fields: &Texts) -> Answered {
//!         let count: u32 = fields["stitches"].text.parse().unwrap_or_default();
//!         Ok(Outcome { headline: format!("{} stitches", 2 * count), ..Outcome::default() })
//!     }
//! }
//!
//! let mut project = Project::default();
//! project.facts.insert("cast_on".into(), Typed::plain("60"));
//! let step = project.add(Step::new("doubling", "Body"));
//! let sheet = derive(&project, &Doubling);
//! assert_eq!(sheet.step(step).and_then(|step| step.outcome()).map(|outcome| &*outcome.headline), Some("120 stitches"));
//! ```

pub mod change;
mod derive;
pub mod file;
pub mod knitting;
pub mod link;
mod outcome;
mod own;
mod project;
mod reference;
#[cfg(test)]
mod some;
pub mod stored;
mod text;
mod totals;
mod tracks;

pub use derive::{Derived, Given, GivenText, Sheet, Toolbox, derive, given};
pub use outcome::{Answered, Outcome, Totals, Trouble};
pub use own::{OwnCount, is_name, own_counts};
pub use project::{Draft, Project, Step, StepId};
pub use reference::Reference;
pub use stored::Sheets;
pub use text::{Texts, Typed};
pub use totals::{All, sum};
pub use tracks::{Begins, Bundle, TrackTrouble};
