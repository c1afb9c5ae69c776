//! Checks against published sources, one file a source. `README.md` says for each what was seen, what is from memory,
//! what was left out, and where this crate differs on purpose.

mod brute_force_schedules;
mod craft_yarn_council_sizes;
mod en13402;
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
