//! The fields of yarn needed: from what was typed to the question. A piece has six slots for its sections; one that is
//! taken out keeps what was typed, so that it can be brought back.

use crate::part::{Scale, Sheet, TAPE, WEIGHT, YARN, read_gauge};
use loopwright::bounds::Bounds;
use loopwright::fabric::Fabric;
use loopwright::problem::{Kind, Problem};
use loopwright::units::{Gauge, Measure};
use loopwright::yarn::{
    Ask, BALL_LENGTH, BALL_MASS, BALLS, Ball, BindOff, EXTRA, Extras, MEASURED, PINNED, Piece, Question, RESERVE, ROWS,
    Rest, STATED, STITCHES, SWATCH_MASS, Section, Shape, StitchSum, Swatch, TAPERED, TIMES, TOTAL,
};

/// The fabrics, by the key they are stored under.
const FABRICS: [(&str, Fabric); 6] = [
    ("stockinette", Fabric::Stockinette),
    ("garter", Fabric::Garter),
    ("rib", Fabric::Rib),
    ("cable", Fabric::Cable),
    ("lace", Fabric::Lace),
    ("stranded", Fabric::Stranded),
];

/// The ways a section ends.
const BIND_OFFS: [(&str, Option<BindOff>); 4] = [
    ("plain", Some(BindOff::Plain)),
    ("elastic", Some(BindOff::Elastic)),
    ("icord", Some(BindOff::ICord)),
    ("no", None),
];

/// The names of one section's fields.
pub struct Slot([&'static str; 11]);

macro_rules! slots {
    ($($number:literal)*) => {
        [$(Slot([
            concat!("s", $number, "_on"),
            concat!("s", $number, "_shape"),
            concat!("s", $number, "_stitches"),
            concat!("s", $number, "_to"),
            concat!("s", $number, "_rows"),
            concat!("s", $number, "_width"),
            concat!("s", $number, "_length"),
            concat!("s", $number, "_fabric"),
            concat!("s", $number, "_times"),
            concat!("s", $number, "_cast_on"),
            concat!("s", $number, "_bind_off"),
        ])),*]
    };
}

/// Every slot.
static SLOTS: [Slot; 6] = slots![1 2 3 4 5 6];

impl Slot {
    /// The field of this section that is called so in every section.
    #[inline(never)]
    pub fn field(&self, name: &'static str) -> &'static str {
        let is_it = |field: &&&str| field.as_bytes().get("s1_".len()..) == Some(name.as_bytes());
        self.0.iter().find(is_it).copied().unwrap_or(name)
    }

    /// Whether its section is there: the first from the start.
    fn is_on(&self, sheet: &Sheet) -> bool {
        let field = self.field("on");
        is(sheet, field, "yes") || (is(sheet, field, "") && std::ptr::eq(self, &SLOTS[0]))
    }
}

/// Whether this is chosen.
#[inline(never)]
pub fn is(sheet: &Sheet, field: &str, key: &str) -> bool {
    sheet.text(field, "") == key
}

/// The sections that are there; the first if none is.
pub fn on(sheet: &Sheet) -> Vec<&'static Slot> {
    let mut on = Vec::new();
    for slot in &SLOTS {
        if slot.is_on(sheet) {
            on.push(slot);
        }
    }
    if on.is_empty() {
        on.push(&SLOTS[0]);
    }
    on
}

/// A slot that is not shown: a fresh one, or one that was taken out with something in it.
pub fn off(sheet: &Sheet, used: bool) -> Option<&'static Slot> {
    let is_used = |slot: &Slot| !(is(sheet, slot.field("stitches"), "") && is(sheet, slot.field("width"), ""));
    SLOTS.iter().find(|slot| !slot.is_on(sheet) && is_used(slot) == used)
}

/// A choice of fabric.
#[inline(never)]
pub fn fabric(sheet: &Sheet, field: &str) -> Fabric {
    sheet.one_of(field, &FABRICS)
}

/// The fields of the swatch's gauge. Stockinette has its own, so that no other fabric's figures are taken for it.
pub fn gauge_fields(fabric: Fabric) -> [&'static str; 2] {
    match fabric {
        Fabric::Stockinette => ["swatch_stitches", "swatch_rows"],
        _ => ["own_stitches", "own_rows"],
    }
}

/// From the fields as typed to the question. In the place of what cannot be read stands something that can, and what is
/// wrong is among the problems.
pub fn question(sheet: &Sheet, problems: &mut Vec<Problem>) -> Question {
    let mut reader = Reader { sheet, problems };
    // A pattern's figure has its reserve in it.
    let mut reserve = "0";
    let ask = if is(sheet, "from", "balls") {
        Ask::Balls {
            balls: reader.count("balls", BALLS, ""),
            ball: reader.ball("pattern_length", "pattern_mass"),
        }
    } else if is(sheet, "from", "length") {
        Ask::Length(reader.measure(&YARN, "length", STATED, ""))
    } else {
        reserve = "10";
        Ask::Piece(reader.piece())
    };
    Question {
        ask,
        ball: reader.ball("ball_length", "ball_mass"),
        reserve: reader.count("reserve", RESERVE, reserve),
    }
}

/// Reads fields and gathers what is wrong with them.
struct Reader<'a> {
    sheet: &'a Sheet,
    problems: &'a mut Vec<Problem>,
}

impl Reader<'_> {
    fn found(&mut self, field: &'static str, kind: Kind) {
        self.problems.push(Problem::new(field, kind));
    }

    #[inline(never)]
    fn count(&mut self, field: &'static str, bounds: Bounds<u32>, start: &str) -> u32 {
        self.sheet.count(field, bounds, start).unwrap_or_else(|kind| {
            self.found(field, kind);
            bounds.least
        })
    }

    #[inline(never)]
    fn measure<T: Measure>(&mut self, scale: &Scale<T>, field: &'static str, bounds: Bounds<T>, start: &str) -> T {
        let read = scale.read(self.sheet, field, bounds, start);
        read.unwrap_or_else(|kind| {
            self.found(field, kind);
            bounds.least
        })
    }

    /// A gauge; what is wrong with it stands under the name it has in the question.
    fn gauge(&mut self, field: &str, name: &'static str) -> Gauge {
        read_gauge(self.sheet, field).unwrap_or_else(|kind| {
            self.found(name, kind);
            Gauge::of(1, Gauge::TEN_CM)
        })
    }

    fn ball(&mut self, length: &'static str, mass: &'static str) -> Ball {
        Ball {
            length: self.measure(&YARN, length, BALL_LENGTH, "125"),
            mass: self.measure(&WEIGHT, mass, BALL_MASS, "50"),
        }
    }

    fn piece(&mut self) -> Piece {
        let mut sections = Vec::new();
        for slot in on(self.sheet) {
            let section = self.section(slot, sections.is_empty());
            sections.push(section);
        }
        let swatch = self.swatch();
        let sheet = self.sheet;
        let extras = Extras {
            swatch: !is(sheet, "count_swatch", "no"),
            joins: !is(sheet, "count_joins", "no"),
            seams: self.measure(&TAPE, "seams", EXTRA, "0"),
            other: self.measure(&YARN, "other", EXTRA, "0"),
        };
        Piece {
            sections,
            swatch,
            extras,
        }
    }

    fn swatch(&mut self) -> Swatch {
        let sheet = self.sheet;
        let fabric = fabric(sheet, "swatch_fabric");
        if is(sheet, "by", "weighed") {
            return Swatch::Weighed {
                fabric,
                stitches: self.count("w_stitches", STITCHES, ""),
                rows: self.count("w_rows", ROWS, ""),
                mass: self.measure(&WEIGHT, "swatch_mass", SWATCH_MASS, ""),
            };
        }
        let mut rest = Rest::Washed;
        if is(sheet, "rest", "unwashed") {
            rest = Rest::Unwashed;
        } else if is(sheet, "rest", "pinned") {
            let percent = self.count("pinned", PINNED, "25");
            rest = Rest::PinnedOut { percent };
        }
        let [stitches, rows] = gauge_fields(fabric);
        Swatch::Gauge {
            fabric,
            stitches: self.gauge(stitches, "swatch_stitches"),
            rows: self.gauge(rows, "swatch_rows"),
            rest,
        }
    }

    /// A section; one that is not the first goes on from the one before until something else is chosen.
    fn section(&mut self, slot: &Slot, is_first: bool) -> Section {
        let (sheet, before) = (self.sheet, self.problems.len());
        let cast_on = sheet.text(slot.field("cast_on"), if is_first { "yes" } else { "no" });
        let section = Section {
            shape: self.shape(slot),
            fabric: fabric(sheet, slot.field("fabric")),
            times: self.count(slot.field("times"), TIMES, "1"),
            cast_on: cast_on != "no",
            bind_off: sheet.one_of(slot.field("bind_off"), &BIND_OFFS),
        };
        // What could not be read is said already.
        if self.problems.len() == before {
            for problem in section.problems() {
                self.found(slot.field(problem.field.key()), problem.kind);
            }
        }
        section
    }

    /// A piece by the tape: its gauge is that of a swatch in its own fabric, and of no other.
    fn measured(&mut self, slot: &Slot) -> Shape {
        let sheet = self.sheet;
        let own = fabric(sheet, slot.field("fabric"));
        if is(sheet, "by", "weighed") || fabric(sheet, "swatch_fabric") != own {
            self.found("measured", Kind::Missing);
        }
        // What cannot be read is said at the swatch.
        let gauge = |field| read_gauge(sheet, field).unwrap_or(Gauge::of(20, Gauge::TEN_CM));
        let [stitches, rows] = gauge_fields(own).map(gauge);
        Shape::Measured {
            width: self.measure(&TAPE, slot.field("width"), MEASURED, ""),
            length: self.measure(&TAPE, slot.field("length"), MEASURED, ""),
            stitches,
            rows,
        }
    }

    fn shape(&mut self, slot: &Slot) -> Shape {
        let shape = slot.field("shape");
        if is(self.sheet, shape, "measured") {
            return self.measured(slot);
        }
        let is_tapered = is(self.sheet, shape, "taper");
        if is(self.sheet, shape, "sum") {
            let stitches = self.count(slot.field("stitches"), TOTAL, "");
            return Shape::Stitches(StitchSum::of(u64::from(stitches)));
        }
        let bounds = if is_tapered { TAPERED } else { STITCHES };
        let stitches = self.count(slot.field("stitches"), bounds, "");
        let mut to = stitches;
        if is_tapered {
            to = self.count(slot.field("to"), TAPERED, "");
        }
        let rows = self.count(slot.field("rows"), ROWS, "");
        Shape::Trapezoid { stitches, to, rows }
    }
}
