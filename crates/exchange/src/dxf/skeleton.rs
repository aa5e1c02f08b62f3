//! What stands around the entities: header, tables, blocks, objects.

use super::entities::{APPLICATION, Entities, FIRST_HANDLE, MODEL_SPACE, number, pair};
use super::words::pieces;
use crate::layer::Layer;
use geometry::DVec3;
use std::collections::BTreeSet;

const PAPER_SPACE: u32 = 0x1B;
const DICTIONARY: u32 = 0xC;
const GROUPS: u32 = 0xD;
/// First handle of a layer; there are fewer layers than lie between this and the first entity.
const FIRST_LAYER: u32 = 0x80;

/// Handle, name and pairs of its own.
type Record = (u32, String, Vec<(u32, String)>);

/// A table: its name, its handle, the class of its records, the records.
struct Table<'a> {
    name: &'a str,
    handle: u32,
    class: &'a str,
    records: Vec<Record>,
}

/// The whole file, with `comments` before it.
pub(super) fn file(entities: &Entities, layers: &BTreeSet<Layer>, comments: &[String]) -> String {
    let mut out = String::with_capacity(entities.text.len() + 8000);
    for piece in comments.iter().flat_map(|line| pieces(line)) {
        pair(&mut out, 999, piece);
    }
    let (low, high) = entities.extent.unwrap_or((DVec3::ZERO, DVec3::ZERO));
    header(&mut out, low, high, FIRST_HANDLE + entities.count);
    section(&mut out, "CLASSES", |_| {});
    section(&mut out, "TABLES", |out| tables(out, layers, low, high));
    section(&mut out, "BLOCKS", |out| {
        block(out, "*Model_Space", MODEL_SPACE, 0x20);
        block(out, "*Paper_Space", PAPER_SPACE, 0x1C);
    });
    section(&mut out, "ENTITIES", |out| out.push_str(&entities.text));
    section(&mut out, "OBJECTS", |out| {
        dictionary(out, DICTIONARY, 0);
        pair(out, 3, "ACAD_GROUP");
        pair(out, 350, format!("{GROUPS:X}"));
        dictionary(out, GROUPS, DICTIONARY);
    });
    pair(&mut out, 0, "EOF");
    out
}

fn section(out: &mut String, name: &str, content: impl FnOnce(&mut String)) {
    pair(out, 0, "SECTION");
    pair(out, 2, name);
    content(out);
    pair(out, 0, "ENDSEC");
}

fn header(out: &mut String, low: DVec3, high: DVec3, next_handle: u32) {
    section(out, "HEADER", |out| {
        let mut variable = |name: &str, pairs: &[(u32, String)]| {
            pair(out, 9, name);
            for (code, value) in pairs {
                pair(out, *code, value);
            }
        };
        let point = |p: DVec3| [(10, number(p.x)), (20, number(p.y)), (30, number(p.z))];
        variable("$ACADVER", &[(1, "AC1015".into())]);
        variable("$DWGCODEPAGE", &[(3, "ANSI_1252".into())]);
        variable("$INSBASE", &point(DVec3::ZERO));
        variable("$EXTMIN", &point(low));
        variable("$EXTMAX", &point(high));
        // Metres; metric; decimal numbers.
        variable("$INSUNITS", &[(70, "6".into())]);
        variable("$MEASUREMENT", &[(70, "1".into())]);
        variable("$LUNITS", &[(70, "2".into())]);
        variable("$HANDSEED", &[(5, format!("{next_handle:X}"))]);
    });
}

fn tables(out: &mut String, layers: &BTreeSet<Layer>, low: DVec3, high: DVec3) {
    let middle = (low + high) * 0.5;
    let tall = (high.y - low.y).max((high.x - low.x) / 1.5).max(1.0) * 1.1;
    let view = [
        (70, "0".to_owned()),
        (10, number(0.0)),
        (20, number(0.0)),
        (11, number(1.0)),
        (21, number(1.0)),
        (12, number(middle.x)),
        (22, number(middle.y)),
        (13, number(0.0)),
        (23, number(0.0)),
        (14, number(1.0)),
        (24, number(1.0)),
        (15, number(0.0)),
        (25, number(0.0)),
        (16, number(0.0)),
        (26, number(0.0)),
        (36, number(1.0)),
        (17, number(0.0)),
        (27, number(0.0)),
        (37, number(0.0)),
        (40, number(tall)),
        (41, number(1.5)),
        (42, number(50.0)),
        (43, number(0.0)),
        (44, number(0.0)),
        (50, number(0.0)),
        (51, number(0.0)),
        (71, "0".to_owned()),
        (72, "100".to_owned()),
        (73, "1".to_owned()),
        (74, "1".to_owned()),
        (75, "0".to_owned()),
        (76, "0".to_owned()),
        (77, "0".to_owned()),
        (78, "0".to_owned()),
    ];
    table(out, &one("VPORT", 0x8, "AcDbViewportTableRecord", vec![(0x2E, "*ACTIVE".into(), view.into())]));
    let solid = |handle: u32, name: &str| {
        let pairs = vec![
            (70, "0".to_owned()),
            (3, String::new()),
            (72, "65".to_owned()),
            (73, "0".to_owned()),
            (40, number(0.0)),
        ];
        (handle, name.to_owned(), pairs)
    };
    let types = vec![solid(0x14, "ByBlock"), solid(0x15, "ByLayer"), solid(0x16, "Continuous")];
    table(out, &one("LTYPE", 0x5, "AcDbLinetypeTableRecord", types));
    let layer = |handle: u32, name: &str, colour: u8| {
        let pairs = vec![(70, "0".to_owned()), (62, colour.to_string()), (6, "Continuous".to_owned())];
        (handle, name.to_owned(), pairs)
    };
    let own = layers.iter().zip(FIRST_LAYER..).map(|(l, handle)| layer(handle, l.name, l.number));
    let records = std::iter::once(layer(0x10, "0", 7)).chain(own).collect();
    table(out, &one("LAYER", 0x2, "AcDbLayerTableRecord", records));
    // A face with letters of most scripts; a tool that lacks it takes another.
    let style = vec![
        (70, "0".to_owned()),
        (40, number(0.0)),
        (41, number(1.0)),
        (50, number(0.0)),
        (71, "0".to_owned()),
        (42, number(0.5)),
        (3, "arial.ttf".to_owned()),
        (4, String::new()),
    ];
    table(out, &one("STYLE", 0x3, "AcDbTextStyleTableRecord", vec![(0x11, "Standard".into(), style)]));
    table(out, &one("VIEW", 0x6, "", Vec::new()));
    table(out, &one("UCS", 0x7, "", Vec::new()));
    let application = |handle: u32, name: &str| (handle, name.to_owned(), vec![(70, "0".to_owned())]);
    let applications = vec![application(0x12, "ACAD"), application(0x13, APPLICATION)];
    table(out, &one("APPID", 0x9, "AcDbRegAppTableRecord", applications));
    let style = vec![(0x27, "Standard".to_owned(), vec![(70, "0".to_owned())])];
    table(out, &one("DIMSTYLE", 0xA, "AcDbDimStyleTableRecord", style));
    let space = |handle: u32, name: &str| (handle, name.to_owned(), vec![(340, "0".to_owned())]);
    let spaces = vec![space(MODEL_SPACE, "*Model_Space"), space(PAPER_SPACE, "*Paper_Space")];
    table(out, &one("BLOCK_RECORD", 0x1, "AcDbBlockTableRecord", spaces));
}

fn one<'a>(name: &'a str, handle: u32, class: &'a str, records: Vec<Record>) -> Table<'a> {
    Table { name, handle, class, records }
}

fn table(out: &mut String, table: &Table<'_>) {
    pair(out, 0, "TABLE");
    pair(out, 2, table.name);
    pair(out, 5, format!("{:X}", table.handle));
    pair(out, 330, 0);
    pair(out, 100, "AcDbSymbolTable");
    pair(out, 70, table.records.len());
    // Handles of dimension styles have a group code of their own.
    let dimensions = table.name == "DIMSTYLE";
    if dimensions {
        pair(out, 100, "AcDbDimStyleTable");
    }
    for (handle, name, pairs) in &table.records {
        pair(out, 0, table.name);
        pair(out, if dimensions { 105 } else { 5 }, format!("{handle:X}"));
        pair(out, 330, format!("{:X}", table.handle));
        pair(out, 100, "AcDbSymbolTableRecord");
        pair(out, 100, table.class);
        pair(out, 2, name);
        for (code, value) in pairs {
            pair(out, *code, value);
        }
    }
    pair(out, 0, "ENDTAB");
}

fn block(out: &mut String, name: &str, record: u32, handle: u32) {
    let start = |out: &mut String, kind: &str, handle: u32, class: &str| {
        pair(out, 0, kind);
        pair(out, 5, format!("{handle:X}"));
        pair(out, 330, format!("{record:X}"));
        pair(out, 100, "AcDbEntity");
        pair(out, 8, 0);
        pair(out, 100, class);
    };
    start(out, "BLOCK", handle, "AcDbBlockBegin");
    pair(out, 2, name);
    pair(out, 70, 0);
    for code in [10, 20, 30] {
        pair(out, code, number(0.0));
    }
    pair(out, 3, name);
    pair(out, 1, "");
    start(out, "ENDBLK", handle + 1, "AcDbBlockEnd");
}

fn dictionary(out: &mut String, handle: u32, owner: u32) {
    pair(out, 0, "DICTIONARY");
    pair(out, 5, format!("{handle:X}"));
    pair(out, 330, format!("{owner:X}"));
    pair(out, 100, "AcDbDictionary");
    pair(out, 281, 1);
}
