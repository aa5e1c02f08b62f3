//! Arguments of `survey` to what reading asks for; every argument that is wrong is said at once.

use super::text;
use crate::args::SurveyArgs;
use crate::failure::Failure;
use evidence::{Faults, Message, Place};
use geometry::{DVec2, heading_from_degrees};
use quantity::Dimension;
use site::{BuriedKind, Footprint, ThingKind};
use survey::{
    Becomes, BringOptions, Column, Epsg, GroundFilter, GroundOptions, HeightFrom, LayerRule, LengthUnit, LevelColumns,
    LocalGrid, OnlyWhere, Window,
};

/// Kinds as written after a layer's name.
const KINDS: [(&str, Becomes); 24] = [
    ("building", Becomes::Thing(ThingKind::Building)),
    ("wall", Becomes::Thing(ThingKind::Wall)),
    ("fence", Becomes::Thing(ThingKind::Fence)),
    ("scaffold", Becomes::Thing(ThingKind::Scaffold)),
    ("floor", Becomes::Thing(ThingKind::Floor)),
    ("bridge", Becomes::Thing(ThingKind::Bridge)),
    ("tree", Becomes::Thing(ThingKind::Tree)),
    ("mast", Becomes::Thing(ThingKind::Mast)),
    ("plant", Becomes::Thing(ThingKind::Plant)),
    ("store", Becomes::Thing(ThingKind::Store)),
    ("fuel", Becomes::Thing(ThingKind::Fuel)),
    ("truck-bay", Becomes::Thing(ThingKind::TruckBay)),
    ("excavation", Becomes::Excavation),
    ("pipe", Becomes::Buried(BuriedKind::Pipe)),
    ("cable", Becomes::Buried(BuriedKind::Cable)),
    ("culvert", Becomes::Buried(BuriedKind::Culvert)),
    ("tank", Becomes::Buried(BuriedKind::Tank)),
    ("basement", Becomes::Buried(BuriedKind::Basement)),
    ("backfill", Becomes::Buried(BuriedKind::Backfill)),
    ("void", Becomes::Buried(BuriedKind::Void)),
    ("no-go", Becomes::NoGo),
    ("people", Becomes::People),
    ("line", Becomes::Line),
    ("nothing", Becomes::Nothing),
];

/// The word for what a layer became.
pub(super) fn word(becomes: Becomes) -> &'static str {
    if becomes == Becomes::Soft {
        return "soft";
    }
    KINDS.iter().find(|(_, b)| *b == becomes).map_or("unnamed", |(word, _)| word)
}

/// How far plans may be off where nobody says it, m (common practice: a set-out or digitised outline).
const PLAN_ACCURACY: f64 = 0.10;

/// What the arguments say.
///
/// # Errors
/// Every argument that cannot be understood.
pub(super) fn options(args: &SurveyArgs) -> Result<BringOptions, Failure> {
    let mut wrong = Faults::default();
    let mut read = Read { wrong: &mut wrong };
    let options = BringOptions {
        ground: GroundOptions {
            units: read.unit("--file-units", args.file_units.as_deref()),
            height_units: read.unit("--file-height-units", args.file_height_units.as_deref()),
            file_crs: read.epsg("--file-crs", args.file_crs.as_deref()),
            site_crs: read.epsg("--site-crs", args.site_crs.as_deref()),
            local: read.local(args.shift.as_deref(), args.turn.as_deref()),
            columns: read.columns(args.columns.as_deref()),
            longest_edge: read.length("--longest-edge", args.longest_edge.as_deref()),
            window: read.window(args.window.as_deref()),
            surface: args.surface.clone(),
            survey_points: args.survey_points,
            layers: (!args.ground_layer.is_empty()).then(|| args.ground_layer.clone()),
            ground_filter: args.filter_ground.then(GroundFilter::default),
            ..GroundOptions::default()
        },
        accuracy: read.accuracy(args.accuracy.as_deref()),
        plan_accuracy: read.length("--plan-accuracy", args.plan_accuracy.as_deref()).unwrap_or(PLAN_ACCURACY),
        date: read.date(args.date.as_deref()),
        rules: args.layer.iter().filter_map(|rule| read.rule(rule)).collect(),
        above: args.above,
        as_ground: args.as_ground || args.survey_points || !args.ground_layer.is_empty(),
    };
    if wrong.any_error() { Err(Failure::new(wrong, args.said)) } else { Ok(options) }
}

/// The footprints of which the ground is asked for.
///
/// # Errors
/// Every argument of them that cannot be understood.
pub(super) fn footprints(args: &SurveyArgs) -> Result<Vec<Footprint>, Failure> {
    let mut wrong = Faults::default();
    let mut read = Read { wrong: &mut wrong };
    let heading = args.heading.as_deref().and_then(|value| read.heading(value));
    let size = args.footprint.as_deref().and_then(|value| read.size(value));
    let places: Vec<Option<DVec2>> = args.at.iter().map(|value| read.place(value)).collect();
    if wrong.any_error() {
        return Err(Failure::new(wrong, args.said));
    }
    let Some((heading, size)) = heading.zip(size) else { return Ok(Vec::new()) };
    let one = |at| Footprint { at, heading, length: size.x, width: size.y };
    Ok(places.into_iter().flatten().map(one).collect())
}

struct Read<'a> {
    wrong: &'a mut Faults,
}

impl Read<'_> {
    fn bad<T>(&mut self, argument: &str, value: &str, hint: Message) -> Option<T> {
        let message = text::BAD_ARGUMENT.with("argument", argument).with("value", value);
        self.wrong.error("cli::bad-argument", Place::default(), message, Some(hint));
        None
    }

    fn length(&mut self, argument: &str, value: Option<&str>) -> Option<f64> {
        let value = value?;
        match length(value).filter(|l| *l >= 0.0) {
            Some(si) => Some(si),
            None => self.bad(argument, value, text::HINT_LENGTH.message()),
        }
    }

    /// No survey is exact, and none that is 10 m off says anything of slopes.
    fn accuracy(&mut self, value: Option<&str>) -> Option<f64> {
        let value = value?;
        match length(value).filter(|l| *l > 0.0 && *l <= 10.0) {
            Some(si) => Some(si),
            None => self.bad("--accuracy", value, text::HINT_ACCURACY.message()),
        }
    }

    fn date(&mut self, value: Option<&str>) -> Option<String> {
        let value = value?;
        if jobfile::is_date(value) {
            return Some(value.to_owned());
        }
        self.bad("--date", value, text::HINT_DATE.message())
    }

    fn unit(&mut self, argument: &str, value: Option<&str>) -> Option<LengthUnit> {
        let value = value?;
        LengthUnit::of_name(value).or_else(|| self.bad(argument, value, text::HINT_UNITS.message()))
    }

    fn epsg(&mut self, argument: &str, value: Option<&str>) -> Option<Epsg> {
        let value = value?;
        let found = Epsg::of_text(value).or_else(|| value.trim().parse().ok().map(Epsg));
        found.or_else(|| self.bad(argument, value, text::HINT_EPSG.message()))
    }

    fn local(&mut self, shift: Option<&str>, turn: Option<&str>) -> Option<LocalGrid> {
        if shift.is_none() && turn.is_none() {
            return None;
        }
        let at = match shift {
            None => Some(DVec2::ZERO),
            Some(value) => pair(value).or_else(|| self.bad("--shift", value, text::HINT_SHIFT.message())),
        };
        let rotation = match turn {
            None => Some(0.0),
            Some(value) => quantity::parse(value, Dimension::Angle)
                .ok()
                .map(|q| q.si)
                .or_else(|| self.bad("--turn", value, text::HINT_SHIFT.message())),
        };
        Some(LocalGrid { rotation: rotation?, scale: 1.0, shift: at? })
    }

    fn place(&mut self, value: &str) -> Option<DVec2> {
        pair(value).filter(|at| at.is_finite()).or_else(|| self.bad("--at", value, text::HINT_UNDER.message()))
    }

    fn heading(&mut self, value: &str) -> Option<f64> {
        let read = quantity::parse(value, Dimension::Angle).ok().map(|q| heading_from_degrees(q.si.to_degrees()));
        read.filter(|angle| angle.is_finite()).or_else(|| self.bad("--heading", value, text::HINT_UNDER.message()))
    }

    fn size(&mut self, value: &str) -> Option<DVec2> {
        let sides = value.split_once(['x', '×']).and_then(|(a, b)| Some(DVec2::new(length(a)?, length(b)?)));
        // A side of less than a pad, or of more than a site, is a slip of the unit.
        sides
            .filter(|s| s.min_element() >= 0.05 && s.max_element() <= 100.0)
            .or_else(|| self.bad("--footprint", value, text::HINT_UNDER.message()))
    }

    fn window(&mut self, value: Option<&str>) -> Option<Window> {
        let value = value?;
        let parts: Vec<f64> = value.split(',').filter_map(length).collect();
        match parts[..] {
            [west, south, east, north] if value.split(',').count() == 4 && west < east && south < north => {
                Some(Window { min: DVec2::new(west, south), max: DVec2::new(east, north) })
            }
            _ => self.bad("--window", value, text::HINT_WINDOW.message()),
        }
    }

    fn columns(&mut self, value: Option<&str>) -> Option<LevelColumns> {
        let value = value?;
        let mut found = [None, None, None, None];
        for part in value.split(',') {
            let named = part.split_once('=').and_then(|(key, column)| {
                let place = ["east", "north", "height", "point"].iter().position(|k| *k == key.trim())?;
                Some((place, column.trim()))
            });
            let Some((place, column)) = named.filter(|(_, c)| !c.is_empty()) else {
                return self.bad("--columns", value, text::HINT_COLUMNS.message());
            };
            found[place] = Some(match column.parse() {
                Ok(number) => Column::Number(number),
                Err(_) => Column::Name(column.to_owned()),
            });
        }
        let [Some(east), Some(north), Some(height), point] = found else {
            return self.bad("--columns", value, text::HINT_COLUMNS.message());
        };
        Some(LevelColumns { point, east, north, height })
    }

    /// `NAME=KIND[,where=ATTRIBUTE=VALUE][,height=…][,level=…][,attribute=…][,width=…]`.
    fn rule(&mut self, written: &str) -> Option<LayerRule> {
        let kinds = KINDS.iter().map(|(w, _)| *w).chain(["soft"]).collect::<Vec<_>>().join(", ");
        let hint = || text::HINT_LAYER.with("kinds", &kinds);
        let Some((layer, rest)) = written.split_once('=') else { return self.bad("--layer", written, hint()) };
        let mut parts = rest.split(',').map(str::trim);
        let kind = parts.next().unwrap_or_default();
        let becomes = if kind == "soft" {
            Some(Becomes::Soft)
        } else {
            KINDS.iter().find(|(word, _)| *word == kind).map(|(_, b)| *b)
        };
        let Some(becomes) = becomes else { return self.bad("--layer", written, hint()) };
        let layer = layer.trim().to_owned();
        let mut rule = LayerRule { layer, only: None, becomes, height: HeightFrom::Unknown, width: None };
        for part in parts {
            let understood = match part.split_once('=') {
                Some(("height", "shape")) => {
                    rule.height = HeightFrom::Shape;
                    true
                }
                Some(("height", h)) => length(h).filter(|h| *h > 0.0).is_some_and(|h| {
                    rule.height = HeightFrom::AboveGround(h);
                    true
                }),
                Some(("level", l)) => length(l).is_some_and(|l| {
                    rule.height = HeightFrom::Level(l);
                    true
                }),
                Some(("attribute", name)) => {
                    let (name, unit) = match name.trim().rsplit_once(' ') {
                        Some((name, unit)) if LengthUnit::of_name(unit).is_some() => (name, LengthUnit::of_name(unit)),
                        _ => (name, Some(LengthUnit::Metre)),
                    };
                    let metres = unit.map_or(1.0, LengthUnit::metres);
                    rule.height = HeightFrom::Attribute { name: name.trim().to_owned(), metres };
                    !name.trim().is_empty()
                }
                Some(("where", said)) => said.split_once('=').is_some_and(|(attribute, value)| {
                    let (attribute, value) = (attribute.trim().to_owned(), value.trim().to_owned());
                    let named = !attribute.is_empty();
                    rule.only = Some(OnlyWhere { attribute, value });
                    named
                }),
                Some(("width", w)) => length(w).filter(|w| *w > 0.0).is_some_and(|w| {
                    rule.width = Some(w);
                    true
                }),
                _ => false,
            };
            if !understood {
                return self.bad("--layer", written, hint());
            }
        }
        Some(rule)
    }
}

/// A length with its unit, m.
fn length(text: &str) -> Option<f64> {
    quantity::parse(text.trim(), Dimension::Length).ok().map(|q| q.si)
}

fn pair(text: &str) -> Option<DVec2> {
    let (east, north) = text.split_once(',')?;
    Some(DVec2::new(length(east)?, length(north)?))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "tests")]
    use super::*;

    #[test]
    fn layer_rules_as_people_write_them() {
        let mut wrong = Faults::default();
        let mut read = Read { wrong: &mut wrong };
        let rule = read.rule("A-WALL*=wall,height=6 m,width=0.2 m").unwrap();
        assert_eq!((rule.layer.as_str(), rule.becomes), ("A-WALL*", Becomes::Thing(ThingKind::Wall)));
        assert_eq!((rule.height, rule.width), (HeightFrom::AboveGround(6.0), Some(0.2)));
        let rule = read.rule("b=building,attribute=HEIGHT ft").unwrap();
        assert_eq!(rule.height, HeightFrom::Attribute { name: "HEIGHT".into(), metres: 0.3048 });
        let rule = read.rule("paths=fence,where=barrier=Wire fence,height=2 m").unwrap();
        assert_eq!(rule.only, Some(OnlyWhere { attribute: "barrier".into(), value: "Wire fence".into() }));
        assert_eq!(rule.height, HeightFrom::AboveGround(2.0));
        for bad in [
            "A-WALL",
            "A=wall,where=type",
            "A=wall,where==fence",
            "A=castle",
            "A=wall,height=6",
            "A=wall,high=6 m",
            "A=wall,height=-2 m",
        ] {
            assert!(read.rule(bad).is_none(), "{bad}");
        }
        assert_eq!(wrong.list.len(), 7);
    }
}
