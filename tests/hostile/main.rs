//! Input nobody would type on purpose: it must be refused or be within limits, and never bring the sum down.

mod account;
mod lists;
mod text;
