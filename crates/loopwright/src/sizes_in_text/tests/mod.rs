//! The table of lines, a pattern of five sizes with faults sown into it, what holds for every text, and the time it takes.

mod by_part;
mod lines;
mod names;
mod pattern;
mod printer;
mod properties;
mod speed;
mod template;
