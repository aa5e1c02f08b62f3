//! `calc mat`: a mat under a pad: what of it works, bending, shear, and the ground under it; or the smallest square one.

use super::input::Input;
use super::on_ground::{self, OnGround};
use super::safety_input::{Safety, design, safety};
use super::settles::{Settles, settles};
use super::soil_input::{SOIL_EXAMPLE, soil};
use super::text as words;
use crate::Run;
use crate::args::Said;
use evidence::{Certainty, Message, Silent, Source, Working};
use ground::mat_material::{MatMaterial, TimberClass};
use ground::mats::{Mat, MatAnswer, MatLimit, PadOnMat};
use ground::needed_mat::smallest_square;
use ground::{FactorSet, Footprint, Load, PadOnProfile, Profile, Refusal, bearing_on_profile};
use jobfile::{Bound, MAT_SPREADS, Reader};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

const EXAMPLE: &str = r#"# A mat under a pad: which part of it works, and whether mat and ground carry.
permanent = "45 kN"          # force by the machine's own weight
variable = "30 kN"           # by load, wind and movement
factors = "one"              # "one" factor on the ground; or "DA1", "DA2" or
#                              "DA3" of EN 1997-1
factor = "2.0"               # with "one"
pad_along = "0.40 m"         # along the mat's planks
pad_across = "0.40 m"
material = "timber"          # "steel" with yield_strength = "235 MPa", or
#                              "declared" with bending, shear, modulus,
#                              factor_of_mat and spreads = "planks" or "plate"
class = "D40"                # of timber: C16 C18 C24 C30 D30 D40 D50 D60 D70
thickness = "0.15 m"
mat_along = "1.20 m"         # both left out: the smallest square that works
mat_across = "0.80 m"
off_along = "0 m"            # the pad's middle from the mat's
off_across = "0 m"
largest = "3 m"              # with both left out: no larger than this
"#;

/// The commented example.
pub(super) fn example() -> String {
    format!("{EXAMPLE}{SOIL_EXAMPLE}")
}

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct MatResult {
    /// Sides of the mat, along and across, m.
    pub(crate) mat_m: [f64; 2],
    /// The part that works, along and across, m.
    pub(crate) works_m: [f64; 2],
    /// What ends that part.
    pub(crate) limit: WorksTo,
    /// Force with its factors, N.
    pub(crate) force_n: f64,
    /// Pressure under that part, Pa.
    pub(crate) pressure_pa: f64,
    /// Pressure that the ground carries there, with its factors, Pa.
    pub(crate) carries_pa: f64,
    /// Bending stress of the mat, Pa.
    pub(crate) bending_pa: f64,
    /// Shear stress of the mat, Pa.
    pub(crate) shear_pa: f64,
    /// Mat and ground carry.
    pub(crate) carries: bool,
    /// How far the part that works settles at once under the forces without factors; no part of what is compared.
    pub(crate) settlement: Settles,
    /// The steps.
    pub(crate) working: Working,
}

/// What ends the part of a mat that works.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum WorksTo {
    /// The mat's own edge.
    Edge,
    /// Bending.
    Bending,
    /// Shear.
    Shear,
    /// It gives too much.
    Stiffness,
}

#[derive(Debug, Clone, Copy)]
enum Kind {
    Timber,
    Steel,
    Declared,
}
const KINDS: [(&str, Kind); 3] = [("timber", Kind::Timber), ("steel", Kind::Steel), ("declared", Kind::Declared)];

struct Asked {
    pad: [f64; 2],
    offset: [f64; 2],
    thickness: f64,
    /// None: the smallest square.
    size: Option<[f64; 2]>,
    largest: f64,
    material: MatMaterial,
    safety: Safety,
    profile: Profile,
    /// Of strengths that come from tests.
    steps: Working,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    on_ground::run(input, said, "ground::no-mat", |root| asked(root, input.document.file()), answer)
}

fn asked(root: &Reader<'_>, file: &str) -> Option<Asked> {
    let safety = safety(root);
    let side = |key: &str| root.decision(key, Dimension::Length, Bound::Within(0.05, 20.0));
    let pad = [side("pad_along"), side("pad_across")];
    let material = material(root, file);
    let thickness = root.decision("thickness", Dimension::Length, Bound::Within(0.002, 1.0));
    let sized = root.has("mat_along") || root.has("mat_across");
    let size = sized.then(|| [side("mat_along"), side("mat_across")]);
    let offset = ["off_along", "off_across"].map(|key| {
        let off = root.decision_or_none(key, Dimension::Length, Bound::ZeroTo(20.0));
        if root.has(key) { off } else { Some(0.0) }
    });
    let largest = if sized {
        root.decision_or_none("largest", Dimension::Length, Bound::Within(0.1, 20.0))
    } else {
        side("largest")
    };
    let mut steps = Working::default();
    let profile = soil(root, &mut steps);
    let both = |[a, b]: [Option<f64>; 2]| Some([a?, b?]);
    let size = match size {
        Some(sides) => Some(both(sides)?),
        None => None,
    };
    let offset = both(offset)?;
    if size.is_none() && offset != [0.0; 2] {
        root.fault("off_along", words::MAT_CENTRED.message(), None);
        return None;
    }
    Some(Asked {
        pad: both(pad)?,
        offset,
        thickness: thickness?,
        size,
        largest: largest.unwrap_or(0.0),
        material: material?,
        safety: safety?,
        profile: profile?,
        steps,
    })
}

fn material(root: &Reader<'_>, file: &str) -> Option<MatMaterial> {
    match root.choice("material", &KINDS)? {
        Kind::Timber => root.choice("class", &TimberClass::NAMED).map(MatMaterial::timber),
        Kind::Steel => {
            let strength = root.decision("yield_strength", Dimension::Pressure, Bound::Within(100e6, 1300e6))?;
            MatMaterial::steel_plate(strength).ok()
        }
        Kind::Declared => {
            let value = |key: &str, most: f64| root.decision(key, Dimension::Pressure, Bound::UpTo(most));
            let values = [value("bending", 1e9), value("shear", 1e9), value("modulus", 1e12)];
            let factor = root.decision("factor_of_mat", Dimension::Number, Bound::Within(1.0, 10.0));
            let spreads = root.choice("spreads", &MAT_SPREADS);
            let [bending, shear, modulus] = values;
            let source = Source::Input { place: file.to_owned(), certainty: Certainty::Stated };
            MatMaterial::declared([bending?, shear?, modulus?], factor?, spreads?, source).ok()
        }
    }
}

fn answer(asked: &Asked) -> Result<MatResult, Refusal> {
    let mut worst: Option<MatResult> = None;
    for set in &asked.safety.sets {
        let one = with_set(asked, *set)?;
        let worse = |w: &MatResult| {
            let used = |r: &MatResult| r.pressure_pa / r.carries_pa;
            // The larger of two needed mats is the one that works for both.
            one.mat_m[0].total_cmp(&w.mat_m[0]).then(used(&one).total_cmp(&used(w))).is_gt()
        };
        if worst.as_ref().is_none_or(worse) {
            worst = Some(one);
        }
    }
    worst.ok_or(Refusal::NoNumber)
}

fn with_set(asked: &Asked, set: FactorSet) -> Result<MatResult, Refusal> {
    let mut working = asked.steps.clone();
    let force = set.action(asked.safety.loads, &mut working);
    let profile = design(&asked.profile, set);
    let material = set.on_mat(&asked.material);
    let carried = |works: [f64; 2], trace: &mut Working| -> Result<f64, Refusal> {
        let base = Footprint::Rectangle { width: works[0], length: works[1] };
        let load = Load { vertical: force, ..Load::default() };
        let pad = PadOnProfile { base, load, depth: 0.0, slope: 0.0 };
        let governs = bearing_on_profile(&pad, &profile, trace)?;
        Ok(set.resistance(governs.resistance, trace) / base.area())
    };
    let (mat, answer): (Mat, MatAnswer) = if let Some(size) = asked.size {
        let mat = Mat { size, thickness: asked.thickness, material: material.clone() };
        let on = PadOnMat { pad: asked.pad, offset: asked.offset, force };
        let answer = mat.under(&on, &mut working)?;
        (mat, answer)
    } else {
        let ground = |works: [f64; 2]| carried(works, &mut Working::default());
        smallest_square(asked.pad, force, asked.thickness, &material, asked.largest, ground, &mut working)?
    };
    let carries = carried(answer.works, &mut working)?;
    let strong = answer.bending <= material.bending * (1.0 + 1e-9) && answer.shear <= material.shear * (1.0 + 1e-9);
    let works = Footprint::Rectangle { width: answer.works[0], length: answer.works[1] };
    let characteristic = FactorSet::Global(1.0).action(asked.safety.loads, &mut Silent);
    // Beside the middle it presses harder than the force over that part: its pressure without the factors.
    let settling = answer.pressure * works.area() * characteristic / force;
    let settlement = settles(&asked.profile, works, settling, &mut working);
    Ok(MatResult {
        mat_m: mat.size,
        works_m: answer.works,
        limit: match answer.limit {
            MatLimit::Size => WorksTo::Edge,
            MatLimit::Bending => WorksTo::Bending,
            MatLimit::Shear => WorksTo::Shear,
            MatLimit::Stiffness => WorksTo::Stiffness,
        },
        force_n: force,
        pressure_pa: answer.pressure,
        carries_pa: carries,
        bending_pa: answer.bending,
        shear_pa: answer.shear,
        carries: strong && answer.pressure <= carries,
        settlement,
        working,
    })
}

impl OnGround for MatResult {
    fn lines(&self) -> Vec<Message> {
        let length = |v: f64| Quantity::new(v, Dimension::Length);
        let pressure = |v: f64| Quantity::new(v, Dimension::Pressure);
        let verdict = if self.carries { words::MAT_CARRIES } else { words::MAT_TOO_MUCH };
        let limit = match self.limit {
            WorksTo::Edge => words::MAT_TO_EDGE,
            WorksTo::Bending => words::MAT_TO_BENDING,
            WorksTo::Shear => words::MAT_TO_SHEAR,
            WorksTo::Stiffness => words::MAT_TO_STIFFNESS,
        };
        vec![
            verdict
                .with("along", length(self.mat_m[0]))
                .with("across", length(self.mat_m[1]))
                .with("pressure", pressure(self.pressure_pa))
                .with("carries", pressure(self.carries_pa)),
            words::MAT_WORKS
                .with("along", length(self.works_m[0]))
                .with("across", length(self.works_m[1]))
                .with("limit", limit),
            self.settlement.line(),
        ]
    }

    fn working(&self) -> &Working {
        &self.working
    }

    fn holds(&self) -> bool {
        self.carries
    }
}
