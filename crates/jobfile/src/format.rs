//! The first line of every file: `format = "…"`.

use crate::schema_notes::Kind;
use crate::table::Reader;
use crate::text;

/// True if the file says the known format. An unknown one is the only fault reported of a file:
/// what its keys mean is not known.
pub(crate) fn check(root: &Reader<'_>, known: &str) -> bool {
    root.needs("format");
    root.expects("format", || Kind::Words(vec![known.to_owned()]));
    let hint = || Some(text::HINT_FORMAT.with("known", known));
    let Some(node) = root.optional("format") else {
        if !root.document().is_broken() {
            root.fault("format", text::FORMAT_MISSING, hint());
        }
        // Most likely it was only forgotten: the rest is read as the known format.
        return true;
    };
    let Some(format) = root.as_text(node, "format") else { return true };
    if format != known {
        root.fault("format", text::FORMAT_UNKNOWN.with("format", format), hint());
    }
    format == known
}
