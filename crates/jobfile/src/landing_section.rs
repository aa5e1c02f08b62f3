//! `[[landing]]`: what receives the loads.

use crate::ids::Ids;
use crate::job_file::{all, at_least_one};
use crate::landing_strength;
use crate::limits::{HEIGHT, RATING, SITE};
use crate::node::Value;
use crate::quantity_value::Bound::{UpTo, Within, ZeroTo};
use crate::table::{Faulty, Reader};
use crate::text;
use geometry::DVec2;
use planning::LandingStrength;
use quantity::{Dimension as D, kilograms};
use site::{ApproachDirection, Landing};
use std::f64::consts::{FRAC_PI_2, PI, TAU};

pub(crate) fn landings(root: &Reader<'_>, ids: &mut Ids) -> Option<Vec<(Landing, LandingStrength)>> {
    at_least_one(root, "landing");
    let tables = root.tables("landing");
    all(tables.iter().map(|t| landing(t, ids)).collect())
}

fn landing(t: &Reader<'_>, ids: &mut Ids) -> Option<(Landing, LandingStrength)> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Loading bay, 2nd lift\"");
    let at = t.fact_point("at", "at = [\"12.0 m\", \"30.0 m\"]", SITE);
    let level = t.si("level", D::Length, Within(-HEIGHT, HEIGHT));
    let size = t.table("size", "size = { along = \"1.20 m\", across = \"2.40 m\" }").map(|s| {
        let along = s.si("along", D::Length, UpTo(500.0));
        let across = s.si("across", D::Length, UpTo(500.0));
        s.done();
        Some(DVec2::new(along?, across?))
    });
    let approach = approach(t);
    let (rating, nobody) = t.not_given_while_open(|t| t.table_or_none("rating").map(|r| landing_strength::rating(&r)));
    let occupied = t.si("occupied", D::Mass, ZeroTo(RATING));
    let upstand = t.si("upstand", D::Length, ZeroTo(10.0));
    let strength = landing_strength::strength(t);
    let edge = landing_strength::edge(t);
    t.done();
    let rating = match rating {
        None => None,
        Some(read) => Some(read?).filter(|_| !nobody),
    };
    let (mut strength, size) = (strength?, size??);
    landing_strength::lies_on_it(t, &strength.lying, size.to_array());
    strength.edge = edge.ok()?;
    let rating = rating.map(|read| {
        strength.rating = read.further;
        read.rated
    });
    let landing = Landing {
        id: id?,
        name: name?,
        at: at?,
        level: level?,
        size,
        approach: approach.ok()?,
        rating,
        occupied: kilograms(occupied?),
        upstand: upstand?,
    };
    Some((landing, strength))
}

/// A direction with its tolerance, or the word "any". Left out is a fault: it decides from where a
/// load may come.
fn approach(t: &Reader<'_>) -> Result<Option<ApproachDirection>, Faulty> {
    const EXAMPLE: &str = "approach = { heading = \"90°\", tolerance = \"10°\" } or approach = \"any\"";
    let node = t.required("approach", EXAMPLE).ok_or(Faulty)?;
    match &node.value {
        Value::Text(_) => t.as_choice(node, "approach", &[("any", None)]).ok_or(Faulty),
        Value::Table(_) => {
            let a = t.as_table(node, "approach").ok_or(Faulty)?;
            let heading = heading(&a, "heading");
            let tolerance = a.decision("tolerance", D::Angle, Within(0.0, FRAC_PI_2));
            a.done();
            let (heading, tolerance) = (heading.ok_or(Faulty)?, tolerance.ok_or(Faulty)?);
            Ok(Some(ApproachDirection { heading, tolerance }))
        }
        _ => {
            t.wrong_type(node, "approach", text::TYPE_TEXT_OR_TABLE);
            Err(Faulty)
        }
    }
}

/// A heading, degrees clockwise from north, as the inside angle (rad counter-clockwise from east,
/// −π to π).
pub(crate) fn heading(t: &Reader<'_>, key: &str) -> Option<f64> {
    let clockwise = t.decision(key, D::Angle, Within(0.0, TAU))?;
    let inside = FRAC_PI_2 - clockwise;
    Some(if inside < -PI { inside + TAU } else { inside })
}
