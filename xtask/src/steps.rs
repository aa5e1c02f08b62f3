//! The steps of a command: each with its time, all in one table at the end.

use std::process::ExitCode;
use std::time::{Duration, Instant};

/// How a step ended.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Outcome {
    /// Done.
    Passed,
    /// Not done, with the reason.
    Failed(String),
    /// Not tried, with the reason and how to get what it needs.
    LeftOut(String),
}

/// Where a program or a check cannot go on.
pub(crate) type Done = Result<Outcome, String>;

struct Line {
    name: String,
    outcome: Outcome,
    took: Duration,
}

/// Steps as they run.
pub(crate) struct Steps {
    started: Instant,
    lines: Vec<Line>,
}

impl Steps {
    pub(crate) fn new() -> Self {
        Self { started: Instant::now(), lines: Vec::new() }
    }

    /// Says what comes, does it, says how it went. True if it passed.
    pub(crate) fn step(&mut self, name: &str, what: impl FnOnce() -> Done) -> bool {
        println!("\n== {name} (at {})", clock(self.started.elapsed()));
        let started = Instant::now();
        let outcome = what().unwrap_or_else(Outcome::Failed);
        let took = started.elapsed();
        match &outcome {
            Outcome::Passed => println!("-- {name}: passed in {}", clock(took)),
            Outcome::Failed(why) => println!("-- {name}: FAILED after {}: {why}", clock(took)),
            Outcome::LeftOut(why) => println!("-- {name}: left out: {why}"),
        }
        let passed = outcome == Outcome::Passed;
        self.lines.push(Line { name: name.to_owned(), outcome, took });
        passed
    }

    /// A step whose only result is whether a program or check succeeded.
    pub(crate) fn must(&mut self, name: &str, what: impl FnOnce() -> Result<(), String>) -> bool {
        self.step(name, || what().map(|()| Outcome::Passed))
    }

    /// A step that rests on an earlier one that did not pass: failed without being tried.
    pub(crate) fn needs(&mut self, ready: bool, before: &str, name: &str, what: impl FnOnce() -> Done) -> bool {
        if ready {
            self.step(name, what)
        } else {
            self.step(name, || Err(format!("not tried, since it needs \"{before}\"")))
        }
    }

    /// Time since the first step.
    pub(crate) fn elapsed(&self) -> String {
        clock(self.started.elapsed())
    }

    /// The table of all steps, then how many passed and failed, alone on the last line.
    pub(crate) fn finish(&self) -> ExitCode {
        print!("{}", self.summary());
        if self.failed() == 0 { ExitCode::SUCCESS } else { ExitCode::FAILURE }
    }

    fn failed(&self) -> usize {
        self.lines.iter().filter(|l| matches!(l.outcome, Outcome::Failed(_))).count()
    }

    fn summary(&self) -> String {
        use std::fmt::Write as _;
        let mut out = format!("\n== summary (at {})\n", self.elapsed());
        let width = self.lines.iter().map(|l| l.name.chars().count()).max().unwrap_or(0);
        for line in &self.lines {
            let (word, why) = match &line.outcome {
                Outcome::Passed => ("passed", ""),
                Outcome::Failed(why) => ("FAILED", why.as_str()),
                Outcome::LeftOut(why) => ("left out", why.as_str()),
            };
            let row = format!("{:width$}  {word:8}  {:>8}  {why}", line.name, clock(line.took));
            let _ = writeln!(out, "{}", row.trim_end());
        }
        let passed = self.lines.iter().filter(|l| l.outcome == Outcome::Passed).count();
        let _ = writeln!(out, "{passed} passed, {} failed", self.failed());
        out
    }
}

/// A duration as a person reads it.
fn clock(d: Duration) -> String {
    let s = d.as_secs_f64();
    if s < 60.0 { format!("{s:.1} s") } else { format!("{} min {:02} s", d.as_secs() / 60, d.as_secs() % 60) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_line_counts_and_left_out_is_neither() {
        let mut steps = Steps::new();
        assert!(steps.must("one", || Ok(())));
        assert!(!steps.step("two", || Ok(Outcome::LeftOut("no browser".into()))));
        assert_eq!(steps.summary().lines().last(), Some("1 passed, 0 failed"));
        assert!(!steps.must("three", || Err("broken".into())));
        assert!(!steps.needs(false, "three", "four", || Ok(Outcome::Passed)));
        assert_eq!(steps.summary().lines().last(), Some("1 passed, 2 failed"));
        assert!(steps.summary().contains("left out"));
        assert_eq!(steps.finish(), ExitCode::FAILURE);
    }

    #[test]
    fn times_are_read_at_a_glance() {
        assert_eq!(clock(Duration::from_millis(1240)), "1.2 s");
        assert_eq!(clock(Duration::from_secs(125)), "2 min 05 s");
    }
}
