//! What a route is asked for with.

use driving::Turning;
use geometry::DVec2;
use serde::{Deserialize, Serialize};

/// A way that one machine of a job is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct RouteAsk {
    /// Index into `Job::machines`.
    pub machine: usize,
    /// Attachment id.
    pub attachment: String,
    /// Index into `Job::loads` of what is carried; `None`: nothing.
    pub load: Option<usize>,
    /// How tightly it turns, from its papers or measured; a mode that is not known is not used.
    pub turning: Turning,
    /// How far the carriage is shifted to either side, m.
    pub side_shift: f64,
    /// Minute of the day; `None`: any, so that every zone with times applies.
    pub at: Option<u16>,
    /// Rules of driving.
    pub rules: TravelRules,
}

/// Where a way begins: middle of the front axle and heading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoutePose {
    /// East and north, m.
    pub at: DVec2,
    /// Inside angle (rad counter-clockwise from east).
    pub heading: f64,
}

impl From<crate::Stand> for RoutePose {
    fn from(stand: crate::Stand) -> Self {
        Self { at: stand.at, heading: stand.heading }
    }
}

/// Rules of driving on a site. A maker's limit that is lower replaces them.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct TravelRules {
    /// Room to things on every side, m.
    pub room: f64,
    /// How far the machine may stray from the way, m: added to every distance.
    pub drift: f64,
    /// Speed at most, m/s.
    pub pace: f64,
    /// Steepest ground along the machine, rise over run.
    pub along: f64,
    /// Steepest ground across the machine, rise over run.
    pub across: f64,
    /// Ground across the machine on which it may still turn, rise over run.
    pub turning_across: f64,
    /// Grade from which on the load faces uphill, rise over run.
    pub load_uphill: f64,
    /// Distance to an excavation of unknown depth, m.
    pub unknown_depth: f64,
}

impl Default for TravelRules {
    /// 0.30 m to things, 0.20 m astray, walking pace 1.4 m/s (5 km/h), 20 % along, 10 % across, turning up to 5 %
    /// across (common practice where the maker gives none); load uphill above 10 %: 29 CFR 1910.178(n)(7)(i);
    /// 12.2 m from what nobody knows the depth of: twice the 20 ft down to which 29 CFR 1926 Subpart P,
    /// Appendix B gives slopes, 2:1 being the flattest line used here.
    fn default() -> Self {
        Self {
            room: 0.30,
            drift: 0.20,
            pace: 1.4,
            along: 0.20,
            across: 0.10,
            turning_across: 0.05,
            load_uphill: 0.10,
            unknown_depth: 12.2,
        }
    }
}

impl TravelRules {
    /// True if every rule is a number that asks for something.
    pub(crate) fn sound(&self) -> bool {
        let least_zero = [self.room, self.drift, self.turning_across, self.load_uphill, self.unknown_depth];
        let above_zero = [self.pace, self.along, self.across];
        least_zero.iter().all(|v| v.is_finite() && *v >= 0.0) && above_zero.iter().all(|v| v.is_finite() && *v > 0.0)
    }
}
