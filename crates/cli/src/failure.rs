//! Faults of input, to people with a caret and to programs as JSON.

use crate::args::Said;
use crate::terminal;
use crate::text;
use evidence::{Fault, Faults, Message, Place, Severity};
use miette::{GraphicalReportHandler, GraphicalTheme, LabeledSpan, NamedSource, SourceSpan};
use std::collections::BTreeMap;
use std::fmt;
use std::io::IsTerminal;
use std::process::ExitCode;

/// Everything wrong with an input, with the texts of the files for carets.
pub(crate) struct Failure {
    pub(crate) faults: Faults,
    pub(crate) said: Said,
    pub(crate) files: BTreeMap<String, String>,
}

impl Failure {
    pub(crate) fn new(faults: Faults, said: Said) -> Self {
        Self { faults, said, files: BTreeMap::new() }
    }

    /// One fault without a place in a file's text.
    pub(crate) fn one(said: Said, code: &str, file: &str, message: Message, hint: Option<Message>) -> Self {
        let mut faults = Faults::default();
        faults.error(code, Place::file(file), message, hint);
        Self::new(faults, said)
    }

    pub(crate) fn cannot_read(said: Said, file: &str, reason: &str) -> Self {
        let message = text::CANNOT_READ.with("file", file).with("reason", reason);
        Self::one(said, "cli::cannot-read", file, message, None)
    }

    pub(crate) fn cannot_write(said: Said, file: &str, reason: &str) -> Self {
        let message = text::CANNOT_WRITE.with("file", file).with("reason", reason);
        Self::one(said, "cli::cannot-write", file, message, None)
    }

    /// Prints everything and gives the exit code of a fault of input.
    pub(crate) fn report(self) -> ExitCode {
        if self.said.json() {
            terminal::print_json(&self.faults);
        } else {
            print_faults(&self.faults, self.said, &self.files);
        }
        ExitCode::from(1)
    }
}

/// Faults or warnings to standard error, each with its caret where the file's text is known.
pub(crate) fn print_faults(faults: &Faults, said: Said, files: &BTreeMap<String, String>) {
    let wording = said.wording();
    let unicode = std::io::stderr().is_terminal();
    let theme = if unicode { GraphicalTheme::unicode() } else { GraphicalTheme::none() };
    let handler = GraphicalReportHandler::new_themed(theme).with_width(terminal::width());
    let (mut errors, mut warnings) = (0_usize, 0_usize);
    for fault in &faults.list {
        match fault.severity {
            Severity::Error => errors += 1,
            Severity::Warning => warnings += 1,
        }
        let shown = Shown::new(fault, wording, files);
        let mut out = String::new();
        if handler.render_report(&mut out, &shown).is_ok() {
            terminal::error_line(out.trim_end());
        } else {
            terminal::error_line(&format!("{}: {shown}", fault.code));
        }
    }
    if errors + warnings > 1 {
        let summary = wording::ui::FAULTS_SUMMARY.with("errors", errors).with("warnings", warnings);
        terminal::error_line(&wording.render(&summary));
    }
}

#[derive(Debug)]
struct Shown {
    code: String,
    title: String,
    hint: Option<String>,
    severity: Severity,
    source: Option<NamedSource<String>>,
    label: Option<LabeledSpan>,
}

impl Shown {
    fn new(fault: &Fault, wording: wording::Wording, files: &BTreeMap<String, String>) -> Self {
        let rendered = wording.fault(fault);
        let source = files.get(&fault.place.file);
        let span = fault.place.span.filter(|(a, b)| a <= b);
        let (source, label, title) = match (source, span) {
            (Some(text), Some((from, to))) if to <= text.len() => (
                Some(NamedSource::new(fault.place.file.clone(), text.clone())),
                Some(LabeledSpan::new_with_span(None, SourceSpan::new(from.into(), to - from))),
                rendered.title,
            ),
            _ if rendered.place.is_empty() => (None, None, rendered.title),
            _ => (None, None, format!("{}: {}", rendered.place, rendered.title)),
        };
        Self { code: fault.code.clone(), title, hint: rendered.hint, severity: fault.severity, source, label }
    }
}

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.title)
    }
}

impl std::error::Error for Shown {}

impl miette::Diagnostic for Shown {
    fn code<'a>(&'a self) -> Option<Box<dyn fmt::Display + 'a>> {
        Some(Box::new(&self.code))
    }
    fn severity(&self) -> Option<miette::Severity> {
        Some(match self.severity {
            Severity::Error => miette::Severity::Error,
            Severity::Warning => miette::Severity::Warning,
        })
    }
    fn help<'a>(&'a self) -> Option<Box<dyn fmt::Display + 'a>> {
        self.hint.as_ref().map(|h| Box::new(h) as Box<dyn fmt::Display>)
    }
    fn source_code(&self) -> Option<&dyn miette::SourceCode> {
        self.source.as_ref().map(|s| s as &dyn miette::SourceCode)
    }
    fn labels(&self) -> Option<Box<dyn Iterator<Item = LabeledSpan> + '_>> {
        self.label.clone().map(|l| Box::new(std::iter::once(l)) as Box<dyn Iterator<Item = LabeledSpan>>)
    }
}
