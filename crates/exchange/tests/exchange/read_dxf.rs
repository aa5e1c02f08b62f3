//! Reads what our DXF files hold: entities with their group codes. Refuses what a reader of the format would.
#![allow(dead_code, reason = "shared by tests and the example that writes the files; each uses a part")]

/// An entity: its kind, its pairs; vertices of a polyline in space follow it as its own.
#[derive(Debug, Clone)]
pub(crate) struct Entity {
    pub(crate) kind: String,
    pub(crate) pairs: Vec<(u32, String)>,
}

impl Entity {
    pub(crate) fn text(&self, code: u32) -> Option<&str> {
        self.pairs.iter().find(|(c, _)| *c == code).map(|(_, v)| v.as_str())
    }
    pub(crate) fn number(&self, code: u32) -> Option<f64> {
        self.text(code).map(|v| v.parse().unwrap())
    }
    pub(crate) fn all(&self, code: u32) -> Vec<f64> {
        self.pairs.iter().filter(|(c, _)| *c == code).map(|(_, v)| v.parse().unwrap()).collect()
    }
    pub(crate) fn layer(&self) -> &str {
        self.text(8).unwrap()
    }
    pub(crate) fn tag(&self, name: &str) -> Option<&str> {
        let start = format!("{name}=");
        self.pairs.iter().filter(|(c, _)| *c == 1000).find_map(|(_, v)| v.strip_prefix(start.as_str()))
    }
    pub(crate) fn is_closed(&self) -> bool {
        self.number(70).is_some_and(|f| f as i64 & 1 == 1)
    }
    /// Area of a closed polyline in a level.
    pub(crate) fn area(&self) -> f64 {
        let (x, y) = (self.all(10), self.all(20));
        let n = x.len();
        let cross = |i: usize| {
            let j = (i + 1) % n;
            (x[i] - x[0]) * (y[j] - y[0]) - (x[j] - x[0]) * (y[i] - y[0])
        };
        ((0..n).map(cross).sum::<f64>() * 0.5).abs()
    }
}

pub(crate) struct Drawing {
    pub(crate) header: Vec<(u32, String)>,
    pub(crate) layers: Vec<String>,
    pub(crate) entities: Vec<Entity>,
}

impl Drawing {
    pub(crate) fn of(&self, kind: &str, layer: &str) -> Vec<&Entity> {
        self.entities.iter().filter(|e| e.kind == kind && e.layer() == layer).collect()
    }
    pub(crate) fn count(&self, kind: &str) -> usize {
        self.entities.iter().filter(|e| e.kind == kind).count()
    }
}

pub(crate) fn pairs(bytes: &[u8]) -> Vec<(u32, String)> {
    assert!(bytes.is_ascii(), "DXF of this version is ASCII");
    let text = std::str::from_utf8(bytes).unwrap();
    let lines: Vec<&str> = text.strip_suffix('\n').unwrap().split('\n').collect();
    assert_eq!(lines.len() % 2, 0, "a group code without a value");
    lines.chunks(2).map(|pair| (pair[0].trim().parse().unwrap(), pair[1].to_owned())).collect()
}

pub(crate) fn read(bytes: &[u8]) -> Drawing {
    let pairs = pairs(bytes);
    assert!(pairs.iter().all(|(_, v)| v.len() <= 255), "a value too long for the format");
    assert_eq!(pairs.last().unwrap(), &(0, "EOF".to_owned()));
    let section = |name: &str| -> Vec<(u32, String)> {
        let start = pairs.windows(2).position(|w| w[0] == (0, "SECTION".into()) && w[1] == (2, name.into())).unwrap();
        pairs[start + 2..].iter().take_while(|p| **p != (0, "ENDSEC".to_owned())).cloned().collect()
    };
    let entities = split(&section("ENTITIES"));
    let handles: Vec<&str> = entities.iter().map(|e| e.text(5).unwrap()).collect();
    let unique: std::collections::BTreeSet<&str> = handles.iter().copied().collect();
    assert_eq!(unique.len(), handles.len(), "a handle used twice");
    let records = split(&section("TABLES"));
    let layers = records.iter().filter(|r| r.kind == "LAYER").map(|r| r.text(2).unwrap().to_owned()).collect();
    Drawing { header: section("HEADER"), layers, entities }
}

fn split(pairs: &[(u32, String)]) -> Vec<Entity> {
    let mut out: Vec<Entity> = Vec::new();
    for (code, value) in pairs {
        if *code == 0 {
            out.push(Entity { kind: value.clone(), pairs: Vec::new() });
        } else {
            out.last_mut().unwrap().pairs.push((*code, value.clone()));
        }
    }
    out
}
