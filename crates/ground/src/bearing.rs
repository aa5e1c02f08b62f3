//! Ultimate bearing of a pad, a mat or a tyre's patch.

use crate::bearing_steps::{steps, working_of_least};
use crate::{Effective, Footprint, Lacks, Load, Prandtl, Refusal, Strength};
use crate::{bearing_en1997, bearing_hansen, bearing_meyerhof, bearing_terzaghi, bearing_vesic};
use core::f64::consts::FRAC_PI_4;
use evidence::Trace;

/// Whose method.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Method {
    /// EN 1997-1:2004, annex D.
    En1997,
    /// Vesić 1973 and 1975.
    Vesic,
    /// Hansen 1970.
    Hansen,
    /// Meyerhof 1963.
    Meyerhof,
    /// Terzaghi 1943.
    Terzaghi,
}

/// A base on ground of one strength.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BearingCase {
    /// The base.
    pub base: Footprint,
    /// Forces on it.
    pub load: Load,
    /// Strength of the ground under it.
    pub strength: Strength,
    /// Unit weight that acts in the wedge under the base, N/m³ ([`crate::weight_in_wedge`] where there is water).
    pub unit_weight: f64,
    /// Pressure of the soil beside the base: total for undrained, effective for drained strength, Pa.
    pub overburden: f64,
    /// Depth of the base from which depth factors are credited, m. 0 credits none: right for whatever stands on
    /// the surface, and wherever the soil beside may be dug away.
    pub credited_depth: f64,
    /// Slope of the ground under and beside the base, rad.
    pub slope: f64,
}

/// What the ground carries.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bearing {
    /// Whose method.
    pub method: Method,
    /// Even pressure on the effective area at failure, Pa.
    pub ultimate: f64,
    /// Of it by cohesion, by overburden, by the soil's weight, Pa.
    pub terms: [f64; 3],
    /// Effective area.
    pub effective: Effective,
    /// Vertical force at failure, N; of a strip, for a metre of it.
    pub resistance: f64,
}

/// The factors of one term: `N · s · d · i · g`, or together where an author adds instead.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Term {
    pub(crate) n: f64,
    pub(crate) shape: f64,
    pub(crate) depth: f64,
    pub(crate) inclination: f64,
    pub(crate) ground: f64,
}

impl Term {
    pub(crate) const fn bare(n: f64) -> Self {
        Self { n, shape: 1.0, depth: 1.0, inclination: 1.0, ground: 1.0 }
    }
    pub(crate) fn together(&self) -> f64 {
        self.n * self.shape * self.depth * self.inclination * self.ground
    }
}

/// What an author's file works from.
pub(crate) struct Given<'a> {
    pub(crate) case: &'a BearingCase,
    pub(crate) effective: Effective,
    /// Whole horizontal force, N.
    pub(crate) push: f64,
    /// What holds against sliding, N.
    pub(crate) held: f64,
    /// `k` of the depth factors: `D/B` up to 1, then `atan(D/B)`.
    pub(crate) k: f64,
    /// Factors at the angle of friction, which is 0 undrained.
    pub(crate) prandtl: Prandtl,
    /// Inclination factors of EN 1997-1 and Vesić for drained soil.
    pub(crate) leaning: [f64; 3],
}

impl Method {
    /// All, in the order in which they are asked.
    pub const ALL: [Self; 5] = [Self::En1997, Self::Vesic, Self::Hansen, Self::Meyerhof, Self::Terzaghi];

    /// Name and year, for people.
    pub fn citation(self) -> &'static str {
        match self {
            Self::En1997 => "EN 1997-1:2004, annex D",
            Self::Vesic => "Vesić 1973",
            Self::Hansen => "Hansen 1970",
            Self::Meyerhof => "Meyerhof 1963",
            Self::Terzaghi => "Terzaghi 1943",
        }
    }
}

/// The steepest ground that is answered for by undrained strength, rad (ours: beyond it is a bank, not ground).
const STEEPEST: f64 = FRAC_PI_4;

impl BearingCase {
    /// A vertical central force on a base on level ground, nothing credited for depth.
    pub fn on_the_surface(base: Footprint, vertical: f64, strength: Strength, unit_weight: f64) -> Self {
        let load = Load { vertical, ..Load::default() };
        Self { base, load, strength, unit_weight, overburden: 0.0, credited_depth: 0.0, slope: 0.0 }
    }

    fn given(&self) -> Result<Given<'_>, Refusal> {
        let effective = self.base.effective(&self.load)?;
        let not_below_zero = [self.unit_weight, self.overburden, self.credited_depth, self.slope, self.load.vertical];
        let push = effective.push();
        let sound = not_below_zero.iter().all(|v| *v >= 0.0 && v.is_finite()) && push.is_finite();
        if !sound {
            return Err(Refusal::NoNumber);
        }
        let (cohesion, friction) = match self.strength {
            Strength::Undrained { c_u } if c_u > 0.0 && c_u.is_finite() => (c_u, 0.0),
            Strength::Drained { cohesion, friction }
                if cohesion >= 0.0
                    && cohesion.is_finite()
                    && (0.0..=50.0_f64.to_radians() + 1e-12).contains(&friction)
                    && cohesion + friction > 0.0 =>
            {
                if self.slope > friction {
                    return Err(Refusal::SlopeBeyondFriction { slope: self.slope, friction });
                }
                (cohesion, friction)
            }
            _ => return Err(Refusal::NoNumber),
        };
        let prandtl = Prandtl::of(friction);
        let held = effective.area * cohesion + self.load.vertical * prandtl.tan;
        if self.slope > STEEPEST {
            return Err(Refusal::SlopeBeyondFriction { slope: self.slope, friction: STEEPEST });
        }
        if push > held {
            return Err(Refusal::Slides { push, held });
        }
        let ratio = self.credited_depth / effective.full_width;
        let k = if ratio <= 1.0 { ratio } else { libm::atan(ratio) };
        let leaning = [1.0; 3];
        let mut given = Given { case: self, effective, push, held, k, prandtl, leaning };
        if push > 0.0 && matches!(self.strength, Strength::Drained { .. }) {
            given.leaning = bearing_en1997::inclination(&given);
        }
        Ok(given)
    }
}

/// Bearing of a base by one author's method. The working holds every factor that is not one.
///
/// `q_ult = c·N_c·s_c·d_c·i_c·g_c + q·N_q·s_q·d_q·i_q·g_q + ½·γ·B′·N_γ·s_γ·d_γ·i_γ·g_γ`, `R = q_ult·A′`.
///
/// # Errors
/// [`Refusal::NoNumber`], [`Refusal::OffBase`], [`Refusal::Slides`], [`Refusal::SlopeBeyondFriction`];
/// [`Refusal::NotCovered`] where the author has no factor for a slope or a leaning force.
pub fn ultimate_bearing(case: &BearingCase, method: Method, trace: &mut impl Trace) -> Result<Bearing, Refusal> {
    let given = case.given()?;
    let (bearing, terms) = given.bearing(method)?;
    steps(&given, &terms, &bearing, trace);
    Ok(bearing)
}

/// Bearing by the most cautious of the authors whose method covers the case: our default. They differ most by `N_γ`
/// and by what they credit for shape; nobody can say which of them holds on a given site, so the least counts.
///
/// # Errors
/// As [`ultimate_bearing`]; an author who does not cover the case is left out.
pub fn least_bearing(case: &BearingCase, trace: &mut impl Trace) -> Result<Bearing, Refusal> {
    let given = case.given()?;
    let mut least: Option<(Bearing, [Term; 3])> = None;
    let mut refused = Refusal::NoNumber;
    for method in Method::ALL {
        match given.bearing(method) {
            Ok(b) if least.is_none_or(|l| b.0.resistance < l.0.resistance) => least = Some(b),
            Ok(_) => {}
            Err(r) if r.of_method() => refused = r,
            Err(r) => return Err(r),
        }
    }
    let (bearing, terms) = least.ok_or(refused)?;
    working_of_least(&given, bearing.method, trace);
    steps(&given, &terms, &bearing, trace);
    Ok(bearing)
}

fn terms(given: &Given<'_>, method: Method) -> Result<[Term; 3], Refusal> {
    let slopes = given.case.slope > 0.0;
    let leans = given.push > 0.0;
    match method {
        Method::Vesic => Ok(bearing_vesic::terms(given)),
        Method::Hansen => Ok(bearing_hansen::terms(given)),
        _ if slopes => Err(Refusal::NotCovered(method, Lacks::Slope)),
        Method::En1997 => Ok(bearing_en1997::terms(given)),
        Method::Meyerhof => Ok(bearing_meyerhof::terms(given)),
        Method::Terzaghi if leans => Err(Refusal::NotCovered(method, Lacks::Inclination)),
        Method::Terzaghi => bearing_terzaghi::terms(given).ok_or(Refusal::NotCovered(method, Lacks::Friction)),
    }
}

impl Given<'_> {
    /// What one author gives, with his factors.
    pub(crate) fn bearing(&self, method: Method) -> Result<(Bearing, [Term; 3]), Refusal> {
        let (case, e) = (self.case, self.effective);
        let terms = terms(self, method)?;
        let cohesion = match case.strength {
            Strength::Undrained { c_u } => c_u,
            Strength::Drained { cohesion, .. } => cohesion,
        };
        let by = [
            cohesion * terms[0].together(),
            case.overburden * terms[1].together(),
            0.5 * case.unit_weight * e.width * terms[2].together(),
        ];
        let sum = by[0] + by[1] + by[2];
        let ultimate = if sum < 0.0 { 0.0 } else { sum };
        let bearing = Bearing { method, ultimate, terms: by, effective: e, resistance: ultimate * e.area };
        Ok((bearing, terms))
    }

    /// `H/(V + A′·c·cot φ)` times `cot φ`, so that `φ = 0` divides nothing: `H/(V·tan φ + A′·c)`.
    pub(crate) fn lean(&self) -> f64 {
        if self.push > 0.0 { self.push / self.held } else { 0.0 }
    }
}
