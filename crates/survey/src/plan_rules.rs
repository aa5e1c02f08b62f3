//! What a layer of a plan file stands for: as stated, or guessed from its name and said so.

use crate::{Attribute, Feature};
use site::{BuriedKind, ThingKind};

/// What becomes of the shapes of a layer.
#[derive(Debug, Clone, PartialEq)]
pub struct LayerRule {
    /// Name of the layer; case does not count. A star at the end stands for anything.
    pub layer: String,
    /// Only those of its shapes of which an attribute says this; `None`: all.
    pub only: Option<OnlyWhere>,
    /// What its shapes are.
    pub becomes: Becomes,
    /// How high they are.
    pub height: HeightFrom,
    /// Width of lines and twice the radius of points, m; `None`: lines 0.30 m, points are left out.
    pub width: Option<f64>,
}

/// Shapes told apart by what an attribute of theirs says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OnlyWhere {
    /// Name of the attribute; case does not count.
    pub attribute: String,
    /// What it says; case does not count, numbers are compared as numbers, and a star at the end stands for
    /// anything. Empty: the shapes whose attribute is empty or not there.
    pub value: String,
}

/// What a shape of a plan is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Becomes {
    /// Something that stands on the site.
    Thing(ThingKind),
    /// An excavation.
    Excavation,
    /// Something in the ground.
    Buried(BuriedKind),
    /// A zone that no machine enters.
    NoGo,
    /// Where people walk or work.
    People,
    /// Soft ground.
    Soft,
    /// The course of an overhead line.
    Line,
    /// Nothing: left out on purpose.
    Nothing,
}

/// How high the things of a layer are.
#[derive(Debug, Clone, PartialEq)]
pub enum HeightFrom {
    /// Not known.
    Unknown,
    /// All of them so much above the highest ground at their outline, m.
    AboveGround(f64),
    /// All of them up to this level, m.
    Level(f64),
    /// Each as its attribute says, in so many metres a unit, above the highest ground at its outline.
    Attribute {
        /// Name of the attribute; case does not count.
        name: String,
        /// Metres in its unit.
        metres: f64,
    },
    /// The heights that the shape itself has are its top.
    Shape,
}

impl LayerRule {
    /// True if it speaks of this shape.
    pub fn speaks_of(&self, feature: &Feature) -> bool {
        fits(&self.layer, &feature.layer) && self.only.as_ref().is_none_or(|only| only.holds_for(feature))
    }
}

impl OnlyWhere {
    fn holds_for(&self, feature: &Feature) -> bool {
        let wanted = self.attribute.to_lowercase();
        let found = feature.attributes.iter().find(|(name, _)| name.to_lowercase() == wanted);
        match found.map_or(&Attribute::Nothing, |(_, value)| value) {
            Attribute::Text(text) => fits(&self.value, text.trim()),
            Attribute::Number(number) => match self.value.trim().parse::<f64>() {
                Ok(value) => value == *number,
                Err(_) => self.value == "*",
            },
            Attribute::YesNo(yes) => fits(&self.value, if *yes { "true" } else { "false" }),
            Attribute::Nothing => self.value.is_empty(),
        }
    }
}

/// Case does not count; a star at the end of `wanted` stands for anything.
fn fits(wanted: &str, found: &str) -> bool {
    let (wanted, found) = (wanted.to_lowercase(), found.to_lowercase());
    match wanted.strip_suffix('*') {
        Some(start) => found.starts_with(start),
        None => found == wanted,
    }
}

/// Words in the names of layers and files, and what they stand for; the first that fits counts. English,
/// Spanish, German, French and Dutch words that drawings use (common practice).
const WORDS: &[(&[&str], Becomes)] = &[
    (&["powerline", "power", "overhead", "tendido", "freileitung", "conductor"], Becomes::Line),
    (&["excavation", "trench", "zanja", "excavacion", "baugrube", "graben"], Becomes::Excavation),
    (&["scaffold", "andamio", "geruest", "gerüst", "echafaudage", "steiger"], Becomes::Thing(ThingKind::Scaffold)),
    (
        &["building", "edificio", "gebaeude", "gebäude", "batiment", "bâtiment", "pand"],
        Becomes::Thing(ThingKind::Building),
    ),
    (&["bridge", "puente", "bruecke", "brücke", "pont"], Becomes::Thing(ThingKind::Bridge)),
    (&["fence", "hoarding", "barrier", "valla", "cerca", "zaun", "cloture"], Becomes::Thing(ThingKind::Fence)),
    (&["wall", "muro", "mauer", "wand"], Becomes::Thing(ThingKind::Wall)),
    (&["tree", "arbol", "árbol", "baum", "arbre", "boom"], Becomes::Thing(ThingKind::Tree)),
    (&["mast", "crane", "grua", "grúa", "kran", "tower", "pole"], Becomes::Thing(ThingKind::Mast)),
    (&["fuel", "combustible", "tank"], Becomes::Thing(ThingKind::Fuel)),
    (&["footpath", "sidewalk", "acera", "gehweg", "trottoir"], Becomes::People),
    (&["water", "agua", "wasser", "canal"], Becomes::NoGo),
];

/// What a layer's name suggests; a suggestion that is shown to the user as one.
pub fn guess(layer: &str) -> Option<Becomes> {
    let name = layer.to_lowercase();
    WORDS.iter().find(|(words, _)| words.iter().any(|w| name.contains(w))).map(|(_, b)| *b)
}

/// Attributes that usually hold a height above ground in metres, lower case.
pub(crate) const HEIGHT_NAMES: [&str; 6] = ["height", "hoogte", "hoehe", "höhe", "altura", "hauteur"];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_of_layers_say_what_they_hold() {
        let thing = |k| Some(Becomes::Thing(k));
        assert_eq!(guess("SITE-BUILDINGS"), thing(ThingKind::Building));
        assert_eq!(guess("A-WALL"), thing(ThingKind::Wall));
        assert_eq!(guess("delft_barriers_epsg28992"), thing(ThingKind::Fence));
        assert_eq!(guess("bayreuth_window_400m_power_epsg25832"), Some(Becomes::Line));
        assert_eq!(guess("0"), None);
        assert_eq!(guess("SITE-ROADS"), None);
    }

    #[test]
    fn a_rule_speaks_of_its_layer_and_with_a_star_of_many() {
        let speaks = |rule: &str, layer: &str| rule_of(rule, None).speaks_of(&feature(layer, &[]));
        assert!(speaks("a-wall", "A-WALL") && !speaks("a-wall", "A-WALL-2"));
        assert!(speaks("a-*", "A-WALL") && speaks("*", ""));
    }

    #[test]
    fn shapes_of_one_layer_are_told_apart_by_an_attribute() {
        let shape = feature(
            "paths",
            &[
                ("Barrier", Attribute::Text("Wire fence".into())),
                ("lanes", Attribute::Number(2.0)),
                ("lit", Attribute::YesNo(true)),
                ("note", Attribute::Nothing),
            ],
        );
        let holds = |attribute, value| rule_of("paths", Some((attribute, value))).speaks_of(&shape);
        for (attribute, value) in [
            ("barrier", "wire FENCE"),
            ("barrier", "wire*"),
            ("lanes", "2.0"),
            ("lit", "true"),
            ("note", ""),
            ("none", ""),
        ] {
            assert!(holds(attribute, value), "{attribute}={value}");
        }
        for (attribute, value) in
            [("barrier", "fence"), ("barrier", ""), ("lanes", "3"), ("lanes", ""), ("lit", "false"), ("none", "*")]
        {
            assert!(!holds(attribute, value), "{attribute}={value}");
        }
        assert!(!rule_of("roads", Some(("lit", "true"))).speaks_of(&shape), "of another layer");
    }

    fn rule_of(layer: &str, only: Option<(&str, &str)>) -> LayerRule {
        let only = only.map(|(attribute, value)| OnlyWhere { attribute: attribute.into(), value: value.into() });
        let height = HeightFrom::Unknown;
        LayerRule { layer: layer.into(), only, becomes: Becomes::Nothing, height, width: None }
    }

    fn feature(layer: &str, attributes: &[(&str, Attribute)]) -> Feature {
        Feature {
            layer: layer.into(),
            name: None,
            shape: crate::Shape::Line(Vec::new()),
            attributes: attributes.iter().map(|(name, value)| ((*name).to_owned(), value.clone())).collect(),
            place: 1,
        }
    }
}
