//! Whether a question can be answered: every quantity against its bounds, and whether the swatch can speak for the
//! fabric that is knitted.

use super::{
    Ask, BALL_LENGTH, BALL_MASS, BALLS, Ball, EXTRA, GAUGE, Name, PINNED, Piece, Question, RESERVE, ROWS, Rest,
    SECTIONS, STATED, STITCHES, SWATCH_MASS, Section, SectionName, Swatch, TOTAL, YARNS,
};
use crate::check::Check;
use crate::fabric::Fabric;
use crate::problem::{Kind, Problem};
use crate::units::Gauge;
use crate::units::rate::{PARTS, Rate};

/// A gauge against [`GAUGE`], in counts over its own span.
pub(super) fn check_gauge(check: &mut Check, field: Name, gauge: Gauge) {
    let over_span = |count| Rate::of(Gauge::of(count, Gauge::TEN_CM)).count_over(gauge.span());
    let (least, most) = (over_span(GAUGE.least), over_span(GAUGE.most));
    let thousandths = i128::from(gauge.thousandths());
    let whole = |count: i128| u32::try_from(count).unwrap_or(u32::MAX);
    if thousandths * least.under < least.over * PARTS {
        let least = whole((least.over + least.under - 1) / least.under);
        check.wrong(field, Kind::TooFew { least });
    } else if thousandths * most.under > most.over * PARTS {
        let most = whole(most.over / most.under);
        check.wrong(field, Kind::TooMany { most });
    }
}

/// A list's length as a count.
pub(super) fn counted(length: usize) -> u32 {
    u32::try_from(length).unwrap_or(u32::MAX)
}

fn check_ball(check: &mut Check, [length, mass]: [Name; 2], ball: Ball) {
    check.length(length, ball.length, BALL_LENGTH);
    if let Some(weight) = ball.mass {
        check.mass(mass, weight, BALL_MASS);
    }
}

pub(super) fn check(question: &Question) -> Result<(), Vec<Problem>> {
    let mut check = Check::default();
    check_ball(&mut check, [Name::BallLength, Name::BallMass], question.ball);
    check.count(Name::Reserve, question.reserve, RESERVE);
    match &question.ask {
        Ask::Piece(piece) => {
            check_piece(&mut check, piece);
            for (section, yarn) in question.yarns.iter().enumerate() {
                check.count(SectionName::Yarn.at(section), *yarn, YARNS);
            }
            if matches!(piece.swatch, Swatch::Weighed { .. }) && question.ball.mass.is_none() {
                check.missing(Name::BallMass);
            }
        }
        Ask::Balls { balls, ball } => {
            check.count(Name::Balls, *balls, BALLS);
            check_ball(&mut check, [Name::PatternLength, Name::PatternMass], *ball);
        }
        Ask::Length(length) => check.length(Name::Length, *length, STATED),
    }
    check.done()
}

fn check_piece(check: &mut Check, piece: &Piece) {
    check.count(Name::Sections, counted(piece.sections.len()), SECTIONS);
    for (index, section) in piece.sections.iter().enumerate() {
        check.problems.extend(section.problems(index));
    }
    check_swatch(check, &piece.swatch);
    if !speaks_for(&piece.swatch, &piece.sections) {
        check.wrong(Name::Swatch, Kind::NeedsSwatch);
    }
    check.length(Name::Seams, piece.extras.seams, EXTRA);
    check.length(Name::Other, piece.extras.other, EXTRA);
    let halves = piece.sections.iter().map(|section| section.sum().halves);
    let halves = halves.fold(0, u64::saturating_add);
    if check.problems.is_empty() && halves > 2 * u64::from(TOTAL.most) {
        check.wrong(Name::Sections, Kind::TooMany { most: TOTAL.most });
    }
}

fn check_swatch(check: &mut Check, swatch: &Swatch) {
    match *swatch {
        Swatch::Gauge {
            fabric,
            stitches,
            rows,
            rest,
        } => {
            let names = Name::gauge_in(fabric);
            check_gauge(check, names[0], stitches);
            check_gauge(check, names[1], rows);
            if let Rest::PinnedOut { percent } = rest {
                check.count(Name::Pinned, percent, PINNED);
            }
        }
        Swatch::Weighed {
            fabric: _,
            stitches,
            rows,
            mass,
        } => {
            check.count(Name::WeighedStitches, stitches, STITCHES);
            check.count(Name::WeighedRows, rows, ROWS);
            check.mass(Name::SwatchMass, mass, SWATCH_MASS);
        }
    }
}

/// Whether a loop length for every section follows from the swatch. From a stockinette gauge it does, and from anything
/// on the scale; from a rib, cable or colour-work gauge never; and a garter or lace gauge is too weak to put a second
/// factor on.
fn speaks_for(swatch: &Swatch, sections: &[Section]) -> bool {
    let Swatch::Gauge { fabric, .. } = swatch else {
        return true;
    };
    let is_plain = |section: &Section| match section.fabric {
        Fabric::Stockinette | Fabric::Garter | Fabric::Lace => true,
        Fabric::Rib | Fabric::Cable | Fabric::Stranded => false,
    };
    match fabric {
        Fabric::Stockinette => true,
        Fabric::Garter | Fabric::Lace => sections.iter().all(is_plain),
        Fabric::Rib | Fabric::Cable | Fabric::Stranded => false,
    }
}
