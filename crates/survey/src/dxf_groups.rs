//! The group codes of one entity.

use crate::dxf_index::{Drawing, Entry};
use crate::dxf_pairs::{Pair, Value};
use crate::dxf_words::decoded;
use geometry::DVec3;

/// The pairs of one entity in file order; coordinates are numbers.
#[derive(Debug)]
pub(crate) struct Groups<'a> {
    pub(crate) pairs: Vec<Pair<'a>>,
    /// Bytes that were read for them, among them those of other programs.
    pub(crate) bytes: usize,
}

/// A coordinate that is no number, at this line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct BadNumber {
    pub(crate) line: usize,
}

impl<'a> Groups<'a> {
    /// Reads one entity. Data of other programs (codes from 1000) and objects within it (after code
    /// 101) are no part of it.
    pub(crate) fn of(drawing: &Drawing<'a>, entry: &Entry<'a>) -> Result<Self, BadNumber> {
        let mut found = Vec::new();
        let mut source = drawing.pairs_of(entry);
        let start = source.place().0;
        for pair in source.by_ref().take_while(|p| p.code != 0 && p.code != 101) {
            let value = match pair.code {
                10..=59 | 140..=149 | 210..=239 => match pair.value.real().filter(|x| x.is_finite()) {
                    Some(x) => Value::Real(x),
                    None => return Err(BadNumber { line: pair.line }),
                },
                ..1000 => pair.value,
                _ => continue,
            };
            found.push(Pair { value, ..pair });
        }
        Ok(Self { pairs: found, bytes: source.place().0 - start })
    }

    fn get(&self, code: i32) -> Option<Value<'a>> {
        self.pairs.iter().find(|p| p.code == code).map(|p| p.value)
    }

    pub(crate) fn real(&self, code: i32) -> Option<f64> {
        self.get(code)?.real()
    }

    pub(crate) fn int(&self, code: i32) -> Option<i64> {
        self.get(code)?.int()
    }

    pub(crate) fn text(&self, code: i32) -> Option<&'a [u8]> {
        self.get(code)?.text()
    }

    pub(crate) fn words(&self, code: i32) -> Option<String> {
        self.text(code).map(decoded)
    }

    /// The bit of a whole number that stands for something.
    pub(crate) fn flag(&self, code: i32, bit: i64) -> bool {
        self.int(code).unwrap_or(0) & bit != 0
    }

    /// The point whose first coordinate has this code (10 to 18); a missing third is 0.
    pub(crate) fn point(&self, code: i32) -> Option<DVec3> {
        Some(DVec3::new(self.real(code)?, self.real(code + 10)?, self.real(code + 20).unwrap_or(0.0)))
    }

    /// Direction that a flat entity faces (210): usually up.
    pub(crate) fn facing(&self) -> DVec3 {
        self.point(210).unwrap_or(DVec3::Z)
    }

    /// The layer; drawings without one mean layer 0.
    pub(crate) fn layer(&self) -> String {
        self.words(8).filter(|l| !l.is_empty()).unwrap_or_else(|| "0".to_owned())
    }

    /// Every point of a repeated code, in order, with the pairs between it and the next.
    pub(crate) fn runs(&self, code: i32) -> impl Iterator<Item = &[Pair<'a>]> {
        let first = self.pairs.iter().position(|p| p.code == code).unwrap_or(self.pairs.len());
        self.pairs[first..].chunk_by(move |_, next| next.code != code)
    }
}

/// The point of a run of pairs.
pub(crate) fn point_in(run: &[Pair<'_>], code: i32) -> Option<DVec3> {
    Some(DVec3::new(real_in(run, code)?, real_in(run, code + 10)?, real_in(run, code + 20).unwrap_or(0.0)))
}

/// The number of a run of pairs.
pub(crate) fn real_in(run: &[Pair<'_>], code: i32) -> Option<f64> {
    run.iter().find(|p| p.code == code)?.value.real()
}
