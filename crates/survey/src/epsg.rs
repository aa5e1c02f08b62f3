//! Coordinate systems by EPSG code: those whose conversion here was held against PROJ.

use crate::LengthUnit;
use geometry::DVec2;
use serde::Serialize;
use std::fmt;

/// Written by `validation/coordinates/systems.py`; its header says what stands in it. Systems that
/// this program would convert more than 1 cm off PROJ are not in it.
const TABLE: &str = include_str!("epsg_systems.tsv");

/// A coordinate reference system by its code in the EPSG dataset, such as 28992.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
pub struct Epsg(pub u16);

/// One line of the table.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct System {
    pub(crate) code: Epsg,
    /// Length unit of the plane; `None` for longitude and latitude in degrees.
    pub(crate) unit: Option<LengthUnit>,
    pub(crate) area: Area,
    /// Name of the geodetic datum.
    pub(crate) datum: &'static str,
    /// Seven parameters to WGS 84 (position vector: m, arc seconds, parts per million), as PROJ
    /// writes them after `+towgs84=`; `None` where no shift is known without a grid file.
    pub(crate) shift: Option<String>,
    /// How good that shift is, m, as the EPSG dataset says.
    pub(crate) accuracy: Option<f64>,
    /// The projection in metres, as PROJ writes it, without datum and unit.
    pub(crate) projection: &'static str,
    pub(crate) name: &'static str,
}

/// Area of use in degrees; `east` may lie beyond 180.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Area {
    pub(crate) west: f64,
    pub(crate) south: f64,
    pub(crate) east: f64,
    pub(crate) north: f64,
}

impl Area {
    /// True for a longitude and latitude (degrees) in the area, `margin` (degrees east, north) around it too.
    pub(crate) fn contains(&self, at: DVec2, margin: DVec2) -> bool {
        let within = |lon: f64| lon >= self.west - margin.x && lon <= self.east + margin.x;
        let latitude = at.y >= self.south - margin.y && at.y <= self.north + margin.y;
        latitude && (within(at.x) || within(at.x + 360.0) || within(at.x - 360.0))
    }
}

impl Epsg {
    /// The code in a text: `28992`, `EPSG:28992`, `urn:ogc:def:crs:EPSG::28992`,
    /// `http://www.opengis.net/def/crs/EPSG/0/28992`, `RD New (EPSG:28992)`; `CRS84` in any of its
    /// forms is 4326 with longitude first. `None` for anything else.
    pub fn of_text(text: &str) -> Option<Self> {
        let text = text.trim();
        if let Ok(code) = text.parse() {
            return Some(Self(code));
        }
        let upper = text.to_ascii_uppercase();
        if upper.ends_with("CRS84") {
            return Some(Self(4326));
        }
        let after = upper.rsplit_once("EPSG")?.1.trim_end_matches(')');
        let code = after.rsplit([':', '/']).next()?.trim();
        code.parse().ok().map(Self)
    }

    /// Name in the EPSG dataset; `None` for a system that this program does not convert.
    pub fn name(self) -> Option<&'static str> {
        self.system().map(|s| s.name)
    }

    /// True for longitude and latitude; `None` for a system that this program does not convert.
    pub fn is_degrees(self) -> Option<bool> {
        self.system().map(|s| s.unit.is_none())
    }

    /// Code and name, as shown.
    pub(crate) fn words(self) -> String {
        match self.name() {
            Some(name) => format!("{name} ({self})"),
            None => self.to_string(),
        }
    }

    pub(crate) fn system(self) -> Option<System> {
        let line = line_of(self.0)?;
        System::of_line(line)
    }

    /// The system of a name as well-known text writes it, also in the ESRI variety, if one and only one has it.
    pub(crate) fn of_name(name: &str) -> Option<Self> {
        let wanted = plain(name);
        let mut found = TABLE.lines().filter(|l| l.rsplit_once('\t').is_some_and(|(_, n)| plain(n) == wanted));
        let line = found.next().filter(|_| found.next().is_none())?;
        line.split_once('\t')?.0.parse().ok().map(Self)
    }
}

/// The line of a code: lines are in order of their codes, so that the table is halved again and again.
fn line_of(code: u16) -> Option<&'static str> {
    let mut rest = TABLE;
    while let Some(line) = middle_line(rest) {
        let start = line.as_ptr() as usize - rest.as_ptr() as usize;
        match line.split_once('\t').and_then(|(first, _)| first.parse::<u16>().ok()) {
            Some(found) if found == code => return Some(line),
            Some(found) if found > code => rest = &rest[..start],
            // Comments stand at the top, before every code.
            _ => rest = rest[start..].split_once('\n').map_or("", |(_, after)| after),
        }
    }
    None
}

/// The line in which the middle byte of a text lies.
fn middle_line(text: &'static str) -> Option<&'static str> {
    if text.is_empty() {
        return None;
    }
    let bytes = text.as_bytes();
    let middle = bytes.len() / 2;
    let before = bytes[..middle].iter().rposition(|b| *b == b'\n').map_or(0, |at| at + 1);
    let after = bytes[middle..].iter().position(|b| *b == b'\n').map_or(bytes.len(), |at| middle + at);
    text.get(before..after)
}

/// Letters and digits of a name in lower case, with the two spellings of three datums made one.
fn plain(name: &str) -> String {
    let text: String = name.chars().filter(char::is_ascii_alphanumeric).collect::<String>().to_ascii_lowercase();
    let text = text.strip_prefix("gcs").map(str::to_owned).unwrap_or(text);
    let text = text.replace("wgs1984", "wgs84").replace("etrs1989", "etrs89").replace("nad1983", "nad83");
    match text.as_str() {
        "northamerican1983" => "nad83".to_owned(),
        "rdnew" => "amersfoortrdnew".to_owned(),
        "rgf1993lambert93" | "rgf93lambert93" => "rgf93v1lambert93".to_owned(),
        "britishnationalgrid" => "osgb36britishnationalgrid".to_owned(),
        _ => text,
    }
}

impl fmt::Display for Epsg {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "EPSG:{}", self.0)
    }
}

impl System {
    fn of_line(line: &'static str) -> Option<Self> {
        let fields: Vec<&'static str> = line.split('\t').collect();
        let [code, unit, west, south, east, north, datum, shift, accuracy, projection, name] = fields[..] else {
            return None;
        };
        let number = |text: &str| text.parse::<f64>().ok();
        Some(Self {
            code: Epsg(code.parse().ok()?),
            unit: match unit {
                "m" => Some(LengthUnit::Metre),
                "ft" => Some(LengthUnit::Foot),
                "us-ft" => Some(LengthUnit::UsSurveyFoot),
                _ => None,
            },
            area: Area { west: number(west)?, south: number(south)?, east: number(east)?, north: number(north)? },
            datum,
            shift: (shift != "none").then(|| shift.replace(' ', ",")),
            accuracy: number(accuracy),
            projection,
            name,
        })
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "tests")]
    use super::*;

    #[test]
    fn codes_in_their_usual_spellings() {
        for text in [
            "28992",
            " EPSG:28992",
            "epsg:28992",
            "urn:ogc:def:crs:EPSG::28992",
            "urn:ogc:def:crs:EPSG:9.8:28992",
            "http://www.opengis.net/def/crs/EPSG/0/28992",
            "Amersfoort / RD New (EPSG:28992)",
        ] {
            assert_eq!(Epsg::of_text(text), Some(Epsg(28992)), "{text}");
        }
        assert_eq!(Epsg::of_text("urn:ogc:def:crs:OGC:1.3:CRS84"), Some(Epsg(4326)));
        for text in ["", "RD New", "EPSG:", "EPSG:999999", "EPSG:12a", "-5"] {
            assert_eq!(Epsg::of_text(text), None, "{text}");
        }
    }

    #[test]
    fn names_as_other_programs_write_them() {
        for (name, code) in [
            ("GCS_WGS_1984", 4326),
            ("WGS_1984_UTM_Zone_33N", 32633),
            ("ETRS_1989_UTM_Zone_32N", 25832),
            ("NAD_1983_UTM_Zone_18N", 26918),
            ("RD_New", 28992),
            ("RGF_1993_Lambert_93", 2154),
        ] {
            assert_eq!(Epsg::of_name(name), Some(Epsg(code)), "{name}");
        }
        assert_eq!(Epsg::of_name("Site grid"), None);
    }

    #[test]
    fn every_line_of_the_table_can_be_read() {
        let lines: Vec<&str> = TABLE.lines().filter(|l| !l.starts_with('#')).collect();
        assert!(lines.len() > 1000, "{}", lines.len());
        assert!(lines.iter().all(|l| System::of_line(l).is_some_and(|s| s.area.south < s.area.north)));
        assert!(lines.iter().map(|l| System::of_line(l).unwrap().code).is_sorted());
        for line in lines {
            let code = line.split_once('\t').unwrap().0.parse().unwrap();
            assert_eq!(line_of(code), Some(line));
        }
        assert_eq!(line_of(1), None);
        assert_eq!(line_of(u16::MAX), None);
        assert_eq!(line_of(20_000), None);
    }
}
