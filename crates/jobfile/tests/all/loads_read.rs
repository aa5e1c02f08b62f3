//! Built-up loads as read: masses, ranges, centres, and what goes to the input list.
#![allow(clippy::disallowed_methods, reason = "tests")]

use crate::folder::{demo, text};
use crate::shown;
use evidence::Certainty;
use machine::{Hitch, Load, PartMass, Swing};
use planning::Job;

/// The demo job with one more load.
fn with(load: &str) -> Job {
    let mut folder = demo();
    let job = text(&folder, "job.toml")
        + "\n[[load]]\nid = \"x\"\nname = \"X\"\nsource = \"built-up\"\ncentre_error = \"0 m\"\ncondition = \"sound\"\nwind_factor = 1.4\n"
        + load;
    folder.insert("job.toml".into(), job.clone().into_bytes());
    match jobfile::read_job(&folder) {
        Ok((job, _)) => job,
        Err(faults) => panic!("{:#?}", shown::all(&faults, &job)),
    }
}

fn last(job: &Job) -> &Load {
    job.loads.last().unwrap()
}

fn near(got: f64, wanted: f64) {
    assert!((got - wanted).abs() < 1e-9, "{got}, expected {wanted}");
}

#[test]
fn a_pallet_stacks_itself() {
    let job = with(
        r#"
[load.pallet]
base = { mass = "20 kg", size = { depth = "1.20 m", width = "1.00 m", height = "0.15 m" } }
wrap = "4 kg"
[[load.pallet.layer]]
name = "blocks"
piece = "18 kg"
pieces = 10
layers = 3
size = { depth = "1.20 m", width = "1.00 m", height = "0.20 m" }
[[load.pallet.layer]]
name = "kerbs"
mass = "100 kg"
size = { depth = "0.60 m", width = "1.00 m", height = "0.25 m" }
ahead = "0.30 m"
"#,
    );
    let load = last(&job);
    assert_eq!((load.depth, load.width, load.height), (1.2, 1.0, 1.0));
    near(load.mass_kg.nominal, 20.0 + 540.0 + 100.0 + 4.0);
    near(load.mass_kg.high, 664.0 * 1.1);
    near(load.centre_ahead.nominal, (564.0 * 0.6 + 100.0 * 0.9) / 664.0);
    near(load.centre_up.nominal, (20.0 * 0.075 + 540.0 * 0.45 + 100.0 * 0.875 + 4.0 * 0.575) / 664.0);
    // Kerbs heavier and all else lighter than said draws the centre outward.
    near(load.centre_ahead.high, (564.0 * 0.9 * 0.6 + 110.0 * 0.9) / (564.0 * 0.9 + 110.0));
    assert!(load.overhangs.is_empty());
    assert_eq!(load.certainty, Certainty::BuiltUp);
    assert!(matches!(load.parts[1].how, PartMass::Pieces { count: 30.0, each_kg: 18.0 }));
}

#[test]
fn a_material_brings_its_range_its_source_and_its_water() {
    let job = with(
        r#"
size = { depth = "1.00 m", width = "1.00 m", height = "1.00 m" }
[[load.part]]
name = "board"
material = "gypsum-board"
packing = "90 %"
moisture = "5 %"
size = { depth = "1.00 m", width = "1.00 m", height = "0.50 m" }
centre = ["0.50 m", "0 m", "0.25 m"]
[[load.part]]
name = "blocks"
material = "dense-aggregate-concrete-block"
size = { depth = "1.00 m", width = "1.00 m", height = "0.50 m" }
centre = ["0.50 m", "0 m", "0.75 m"]
"#,
    );
    let load = last(&job);
    let [board, blocks] = &load.parts[..] else { panic!("two parts") };
    near(board.mass_kg.low, 769.0 * 0.45 * 0.9);
    near(board.mass_kg.nominal, 769.0 * 0.45);
    near(board.mass_kg.high, 769.0 * 0.45 * 1.1 * 1.05);
    near(blocks.mass_kg.low, 1800.0 * 0.5 * 0.9);
    near(blocks.mass_kg.high, 2100.0 * 0.5 * 1.1);
    near(blocks.mass_kg.nominal, 1950.0 * 0.5);
    assert_eq!(load.certainty, Certainty::Estimated, "a density from memory");
    let input = |part: &str| job.inputs.iter().find(|l| l.name == format!("load[x].part[{part}].material")).unwrap();
    assert_eq!(input("1").certainty, Certainty::BuiltUp);
    assert_eq!(input("2").certainty, Certainty::Estimated);
    assert!(input("2").value.contains("1800–2100 kg/m³"), "{}", input("2").value);
}

#[test]
fn damp_blocks_are_heavier_at_most_and_the_plan_says_so() {
    let part = |water: &str| {
        format!(
            "size = {{ depth = \"1 m\", width = \"1 m\", height = \"1 m\" }}\n[[load.part]]\nname = \"aerated\"\n\
             material = \"aerated-autoclaved-concrete-block\"\n{water}size = {{ depth = \"1 m\", width = \"1 m\", height = \"1 m\" }}\n\
             centre = [\"0.5 m\", \"0 m\", \"0.5 m\"]\n"
        )
    };
    let assumed = with(&part(""));
    near(last(&assumed).mass_kg.high, 750.0 * 1.1 * 1.3);
    assert!(assumed.warnings.list.iter().any(|f| f.code == "jobfile::moisture-assumed"));
    assert!(assumed.inputs.iter().any(|l| l.name.ends_with(".moisture") && l.certainty == Certainty::Estimated));
    let dry = with(&part("state = \"dry\"\n"));
    near(last(&dry).mass_kg.high, 750.0 * 1.1);
    assert!(!dry.warnings.list.iter().any(|f| f.code == "jobfile::moisture-assumed"));
}

const TANK: &str = r#"
[load.liquid]
name = "water"
density = "1000 kg/m³"
at = ["0.60 m", "0 m", "0.20 m"]
depth = "1.00 m"
width = "0.90 m"
height = "0.90 m"
fill = "0.40 m"
baffled = false
closed = true
"#;

#[test]
fn a_running_liquid_widens_the_centre_and_nothing_else() {
    let size = "size = { depth = \"1.20 m\", width = \"1.00 m\", height = \"1.20 m\" }\n";
    let shell = "[[load.part]]\nname = \"tank\"\nmass = \"90 kg\"\ncentre = [\"0.60 m\", \"0 m\", \"0.60 m\"]\n";
    let job = with(&format!("{size}{shell}{TANK}"));
    let load = last(&job);
    near(load.mass_kg.nominal, 450.0);
    near(load.centre_ahead.nominal, 0.6);
    let run = 5.0_f64.to_radians().tan() / (12.0 * 0.4);
    let share = 360.0 * 1.1 / (360.0 * 1.1 + 81.0);
    near(load.centre_ahead.high, 0.6 + run * share);
    near(load.centre_left.low, -run * 0.81 * share);
    // Weighed as a whole, the liquid is a part of that mass.
    let weighed = with(&format!(
        "{size}mass = {{ value = \"450 kg\", source = \"weighed\" }}\ncentre = [\"0.60 m\", \"0 m\", \"0.45 m\"]\n{TANK}"
    ));
    let load = last(&weighed);
    near(load.mass_kg.nominal, 450.0);
    assert!(load.centre_ahead.high > 0.6 + 0.7 * run && load.centre_ahead.high <= 0.6 + run, "{:?}", load.centre_ahead);
}

/// A block with something said of it.
fn block(material: &str, more: &str) -> String {
    format!(
        "size = {{ depth = \"1 m\", width = \"1 m\", height = \"1 m\" }}\n[[load.part]]\nname = \"one\"\n\
         {material}\n{more}\nsize = {{ depth = \"1 m\", width = \"1 m\", height = \"1 m\" }}\n\
         centre = [\"0.5 m\", \"0 m\", \"0.5 m\"]\n"
    )
}

#[test]
fn soaked_insulation_is_full_of_water_and_timber_comes_moist() {
    let high = |material: &str, more: &str| last(&with(&block(material, more))).mass_kg.high;
    let (eps, wool) = ("material = \"eps-board\"", "material = \"mineral-wool-slab\"\npacking = \"100 %\"");
    near(high(eps, "state = \"soaked\""), 30.0 * 1.1 + 1000.0);
    near(high(wool, "state = \"soaked\""), 200.0 * 1.1 + 1000.0);
    near(high(wool, "state = \"damp\""), 200.0 * 1.1 + 100.0);
    near(high(eps, ""), 30.0 * 1.1);
    near(high("density = \"40 kg/m³\"", "state = \"soaked\""), 40.0 * 1.1 + 1000.0);
    near(high("density = \"1800 kg/m³\"", "state = \"soaked\""), 1800.0 * 1.1 * 1.3);
    near(high("material = \"timber-c24\"", ""), 428.0 * 1.1 * 1.3);
    near(high("material = \"timber-c24\"", "state = \"dry\""), 428.0 * 1.1);
    near(high("material = \"osb\"", ""), 714.0 * 1.1 * 1.3);
    let water = |more: &str| last(&with(&block("material = \"timber-c24\"", more))).water_counted();
    assert!(!water("") && !water("state = \"dry\"") && water("moisture = \"20 %\""));
}

#[test]
fn less_than_usual_is_read_where_somebody_answers() {
    let name = "by = \"A. Planner, lift supervisor\"";
    let shell = "mass = { value = \"900 kg\", source = \"weighed\" }\ncentre = [\"0.60 m\", \"0 m\", \"0.45 m\"]\nsize = { depth = \"1.20 m\", width = \"1.00 m\", height = \"1.20 m\" }\n";
    let job = with(&format!(
        "uncertainty = {{ value = \"1 %\", {name} }}\n{shell}{TANK}tilt = {{ value = \"2°\", {name} }}\n"
    ));
    near(last(&job).mass_kg.high, 909.0);
    near(last(&job).liquid.as_ref().unwrap().tilt, 2.0_f64.to_radians());
    let job = with(&format!("uncertainty = {{ below = \"1 %\", above = \"3 %\", {name} }}\n{shell}"));
    near(last(&job).mass_kg.low, 891.0);
}

/// The mass of the whole at its least and the liquid at its most: the rest has the least share.
#[test]
fn beside_a_stated_mass_the_liquid_has_its_greatest_share() {
    let job = with(&format!(
        "mass = {{ value = \"450 kg\", source = \"weighed\" }}\ncentre = [\"0.60 m\", \"0 m\", \"0.45 m\"]\n\
         size = {{ depth = \"1.20 m\", width = \"1.00 m\", height = \"1.20 m\" }}\n{TANK}"
    ));
    let run = 5.0_f64.to_radians().tan() / (12.0 * 0.4);
    // 360 kg of water, at most 396 of the 441 kg that it weighs at least.
    near(last(&job).centre_ahead.high, 0.6 + run * 396.0 / 441.0);
}

#[test]
fn rigging_is_read_as_seen() {
    let job = with(
        r#"
mass = { value = "500 kg", source = "weighed" }
centre = ["0 m", "0 m", "0.5 m"]
size = { depth = "1 m", width = "1 m", height = "1 m" }
hanging = { rigging = "10 kg", drop = "2 m", legs = 2, leg_angle = "30°", picks = "0.80 m", leg_limit = "1 t", hitch = "basket", tag_lines = true, swing_reach = "0.2 m", fittings = [{ name = "beam", limit = "800 kg", takes = "whole" }] }
"#,
    );
    let h = last(&job).hanging.as_ref().unwrap();
    assert_eq!((h.hitch, h.edges, h.tag_lines), (Some(Hitch::Basket), None, 1));
    assert_eq!((h.swing, h.picks), (Swing::Reach(0.2), Some(0.8)));
    // Its mass is built up, as the rest of the load: 10 % more or less, and weighed 2 % of the load.
    near(h.rigging_kg.high, 11.0);
    near(last(&job).mass_kg.high, 510.0 + 11.0);
    assert!(h.fittings[0].whole && h.fittings[0].name == "beam");
}
