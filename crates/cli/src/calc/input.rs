//! The input of a calculation: a file or the terminal's input, with the machine it names.

use crate::args::{CalcArgs, Said};
use crate::failure::Failure;
use jobfile::{Document, read_table};
use machine::Machine;
use std::collections::BTreeMap;
use std::io::Read;
use std::path::PathBuf;

/// No calculation has a longer input, bytes.
const LARGEST: u64 = 16 << 20;

/// A parsed input and where paths in it start.
pub(crate) struct Input {
    pub(crate) document: Document,
    folder: PathBuf,
}

pub(crate) fn read(args: &CalcArgs) -> Result<Input, Failure> {
    let (name, bytes, folder) = if let Some(path) = &args.file {
        let name = path.display().to_string();
        let bytes = std::fs::read(path).map_err(|e| Failure::cannot_read(args.said, &name, &e.to_string()))?;
        let folder = path.parent().map(PathBuf::from).unwrap_or_default();
        (name, bytes, folder)
    } else {
        let mut bytes = Vec::new();
        std::io::stdin()
            .take(LARGEST)
            .read_to_end(&mut bytes)
            .map_err(|e| Failure::cannot_read(args.said, "-", &e.to_string()))?;
        let json = bytes.iter().find(|b| !b.is_ascii_whitespace()) == Some(&b'{');
        (if json { "input.json" } else { "input.toml" }.to_owned(), bytes, PathBuf::new())
    };
    Ok(Input { document: read_table(&name, &bytes), folder })
}

impl Input {
    /// The machine that the input names, relative to the input.
    pub(crate) fn machine(&self, path: &str, said: Said) -> Result<Machine, Failure> {
        crate::check::read_machine(&self.folder.join(path), said)
    }

    /// All faults of the input, if any.
    pub(crate) fn faults(&self, said: Said) -> Option<Failure> {
        let faults = self.document.faults();
        let files = BTreeMap::from([(self.document.file().to_owned(), self.document.text().to_owned())]);
        faults.any_error().then_some(Failure { faults, said, files })
    }
}
