//! Checks from outside, one file a source: published values, our own sums done a second time by another program, and
//! the ways in which things are printed. `README.md` says how sure each value is, what was left out, and where this
//! crate differs on purpose; `marks.rs` holds it to the checks and to the tables.

mod abbreviations;
mod brute_force_schedules;
mod craft_yarn_council_sizes;
mod en13402;
mod marks;
mod munden;
mod needle_sizes;
mod nist;
mod printed_lists;
mod printed_measures;
mod python_cast_on_tail;
mod python_flare;
mod python_gauge_rows;
mod python_regauge_needles;
mod python_sizing;
mod python_yarn;
mod quetelet;
mod toussaint;
mod yarn_council;
