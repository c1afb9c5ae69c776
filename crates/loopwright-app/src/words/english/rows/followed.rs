//! Where a row stands in its chart and in its ridge, for who follows them.

use super::super::intl::fill_pattern;
use loopwright::rows::{ChartRow, Doing, RidgeRow};

/// "Chart row 5 of 12, repeat 3 of 9."; "Knit. Ridge 4 of 21 begins."
pub fn followed(doing: &Doing) -> String {
    let parts = [doing.chart.map(in_chart), doing.ridge.map(in_ridge)];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" ")
}

fn in_chart(chart: ChartRow) -> String {
    match chart {
        ChartRow::SetUp { row, of } => fill_pattern("Set-up row # of #.", &[row, of]),
        ChartRow::Repeat {
            row,
            of,
            repeat,
            repeats,
        } => fill_pattern("Chart row # of #, repeat # of #.", &[row, of, repeat, repeats]),
    }
}

fn in_ridge(ridge: RidgeRow) -> String {
    let work = if ridge.purled { "Purl" } else { "Knit" };
    let pattern = match ridge.ends {
        false => ". Ridge # of # begins.",
        true => ". That ends ridge # of #.",
    };
    fill_pattern(&[work, pattern].concat(), &[ridge.ridge, ridge.of])
}

#[cfg(test)]
mod tests {
    use super::*;
    use loopwright::rows::{Ask, Question, answer, plan};
    use loopwright::units::Gauge;

    fn told(question: &Question) -> Vec<String> {
        let plan = plan(question, &answer(question).unwrap());
        plan.events.iter().map(|event| followed(&event.doing)).collect()
    }

    #[test]
    fn a_row_says_where_it_stands() {
        let about = |ask| Question::about(ask, Gauge::of(28, Gauge::TEN_CM));
        let chart = Question {
            repeat: 4,
            set_up: 1,
            ..about(Ask::Rows(11))
        };
        let chart = told(&chart);
        assert_eq!(chart[0], "Set-up row 1 of 1.");
        assert_eq!(chart[10], "Chart row 2 of 4, repeat 3 of 3.");
        let garter = Question {
            garter: true,
            round: true,
            ..about(Ask::Ridges(2))
        };
        let expected = [
            "Knit. Ridge 1 of 2 begins.",
            "Purl. That ends ridge 1 of 2.",
            "Knit. Ridge 2 of 2 begins.",
            "Purl. That ends ridge 2 of 2.",
        ];
        assert_eq!(told(&garter), expected);
    }
}
