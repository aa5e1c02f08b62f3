//! Densities against the reference table, row by row.

use evidence::{Reading, Source};
use machine::{Form, Origin, material, materials};

/// The rows of the reference table: material, low, high, source, certainty; `None` without the folder.
fn reference() -> Option<Vec<Vec<String>>> {
    let path =
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/reference/material_densities.csv");
    match std::fs::read_to_string(&path) {
        Ok(table) => Some(table.lines().skip(1).map(fields).collect()),
        Err(e) => {
            assert!(std::env::var_os("CI").is_none(), "the reference data must be there: {}: {e}", path.display());
            None
        }
    }
}

/// Fields of a line; those in quotes may hold commas.
fn fields(line: &str) -> Vec<String> {
    let (mut out, mut quoted) = (vec![String::new()], false);
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => out.push(String::new()),
            c => out.last_mut().unwrap().push(c),
        }
    }
    out
}

/// Lower case, everything but letters and digits to single hyphens.
fn slug(name: &str) -> String {
    let plain: String = name.to_lowercase().chars().map(|c| if c.is_ascii_alphanumeric() { c } else { ' ' }).collect();
    plain.split_whitespace().collect::<Vec<_>>().join("-")
}

#[test]
fn val_material_densities_row_by_row() {
    let Some(rows) = reference() else { return };
    assert_eq!((rows.len(), materials().len()), (111, 111), "a reference case went missing");
    for (row, ours) in rows.iter().zip(materials()) {
        let [name, _, _, low, high, _, source, certainty] = &row[..] else { panic!("{row:?}") };
        let id = if name.starts_with("steel (incl.") { "steel".to_owned() } else { slug(name) };
        assert_eq!(ours.id, id, "{name}");
        let number = |text: &str| text.parse::<f64>().unwrap();
        assert_eq!((ours.low, ours.high), (number(low), number(high)), "{name}");
        let origin = match source.as_str() {
            "EN 1991-1-1:2002 Annex A" => Origin::En1991,
            "general handbook knowledge" => Origin::General,
            list if list.starts_with("handbook list in lb/ft3") => Origin::UsList,
            other => panic!("{name}: {other}"),
        };
        assert_eq!(ours.origin, origin, "{name}");
        let reading = if certainty.starts_with("read in a secondary source") {
            Reading::SecondHand
        } else {
            assert!(certainty.starts_with("from memory"), "{name}: {certainty}");
            Reading::FromMemory
        };
        assert_eq!(ours.reading, reading, "{name}");
        assert!(matches!(ours.source(), Source::Published { read, .. } if read == reading), "{name}");
    }
}

#[test]
fn ids_are_unique_and_found() {
    for m in materials() {
        assert_eq!(material(m.id).map(|found| found.name.id), Some(m.name.id));
        assert!(m.low > 0.0 && m.low <= m.high, "{}", m.id);
        assert_eq!(m.name.id, format!("material-{}", m.id));
        let d = m.density();
        assert!(d.low <= d.nominal && d.nominal <= d.high);
    }
    assert!(material("unobtainium").is_none());
}

/// What is the density of the material and not of a pack says so.
#[test]
fn densities_of_the_material_alone_carry_a_note() {
    for m in materials() {
        let alone = m.id.ends_with("-material") || ["steel", "copper", "lead", "cast-iron"].contains(&m.id);
        assert!(!alone || (m.form == Form::Solid && m.note().is_some()), "{}", m.id);
        assert!(!m.id.starts_with("mineral-wool") || m.form == Form::Compressed, "{}", m.id);
    }
}
