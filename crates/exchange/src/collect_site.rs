//! A site as items.

use crate::about::{self, About};
use crate::ground_mesh::{heights, most_triangles};
use crate::item::{Drawn, Item, Position, Properties, Shape};
use crate::scene::{Scene, Under, View, flat, floor, rings};
use crate::{collect_below, collect_lines, collect_things, collect_zones, layer, ring, text};
use geometry::{DVec2, heading_to_degrees};
use quantity::Si;
use site::{Gate, Ground, GroundSource, Landing, PlanArea, PlanShape, Site, Terrain};

impl<'a> From<&'a Site> for View<'a> {
    fn from(site: &'a Site) -> Self {
        View {
            name: &site.name,
            epsg: site.epsg,
            ground: &site.ground,
            lines: &site.lines,
            landings: &site.landings,
            gates: &site.gates,
            surroundings: &site.surroundings,
        }
    }
}

/// Everything of a site, in a fixed order.
pub(crate) fn collect<'a>(view: &View<'a>, about: &About) -> Scene<'a> {
    let floor = floor(view);
    let under = Under { ground: view.ground, floor };
    let around = view.surroundings;
    let mut items = grounds(view.ground);
    items.extend(around.zones.iter().enumerate().map(|(i, z)| collect_zones::zone(i, z, &under)));
    items.extend(around.excavations.iter().enumerate().map(|(i, e)| collect_below::excavation(i, e, &under)));
    items.extend(around.buried.iter().enumerate().map(|(i, b)| collect_below::buried(i, b, &under)));
    items.extend(around.things.iter().enumerate().map(|(i, t)| collect_things::thing(i, t, &under)));
    items.extend(view.lines.iter().enumerate().map(|(i, l)| collect_lines::line(i, l, &under)));
    items.extend(view.landings.iter().enumerate().map(|(i, l)| landing(i, l)));
    items.extend(view.gates.iter().enumerate().map(|(i, g)| gate(i, g)));
    let mut notes = about::notes(about, view.epsg, view.ground);
    for item in items.iter().filter(|i| i.layer != layer::GROUND && i.drawn.is_empty()) {
        notes.push(about.wording.render(&text::NOTE_NO_PLACE.with("name", item.name.as_str())));
    }
    Scene {
        name: view.name.to_owned(),
        epsg: view.epsg,
        invented: about.invented,
        ground: view.ground,
        notes,
        items,
        floor,
    }
}

fn grounds(ground: &Ground) -> Vec<Item> {
    ground.surfaces.iter().enumerate().map(|(i, s)| surface(i, s)).collect()
}

/// A ground surface: the rectangle around what it covers, and what is known of its heights.
fn surface(index: usize, source: &GroundSource) -> Item {
    let mut properties = Properties::default();
    properties.add("kind", "ground");
    properties.add("name", source.name.as_str());
    properties.number("accuracy_m", source.accuracy);
    properties.add("date", source.date.clone());
    let heights = heights(&source.terrain);
    if let Terrain::Grid(g) = &source.terrain {
        properties.add("form", "grid");
        properties.number("cell_east_m", g.cell.x);
        properties.number("cell_north_m", g.cell.y);
        properties.add("heights_not_known", g.heights.len() - heights.known);
    } else {
        properties.add("form", "triangles");
        properties.add("triangles", most_triangles(&source.terrain));
    }
    properties.add("heights_known", heights.known);
    properties.number("lowest_m", heights.ends.map(|(low, _)| low));
    properties.number("highest_m", heights.ends.map(|(_, high)| high));
    properties.number("mean_m", heights.mean());
    let around = source.terrain.bounds().filter(|_| heights.known > 0).map(|(low, high)| {
        let corners = [low, DVec2::new(high.x, low.y), high, DVec2::new(low.x, high.y)];
        vec![flat(&corners)]
    });
    Item {
        layer: layer::GROUND,
        key: format!("ground/{}", index + 1),
        name: source.name.clone(),
        doubts: Vec::new(),
        properties,
        shape: around.map_or(Shape::Nowhere, Shape::Area),
        drawn: Vec::new(),
    }
}

/// Size of the cross that stands for a landing whose direction is not known, where it has no size, m.
const CROSS: f64 = 1.0;

fn landing(index: usize, landing: &Landing) -> Item {
    let mut properties = Properties::default();
    properties.add("kind", "landing");
    properties.add("id", landing.id.as_str());
    properties.add("name", landing.name.as_str());
    properties.number("level_m", landing.level);
    properties.number("along_m", landing.size.x);
    properties.number("across_m", landing.size.y);
    properties.number("approach_heading_deg", landing.approach.map(|a| heading_to_degrees(a.heading)));
    properties.number("approach_tolerance_deg", landing.approach.map(|a| a.tolerance.to_degrees()));
    properties.number("rated_kg", landing.rating.as_ref().and_then(|r| r.mass).map(|m| m.si()));
    properties.add("rated_by", landing.rating.as_ref().map(|r| r.by.clone()));
    properties.number("occupied_kg", landing.occupied.si());
    properties.number("upstand_m", landing.upstand);
    let at = |p: &DVec2| Position(*p, Some(landing.level));
    let half = landing.size * 0.5;
    let (shape, drawn, doubts) = match landing.approach {
        Some(approach) if half.min_element() > 0.0 => {
            let outer = ring::rectangle(landing.at, approach.heading, (-half.x, half.x), half.y);
            let area = PlanArea { outer, holes: Vec::new() };
            let shape = Shape::Area(rings(&area, |ring| ring.iter().map(at).collect()));
            (shape, Drawn::Level { shape: PlanShape::Area(area), at: landing.level }, Vec::new())
        }
        other => {
            let size = if half.min_element() > 0.0 { landing.size.min_element() } else { CROSS };
            let doubts = if other.is_none() { vec![text::DIRECTION_NOT_KNOWN] } else { Vec::new() };
            (Shape::Point(at(&landing.at)), Drawn::Cross { at: landing.at.extend(landing.level), size }, doubts)
        }
    };
    Item {
        layer: layer::LANDING,
        key: keyed("landing", index, &landing.id),
        name: landing.name.clone(),
        doubts,
        properties,
        shape,
        drawn: vec![drawn],
    }
}

fn gate(index: usize, gate: &Gate) -> Item {
    let mut properties = Properties::default();
    properties.add("kind", "gate");
    properties.add("id", gate.id.as_str());
    properties.add("name", gate.name.as_str());
    properties.number("width_m", gate.width);
    properties.number("height_m", gate.height);
    properties.add("open_above", gate.height.is_none());
    properties.number("clearance_m", gate.clearance);
    properties.number("clearance_above_m", gate.clearance_above);
    Item {
        layer: layer::GATE,
        key: keyed("gate", index, &gate.id),
        name: gate.name.clone(),
        doubts: Vec::new(),
        properties,
        shape: Shape::Nowhere,
        drawn: Vec::new(),
    }
}

/// Key of an item: number and id, so that two with the same id stay two.
pub(crate) fn keyed(kind: &str, index: usize, id: &str) -> String {
    if id.is_empty() { format!("{kind}/{}", index + 1) } else { format!("{kind}/{}/{id}", index + 1) }
}
