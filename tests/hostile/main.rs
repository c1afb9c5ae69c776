//! Input nobody would type on purpose: it must be refused or be within limits, and never bring the sum down.

mod lists;
#[path = "../fuzz/made_up.rs"]
mod made_up;
#[path = "../fuzz/readers/mod.rs"]
mod readers;
mod seeded;
mod text;
