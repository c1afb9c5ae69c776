//! From what was typed to the question.

use crate::form::{Fields, Reader};
use loopwright::problem::Problem;
use loopwright::sizing::read_counts;
use loopwright::written::{Name, Question, STITCHES, read_own, read_sizes, sizes_of};

/// What the sizes are called as the fields stand; none for one size.
pub fn sizes(fields: &Fields) -> Vec<String> {
    let typed = fields.text(Name::Sizes.into());
    match read_sizes(&typed) {
        Ok(sizes) if sizes.is_empty() => sizes_of(&fields.text(Name::PatternText.into())),
        Ok(sizes) => sizes,
        Err(_) => Vec::new(),
    }
}

/// The question, if all of it can be read.
pub fn question(fields: &Fields) -> Result<Question, Vec<Problem>> {
    let mut reader = Reader::new(fields);
    let typed = reader.text(Name::Sizes);
    let own = reader.text(Name::OwnStitches);
    let question = Question {
        text: reader.text(Name::PatternText),
        sizes: reader.value(Name::Sizes, read_sizes(&typed), Vec::new()),
        stitches: stitches(&mut reader, sizes(fields).len() > 1),
        working: reader.choice(Name::Working),
        own: reader.value(Name::OwnStitches, read_own(&own), Vec::new()),
    };
    reader.done(question)
}

/// One count, or a list for the sizes; none where nothing is typed.
fn stitches(reader: &mut Reader, are_several: bool) -> Vec<u32> {
    if !are_several {
        return reader.count_if_any(Name::Stitches).into_iter().collect();
    }
    let typed = reader.text(Name::Stitches);
    if typed.trim().is_empty() {
        return Vec::new();
    }
    let counts = reader.listed(Name::Stitches, read_counts(&typed, STITCHES), Vec::new());
    // A dash stands for a size that has no stitches yet.
    counts.into_iter().map(Option::unwrap_or_default).collect()
}
