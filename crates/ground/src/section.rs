//! What a joist, board or beam bears in bending and shear.

use crate::landing_range::Ranges;
use crate::text;
use crate::timber::{Timber, TimberUse};
use evidence::{Faults, Source, Step, Trace};
use quantity::{Dimension, Quantity};

/// What a capacity is compared with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// With loads times their partial factors (EN 1990).
    Design,
    /// With the loads as they are: allowable stresses or a stated allowable value.
    Allowable,
}

impl Basis {
    /// Factors on permanent and on variable loads: 1.35 and 1.5 (EN 1990:2002, table A1.2(B), from memory), or 1.
    pub fn factors(self) -> [f64; 2] {
        match self {
            Self::Design => [1.35, 1.5],
            Self::Allowable => [1.0, 1.0],
        }
    }
}

/// What a member bears.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Capacity {
    /// Bending, N·m.
    pub moment: f64,
    /// Shear, N.
    pub shear: f64,
    /// What both are compared with.
    pub basis: Basis,
}

/// A rectangular cross-section.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rectangle {
    /// Width, m.
    pub breadth: f64,
    /// Height in the direction of the load, m.
    pub depth: f64,
}

impl Rectangle {
    /// Area, m².
    pub fn area(self) -> f64 {
        self.breadth * self.depth
    }
    /// Section modulus `b h²/6`, m³.
    pub fn modulus(self) -> f64 {
        self.area() * self.depth / 6.0
    }
    /// Second moment of area `b h³/12`, m⁴.
    pub fn second_moment(self) -> f64 {
        self.modulus() * self.depth / 2.0
    }

    fn check(self, ranges: &mut Ranges) {
        ranges.within("section.breadth", self.breadth, Dimension::Length, 0.01, 2.0);
        ranges.within("section.depth", self.depth, Dimension::Length, 0.01, 2.0);
    }
}

fn named(name: &'static str, si: f64, dimension: Dimension) -> (std::borrow::Cow<'static, str>, Quantity) {
    (name.into(), Quantity::new(si, dimension))
}

/// Capacity of a rectangular timber member that cannot buckle sideways: `f_d = k_mod f_k/γ_M`
/// (EN 1995-1-1:2004, 2.4.1), `M = f_m,d b h²/6` (6.1.6), `V = ⅔ f_v,d k_cr b h` (6.1.7), all from memory. The
/// size factor `k_h` and the system factor `k_sys`, both above 1, are left out: safe side.
///
/// # Errors
/// Every size, strength or factor out of its range.
pub fn timber_capacity(
    section: Rectangle,
    timber: Timber,
    used: TimberUse,
    trace: &mut impl Trace,
) -> Result<Capacity, Faults> {
    let mut ranges = Ranges::default();
    section.check(&mut ranges);
    ranges.within("timber.bending", timber.bending, Dimension::Pressure, 5e6, 100e6);
    ranges.within("timber.shear", timber.shear, Dimension::Pressure, 0.5e6, 10e6);
    ranges.within("k_mod", used.k_mod, Dimension::Number, 0.2, 1.1);
    ranges.within("gamma_m", used.gamma_m, Dimension::Number, 1.0, 3.0);
    ranges.within("k_cr", used.k_cr, Dimension::Number, 0.3, 1.0);
    ranges.done(())?;
    let bending = used.k_mod * timber.bending / used.gamma_m;
    let shear = used.k_mod * timber.shear / used.gamma_m;
    let capacity = Capacity {
        moment: bending * section.modulus(),
        shear: shear * used.k_cr * section.area() / 1.5,
        basis: Basis::Design,
    };
    let size = [named("b", section.breadth, Dimension::Length), named("h", section.depth, Dimension::Length)];
    trace.step(|| Step {
        title: text::STEP_TIMBER_BENDING.message(),
        formula: "f_m,d = k_mod · f_m,k / γ_M".into(),
        values: vec![
            named("k_mod", used.k_mod, Dimension::Number),
            named("f_m,k", timber.bending, Dimension::Pressure),
            named("γ_M", used.gamma_m, Dimension::Number),
        ],
        result: named("f_m,d", bending, Dimension::Pressure),
        source: Source::from_memory("EN 1995-1-1:2004, 2.4.1"),
    });
    trace.step(|| Step {
        title: text::STEP_MEMBER_MOMENT.message(),
        formula: "M_Rd = f_m,d · b · h² / 6".into(),
        values: std::iter::once(named("f_m,d", bending, Dimension::Pressure)).chain(size.clone()).collect(),
        result: named("M_Rd", capacity.moment, Dimension::Moment),
        source: Source::from_memory("EN 1995-1-1:2004, 6.1.6"),
    });
    trace.step(|| Step {
        title: text::STEP_MEMBER_SHEAR.message(),
        formula: "V_Rd = 2/3 · k_mod · f_v,k / γ_M · k_cr · b · h".into(),
        values: [
            named("k_mod", used.k_mod, Dimension::Number),
            named("f_v,k", timber.shear, Dimension::Pressure),
            named("γ_M", used.gamma_m, Dimension::Number),
            named("k_cr", used.k_cr, Dimension::Number),
        ]
        .into_iter()
        .chain(size)
        .collect(),
        result: named("V_Rd", capacity.shear, Dimension::Force),
        source: Source::from_memory("EN 1995-1-1:2004, 6.1.7"),
    });
    Ok(capacity)
}

/// Capacity of a rectangular timber member by allowable stresses (Pa) that already hold every adjustment:
/// `M = F_b b h²/6`, `V = ⅔ F_v b h` (mechanics).
pub fn timber_allowable(section: Rectangle, bending: f64, shear: f64) -> Result<Capacity, Faults> {
    let mut ranges = Ranges::default();
    section.check(&mut ranges);
    ranges.within("allowable.bending", bending, Dimension::Pressure, 1e6, 40e6);
    ranges.within("allowable.shear", shear, Dimension::Pressure, 0.2e6, 6e6);
    let moment = bending * section.modulus();
    ranges.done(Capacity { moment, shear: shear * section.area() / 1.5, basis: Basis::Allowable })
}

/// Capacity of a steel member whose pressed flange is held sideways: `M = W f_y/γ_M0` (EN 1993-1-1:2005, 6.2.5),
/// `V = A_v f_y/(√3 γ_M0)` (6.2.6), `γ_M0 = 1` (6.1), all from memory. `modulus` m³ (plastic only for classes 1 and
/// 2), `shear_area` m², `yield_strength` Pa.
///
/// # Errors
/// Every value out of its range.
pub fn steel_capacity(
    modulus: f64,
    shear_area: f64,
    yield_strength: f64,
    trace: &mut impl Trace,
) -> Result<Capacity, Faults> {
    let mut ranges = Ranges::default();
    ranges.within("steel.modulus", modulus, Dimension::Volume, 1e-7, 0.1);
    ranges.within("steel.shear_area", shear_area, Dimension::Area, 1e-5, 0.5);
    ranges.within("steel.yield_strength", yield_strength, Dimension::Pressure, 150e6, 1000e6);
    ranges.done(())?;
    let moment = modulus * yield_strength;
    let shear = shear_area * yield_strength / 3.0_f64.sqrt();
    let f_y = named("f_y", yield_strength, Dimension::Pressure);
    trace.step(|| Step {
        title: text::STEP_MEMBER_MOMENT.message(),
        formula: "M_Rd = W · f_y".into(),
        values: vec![named("W", modulus, Dimension::Volume), f_y.clone()],
        result: named("M_Rd", moment, Dimension::Moment),
        source: Source::from_memory("EN 1993-1-1:2005, 6.2.5"),
    });
    trace.step(|| Step {
        title: text::STEP_MEMBER_SHEAR.message(),
        formula: "V_Rd = A_v · f_y / √3".into(),
        values: vec![named("A_v", shear_area, Dimension::Area), f_y],
        result: named("V_Rd", shear, Dimension::Force),
        source: Source::from_memory("EN 1993-1-1:2005, 6.2.6"),
    });
    Ok(Capacity { moment, shear, basis: Basis::Design })
}
