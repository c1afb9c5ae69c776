//! What each tool leads with, notes and shows as its working, in the order of the list: a sentence is made in the words, and
//! only put into its place here.

use super::{InWords, Measures, Spoken, advice, lead};
use crate::words::{self, tail::Print, tell::Long, yarn::Printer};
use loopwright::spacing::Knitting;
use loopwright::stairs::raise;
use loopwright::units::print::Step;
use loopwright::units::{Length, LengthUnit, Mass, MassUnit};
use loopwright::{
    cast_on, cords, flare, gauge, needles, raglan, regauge, rows, shaping, sizes_in_text, sizing, spacing, stairs,
    swatch, tail, written, yarn, yoke,
};

/// A question that a program hands over has values, and no text in which something could be pointed at.
const NO_TEXT: &str = "";

impl Spoken for swatch::Question {
    fn in_words(&self, _: Measures) -> InWords {
        let long = |length| words::units::length_beside(self.gauge, length);
        match swatch::answer(self) {
            Ok(answer) => lead(
                words::swatch::BEFORE,
                words::swatch::headline(&answer),
                words::swatch::outcome(&answer),
            )
            .noting(answer.notes.iter().map(words::swatch::note).collect())
            .working(words::swatch::steps(self, &answer, &long), words::swatch::SOURCE),
            Err(problems) => advice(&problems, |problem| words::problem::sentence(&problem.kind)),
        }
    }
}

impl Spoken for gauge::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let lengths = measures.lengths();
        let answer = match gauge::answer(self) {
            Ok(answer) => answer,
            Err(problems) => return advice(&problems, |problem| words::gauge::problem(problem, NO_TEXT)),
        };
        let (title, line) = words::gauge::headline(&answer);
        let steps = answer.directions();
        let steps = steps.flat_map(|(direction, found)| words::gauge::steps(direction, self, found, lengths));
        lead(title, line, words::gauge::outcome(self, &answer, lengths))
            .noting(
                answer
                    .notes
                    .iter()
                    .map(|note| words::gauge::note(*note).into())
                    .collect(),
            )
            .working(steps.collect(), words::gauge::SOURCE)
    }
}

impl Spoken for sizing::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let sentences = words::sizing::Sentences {
            question: self,
            lengths: measures.lengths(),
        };
        let answer = match sizing::answer(self) {
            Ok(answer) => answer,
            Err(problems) => {
                return advice(&problems, |problem| {
                    words::sizing::problem(problem, "", measures.lengths())
                });
            }
        };
        // A question that is answered has at least one size.
        let Some(best) = answer.ranked.first() else {
            return advice(&[], |problem| words::problem::sentence(&problem.kind));
        };
        let words::sizing::Headline { title, line, outcome } = sentences.headline(&answer, best);
        lead(title, line, outcome)
            .noting(answer.notes.iter().map(|note| sentences.note(note)).collect())
            .working(
                answer.steps.iter().map(|step| sentences.step(step)).collect(),
                words::sizing::SOURCE,
            )
    }
}

impl Spoken for regauge::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let answer = match regauge::answer(self) {
            Ok(answer) => answer,
            Err(problems) => return advice(&problems, |problem| words::regauge::problem(problem, "")),
        };
        let sentences = words::regauge::Sentences {
            question: self,
            answer: &answer,
            lengths: measures.lengths(),
        };
        let words::regauge::Lead { title, line, outcome } = sentences.lead();
        lead(title, line, outcome)
            .noting(answer.notes.iter().copied().map(words::regauge::note).collect())
            .working(sentences.steps(), words::regauge::SOURCE)
    }
}

impl Spoken for needles::Question {
    fn in_words(&self, _: Measures) -> InWords {
        match needles::answer(self) {
            Ok(answer) => lead(
                words::needles::ANSWER,
                words::needles::headline(&answer),
                words::needles::outcome(&answer),
            )
            .noting(vec![words::needles::NEAREST.into()])
            .working(vec![words::needles::STEP.into()], words::needles::SOURCE),
            Err(problems) => advice(&problems, words::needles::problem),
        }
    }
}

impl Spoken for cords::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let long: Long = &|length| measures.tape(length);
        let cord: Long = &|length| words::cords::cord(length, measures == Measures::Inches, long);
        match cords::answer(self) {
            Ok(answer) => lead(
                words::cords::ANSWER,
                words::cords::headline(&answer, cord),
                words::cords::outcome(self, &answer, long),
            )
            .noting(words::cords::notes(self, &answer, long, cord))
            .working(words::cords::steps(self, &answer, long, cord), words::cords::SOURCE),
            Err(problems) => advice(&problems, |problem| words::cords::problem(problem, NO_TEXT)),
        }
    }
}

impl Spoken for yarn::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let (unit, grams) = match measures {
            Measures::Centimetres => (LengthUnit::M, (MassUnit::Gram, Step::Tenth)),
            Measures::Inches => (LengthUnit::Yard, (MassUnit::Ounce, Step::Hundredth)),
        };
        let print = &Printer {
            yarn: &|length: Length, step| words::units::quantity(length, unit, step),
            mass: &|mass: Mass| words::units::quantity(mass, grams.0, grams.1),
            unit,
        };
        match yarn::answer(self) {
            Ok(answer) => lead(
                words::yarn::title(self),
                words::yarn::buy(&answer),
                words::yarn::used(self, &answer, print),
            )
            .noting(
                answer
                    .notes
                    .iter()
                    .map(|note| words::yarn::note(*note, self, print))
                    .collect(),
            )
            .working(words::yarn::steps(self, &answer, print), words::yarn::source(self)),
            Err(problems) => advice(&problems, words::yarn::problem),
        }
    }
}

impl Spoken for cast_on::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let lengths = measures.lengths();
        match cast_on::answer(self) {
            Ok(answer) => lead(
                words::cast_on::title(self.knitting),
                words::cast_on::headline(&answer),
                words::cast_on::outcome(self, &answer, lengths),
            )
            .noting(answer.notes.iter().map(words::cast_on::note).collect())
            .working(words::cast_on::steps(self, &answer, lengths), words::cast_on::SOURCE),
            Err(problems) => advice(&problems, |problem| words::problem::sentence(&problem.kind)),
        }
    }
}

impl Spoken for tail::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let print = Print {
            yards: measures == Measures::Inches,
        };
        match tail::answer(self) {
            Ok(answer) => lead(
                words::tail::title(answer.strand),
                words::tail::headline(&answer, print),
                words::tail::outcome(&answer),
            )
            .noting(words::tail::notes(&answer))
            .working(words::tail::sum(&answer, self.end, print), words::tail::SOURCE),
            Err(problems) => advice(&problems, words::tail::problem),
        }
    }
}

impl Spoken for spacing::Question {
    fn in_words(&self, _: Measures) -> InWords {
        let answer = match spacing::answer(self) {
            Ok(answer) => answer,
            Err(problems) => return advice(&problems, |problem| words::spacing::problem(Some(self), problem)),
        };
        let round = matches!(self.knitting, Knitting::Round { .. });
        let way = answer.ways.get(answer.suggested);
        let line = way.map(|way| words::row::line(&way.row)).unwrap_or_default();
        lead(words::spacing::once(round), line, words::spacing::outcome(&answer))
            .noting(answer.notes.iter().map(words::spacing::note).collect())
            .working(
                answer.steps.iter().map(words::spacing::step).collect(),
                words::spacing::SOURCE,
            )
    }
}

impl Spoken for rows::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let lengths = measures.lengths();
        match rows::answer(self) {
            Ok(answer) => lead(
                words::rows::title(self),
                words::rows::headline(self, &answer, lengths),
                words::rows::outcome(self, &answer, lengths),
            )
            .noting(answer.notes.iter().copied().map(words::rows::note).collect())
            .working(words::rows::steps(self, &answer, lengths), words::rows::SOURCE),
            Err(problems) => advice(&problems, words::rows::problem),
        }
    }
}

impl Spoken for shaping::Question {
    fn in_words(&self, _: Measures) -> InWords {
        match shaping::answer(self) {
            Ok(answer) => lead(
                words::shaping::from_next(self.knitting),
                words::shaping::headline(self, &answer),
                words::shaping::outcome(self, &answer),
            )
            .noting(words::shaping::notes(self, &answer))
            .working(words::shaping::steps(self, &answer), words::shaping::SOURCE),
            Err(problems) => advice(&problems, |problem| words::shaping::problem(self, problem)),
        }
    }
}

impl Spoken for stairs::Question {
    fn in_words(&self, _: Measures) -> InWords {
        match stairs::answer(self) {
            Ok(answer) => lead(
                words::schedule::FROM_NEXT_ROW,
                words::stairs::headline(self, &answer),
                words::stairs::outcome(self, &answer),
            )
            .noting(words::stairs::notes(self, &answer))
            .working(words::stairs::steps(self, &answer), words::stairs::SOURCE),
            Err(problems) => advice(&problems, |problem| words::problem::sentence(&problem.kind)),
        }
    }
}

impl Spoken for raise::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let long: Long = &|length| measures.tape(length);
        match raise::answer(self) {
            Ok(answer) => lead(
                words::stairs::raise::WHEN,
                words::stairs::raise::headline(&answer),
                words::stairs::raise::outcome(&answer, long),
            )
            .noting(words::stairs::raise::notes(self, &answer, long))
            .working(
                words::stairs::raise::steps(self, &answer, long),
                words::stairs::raise::SOURCE,
            ),
            Err(problems) => advice(&problems, |problem| words::problem::sentence(&problem.kind)),
        }
    }
}

impl Spoken for flare::Question {
    fn in_words(&self, measures: Measures) -> InWords {
        let long: Long = &|length| measures.tape(length);
        match flare::answer(self) {
            Ok(answer) => lead(
                words::flare::ANSWER,
                words::flare::headline(self, &answer),
                words::flare::outcome(&answer, long),
            )
            .noting(vec![words::flare::hang(&answer, long)])
            .working(words::flare::steps(self, &answer, long), words::flare::SOURCE),
            Err(problems) => advice(&problems, words::flare::problem),
        }
    }
}

impl Spoken for yoke::Question {
    fn in_words(&self, _: Measures) -> InWords {
        match yoke::answer(self) {
            Ok(answer) => lead(
                words::yoke::ANSWER,
                words::yoke::headline(&answer),
                words::yoke::outcome(self),
            )
            .noting(vec![words::yoke::division(self, &answer)])
            .working(words::yoke::steps(self, &answer), words::yoke::SOURCE),
            Err(problems) => advice(&problems, |problem| words::yoke::problem(Some(self), problem)),
        }
    }
}

impl Spoken for raglan::Question {
    fn in_words(&self, _: Measures) -> InWords {
        match raglan::answer(self) {
            Ok(answer) => lead(
                words::raglan::title(&answer),
                words::raglan::headline(&answer).join(" "),
                words::raglan::outcome(self, &answer),
            )
            .noting(vec![words::raglan::underarm(self, &answer)])
            .working(words::raglan::steps(self, &answer), words::raglan::SOURCE),
            Err(problems) => advice(&problems, |problem| words::problem::sentence(&problem.kind)),
        }
    }
}

impl Spoken for sizes_in_text::Question {
    fn in_words(&self, _: Measures) -> InWords {
        match sizes_in_text::answer(self) {
            Ok(answer) => lead(
                words::sizes_in_text::FOUND,
                words::sizes_in_text::headline(&answer),
                words::sizes_in_text::outcome(&answer),
            )
            .working(words::sizes_in_text::steps(&answer), words::sizes_in_text::SOURCE),
            Err(problems) => advice(&problems, words::sizes_in_text::problem),
        }
    }
}

impl Spoken for written::Question {
    fn in_words(&self, _: Measures) -> InWords {
        match written::answer(self) {
            Ok(answer) => {
                let mut notes = words::written::bracket_notes(&answer, &self.text);
                notes.push(words::written::CANNOT_JUDGE.into());
                let failures = answer.failures.iter();
                let failed = failures.map(|failure| words::written::failed(&answer, failure, &self.text));
                lead(
                    words::written::LINE_BY_LINE,
                    words::written::headline(&answer, &self.text),
                    words::written::outcome(&answer),
                )
                .noting(notes)
                .working(failed.collect(), words::written::SOURCE)
            }
            Err(problems) => advice(&problems, words::written::problem),
        }
    }
}
