//! The fields of the tail, and the question they make.

use crate::fields;
use crate::form::kept::Kept;
use crate::form::{Field, Fields, NEEDLE, Reader, Start, TAPE, YARN};
use crate::words::page::{MORE, PRACTICE};
use crate::words::tail as words;
use loopwright::bounds::Bounds;
use loopwright::problem::Problem;
use loopwright::tail::{
    EDGE, END, LEFT, Left, Method, NEEDLE as NEEDLES, Name, Piece, Question, STITCHES, Strand, Thickness, USED,
    USUAL_END, WRAPS, YarnClass,
};

fields! { FIELDS of Name, words::label;
    Stitches => Field::count(STITCHES).in_sentence().kept(Kept::CastOn),
    Method => Field::choice::<Method>().in_sentence(),
    Yarn => Field::choice::<YarnClass>().in_sentence().only_if(draws_from_tail).kept(Kept::YarnClass),
    Needle => Field::length(&NEEDLE, NEEDLES).folded(MORE).only_if(draws_from_tail).kept(Kept::Needle),
    Second => Field::length(&NEEDLE, NEEDLES).folded(MORE).only_if(draws_from_tail),
    Wraps => Field::count(WRAPS).folded(MORE).only_if(draws_from_tail),
    Width => Field::length(&TAPE, EDGE).folded(MORE).only_if(draws_from_tail),
    Gauge => Field::gauge().folded(MORE).only_if(draws_from_tail).kept(Kept::GaugeStitches),
    MeasuredStitches => Field::count(STITCHES).folded(MORE).only_if(draws_from_tail),
    MeasuredUsed => Field::length(&TAPE, USED).folded(MORE).only_if(draws_from_tail),
    End => Field::length(&TAPE, END).starts(Start::Length(USUAL_END)).folded(MORE).remarked(PRACTICE),
    LeftTail => Field::length(&YARN, LEFT).folded(words::MIDWAY),
    LeftToGo => Field::count(Bounds::new(0, STITCHES.most)).folded(words::MIDWAY),
}

/// Whether the stitches of the method that is chosen are drawn from the tail.
pub(super) fn draws_from_tail(fields: &Fields) -> bool {
    match fields.choice::<Method>(Name::Method).strand() {
        Strand::Thumb { .. } => true,
        Strand::EndOnly | Strand::HalfInWaste | Strand::Second => false,
    }
}

/// From the fields as typed to the question.
pub(super) fn question(fields: &Fields) -> Result<Question, Vec<Problem>> {
    let mut reader = Reader::new(fields);
    let left = reader.both(Name::LeftToGo, Name::LeftTail);
    let mut question = Question {
        method: reader.choice(Name::Method),
        end: reader.length(Name::End),
        left: left.map(|(to_go, tail)| Left { tail, to_go }),
        ..Question::about(reader.count(Name::Stitches))
    };
    if draws_from_tail(fields) {
        question.yarn = yarn(&mut reader);
        question.needle = reader.length_if_any(Name::Needle);
        question.second = reader.length_if_any(Name::Second);
        question.width = reader.length_if_any(Name::Width);
        question.gauge = reader.gauge_if_any(Name::Gauge);
        let measured = reader.both(Name::MeasuredStitches, Name::MeasuredUsed);
        question.measured = measured.map(|(stitches, used)| Piece { stitches, used });
    }
    reader.done(question)
}

/// How thick the yarn is: by its wraps where they are typed, else by its class.
fn yarn(reader: &mut Reader) -> Option<Thickness> {
    if let Some(wraps) = reader.count_if_any(Name::Wraps) {
        return Some(Thickness::Wraps(wraps));
    }
    reader.choice::<YarnClass>(Name::Yarn).weight().map(Thickness::Class)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tool::State;
    use crate::tool::tail::Tail;
    use crate::tool::tests::fields_of;

    #[test]
    fn a_link_with_the_keys_of_before_asks_the_same() {
        let read = |link| question(&fields_of::<Tail>(&State::new("linked", link)));
        for (before, now) in [
            ("method=two strands", "method=two-strands"),
            ("method=crochet chain", "method=crochet-chain"),
            ("method=backward loop", "method=backward-loop"),
            ("yarn=super fine", "yarn=super-fine"),
            ("yarn=super bulky", "yarn=super-bulky"),
        ] {
            let [before, now] = [before, now].map(|link| read(format!("stitches=300&{link}").leak()));
            assert!(before.is_ok());
            assert_eq!(before, now);
            assert_ne!(before, read("stitches=300"));
        }
    }
}
