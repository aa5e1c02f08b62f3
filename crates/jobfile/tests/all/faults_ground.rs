//! Faults of soil and of buried things: what means nothing alone is said, never left unused.

use crate::faults_job::check;

/// The demo job with a `[[soil]]` of these lines.
fn soil(lines: &str, expected: &[&str]) {
    let head = "[[soil]]\nid = \"s\"\nname = \"S\"\nsource = \"measured\"\nby = \"G. Soil\"\n";
    check("[[ground]]", &format!("{head}{lines}\n[[ground]]"), expected);
}

/// The demo job with one layer of these lines.
fn layer(lines: &str, expected: &[&str]) {
    soil(&format!("water = \"unknown\"\n[[soil.layer]]\nunit_weight = \"18 kN/m³\"\n{lines}"), expected);
}

/// The demo job with a `[[buried]]` of these lines.
fn buried(lines: &str, expected: &[&str]) {
    let head = "[[buried]]\nid = \"b\"\nname = \"B\"\nsource = \"stated\"\nat = [\"90 m\", \"90 m\"]\nradius = \"1 m\"\n\
                cover = \"unknown\"\nby = \"F. Owner\"\n";
    check("[[ground]]", &format!("{head}{lines}\n[[ground]]"), expected);
}

#[test]
fn layers_say_what_means_nothing_alone() {
    layer("vane = \"45 kPa\"\nplasticity = \"30 %\"", &[]);
    layer("plasticity = \"30 %\"", &["jobfile::counts-beside `\"30 %\"` : key=plasticity other=vane"]);
    layer("cohesion = \"3 kPa\"", &["jobfile::counts-beside `\"3 kPa\"` : key=cohesion other=friction"]);
    layer("cbr = \"3 %\"\npoisson = 0.3", &["jobfile::counts-beside `0.3` : key=poisson other=modulus, plate"]);
    layer("cbr = \"3 %\"\ncone_index = \"600 kPa\"", &["jobfile::either-or `\"600 kPa\"`"]);
    layer("friction = \"60°\"", &["soil::out-of-range `\"60°\"`"]);
    soil("[[soil.layer]]\nunit_weight = \"18 kN/m³\"", &["jobfile::missing-key `[[soil]]` : key=water"]);
}

#[test]
fn a_plate_tells_of_a_layer_no_deeper_than_twice_its_diameter() {
    let plate = "plate = { diameter = \"0.45 m\", pressure = \"250 kPa\", settlement = \"8 mm\" }";
    let below = "[[soil.layer]]\nunit_weight = \"18 kN/m³\"\ncbr = \"3 %\"";
    layer(&format!("thickness = \"0.90 m\"\n{plate}\n{below}"), &[]);
    let table = plate.trim_start_matches("plate = ");
    layer(&format!("thickness = \"0.91 m\"\n{plate}\n{below}"), &[&format!("jobfile::plate-too-small `{table}`")]);
    layer(plate, &[&format!("jobfile::plate-too-small `{table}`")]);
    layer(
        "plate = { diameter = \"0.45 m\", pressure = \"250 kPa\" }",
        &["jobfile::missing-key `{ diameter = \"0.45 m\", pressure = \"250 kPa\" }` : key=settlement"],
    );
}

#[test]
fn described_ground_is_one_row_of_one_code_and_has_no_layers() {
    soil("presumed = { code = \"bs-8004\", soil = \"firm clay\" }", &[]);
    soil(
        "presumed = { code = \"bs-8004\", soil = \"clay, stiff\" }",
        &["jobfile::soil-of-another-code `\"clay, stiff\"` : code=BS 8004:1986 Table 1"],
    );
    soil("presumed = { code = \"bs\", soil = \"firm clay\" }", &["jobfile::bad-choice `\"bs\"`"]);
    soil(
        "presumed = { code = \"bs-8004\", soil = \"firm clay\" }\n[[soil.layer]]\nunit_weight = \"18 kN/m³\"",
        &["jobfile::either-or `[[soil.layer]]` : first=presumed second=layer"],
    );
    soil(
        "presumed = { code = \"bs-8004\", soil = \"firm clay\" }\nwater = \"1 m\"",
        &["jobfile::unknown-key `water` : key=water"],
    );
}

#[test]
fn a_wall_is_of_a_pipe_and_has_what_its_deflection_needs() {
    let wall = |keys: &str| format!("kind = \"pipe\"\nwall = {{ {keys} }}");
    buried("kind = \"pipe\"\nwall = \"rigid\"", &[]);
    buried("kind = \"tank\"\nwall = \"rigid\"", &["jobfile::wall-of-what `\"rigid\"`"]);
    buried("kind = \"pipe\"\nwall = \"soft\"", &["jobfile::bad-choice `\"soft\"`"]);
    buried(&wall("diameter = \"0.4 m\", ring_stiffness = \"8 kPa\", soil_modulus = \"3 MPa\""), &[]);
    buried(
        &wall("diameter = \"0.4 m\", ring_stiffness = \"8 kPa\", thickness = \"9 mm\", soil_modulus = \"3 MPa\""),
        &["jobfile::either-or `\"9 mm\"` : first=ring_stiffness second=thickness"],
    );
    buried(
        &wall("diameter = \"0.4 m\", soil_modulus = \"3 MPa\""),
        &[
            "jobfile::missing-key `{ diameter = \"0.4 m\", soil_modulus = \"3 MPa\" }` : key=thickness",
            "jobfile::missing-key `{ diameter = \"0.4 m\", soil_modulus = \"3 MPa\" }` : key=modulus",
        ],
    );
    buried("kind = \"pipe\"\naround = { voids = false }", &["jobfile::missing-key `{ voids = false }` : key=by"]);
}
