//! Ground that is only described: `presumed = { code = "bs-8004", soil = "firm clay" }`.

use crate::table::{Faulty, Reader};
use crate::text;
use ground::presumed::{Code, Presumed, TABLE, find};

/// The row of a code's table that `presumed` names, where it is there.
///
/// # Errors
/// [`Faulty`] where a fault was noted: a code or a soil that nobody knows, a soil of another code.
pub fn presumed_soil(t: &Reader<'_>) -> Result<Option<&'static Presumed>, Faulty> {
    let Some(p) = t.table_or_none("presumed") else {
        return if t.has("presumed") { Err(Faulty) } else { Ok(None) };
    };
    let code = p.choice("code", &Code::NAMED);
    let rows = TABLE.map(|row| (row.soil, row.soil));
    let soil = p.choice("soil", &rows);
    p.done();
    let (code, soil) = (code.ok_or(Faulty)?, soil.ok_or(Faulty)?);
    find(code, soil).map(Some).ok_or_else(|| {
        let its: Vec<&str> = TABLE.iter().filter(|row| row.code == code).map(|row| row.soil).collect();
        let hint = text::HINT_KNOWN.with("known", its.join("; "));
        p.fault("soil", text::SOIL_OF_ANOTHER_CODE.with("code", code.citation()), Some(hint));
        Faulty
    })
}
