//! Presumed bearing values from codes. They were made for spread foundations and count under mats and pads only: a
//! tyre's patch is smaller and presses harder than anything they were made for.
//!
//! They are allowable pressures: reserve is in them, and no partial factor belongs on top. Of a range the low end
//! counts; "under 100 kPa" has no low end and presumes nothing. Neither does a row for ground that nobody looked at, or for
//! fill of which nobody says how it was placed, whatever the code gives there for houses (ours).

use crate::step_values::{length, pressure};
use crate::{Refusal, text};
use core::fmt;
use evidence::{Reading, Source, Step, Trace};

/// What stands on the ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Under {
    /// A tyre. Nothing is presumed for it.
    Tyre,
    /// A stabilizer's pad or a mat, by its shorter side, m.
    PadOrMat {
        /// Shorter side, m.
        width: f64,
    },
}

/// A code's table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Code {
    /// IBC 2012, Table 1806.2.
    Ibc,
    /// Chicago Building Code, 13-132-060, archived.
    Chicago,
    /// 24 CFR 3285.202.
    Cfr,
    /// BS 8004:1986, Table 1.
    Bs8004,
}

impl Code {
    /// The codes by the words that files use.
    pub const NAMED: [(&str, Self); 4] =
        [("ibc", Self::Ibc), ("chicago", Self::Chicago), ("24-cfr-3285", Self::Cfr), ("bs-8004", Self::Bs8004)];

    /// Name and clause.
    pub fn citation(self) -> &'static str {
        match self {
            Self::Ibc => "IBC 2012 Table 1806.2",
            Self::Chicago => "Chicago Building Code Table 13-132-060(a)",
            Self::Cfr => "24 CFR 3285.202",
            Self::Bs8004 => "BS 8004:1986 Table 1",
        }
    }

    /// Where the value comes from, and how it was read.
    pub fn source(self) -> Source {
        let read = match self {
            Self::Ibc => Reading::SecondHand,
            Self::Chicago | Self::Cfr => Reading::InSource,
            Self::Bs8004 => Reading::FromMemory,
        };
        Source::Published { citation: self.citation().into(), read }
    }
}

/// One row of a table.
#[derive(Clone, Copy, PartialEq)]
pub struct Presumed {
    /// Whose.
    pub code: Code,
    /// The soil, in the code's terms.
    pub soil: &'static str,
    /// Low end, Pa; none where the table gives none. Asked by [`Presumed::allowable`] alone.
    low: Option<f64>,
    /// Least width that it holds for, m.
    least_width: f64,
}

impl fmt::Debug for Presumed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Presumed").field("code", &self.code).field("soil", &self.soil).finish_non_exhaustive()
    }
}

impl Presumed {
    /// Allowable pressure under what stands there, Pa.
    ///
    /// # Errors
    /// [`Refusal::PresumedUnderTyre`]; [`Refusal::NothingPresumed`] where the table has no value or no low
    /// end, or nobody looked;
    /// [`Refusal::TooNarrow`] for a base narrower than the table is for; [`Refusal::NoNumber`].
    pub fn allowable(&self, under: Under, trace: &mut impl Trace) -> Result<f64, Refusal> {
        let Under::PadOrMat { width } = under else { return Err(Refusal::PresumedUnderTyre) };
        if !(width > 0.0 && width.is_finite()) {
            return Err(Refusal::NoNumber);
        }
        let value = self.low.filter(|v| *v > 0.0).ok_or(Refusal::NothingPresumed)?;
        if width < self.least_width {
            return Err(Refusal::TooNarrow { least: self.least_width });
        }
        trace.step(|| Step {
            title: text::STEP_PRESUMED.message(),
            formula: "q_a".into(),
            values: vec![length("B", width)],
            result: pressure("q_a", value),
            source: self.code.source(),
        });
        Ok(value)
    }
}

const fn row(code: Code, soil: &'static str, kpa: f64) -> Presumed {
    Presumed { code, soil, low: Some(kpa * 1e3), least_width: 0.0 }
}
/// What the code gives is not taken.
const fn nothing(code: Code, soil: &'static str) -> Presumed {
    Presumed { code, soil, low: None, least_width: 0.0 }
}
/// Granular soil of BS 8004 holds for widths of 1 m or more, water well below.
const fn british(soil: &'static str, kpa: Option<f64>, least_width: f64) -> Presumed {
    let low = match kpa {
        Some(v) => Some(v * 1e3),
        None => None,
    };
    Presumed { code: Code::Bs8004, soil, low, least_width }
}

use Code::{Cfr, Chicago, Ibc};

/// Every row.
pub const TABLE: [Presumed; 33] = [
    row(Ibc, "crystalline bedrock", 574.6),
    row(Ibc, "sedimentary and foliated rock", 191.5),
    row(Ibc, "sandy gravel or gravel (GW, GP)", 143.6),
    row(Ibc, "sand, silty sand, clayey sand, silty gravel, clayey gravel (SW SP SM SC GM GC)", 95.8),
    row(Ibc, "clay, sandy clay, silty clay, clayey silt, silt, sandy silt (CL ML MH CH)", 71.8),
    row(Chicago, "sand, compact and clean", 239.4),
    row(Chicago, "sand, silty and compact", 143.6),
    row(Chicago, "inorganic silt, compact", 119.7),
    row(Chicago, "clay, very soft", 23.9),
    row(Chicago, "clay, soft", 71.8),
    row(Chicago, "clay, stiff", 119.7),
    row(Chicago, "clay, tough", 167.6),
    row(Chicago, "clay, very tough", 215.5),
    row(Chicago, "clay, hard", 287.3),
    row(Chicago, "gravel", 287.3),
    row(Chicago, "hardpan", 574.6),
    row(Chicago, "solid rock", 9576.1),
    row(Chicago, "organic soil", 0.0),
    nothing(Chicago, "filled ground or loam"),
    row(Cfr, "rock or hardpan", 191.5),
    row(Cfr, "sandy gravel and gravel, very dense or cemented sand, preloaded silt and clay", 95.8),
    row(Cfr, "sand, silty sand, clayey sand, medium dense coarse sand, very stiff silt and sandy clay", 71.8),
    nothing(Cfr, "no determination made"),
    british("dense gravel or dense sand and gravel", Some(600.0), 1.0),
    british("medium dense gravel or sand and gravel", Some(200.0), 1.0),
    british("loose gravel or sand and gravel", None, 1.0),
    british("compact sand", Some(300.0), 1.0),
    british("medium dense sand", Some(100.0), 1.0),
    british("loose sand", None, 1.0),
    british("very stiff boulder clay and hard clay", Some(300.0), 0.0),
    british("stiff clay", Some(150.0), 0.0),
    british("firm clay", Some(75.0), 0.0),
    british("soft clay and silt", None, 0.0),
];

/// The row of that soil.
pub fn find(code: Code, soil: &str) -> Option<&'static Presumed> {
    TABLE.iter().find(|p| p.code == code && p.soil == soil)
}

#[cfg(test)]
mod tests {
    use super::*;
    use evidence::Silent;

    #[test]
    fn nothing_is_presumed_under_a_tyre_in_peat_or_below_a_narrow_pad_on_sand() {
        for row in &TABLE {
            assert_eq!(row.allowable(Under::Tyre, &mut Silent), Err(Refusal::PresumedUnderTyre), "{}", row.soil);
        }
        let ask = |code, soil, width| find(code, soil).map(|p| p.allowable(Under::PadOrMat { width }, &mut Silent));
        assert_eq!(ask(Code::Bs8004, "firm clay", 0.5), Some(Ok(75e3)));
        assert_eq!(ask(Code::Bs8004, "soft clay and silt", 2.0), Some(Err(Refusal::NothingPresumed)));
        assert_eq!(ask(Code::Chicago, "organic soil", 2.0), Some(Err(Refusal::NothingPresumed)));
        assert_eq!(ask(Code::Cfr, "no determination made", 2.0), Some(Err(Refusal::NothingPresumed)));
        assert_eq!(ask(Code::Chicago, "filled ground or loam", 2.0), Some(Err(Refusal::NothingPresumed)));
        assert_eq!(ask(Code::Bs8004, "compact sand", 0.6), Some(Err(Refusal::TooNarrow { least: 1.0 })));
        assert_eq!(ask(Code::Bs8004, "compact sand", f64::NAN), Some(Err(Refusal::NoNumber)));
    }
}
