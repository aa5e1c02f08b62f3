//! `survey --at … --heading … --footprint …`: what the ground under a machine or a load is like.

use super::text;
use crate::terminal;
use evidence::{Message, Ranged};
use geometry::heading_to_degrees;
use quantity::{Dimension, Quantity};
use serde::Serialize;
use site::{Footprint, FootprintGround, FootprintPlane, footprint_ground};
use survey::StoredSite;
use wording::Wording;

/// A footprint with what the ground under it is like.
#[derive(Debug)]
pub(super) struct Under {
    footprint: Footprint,
    ground: FootprintGround,
}

/// Footprints that are none have been refused with the arguments.
pub(super) fn measured(footprints: &[Footprint], stored: &StoredSite) -> Vec<Under> {
    let ground = &stored.site.ground;
    let one = |f: &Footprint| Some(Under { footprint: *f, ground: footprint_ground(ground, f)? });
    footprints.iter().filter_map(one).collect()
}

fn metres(value: f64) -> Quantity {
    Quantity::new(value, Dimension::Length)
}

fn degrees(clockwise_from_north: f64) -> Quantity {
    Quantity::new(clockwise_from_north.to_radians(), Dimension::Angle)
}

/// What is known of the ground under it, and first what is not.
pub(super) fn say(under: &Under, wording: Wording) {
    let say = |message: &Message| terminal::paragraph(&wording.render(message), "  ", "  ");
    let (f, ground) = (&under.footprint, &under.ground);
    terminal::line("");
    let heading = text::UNDER
        .with("length", metres(f.length))
        .with("width", metres(f.width))
        .with("east", metres(f.at.x))
        .with("north", metres(f.at.y))
        .with("heading", degrees(heading_to_degrees(f.heading)));
    terminal::paragraph(&wording.render(&heading), "", "  ");
    let Some([lowest, highest]) = ground.heights else {
        return say(&text::UNDER_NO_GROUND.message());
    };
    if let Some(first) = ground.holes.first() {
        say(&text::UNDER_HOLES
            .with("holes", ground.holes.len())
            .with("places", ground.places)
            .with("east", metres(first.x))
            .with("north", metres(first.y)));
    }
    let length = |id: evidence::TextId, range: Ranged| ranged(id, range, metres);
    say(&length(text::UNDER_LOWEST, lowest));
    say(&length(text::UNDER_HIGHEST, highest));
    match &ground.plane {
        Some(plane) => {
            say(&ranged(text::UNDER_ALONG, plane.along, Quantity::slope));
            say(&ranged(text::UNDER_ACROSS, plane.across, Quantity::slope));
            say(&match plane.downhill_azimuth {
                Some(azimuth) => {
                    ranged(text::UNDER_SLOPE, plane.slope, Quantity::slope).with("direction", degrees(azimuth))
                }
                None => ranged(text::UNDER_LEVEL, plane.slope, Quantity::slope),
            });
            say(&length(text::UNDER_ROUGHNESS, plane.roughness));
            say(&length(text::UNDER_ABOVE, plane.above));
            say(&length(text::UNDER_BELOW, plane.below));
        }
        None => say(&text::UNDER_NO_PLANE.message()),
    }
    say(&text::UNDER_READ.with("step", metres(ground.step)).with("surfaces", ground.surfaces.join(", ")));
}

fn ranged(id: evidence::TextId, range: Ranged, of: impl Fn(f64) -> Quantity) -> Message {
    id.with("nominal", of(range.nominal)).with("low", of(range.low)).with("high", of(range.high))
}

/// As `--format json` prints it. SI units; slopes as rise over run.
#[derive(Serialize)]
pub(super) struct UnderJson<'a> {
    /// East and north, m.
    at: [f64; 2],
    /// Clockwise from north, rad.
    heading: f64,
    length: f64,
    width: f64,
    places: usize,
    /// Places where no ground is known.
    holes: Vec<[f64; 2]>,
    step: f64,
    surfaces: &'a [String],
    lowest: Option<Ranged>,
    highest: Option<Ranged>,
    plane: Option<PlaneJson>,
}

#[derive(Serialize)]
struct PlaneJson {
    along: Ranged,
    across: Ranged,
    slope: Ranged,
    /// Clockwise from north, rad.
    downhill: Option<f64>,
    roughness: Ranged,
    above: Ranged,
    below: Ranged,
}

pub(super) fn json(under: &Under) -> UnderJson<'_> {
    let Under { footprint, ground } = under;
    UnderJson {
        at: footprint.at.to_array(),
        heading: heading_to_degrees(footprint.heading).to_radians(),
        length: footprint.length,
        width: footprint.width,
        places: ground.places,
        holes: ground.holes.iter().map(geometry::DVec2::to_array).collect(),
        step: ground.step,
        surfaces: &ground.surfaces,
        lowest: ground.heights.map(|h| h[0]),
        highest: ground.heights.map(|h| h[1]),
        plane: ground.plane.as_ref().map(plane),
    }
}

fn plane(p: &FootprintPlane) -> PlaneJson {
    PlaneJson {
        along: p.along,
        across: p.across,
        slope: p.slope,
        downhill: p.downhill_azimuth.map(f64::to_radians),
        roughness: p.roughness,
        above: p.above,
        below: p.below,
    }
}
