//! Length units out of a coordinate system in well-known text, versions 1 (OGC 01-009, also in the
//! ESRI variety) and 2 (ISO 19162). Only what names a unit or a kind of system is looked at.

/// What a text says.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Found {
    /// Metres per unit of eastings and northings, each time it is said.
    pub(crate) horizontal: Vec<f64>,
    /// Metres per unit of heights.
    pub(crate) vertical: Vec<f64>,
    /// Longitude and latitude, or earth-centred.
    pub(crate) not_a_plane: bool,
    /// Name of the whole system.
    pub(crate) name: Option<String>,
    /// Name of the plane system, or of longitude and latitude where there is none.
    pub(crate) plane: Option<String>,
    /// EPSG code of that system.
    pub(crate) epsg: Option<u16>,
}

/// Reads a text; `None` if it is not well-known text.
pub(crate) fn read(text: &str) -> Option<Found> {
    let mut parser = Parser { rest: text.trim_matches(['\0', ' ', '\n', '\r', '\t']), nodes: 0 };
    let mut found = Found::default();
    // Some programs write plane and height systems one after the other, parted by a comma.
    loop {
        let root = parser.node(0)?;
        if found.name.is_none() {
            found.name.clone_from(&root.name);
        }
        gather(&root, &mut found);
        parser.rest = parser.rest.trim_start();
        match parser.rest.strip_prefix(',') {
            Some(rest) => parser.rest = rest,
            None => break,
        }
    }
    Some(found)
}

fn gather(node: &Node, found: &mut Found) {
    match node.keyword.as_str() {
        "PROJCS" | "PROJCRS" | "PROJECTEDCRS" | "LOCAL_CS" | "ENGCRS" | "ENGINEERINGCRS" | "DERIVEDPROJCRS" => {
            found.horizontal.extend(units(node));
            identify(node, found);
        }
        "VERT_CS" | "VERTCS" | "VERTCRS" | "VERTICALCRS" => found.vertical.extend(units(node)),
        "GEOGCS" | "GEOGCRS" | "GEOGRAPHICCRS" | "GEODCRS" | "GEODETICCRS" => {
            found.not_a_plane = true;
            identify(node, found);
        }
        "GEOCCS" => found.not_a_plane = true,
        "COMPD_CS" | "COMPOUNDCRS" | "BOUNDCRS" | "SOURCECRS" => {
            for child in &node.children {
                gather(child, found);
            }
        }
        _ => {}
    }
}

fn identify(node: &Node, found: &mut Found) {
    found.plane = found.plane.take().or_else(|| node.name.clone());
    let code = |c: &Node| {
        let by_epsg = c.name.as_deref().is_some_and(|n| n.eq_ignore_ascii_case("EPSG"));
        let code = c.second.as_deref().and_then(|t| t.parse().ok()).or(c.number.map(|n| n as u16));
        code.filter(|_| by_epsg && matches!(c.keyword.as_str(), "AUTHORITY" | "ID"))
    };
    found.epsg = found.epsg.or_else(|| node.children.iter().find_map(code));
}

/// Length units of the node itself and of its axes, not of deeper systems.
fn units(node: &Node) -> Vec<f64> {
    let own = |n: &Node| {
        let is_unit = |c: &&Node| matches!(c.keyword.as_str(), "UNIT" | "LENGTHUNIT");
        n.children.iter().filter(is_unit).filter_map(|c| c.number).collect::<Vec<_>>()
    };
    let mut all = own(node);
    for axis in node.children.iter().filter(|c| c.keyword == "AXIS") {
        all.extend(own(axis));
    }
    all.dedup();
    all
}

/// One bracketed item: `KEYWORD["name", number, CHILD[…], …]`.
#[derive(Debug, Default)]
struct Node {
    keyword: String,
    name: Option<String>,
    /// The second quoted text, such as a code after its authority.
    second: Option<String>,
    number: Option<f64>,
    children: Vec<Node>,
}

struct Parser<'a> {
    rest: &'a str,
    nodes: usize,
}

/// A real text has about 60 nodes, 7 deep.
const MOST_NODES: usize = 4000;
const DEEPEST: usize = 40;

impl Parser<'_> {
    fn node(&mut self, depth: usize) -> Option<Node> {
        self.nodes += 1;
        if depth > DEEPEST || self.nodes > MOST_NODES {
            return None;
        }
        let keyword = self.word()?.to_uppercase();
        self.rest = self.rest.trim_start();
        self.rest = self.rest.strip_prefix(['[', '('])?;
        let mut node = Node { keyword, ..Node::default() };
        loop {
            self.rest = self.rest.trim_start();
            if self.rest.starts_with('"') {
                let text = self.quoted()?;
                if node.name.is_none() {
                    node.name = Some(text);
                } else {
                    node.second.get_or_insert(text);
                }
            } else if self.rest.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '-' | '+' | '.')) {
                let end = self.rest.find([',', ']', ')']).unwrap_or(self.rest.len());
                let value = self.rest[..end].trim().parse().ok();
                node.number = node.number.or(value);
                self.rest = &self.rest[end..];
            } else if self.bracket_follows() {
                node.children.push(self.node(depth + 1)?);
            } else if !self.rest.starts_with([',', ']', ')']) {
                self.word()?;
            }
            self.rest = self.rest.trim_start();
            let mut chars = self.rest.chars();
            let next = chars.next()?;
            self.rest = chars.as_str();
            match next {
                ',' => {}
                ']' | ')' => return Some(node),
                _ => return None,
            }
        }
    }

    fn word(&mut self) -> Option<String> {
        self.rest = self.rest.trim_start();
        let is_word = |c: char| c.is_ascii_alphanumeric() || matches!(c, '_' | ':' | '-' | '.');
        let end = self.rest.find(|c| !is_word(c)).unwrap_or(self.rest.len());
        let (word, rest) = self.rest.split_at(end);
        self.rest = rest;
        (!word.is_empty()).then(|| word.to_owned())
    }

    fn bracket_follows(&self) -> bool {
        let after = self.rest.trim_start_matches(|c: char| c.is_ascii_alphanumeric() || c == '_').trim_start();
        after.starts_with(['[', '(']) && after.len() < self.rest.len()
    }

    /// A quoted text; two quotes inside stand for one.
    fn quoted(&mut self) -> Option<String> {
        let mut text = String::new();
        let mut chars = self.rest.char_indices().skip(1).peekable();
        while let Some((at, c)) = chars.next() {
            if c != '"' {
                text.push(c);
            } else if chars.peek().is_some_and(|&(_, next)| next == '"') {
                chars.next();
                text.push('"');
            } else {
                self.rest = &self.rest[at + 1..];
                return Some(text);
            }
        }
        None
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "tests")]
    use super::*;

    #[test]
    fn plane_and_height_units_are_told_apart() {
        let found = read(
            r#"COMPD_CS["both",PROJCS["plane",GEOGCS["g",UNIT["degree",0.0174]],UNIT["metre",1]],VERT_CS["up",UNIT["US survey foot",0.304800609601219]]]"#,
        )
        .unwrap();
        assert_eq!(found.horizontal, [1.0]);
        assert_eq!(found.vertical, [0.304_800_609_601_219]);
        assert_eq!(found.name.as_deref(), Some("both"));
        assert!(!found.not_a_plane);
    }

    #[test]
    fn version_2_with_units_at_its_axes() {
        let found = read(
            r#"PROJCRS["p",BASEGEOGCRS["b",ELLIPSOID["e",6378137,298.2,LENGTHUNIT["metre",1]]],CS[Cartesian,2],AXIS["(E)",east,ORDER[1],LENGTHUNIT["foot",0.3048]],AXIS["(N)",north,ORDER[2],LENGTHUNIT["foot",0.3048]],ID["EPSG",2994]]"#,
        )
        .unwrap();
        assert_eq!(found.horizontal, [0.3048]);
        assert_eq!((found.epsg, found.plane.as_deref()), (Some(2994), Some("p")));
    }

    #[test]
    fn the_code_of_the_plane_and_not_of_its_parts() {
        let found = read(
            r#"PROJCS["RD",GEOGCS["g",UNIT["degree",0.0174],AUTHORITY["EPSG","4289"]],UNIT["metre",1,AUTHORITY["EPSG","9001"]],AUTHORITY["EPSG","28992"]]"#,
        )
        .unwrap();
        assert_eq!(found.epsg, Some(28992));
        let none = read(r#"PROJCS["RD_New",GEOGCS["g",AUTHORITY["EPSG","4289"]],UNIT["Meter",1.0]]"#).unwrap();
        assert_eq!((none.epsg, none.plane.as_deref()), (None, Some("RD_New")));
    }

    #[test]
    fn degrees_and_broken_texts() {
        assert!(read(r#"GEOGCS["WGS 84",UNIT["degree",0.01745]]"#).unwrap().not_a_plane);
        assert_eq!(read("no text at all"), None);
        assert_eq!(read(&"A[".repeat(100_000)), None);
        assert_eq!(read(r#"PROJCS["open"#), None);
    }
}
