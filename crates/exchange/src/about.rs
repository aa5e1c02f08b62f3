//! What a file says about itself.

use crate::text;
use evidence::{Message, TextId};
use quantity::metres;
use site::Ground;
use wording::{Wording, ui};

/// How high something is drawn whose height is not known, m above its base or the ground (ours).
pub const DRAWN_HEIGHT: f64 = 3.0;

/// What the caller knows about the data beyond the site itself.
#[derive(Debug, Clone, Default)]
pub struct About {
    /// Language and units of the notes and of what stands after names.
    pub wording: Wording,
    /// True for invented data: every file says so.
    pub invented: bool,
    /// Whose data these are, each a line, in the owner's words.
    pub attribution: Vec<String>,
}

/// Formats that are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Format {
    /// GeoJSON in the site's own coordinates.
    GeoJson,
    /// DXF, ASCII, version R2000.
    Dxf,
    /// glTF 2.0, binary.
    Gltf,
}

impl Format {
    /// Every one.
    pub const ALL: [Self; 3] = [Self::GeoJson, Self::Dxf, Self::Gltf];

    /// Usual ending of a file name, without the dot.
    pub fn extension(self) -> &'static str {
        match self {
            Self::GeoJson => "geojson",
            Self::Dxf => "dxf",
            Self::Gltf => "glb",
        }
    }

    /// The format of that ending, in any case.
    pub fn of_extension(extension: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|f| extension.eq_ignore_ascii_case(f.extension()))
    }
}

/// The notes that every file carries, in the words of the reader.
pub(crate) fn notes(about: &About, epsg: Option<u32>, ground: &Ground) -> Vec<String> {
    let say = |m: Message| about.wording.render(&m);
    let mut out = vec![
        say(text::NOTE_WRITTEN_BY.with("version", env!("CARGO_PKG_VERSION"))),
        say(text::NOTE_NOT_SETTING_OUT.message()),
    ];
    if about.invented {
        out.push(say(text::NOTE_INVENTED.message()));
    }
    out.push(match epsg {
        // As text: a code has no thousands.
        Some(code) => say(text::NOTE_EPSG.with("code", code.to_string())),
        None => say(text::NOTE_SITE_GRID.message()),
    });
    out.push(say(text::NOTE_NOT_KNOWN.with("height", metres(DRAWN_HEIGHT))));
    for s in &ground.surfaces {
        let named = text::NOTE_GROUND.with("name", s.name.as_str()).with("accuracy", metres(s.accuracy));
        out.push(say(match &s.date {
            Some(date) => named.with("date", date),
            None => named.with("date", ui::NOT_KNOWN),
        }));
    }
    out.extend(about.attribution.iter().map(|a| say(text::NOTE_ATTRIBUTION.with("text", a))));
    out
}

/// A name with what is not known of the thing behind it.
pub(crate) fn named(about: &About, name: &str, doubts: &[TextId]) -> String {
    doubts.iter().fold(name.to_owned(), |so_far, doubt| format!("{so_far} {}", about.wording.text(*doubt)))
}
