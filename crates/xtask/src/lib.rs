//! The house's chores, as a library: how the page is built, finished, served and checked.
//!
//! One way through: [`build`] compiles and binds the app, [`page`] reads from `web/index.html` what else belongs to
//! the page, [`finish`] gives the files names by their bytes ([`names`]) and makes the page fit for offline use and strict
//! about where scripts come from, [`packed`] puts packed files beside them, [`single`] folds the page into one file, and
//! [`site`] answers for it over HTTP. A built page is [`files::Files`], a map from path to bytes,
//! until it is written: every step but the first and the last is a function from such a map to another.
//!
//! What is *not* here: the trade's arithmetic, and anything the browser runs. `web/boot.js` and `web/sw.js` are
//! written by hand; the only thing put into them is the list of files.

pub mod browsers;
pub mod build;
pub mod ci;
pub mod compile;
pub mod csp;
pub mod deny;
pub mod elsewhere;
pub mod engines;
pub mod files;
pub mod finish;
pub mod fuzz;
pub mod glue;
pub mod heights;
pub mod house;
pub mod http;
pub mod minify;
pub mod names;
pub mod npm;
pub mod npm_package;
pub mod packages;
pub mod packed;
pub mod page;
pub mod pages;
pub mod preload;
pub mod run;
pub mod serve;
pub mod shots;
pub mod single;
pub mod site;
pub mod sizes;
pub mod squeeze;
pub mod tidy;
pub mod tools;
pub mod tour;
pub mod weight;
pub mod yardstick;
