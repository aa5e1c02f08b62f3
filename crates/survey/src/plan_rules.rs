//! What a layer of a plan file stands for: as stated, or guessed from its name and said so.

use site::{BuriedKind, ThingKind};

/// What becomes of the shapes of a layer.
#[derive(Debug, Clone, PartialEq)]
pub struct LayerRule {
    /// Name of the layer; case does not count. A star at the end stands for anything.
    pub layer: String,
    /// What its shapes are.
    pub becomes: Becomes,
    /// How high they are.
    pub height: HeightFrom,
    /// Width of lines and twice the radius of points, m; `None`: lines 0.30 m, points are left out.
    pub width: Option<f64>,
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
    /// True if it speaks of this layer.
    pub fn speaks_of(&self, layer: &str) -> bool {
        let (wanted, layer) = (self.layer.to_lowercase(), layer.to_lowercase());
        match wanted.strip_suffix('*') {
            Some(start) => layer.starts_with(start),
            None => layer == wanted,
        }
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
        let rule = |layer: &str| LayerRule {
            layer: layer.into(),
            becomes: Becomes::Nothing,
            height: HeightFrom::Unknown,
            width: None,
        };
        assert!(rule("a-wall").speaks_of("A-WALL") && !rule("a-wall").speaks_of("A-WALL-2"));
        assert!(rule("a-*").speaks_of("A-WALL") && rule("*").speaks_of(""));
    }
}
