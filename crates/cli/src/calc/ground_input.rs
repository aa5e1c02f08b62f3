//! What the calculations of edges, stress and buried things read: contacts on the ground, and the
//! faults that the numbers have together.

use super::input::Input;
use super::standing::failure;
use crate::args::Said;
use crate::failure::Failure;
use evidence::Place;
use ground::input_fault::InputFault;
use ground::stress::Patch;
use ground::wheel_row::WheelRow;
use jobfile::{Bound, Reader};
use quantity::Dimension;

/// Reads everything, or every fault.
pub(super) fn read<T>(input: &Input, said: Said, asked: impl FnOnce(&Reader<'_>) -> Option<T>) -> Result<T, Failure> {
    let root = input.document.root();
    let asked = asked(&root);
    root.done();
    match (input.faults(said), asked) {
        (None, Some(asked)) => Ok(asked),
        (Some(faults), _) => Err(faults),
        (None, None) => Err(failure(input, said)),
    }
}

/// Faults that the calculation finds, at the whole file.
pub(super) fn refused(input: &Input, said: Said, faults: &[InputFault]) -> Failure {
    let mut out = evidence::Faults::default();
    for fault in faults {
        out.error("ground::input", Place::file(input.document.file()), fault.message(), None);
    }
    Failure::new(out, said)
}

/// `[[contact]]` in plan: patches on the surface.
pub(super) fn patches(root: &Reader<'_>) -> Vec<Patch> {
    let one = |t: Reader<'_>| {
        let at = t.point("at", "at = [\"0 m\", \"0.9 m\"]", 1e6);
        let size = t.point("size", "size = [\"0.35 m\", \"0.40 m\"]", 20.0);
        let heading = t.decision_or_none("turned", Dimension::Angle, Bound::Any).unwrap_or(0.0);
        let force = t.decision("force", Dimension::Force, Bound::ZeroTo(1e6));
        t.done();
        Some(Patch { middle: at?.to_array(), size: size?.to_array(), heading, force: force? })
    };
    root.tables("contact").into_iter().filter_map(one).collect()
}

/// `[[contact]]` beside an edge: rows of contacts that stand in one line along it.
pub(super) fn rows(root: &Reader<'_>) -> Vec<WheelRow> {
    let mut out: Vec<WheelRow> = Vec::new();
    for t in root.tables("contact") {
        let behind = t.decision("behind", Dimension::Length, Bound::ZeroTo(30.0));
        let across = t.decision("across", Dimension::Length, Bound::UpTo(20.0));
        let along = t.decision("along", Dimension::Length, Bound::UpTo(20.0));
        let at = t.decision("at", Dimension::Length, Bound::Within(-100.0, 100.0));
        let force = t.decision("force", Dimension::Force, Bound::ZeroTo(1e6));
        t.done();
        let (Some(behind), Some(across), Some(along), Some(at), Some(force)) = (behind, across, along, at, force)
        else {
            continue;
        };
        let same = |r: &&mut WheelRow| r.behind == behind && r.across == across && r.along == along;
        if let Some(row) = out.iter_mut().find(same) {
            row.contacts.push([at, force]);
        } else {
            out.push(WheelRow { behind, across, along, contacts: vec![[at, force]] });
        }
    }
    out
}
