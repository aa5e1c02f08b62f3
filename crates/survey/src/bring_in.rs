//! Files of a survey to a site: each is read as what it is, with a record of what became of it.

use crate::join_sites::{forget, in_the_sites_system, join, replace_ground, same_system};
use crate::late_ground::{SettledTops, settle};
use crate::notes::Notes;
use crate::plan_things::{Placed, PlanSource, place};
use crate::stored::{SourceRecord, StoredSite, Used};
use crate::things_above::{ThingOptions, things_above};
use crate::{FileKind, GroundOptions, LayerRule, PlanReading, kind, text};
use crate::{read_ground, read_plan, read_shapefile, read_stored, read_tiles};
use evidence::Faults;
use geometry::DVec2;
use site::{Body, Columns, GroundSource, Thing, ThingKind};
use std::collections::BTreeMap;

/// What the user says of the files that are brought in together.
#[derive(Debug, Clone, Default)]
pub struct BringOptions {
    /// Units, coordinate systems, window and all that reading asks for.
    pub ground: GroundOptions,
    /// Height accuracy of the ground, m; `None`: nobody has said, and it is refused.
    pub accuracy: Option<f64>,
    /// How far the shapes of plans may be off, m.
    pub plan_accuracy: f64,
    /// Day of the survey.
    pub date: Option<String>,
    /// What the layers of plans stand for.
    pub rules: Vec<LayerRule>,
    /// True to look for what stands above the ground in the clouds.
    pub above: bool,
    /// True to take a file that holds both ground and shapes (drawings, LandXML) as ground.
    pub as_ground: bool,
}

/// What came of bringing files in.
#[derive(Debug, Clone, Default)]
pub struct Brought {
    /// The site with everything new on it.
    pub stored: StoredSite,
    /// Warnings of all files.
    pub notes: Faults,
    /// What became of the shapes of each plan, by file.
    pub plans: Vec<(String, Placed)>,
    /// What became of things that were on the site before.
    pub settled: SettledTops,
}

/// Brings files into a site. Clouds and level lists given together are one survey without seams;
/// grids and design surfaces are surfaces of their own, earlier ones before later ones. A file that
/// the site has already (by name and use) is replaced.
///
/// # Errors
/// Every fault of every file; then nothing is brought in.
pub fn bring_in(stored: &StoredSite, files: &[(&str, &[u8])], options: &BringOptions) -> Result<Brought, Faults> {
    let options = &in_the_sites_system(stored, options)?;
    let mut faults = Faults::default();
    let mut out = Brought { stored: stored.clone(), ..Brought::default() };
    out.stored.site.epsg = options.ground.site_crs.map(|code| u32::from(code.0));
    let mut tiles: Vec<(&str, &[u8])> = Vec::new();
    let mut clouds: Vec<(&str, &[u8])> = Vec::new();
    let mut surfaces: Vec<(&str, &[u8])> = Vec::new();
    let mut plans: Vec<(&str, &[u8])> = Vec::new();
    let mut shapefiles: BTreeMap<String, Vec<(&str, &[u8])>> = BTreeMap::new();
    for (name, bytes) in files {
        if let Some(stem) = shapefile_stem(name) {
            shapefiles.entry(stem).or_default().push((name, bytes));
            continue;
        }
        let mut notes = Notes::new(name);
        let found = kind::sniff(name, bytes, &mut notes);
        match notes.finish(found) {
            Err(found) => faults.append(found),
            Ok((FileKind::Las | FileKind::Laz, _)) => {
                tiles.push((name, bytes));
                clouds.push((name, bytes));
            }
            Ok((FileKind::Levels, _)) => tiles.push((name, bytes)),
            Ok((FileKind::GeoTiff, _)) => surfaces.push((name, bytes)),
            Ok((FileKind::LandXml | FileKind::Dxf, _)) if options.as_ground => surfaces.push((name, bytes)),
            Ok((FileKind::LandXml, _)) if crate::landxml_surfaces(name, bytes).is_ok_and(|s| !s.is_empty()) => {
                surfaces.push((name, bytes));
            }
            Ok((FileKind::LandXml | FileKind::Dxf | FileKind::GeoJson, _)) => plans.push((name, bytes)),
            Ok((FileKind::Shapefile, _)) => {
                shapefiles.entry((*name).to_owned()).or_default().push((name, bytes));
            }
            Ok((FileKind::StoredSite, _)) => match read_stored(name, bytes) {
                Ok(other) => {
                    if let Err(found) = join(&mut out.stored, other, name) {
                        faults.append(found);
                    }
                }
                Err(found) => faults.append(found),
            },
        }
    }
    if !(tiles.is_empty() && surfaces.is_empty()) && options.accuracy.is_none() {
        let mut notes = Notes::new(tiles.first().or(surfaces.first()).map_or("", |t| t.0));
        notes.refuse("survey::accuracy-not-stated", text::ACCURACY_NOT_STATED, text::DO_STATE_ACCURACY);
        let refused: Result<((), Faults), Faults> = notes.finish(Ok(()));
        faults.append(refused.err().unwrap_or_default());
    }
    let mut grounds: Vec<Vec<(&str, &[u8])>> = surfaces.iter().map(|f| vec![*f]).collect();
    // Clouds and lists of levels are two surveys: mixed in one triangulation neither edge length fits.
    let (lists, dense): (Vec<_>, Vec<_>) = tiles.iter().partition(|t| !clouds.contains(t));
    grounds.extend([dense, lists].into_iter().filter(|g| !g.is_empty()));
    for group in grounds {
        match ground(&group, options) {
            Ok((source, record, notes)) => {
                if let Err(found) = same_system(&out.stored, &record) {
                    faults.append(found);
                    continue;
                }
                out.notes.append(notes);
                out.notes.append(replace_ground(&mut out.stored, source, record));
            }
            Err(found) => faults.append(found),
        }
    }
    let mut read: Vec<(String, PlanReading)> = Vec::new();
    let mut keep = |name: String, reading: Result<PlanReading, Faults>| match reading {
        Ok(reading) => read.push((name, reading)),
        Err(found) => faults.append(found),
    };
    for (name, bytes) in &plans {
        keep((*name).to_owned(), read_plan(name, bytes, &options.ground));
    }
    for (name, parts) in &shapefiles {
        keep(name.clone(), read_shapefile(parts, &options.ground));
    }
    if faults.any_error() {
        return Err(faults);
    }
    for (name, _) in &read {
        forget(&mut out.stored, name, Used::Plan);
    }
    // Ground and clouds before plans, in whatever order they were given: heights are reckoned from them.
    let above = options.above && !clouds.is_empty();
    if above {
        add_things_above(&mut out, &clouds, options)?;
    }
    out.settled = settle(&mut out.stored, above);
    for (name, mut reading) in read {
        let outside = outside_window(&mut reading, options);
        // A shift of datum is only as good as it is known.
        let accuracy = options.plan_accuracy.max(shift_error(&reading.notes));
        let source = PlanSource { file: &name, accuracy };
        let mut placed = place(&mut out.stored.site, &reading.features, &options.rules, source);
        if outside > 0 {
            placed.left_out.insert("outside-window", outside);
        }
        out.stored.waiting.append(&mut placed.waiting.clone());
        let record = plan_record(&name, &reading, &placed, accuracy, options);
        same_system(&out.stored, &record)?;
        out.stored.records.push(record);
        out.notes.append(reading.notes);
        out.plans.push((name, placed));
    }
    Ok(out)
}

/// The name that the parts of a shapefile share; `None` for other files.
fn shapefile_stem(name: &str) -> Option<String> {
    let (stem, extension) = name.rsplit_once('.')?;
    ["shp", "dbf", "shx", "prj", "cpg"].contains(&extension.to_lowercase().as_str()).then(|| format!("{stem}.shp"))
}

fn ground(files: &[(&str, &[u8])], options: &BringOptions) -> Result<(GroundSource, SourceRecord, Faults), Faults> {
    let reading = match files {
        [(name, bytes)] => read_ground(name, bytes, &options.ground)?,
        tiles => read_tiles(tiles, &options.ground)?,
    };
    let name = group_name(files, options);
    let facts = &reading.facts;
    if known_area(&reading.terrain) <= 0.0 {
        let mut notes = Notes::new(files.first().map_or("", |f| f.0));
        notes.refuse("survey::nothing-known", text::NOTHING_KNOWN, text::DO_DENSER);
        return Err(notes.into_faults());
    }
    let is_cloud = matches!(facts.kind, FileKind::Las | FileKind::Laz);
    let record = SourceRecord {
        file: name.clone(),
        kind: kind_word(facts.kind),
        used: Used::Ground,
        count: facts.points,
        min: facts.min.to_vec(),
        max: facts.max.to_vec(),
        unit: Some(facts.units.horizontal.symbol().to_owned()),
        crs: facts.crs.clone(),
        holds: facts.classes.iter().map(|(class, n)| (class.to_string(), *n)).collect(),
        left_out: [
            ("not-ground", if is_cloud { facts.points.saturating_sub(facts.ground_points) } else { 0 }),
            ("unknown-cells", facts.unknown_cells),
            ("withheld", facts.withheld),
        ]
        .into_iter()
        .filter(|(_, n)| *n > 0)
        .map(|(why, n)| (why.to_owned(), n))
        .collect(),
        notes: reading.notes.list.clone(),
        date: options.date.clone(),
        accuracy: options.accuracy,
    };
    // The horizontal error of a shift is no error of heights on level ground; on a slope it is told with it.
    let accuracy = options.accuracy.unwrap_or(f64::NAN);
    let source = GroundSource { name, terrain: reading.terrain, accuracy, date: options.date.clone() };
    Ok((source, record, reading.notes))
}

/// As the kind is written in records.
fn kind_word(kind: FileKind) -> String {
    serde_json::to_value(kind).ok().and_then(|v| v.as_str().map(str::to_owned)).unwrap_or_default()
}

fn plan_record(
    name: &str,
    reading: &PlanReading,
    placed: &Placed,
    accuracy: f64,
    options: &BringOptions,
) -> SourceRecord {
    let facts = &reading.facts;
    let mut left_out = facts.left_out.clone();
    for (why, n) in &placed.left_out {
        *left_out.entry((*why).to_owned()).or_default() += n;
    }
    for (layer, n) in &placed.unnamed {
        *left_out.entry(format!("layer {layer}")).or_default() += n;
    }
    SourceRecord {
        file: name.to_owned(),
        kind: kind_word(facts.kind),
        used: Used::Plan,
        count: reading.features.len() as u64,
        min: facts.min.to_vec(),
        max: facts.max.to_vec(),
        unit: facts.unit.map(|(unit, _)| unit.symbol().to_owned()),
        crs: facts.crs.clone(),
        holds: facts.layers.clone(),
        left_out,
        notes: reading.notes.list.clone(),
        date: options.date.clone(),
        accuracy: Some(accuracy),
    }
}

/// The name of files that are one surface: in one order, however they were given, with the surface chosen.
fn group_name(files: &[(&str, &[u8])], options: &BringOptions) -> String {
    let mut names: Vec<&str> = files.iter().map(|f| f.0).collect();
    names.sort_unstable();
    let names = names.join(", ");
    match &options.ground.surface {
        Some(surface) if files.len() == 1 => format!("{names} ({surface})"),
        _ => names,
    }
}

/// Ground of which the height is known, m².
pub fn known_area(terrain: &site::Terrain) -> f64 {
    match terrain {
        site::Terrain::Tin(tin) => tin.plan_area(),
        site::Terrain::Grid(grid) => {
            grid.heights.iter().filter(|h| h.is_finite()).count() as f64 * grid.cell.x * grid.cell.y
        }
    }
}

/// The error of the datum shift that reading warned of, m; 0 where there was none.
fn shift_error(notes: &Faults) -> f64 {
    let said = notes.list.iter().filter(|f| f.code == "survey::datums-differ");
    said.filter_map(|f| match f.message.arg("accuracy") {
        Some(evidence::Arg::Quantity(q)) => Some(q.si),
        _ => None,
    })
    .fold(0.0, f64::max)
}

/// Drops the shapes of which no point lies in the window, and counts them.
fn outside_window(reading: &mut PlanReading, options: &BringOptions) -> u64 {
    let Some(window) = options.ground.window else { return 0 };
    let before = reading.features.len();
    let near = |f: &crate::Feature| {
        let mut points = f.shape.points().map(|p| p.at);
        let Some(first) = points.next() else { return false };
        let (low, high) = points.fold((first, first), |(l, h), p| (l.min(p), h.max(p)));
        low.cmple(window.max).all() && high.cmpge(window.min).all()
    };
    reading.features.retain(near);
    (before - reading.features.len()) as u64
}

fn add_things_above(out: &mut Brought, clouds: &[(&str, &[u8])], options: &BringOptions) -> Result<(), Faults> {
    let file = group_name(clouds, options);
    forget(&mut out.stored, &file, Used::Above);
    let Some(ground) = out.stored.site.ground.surfaces.iter().find(|s| s.name == file) else { return Ok(()) };
    let asked = ThingOptions { cloud: options.ground.clone(), ..ThingOptions::default() };
    let mut found = things_above(clouds, &ground.terrain, &asked)?;
    // The clouds were read for their ground before: what was said then is not said again.
    found.notes.list.retain(|note| !out.notes.list.contains(note));
    out.notes.append(found.notes.clone());
    let mut record = SourceRecord {
        file: file.clone(),
        kind: kind_word(FileKind::Las),
        used: Used::Above,
        count: found.things.len() as u64,
        min: Vec::new(),
        max: Vec::new(),
        unit: None,
        crs: None,
        holds: BTreeMap::new(),
        left_out: [("lone-points", found.lone_points)]
            .into_iter()
            .filter(|(_, n)| *n > 0)
            .map(|(why, n)| (why.to_owned(), n))
            .collect(),
        notes: found.notes.list,
        date: options.date.clone(),
        accuracy: options.accuracy,
    };
    for (i, thing) in found.things.iter().enumerate() {
        let votes = thing.votes;
        // Nine of ten: a mast among leaves is classed as leaves, so only buildings are named.
        let kind = if votes.building * 10 > thing.points * 9 { ThingKind::Building } else { ThingKind::Unnamed };
        let Some(columns) = columns(&thing.columns.iter().map(|c| (c.at, c.top)).collect::<Vec<_>>(), asked.cell)
        else {
            continue;
        };
        let id = format!("above {}", i + 1);
        out.stored.site.surroundings.things.push(Thing {
            name: id.clone(),
            id,
            kind,
            body: Body::Columns(columns),
            openings: Vec::new(),
            accuracy: options.accuracy.unwrap_or(0.0).max(asked.cell / 2.0),
            source: format!("{file}:{}", i + 1),
        });
        *record
            .holds
            .entry(if kind == ThingKind::Building { "building" } else { "unnamed" }.to_owned())
            .or_default() += 1;
    }
    out.stored.records.push(record);
    Ok(())
}

/// Cells by their middles as one raster of columns.
fn columns(cells: &[(DVec2, f64)], cell: f64) -> Option<Columns> {
    let first = cells.first()?.0;
    let (low, high) = cells.iter().fold((first, first), |(l, h), (at, _)| (l.min(*at), h.max(*at)));
    let size = ((high - low) / cell).round();
    let (rows, cols) = (size.y as usize + 1, size.x as usize + 1);
    let mut tops = vec![f32::NAN; rows.checked_mul(cols)?];
    for (at, top) in cells {
        let place = ((*at - low) / cell).round();
        let slot = &mut tops[place.y as usize * cols + place.x as usize];
        *slot = if slot.is_nan() { *top as f32 } else { slot.max(*top as f32) };
    }
    Some(Columns { south_west: low - DVec2::splat(cell / 2.0), cell, rows, cols, tops })
}
