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
    USUAL_END, WRAPS, Wanted, YarnClass,
};

fields! { FIELDS of Name, words::label;
    Wanted => Field::choice::<Wanted>().starts(Start::From(usually_wanted)).in_sentence(),
    Stitches => Field::count(STITCHES).in_sentence().kept(Kept::CastOn),
    Method => Field::choice::<Method>().in_sentence(),
    Yarn => Field::choice::<YarnClass>().in_sentence().only_if(draws_from_tail).kept(Kept::YarnClass),
    Needle => Field::length(&NEEDLE, NEEDLES)
        .folded(MORE)
        .only_if(draws_from_tail)
        .kept_or(Kept::CastOnNeedle, Kept::Needle),
    Second => Field::length(&NEEDLE, NEEDLES).folded(MORE).only_if(draws_from_tail),
    Wraps => Field::count(WRAPS).folded(MORE).only_if(draws_from_tail).kept(Kept::Wraps),
    Width => Field::length(&TAPE, EDGE).folded(MORE).only_if(draws_from_tail),
    Gauge => Field::gauge().folded(MORE).only_if(draws_from_tail).kept(Kept::GaugeStitches),
    MeasuredStitches => Field::count(STITCHES).folded(MORE).only_if(draws_from_tail),
    MeasuredUsed => Field::length(&TAPE, USED).folded(MORE).only_if(draws_from_tail),
    End => Field::length(&TAPE, END).starts(Start::Length(USUAL_END)).folded(MORE).remarked(PRACTICE),
    LeftTail => Field::length(&YARN, LEFT).only_if(asks_what_is_left),
    LeftToGo => Field::count(Bounds::new(0, STITCHES.most)).starts(Start::From(all_stitches)).only_if(asks_what_is_left),
}

/// What is left is asked about where that is chosen; or where it was typed before there was anything to choose.
pub(super) fn asks_what_is_left(fields: &Fields) -> bool {
    match fields.choice(Name::Wanted) {
        Wanted::Tail => false,
        Wanted::Left => true,
    }
}

fn usually_wanted(fields: &Fields) -> String {
    let is_typed = fields.is_typed(Name::LeftTail) || fields.is_typed(Name::LeftToGo);
    let wanted = if is_typed { Wanted::Left } else { Wanted::Tail };
    wanted.key().into()
}

/// Before the first stitch all of them are still to be cast on.
fn all_stitches(fields: &Fields) -> String {
    fields.text(Name::Stitches.into())
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
    let left = asks_what_is_left(fields).then(|| Left {
        tail: reader.length(Name::LeftTail),
        to_go: reader.count(Name::LeftToGo),
    });
    let mut question = Question {
        method: reader.choice(Name::Method),
        end: reader.length(Name::End),
        left,
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
    use loopwright::units::{Length, LengthUnit};

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

    /// What is left was typed into a fold once, when there was nothing to choose: it is still asked about and seen.
    #[test]
    fn what_was_typed_before_there_was_a_choice_is_still_asked_about() {
        let left = |link: &str| {
            let link = ["stitches=120&yarn=medium", link].concat();
            question(&fields_of::<Tail>(&State::new("linked", link.leak()))).map(|question| question.left)
        };
        let tail = Length::of(125, LengthUnit::Cm);
        assert_eq!(
            left("&left_tail=1.25&left_to_go=40"),
            Ok(Some(Left { tail, to_go: 40 }))
        );
        // As long as nothing is typed there all of them are to go.
        assert_eq!(left("&left_tail=1.25"), Ok(Some(Left { tail, to_go: 120 })));
        assert!(left("&left_to_go=40").is_err_and(|problems| problems[0].field == Name::LeftTail.into()));
        assert_eq!(left("&wanted=tail&left_tail=1.25&left_to_go=40"), Ok(None));
        assert_eq!(left(""), Ok(None));
    }
}
