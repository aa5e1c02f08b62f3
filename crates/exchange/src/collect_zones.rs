//! Zones as items.

use crate::collect_site::keyed;
use crate::collect_things::{placed, size};
use crate::item::{Drawn, Item, Properties};
use crate::scene::Under;
use crate::{layer, text};
use geometry::heading_to_degrees;
use site::{DayTime, Zone, ZoneRule};

pub(crate) fn zone(index: usize, zone: &Zone, under: &Under<'_>) -> Item {
    let mut properties = Properties::default();
    properties.add("kind", "zone");
    properties.add("id", zone.id.as_str());
    properties.add("name", zone.name.as_str());
    let (rule, heading, speed, slope) = match zone.rule {
        ZoneRule::NoGo => ("no-go", None, None, None),
        ZoneRule::People => ("people", None, None, None),
        ZoneRule::OneWay { heading } => ("one-way", Some(heading_to_degrees(heading)), None, None),
        ZoneRule::Speed { most } => ("speed", None, Some(most), None),
        ZoneRule::Soft => ("soft", None, None, None),
        ZoneRule::SlopeLimit { most } => ("slope-limit", None, None, Some(most)),
    };
    properties.add("rule", rule);
    properties.number("heading_deg", heading);
    properties.number("most_m_per_s", speed);
    properties.number("most_slope", slope);
    properties.add("times", times(&zone.times));
    properties.add("by", zone.by.as_str());
    let (shape, of) = placed(&zone.shape, None, under);
    properties.add("heights_are", of);
    size(&mut properties, &zone.shape);
    let ground = under.lowest(&zone.shape);
    let doubts = if ground.is_none() { vec![text::GROUND_NOT_KNOWN] } else { Vec::new() };
    let otherwise = ground.unwrap_or(under.floor);
    Item {
        layer: layer::of_zone(zone.rule),
        key: keyed("zone", index, &zone.id),
        name: zone.name.clone(),
        doubts,
        properties,
        shape,
        drawn: vec![Drawn::Draped { shape: zone.shape.clone(), otherwise }],
    }
}

/// "always", or "07:00-09:30, 15:00-16:00".
fn times(times: &[DayTime]) -> String {
    if times.is_empty() {
        return "always".to_owned();
    }
    let clock = |minute: u16| format!("{:02}:{:02}", minute / 60, minute % 60);
    let parts: Vec<String> = times.iter().map(|t| format!("{}-{}", clock(t.from), clock(t.to))).collect();
    parts.join(", ")
}
