//! The table of figures, with the goals they are held to.

use std::fmt;
use std::time::Duration;

/// What a figure has to reach.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Goal {
    AtLeast(f64),
    AtMost(f64),
    /// Only said, so that others can be understood.
    None,
}

impl Goal {
    fn is_met(self, figure: f64) -> bool {
        match self {
            Self::AtLeast(goal) => figure >= goal,
            Self::AtMost(goal) => figure <= goal,
            Self::None => true,
        }
    }
}

impl fmt::Display for Goal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::AtLeast(goal) => write!(f, "≥ {goal}"),
            Self::AtMost(goal) => write!(f, "≤ {goal}"),
            Self::None => Ok(()),
        }
    }
}

/// One line of the table.
#[derive(Debug)]
struct Row {
    what: String,
    said: String,
    goal: Goal,
    is_met: bool,
}

/// All figures of a run.
#[derive(Debug, Default)]
pub(crate) struct Table {
    rows: Vec<Row>,
}

impl Table {
    /// A figure that is only said.
    pub(crate) fn say(&mut self, what: &str, said: String) {
        self.push(what, said, 0.0, Goal::None);
    }

    /// A ratio with two decimals.
    pub(crate) fn ratio(&mut self, what: &str, ratio: f64, goal: Goal) {
        self.push(what, format!("{ratio:.2}"), ratio, goal);
    }

    /// A time in milliseconds.
    pub(crate) fn time(&mut self, what: &str, time: Duration, goal: Goal) {
        let millis = time.as_secs_f64() * 1_000.0;
        self.push(what, format!("{millis:.1} ms"), millis, goal);
    }

    /// A number and its unit.
    pub(crate) fn number(&mut self, what: &str, number: f64, unit: &str, goal: Goal) {
        self.push(what, format!("{number:.0} {unit}"), number, goal);
    }

    fn push(&mut self, what: &str, said: String, figure: f64, goal: Goal) {
        let row = Row {
            what: what.to_owned(),
            said,
            goal,
            is_met: goal.is_met(figure),
        };
        println!("{} | {} | {}", row.what, row.said, row.goal);
        self.rows.push(row);
    }

    /// What stands in the table of figures that miss their goal.
    pub(crate) fn missed(&self) -> usize {
        self.rows.iter().filter(|row| !row.is_met).count()
    }
}

impl fmt::Display for Table {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "| what | figure | goal | |\n|---|---:|---:|---|")?;
        for row in &self.rows {
            let missed = if row.is_met { "" } else { "missed" };
            writeln!(
                f,
                "| {} | {} | {} | {missed} |",
                row.what, row.said, row.goal
            )?;
        }
        Ok(())
    }
}

/// The middle one.
pub(crate) fn median(mut figures: Vec<f64>) -> f64 {
    figures.sort_by(f64::total_cmp);
    figures[figures.len() / 2]
}

/// The middle one of the ratios of neighbouring measurements.
pub(crate) fn ratio(of: &[f64], to: &[f64]) -> f64 {
    median(of.iter().zip(to).map(|(of, to)| of / to).collect())
}

/// What 99 of a hundred do not exceed.
pub(crate) fn p99(mut times: Vec<Duration>) -> Duration {
    times.sort_unstable();
    times[(times.len() * 99).div_ceil(100) - 1]
}
