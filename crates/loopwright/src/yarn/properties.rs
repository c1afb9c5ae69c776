//! What holds for every question: for sensible ones that the answer adds up, for absurd ones that there is no crash.

mod balls;

use super::*;
use crate::fabric::Fabric;
use crate::units::Gauge;
use proptest::prelude::*;

/// Whether a strategy now and then gives a value that no bounds allow.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Values {
    Sensible,
    Absurd,
}

impl Values {
    fn of<T: std::fmt::Debug + 'static>(
        self,
        sensible: impl Strategy<Value = T> + 'static,
        absurd: impl Strategy<Value = T> + 'static,
    ) -> BoxedStrategy<T> {
        match self {
            Self::Sensible => sensible.boxed(),
            Self::Absurd => prop_oneof![15 => sensible, 1 => absurd].boxed(),
        }
    }

    fn count(self, sensible: impl Strategy<Value = u32> + 'static) -> BoxedStrategy<u32> {
        self.of(sensible, any::<u32>())
    }

    fn millimetres(self, sensible: impl Strategy<Value = i64> + 'static) -> BoxedStrategy<Length> {
        self.of(
            sensible.prop_map(Length::from_mm),
            any::<i64>().prop_map(Length::from_nm),
        )
    }

    fn grams(self, sensible: impl Strategy<Value = i64> + 'static) -> BoxedStrategy<Mass> {
        self.of(
            sensible.prop_map(Mass::from_grams),
            any::<i64>().prop_map(Mass::from_ng),
        )
    }

    fn gauge(self) -> BoxedStrategy<Gauge> {
        let usual = (1_u32..=400).prop_map(|count| Gauge::of(count, Gauge::TEN_CM));
        let absurd = (1_u32.., 1_i64..);
        self.of(
            usual,
            absurd.prop_map(|(count, nm)| Gauge::new(count, Length::from_nm(nm)).unwrap()),
        )
    }

    fn fabric(self) -> BoxedStrategy<Fabric> {
        prop_oneof![
            4 => Just(Fabric::Stockinette),
            2 => Just(Fabric::Garter),
            1 => Just(Fabric::Rib),
            1 => Just(Fabric::Cable),
            1 => Just(Fabric::Lace),
            1 => Just(Fabric::Stranded),
        ]
        .boxed()
    }

    fn shape(self) -> BoxedStrategy<Shape> {
        let level =
            (self.count(1_u32..300), self.count(1_u32..300)).prop_map(|(stitches, rows)| Level { stitches, rows });
        prop_oneof![
            (self.count(0_u32..300), self.count(1_u32..300), self.count(1_u32..300))
                .prop_map(|(stitches, to, rows)| Shape::Trapezoid { stitches, to, rows }),
            (self.count(1_u32..300), self.count(1_u32..300))
                .prop_map(|(stitches, rows)| Shape::rectangle(stitches, rows)),
            proptest::collection::vec(level, 1..4).prop_map(Shape::Rows),
            self.measured(),
            self.of(1_u64..100_000, any::<u64>())
                .prop_map(|halves| Shape::Stitches(StitchSum { halves })),
        ]
        .boxed()
    }

    fn measured(self) -> BoxedStrategy<Shape> {
        let sides = (self.millimetres(100_i64..2_000), self.millimetres(100_i64..3_000));
        (sides, self.gauge(), self.gauge())
            .prop_map(|((width, length), stitches, rows)| Shape::Measured {
                width,
                length,
                stitches,
                rows,
            })
            .boxed()
    }

    fn section(self) -> BoxedStrategy<Section> {
        let bind_off = prop_oneof![
            Just(None),
            Just(Some(BindOff::Plain)),
            Just(Some(BindOff::Elastic)),
            Just(Some(BindOff::ICord))
        ];
        let times = self.count(1_u32..4);
        (self.shape(), self.fabric(), times, any::<bool>(), bind_off)
            .prop_map(|(shape, fabric, times, cast_on, bind_off)| Section {
                name: String::new(),
                shape,
                fabric,
                times,
                cast_on,
                bind_off,
            })
            .boxed()
    }

    fn swatch(self) -> BoxedStrategy<Swatch> {
        let rest = prop_oneof![
            Just(Rest::Washed),
            Just(Rest::Unwashed),
            self.count(1_u32..=100).prop_map(|percent| Rest::PinnedOut { percent })
        ];
        let fabric = prop_oneof![2 => Just(Fabric::Stockinette), 1 => self.fabric()];
        let weighed = (
            self.fabric(),
            (self.count(1_u32..300), self.count(1_u32..300)),
            self.grams(1_i64..1_000),
        );
        prop_oneof![
            (fabric, self.gauge(), self.gauge(), rest).prop_map(|(fabric, stitches, rows, rest)| Swatch::Gauge {
                fabric,
                stitches,
                rows,
                rest,
            }),
            weighed.prop_map(|(fabric, (stitches, rows), mass)| {
                Swatch::Weighed {
                    fabric,
                    stitches,
                    rows,
                    mass,
                }
            }),
        ]
        .boxed()
    }

    fn extras(self) -> BoxedStrategy<Extras> {
        let typed = (self.millimetres(0_i64..10_000), self.millimetres(0_i64..100_000));
        (any::<bool>(), any::<bool>(), typed)
            .prop_map(|(swatch, joins, (seams, other))| Extras {
                swatch,
                joins,
                seams,
                other,
            })
            .boxed()
    }

    fn ball(self) -> BoxedStrategy<Ball> {
        (self.millimetres(1_000_i64..500_000), self.grams(1_i64..500))
            .prop_map(|(length, mass)| Ball {
                length,
                mass: Some(mass),
            })
            .boxed()
    }

    fn piece(self) -> BoxedStrategy<Ask> {
        let sections = proptest::collection::vec(self.section(), 1..4);
        (sections, self.swatch(), self.extras())
            .prop_map(|(sections, swatch, extras)| {
                Ask::Piece(Piece {
                    sections,
                    swatch,
                    extras,
                })
            })
            .boxed()
    }

    fn question(self) -> BoxedStrategy<Question> {
        let ask = prop_oneof![
            4 => self.piece(),
            1 => (self.count(1_u32..30), self.ball())
                .prop_map(|(balls, ball)| Ask::Balls { balls, ball }),
            1 => self.millimetres(1_000_i64..10_000_000).prop_map(Ask::Length),
        ];
        (ask, self.ball(), self.count(0_u32..=100))
            .prop_map(|(ask, ball, reserve)| Question {
                ask,
                ball,
                reserve,
                yarns: Vec::new(),
            })
            .boxed()
    }
}

/// The answer, or none where the only thing wrong is that the swatch does not speak for the fabric.
fn answered(question: &Question) -> Option<Answer> {
    match answer(question) {
        Ok(answered) => Some(answered),
        Err(problems) => {
            let swatch = |problem: &Problem| problem.kind == crate::problem::Kind::NeedsSwatch;
            // Or that a coarse gauge and a heavy ball together pass what any piece takes.
            let long = |problem: &Problem| problem.field.name() == Some(Name::Sections);
            let only = problems.iter().all(|problem| swatch(problem) || long(problem));
            assert!(only, "{problems:?}");
            None
        }
    }
}

fn garter(stitches: u32, rows: u32) -> Question {
    let swatch = Swatch::stockinette(Gauge::of(21, Gauge::TEN_CM), Gauge::of(28, Gauge::TEN_CM));
    let section = Section::garter(Shape::rectangle(stitches, rows));
    Question::about(vec![section], swatch)
}

/// The properties below would hold of no answers at all.
#[test]
fn most_sensible_questions_are_answered() {
    use proptest::strategy::ValueTree;
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let questions = Values::Sensible.question();
    let mut answered = || answered(&questions.new_tree(&mut runner).unwrap().current()).is_some();
    let count = (0..1_000).filter(|_| answered()).count();
    assert!(count > 600, "{count}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn an_answer_adds_up(question in Values::Sensible.question()) {
        let Some(answered) = answered(&question) else { return Ok(()) };
        let sum = |part: fn(&Estimate) -> Length| {
            answered.lines.iter().fold(Length::ZERO, |sum, line| sum.saturating_add(part(&line.length)))
        };
        prop_assert_eq!(sum(|e| e.least), answered.length.least);
        prop_assert_eq!(sum(|e| e.expected), answered.length.expected);
        prop_assert_eq!(sum(|e| e.most), answered.need);
        for length in answered.lines.iter().map(|line| line.length).chain([answered.length]) {
            prop_assert!(Length::ZERO <= length.least);
            prop_assert!(length.least <= length.expected && length.expected <= length.most);
        }
        prop_assert!(answered.length.most <= answered.need && answered.need <= answered.bought);
        prop_assert_eq!(answered.bought, question.ball.length.saturating_mul(i64::from(answered.balls)));
        prop_assert_eq!(answered.leftover, answered.bought.saturating_sub(answered.length.expected));
        prop_assert_eq!(answered.notes.contains(&Note::OneDyeLot), answered.balls > 1);
    }

    #[test]
    fn a_knitted_range_is_a_tenth_either_way_at_the_least(question in Values::Sensible.question()) {
        let Some(answered) = answered(&question) else { return Ok(()) };
        for line in answered.lines.iter().filter(|line| matches!(line.part, Part::Knitting { .. })) {
            let (least, middle, most) = (line.length.least.to_nm(), line.length.expected.to_nm(), line.length.most.to_nm());
            prop_assert!(least * 10 <= middle * 9 + 10);
            prop_assert!(most * 10 >= middle * 11 - 10);
        }
    }

    #[test]
    fn nothing_crashes(question in Values::Absurd.question()) {
        let _ = answer(&question);
        if let Ask::Piece(piece) = &question.ask {
            for (index, section) in piece.sections.iter().enumerate() {
                let _ = (section.problems(index), section.sum());
            }
        }
    }

    #[test]
    fn more_rows_never_take_fewer_balls(stitches in 1_u32..500, rows in 1_u32..500, more in 0_u32..50) {
        let balls = |rows| answer(&garter(stitches, rows)).unwrap().balls;
        prop_assert!(balls(rows) <= balls(rows + more));
    }

    #[test]
    fn a_measured_piece_is_its_area_and_its_rows(shape in Values::Sensible.measured()) {
        let Shape::Measured { width, length, stitches, rows } = shape else { return Ok(()) };
        let once = Section::stockinette(shape).once().to_f64();
        let (width, length) = (width.in_unit(LengthUnit::Cm), length.in_unit(LengthUnit::Cm));
        let by_area = width * length * crate::fabric::Density::of(stitches, rows).0;
        prop_assert!((once - by_area).abs() < 1.0, "{} and {}", once, by_area);
        let by_rows = width * stitches.per_cm() * (length * rows.per_cm());
        prop_assert!((once - by_rows).abs() < 1.0, "{} and {}", once, by_rows);
    }

    #[test]
    fn sections_add_up(sections in proptest::collection::vec(Values::Sensible.section(), 1..4)) {
        let sum = |sections: &[Section]| -> u64 { sections.iter().map(|section| section.sum().halves).sum() };
        let question = Question {
            ask: Ask::Piece(Piece {
                sections: sections.clone(),
                swatch: Swatch::Weighed {
                    fabric: Fabric::Stockinette,
                    stitches: 40,
                    rows: 60,
                    mass: Mass::from_grams(24),
                },
                extras: Extras::USUAL,
            }),
            ..garter(1, 1)
        };
        let Some(answered) = answered(&question) else { return Ok(()) };
        prop_assert_eq!(answered.stitches, Some(StitchSum { halves: sum(&sections) }));
    }
}
