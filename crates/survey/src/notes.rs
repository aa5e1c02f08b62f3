//! Collects the faults of one file while it is read.

use evidence::{Arg, Fault, Faults, Message, Place, Severity};

/// Says that an error stands in the [`Notes`] and reading cannot go on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Refused;

/// The faults of one file.
#[derive(Debug)]
pub(crate) struct Notes<'a> {
    file: &'a str,
    faults: Faults,
}

impl<'a> Notes<'a> {
    pub(crate) fn new(file: &'a str) -> Self {
        Self { file, faults: Faults::default() }
    }

    /// The file name without folder and ending.
    pub(crate) fn stem(&self) -> String {
        let name = self.file.rsplit(['/', '\\']).next().unwrap_or(self.file);
        name.rsplit_once('.').map_or(name, |(stem, _)| stem).to_owned()
    }

    /// Notes on the same file that may still be dropped.
    pub(crate) fn apart(&self) -> Self {
        Self::new(self.file)
    }

    /// Takes over what was noted apart.
    pub(crate) fn append(&mut self, apart: Self) {
        self.faults.append(apart.faults);
    }

    /// Adds an error; the return value goes into `Err` where reading ends.
    pub(crate) fn refuse(&mut self, code: &str, message: impl Into<Message>, hint: impl Into<Message>) -> Refused {
        self.add(code, Severity::Error, None, message, hint);
        Refused
    }

    /// Adds an error at a line, from 1.
    pub(crate) fn refuse_line(
        &mut self,
        code: &str,
        line: u64,
        message: impl Into<Message>,
        hint: impl Into<Message>,
    ) -> Refused {
        self.add(code, Severity::Error, Some(line), message, hint);
        Refused
    }

    /// Adds a warning.
    pub(crate) fn warn(&mut self, code: &str, message: impl Into<Message>, hint: impl Into<Message>) {
        self.add(code, Severity::Warning, None, message, hint);
    }

    /// Adds a warning at a line, from 1.
    pub(crate) fn warn_line(&mut self, code: &str, line: u64, message: impl Into<Message>, hint: impl Into<Message>) {
        self.add(code, Severity::Warning, Some(line), message, hint);
    }

    fn add(
        &mut self,
        code: &str,
        severity: Severity,
        line: Option<u64>,
        message: impl Into<Message>,
        hint: impl Into<Message>,
    ) {
        let mut message = message.into();
        make_storable(&mut message);
        let place = Place { line: line.and_then(|l| usize::try_from(l).ok()), ..Place::file(self.file) };
        self.faults.push(Fault { code: code.to_owned(), severity, place, message, hint: Some(hint.into()) });
    }

    pub(crate) fn any_error(&self) -> bool {
        self.faults.any_error()
    }

    pub(crate) fn into_faults(self) -> Faults {
        self.faults
    }

    /// The value with the warnings, or every fault: an error among them makes it unusable.
    pub(crate) fn finish<T>(self, value: Result<T, Refused>) -> Result<(T, Faults), Faults> {
        match value {
            Ok(value) if !self.any_error() => Ok((value, self.faults)),
            _ => Err(self.faults),
        }
    }
}

/// Words for numbers that are none: notes are kept with the site, and no stored number is infinite.
fn make_storable(message: &mut Message) {
    for (_, arg) in &mut message.args {
        match arg {
            Arg::Quantity(quantity) if !quantity.si.is_finite() => *arg = Arg::Text(quantity.si.to_string()),
            Arg::Message(inner) => make_storable(inner),
            _ => {}
        }
    }
}
