//! Charts in every printed form: what is read, what is chosen, what is doubted.

use crate::faults_machine::{plain, with_chart};
use crate::shown;
use geometry::DVec2;
use machine::{BoomPosition, CentreRule, Chart, ChartPoint, Machine, OutOfLevel, Reading, SupportState, kinematics};
use quantity::Si;

fn read(text: &str) -> (Machine, Vec<String>) {
    match jobfile::read_machine("m.toml", text.as_bytes()) {
        Ok((machine, warnings)) => (machine, warnings.list.into_iter().map(|f| f.code).collect()),
        Err(faults) => panic!("{:#?}", shown::all(&faults, text)),
    }
}

/// The chart of R1 with other keys at its head and other capacities.
fn chart(head: &str, load_centre: &str, body: &str) -> String {
    format!(
        "\n[[chart]]\nattachment = \"forks\"\nsupport = \"tyres\"\nsource = \"chart\"\nload_centre = \"{load_centre}\"\n\
         reach_from = \"front-tyre-face\"\nreach_to = \"load-centre\"\nheight_to = \"fork-top\"\n{head}\n{body}\n"
    )
}

const LEVEL: &str = "level_sideways = \"3°\"\nlevel_fore_aft = \"3°\"\nunit = \"m\"";

fn kg(chart: &Chart, at: [f64; 2]) -> Option<f64> {
    match chart.read(&ChartPoint::exact(DVec2::from_array(at))) {
        Reading::Within { capacity_kg, .. } => Some(capacity_kg),
        Reading::Outside => None,
    }
}

/// Zones, nested lines and a table say the same chart: it reads the same.
#[test]
fn one_chart_in_three_forms_reads_the_same() {
    let zones = chart(
        LEVEL,
        "0.61 m",
        "[[chart.zone]]\nname = \"A\"\ncapacity = \"3000 kg\"\noutline = [[1, 0], [3, 0], [3, 4], [1, 4]]\n\
         [[chart.zone]]\nname = \"B\"\ncapacity = \"1200 kg\"\noutline = [[3, 0], [5, 0], [5, 6], [1, 6], [1, 4], [3, 4]]",
    );
    let nested = chart(
        &format!("{LEVEL}\nnested = true"),
        "0.61 m",
        "[[chart.zone]]\nname = \"B\"\ncapacity = \"1200 kg\"\noutline = [[1, 0], [5, 0], [5, 6], [1, 6]]\n\
         [[chart.zone]]\nname = \"A\"\ncapacity = \"3000 kg\"\noutline = [[1, 0], [3, 0], [3, 4], [1, 4]]",
    );
    // Rows from above down, as charts are printed.
    let table = chart(
        LEVEL,
        "0.61 m",
        "[chart.table]\nheights = [6, 4, 0]\nreaches = [1, 3, 5]\ncapacity_unit = \"t\"\n\
         capacity = [[1.2, 1.2, 1.2], [3, 3, 1.2], [3, 3, 1.2]]",
    );
    let charts = [zones, nested, table].map(|c| {
        let (machine, warnings) = read(&(plain() + &c));
        assert_eq!(warnings, Vec::<String>::new(), "{c}");
        machine.charts[0].clone()
    });
    for i in 0..60 {
        for k in 0..70 {
            let at = [f64::from(i) * 0.1, f64::from(k) * 0.1 - 0.3];
            let [a, b, c] = [0, 1, 2].map(|n: usize| kg(&charts[n], at));
            assert_eq!((a, b), (b, c), "{at:?}");
        }
    }
    assert_eq!(kg(&charts[2], [2.0, 2.0]), Some(3000.0));
    assert_eq!(kg(&charts[2], [3.0, 2.0]), Some(1200.0));
}

#[test]
fn a_table_by_angle_and_extension_lies_where_the_boom_goes() {
    let body = "[chart.table]\nangle_unit = \"°\"\nangles = [0, 20, 40, 60]\nextensions = [0, 2, 4]\ncapacity_unit = \"lb\"\n\
                capacity = [[4000, 3000, 2000], [4000, 3000, 2000], [4000, 3000, \"-\"], [4000, 3000, \"not permitted\"]]";
    let (machine, warnings) = read(&(plain() + &chart(LEVEL, "0.61 m", body)));
    assert_eq!(warnings, Vec::<String>::new());
    let (chart, forks) = (&machine.charts[0], &machine.attachments[0]);
    let at = |degrees: f64, extension: f64| {
        let boom = BoomPosition::level(degrees.to_radians(), extension);
        let tool = kinematics::tool_point(&machine.boom, forks, boom);
        kg(chart, chart.point_of(&machine, forks, DVec2::new(tool.x, tool.z)).to_array())
            .map(|kg| (kg / 0.453_592_37).round())
    };
    assert_eq!(at(10.0, 1.0), Some(3000.0), "the lowest of the four around");
    assert_eq!(at(10.0, 3.0), Some(2000.0));
    assert_eq!(at(30.0, 1.0), Some(3000.0));
    assert_eq!(at(30.0, 3.0), None, "one of the four is not permitted");
    assert_eq!(chart.not_permitted.len(), 1, "and declared so");
    assert_eq!(at(61.0, 1.0), None, "beyond the last row");
    assert_eq!(at(-1.0, 1.0), None);
    assert_eq!(at(10.0, 4.1), None);
    assert!(chart.zones[0].name.starts_with("0 °–"), "{}", chart.zones[0].name);
}

/// Units only say how a number is written.
#[test]
fn pounds_tonnes_and_kilograms_read_the_same() {
    let in_kg = with_chart();
    let of = |a: &str, b: &str| {
        let text =
            in_kg.replacen("name = \"A\"\ncapacity = \"4000 kg\"", &format!("name = \"A\"\ncapacity = \"{a}\""), 1);
        let (machine, _) = read(&text.replacen("capacity = \"1500 kg\"", &format!("capacity = \"{b}\""), 1));
        machine.charts[0].clone()
    };
    let charts = [
        of("4000 kg", "1500 kg"),
        of("8818.49 lb", "3306.934 lb"),
        of("4 t", "1.5 t"),
        of("4.409245 short ton", "1.653467 short ton"),
    ];
    for i in 0..70 {
        for k in 0..65 {
            let at = [f64::from(i) * 0.1, f64::from(k) * 0.1];
            let first = kg(&charts[0], at);
            for other in &charts[1..] {
                match (first, kg(other, at)) {
                    (Some(a), Some(b)) => assert!((a - b).abs() < 0.01, "{at:?}: {a} {b}"),
                    (a, b) => assert_eq!(a, b, "{at:?}"),
                }
            }
        }
    }
}

const ZONE: &str = "[[chart.zone]]\nname = \"A\"\ncapacity = \"X\"\noutline = [[1, 0], [3, 0], [3, 4], [1, 4]]";

#[test]
fn the_strictest_chart_that_covers_the_ground_is_chosen() {
    let of = |degrees: &str, capacity: &str| {
        let head = format!("level_sideways = \"{degrees}\"\nlevel_fore_aft = \"{degrees}\"\nunit = \"m\"");
        chart(&head, "0.61 m", &ZONE.replace('X', capacity))
    };
    let (machine, _) = read(&(plain() + &of("2°", "2000 kg") + &of("0.5°", "2500 kg") + &of("4°", "1500 kg")));
    let chosen = |sideways: f64, fore_aft: f64| {
        let level = OutOfLevel { sideways: sideways.to_radians(), fore_aft: fore_aft.to_radians() };
        let chart = machine.chart_on("forks", SupportState::Tyres, 0.6, level).unwrap();
        (chart.zones[0].capacity.si(), chart.level.covers(level))
    };
    assert_eq!(chosen(0.4, 0.1), (2500.0, true));
    assert_eq!(chosen(0.6, 0.1), (2000.0, true));
    assert_eq!(chosen(0.1, 3.9), (1500.0, true));
    assert_eq!(chosen(4.1, 0.0), (1500.0, false), "none covers it: level refuses");
    assert_eq!(chosen(f64::NAN, 0.0), (1500.0, false));
    let unknown = machine.chart_for("forks", SupportState::Tyres, 0.6).unwrap();
    assert_eq!(unknown.zones[0].capacity.si(), 1500.0);
}

#[test]
fn a_chart_for_other_tyres_is_kept_and_never_chosen() {
    let of = |tyres: &str| chart(&format!("{LEVEL}\ntyres = \"{tyres}\""), "0.61 m", &ZONE.replace('X', "2000 kg"));
    let on = |fitted: &str| plain().replacen("id = \"R1\"", &format!("id = \"R1\"\ntyres = \"{fitted}\""), 1);
    let (machine, warnings) = read(&(on("foam") + &of("air") + &of("foam")));
    assert_eq!(warnings, ["jobfile::chart-other-tyres"]);
    assert_eq!(machine.charts.len(), 2);
    let chosen = machine.charts_for("forks", SupportState::Tyres, 0.6);
    assert_eq!(chosen.iter().map(|c| c.tyres.as_deref()).collect::<Vec<_>>(), [Some("foam")]);
    // Nobody says what the machine stands on: neither is chosen.
    let (machine, warnings) = read(&(plain() + &of("air") + &of("foam")));
    assert_eq!(warnings, ["jobfile::chart-tyres-unsaid", "jobfile::chart-tyres-unsaid"]);
    assert!(machine.charts_for("forks", SupportState::Tyres, 0.6).is_empty());
}

#[test]
fn a_derating_table_is_read_with_its_bounds() {
    let rows = "[[chart.derating]]\nload_centre = \"0.75 m\"\nshare = \"80 %\"\n\
                [[chart.derating]]\nload_centre = \"36 in\"\nshare = 0.7\ncapacity_at_most = \"1 t\"\n";
    let (machine, _) = read(&(plain() + &chart(LEVEL, "0.61 m", &(rows.to_owned() + &ZONE.replace('X', "2000 kg")))));
    let c = &machine.charts[0];
    let counted = |centre: f64| c.derated_kg(2000.0, c.centre_rule(centre));
    assert_eq!((counted(0.6), counted(0.7), counted(0.9)), (Some(2000.0), Some(1600.0), Some(1000.0)));
    assert_eq!((c.centre_rule(0.92), counted(0.92)), (CentreRule::BeyondTable, None));
}

#[test]
fn every_datum_is_read() {
    let wide =
        ZONE.replace('X', "300 kg").replace("[[1, 0], [3, 0], [3, 4], [1, 4]]", "[[0, 0], [9, 0], [9, 8], [0, 8]]");
    let text = chart(LEVEL, "0.61 m", &wide);
    let with = |from: &str, to: &str, height: &str| {
        let changed = text
            .replacen("reach_from = \"front-tyre-face\"", &format!("reach_from = {from}"), 1)
            .replacen("reach_to = \"load-centre\"", &format!("reach_to = \"{to}\"\nload_centre_height = \"0.5 m\""), 1)
            .replacen("height_to = \"fork-top\"", &format!("height_to = \"{height}\""), 1);
        let (machine, _) = read(&(plain() + &changed));
        let at = machine.charts[0].point_of(&machine, &machine.attachments[0], DVec2::new(4.0, 2.0));
        // There and back.
        let back = machine.charts[0].tool_at(&machine, &machine.attachments[0], at);
        assert!(back.distance(DVec2::new(4.0, 2.0)) < 1e-12);
        at.to_array().map(|v| (v * 1e6).round() / 1e6)
    };
    let (machine, _) = read(&with_chart());
    let face = machine.front_face();
    let near =
        |a: [f64; 2], b: [f64; 2]| assert!((a[0] - b[0]).abs() < 1e-5 && (a[1] - b[1]).abs() < 1e-5, "{a:?} {b:?}");
    near(with("\"front-tyre-face\"", "load-centre", "fork-top"), [4.0 + 0.61 - face, 2.0]);
    near(with("\"front-axle\"", "fork-heel", "load-centre"), [4.0, 2.5]);
    near(with("{ ahead_of_front_axle = \"0.35 m\" }", "fork-heel", "fork-top"), [3.65, 2.0]);
    near(with("\"frame-front\"", "fork-heel", "fork-top"), [4.0 - machine.outline.front, 2.0]);
    near(with("\"boom-foot\"", "fork-heel", "fork-top"), [4.0 - machine.boom.foot.x, 2.0]);
    let pads = machine.stabilizers.as_ref().unwrap().pad.x;
    near(with("\"stabilizer-pads\"", "fork-heel", "fork-top"), [4.0 - pads, 2.0]);
    let heel = machine.attachments[0].tool_point();
    near(with("\"front-axle\"", "head-pin", "head-pin"), [4.0 - heel.x, 2.0 - heel.y]);
}

#[test]
fn a_confirmed_rise_is_not_asked_again_and_an_open_one_is() {
    let body = ZONE.replace('X', "1500 kg")
        + "\n[[chart.zone]]\nname = \"B\"\ncapacity = \"1600 kg\"\noutline = [[3, 0], [4, 0], [4, 4], [3, 4]]";
    let with = |rises: &str| read(&(plain() + &chart(&format!("{LEVEL}\n{rises}"), "0.61 m", &body))).1;
    assert_eq!(with(""), ["jobfile::chart-rises-reach"]);
    assert_eq!(with("rises = \"T. Ester, against the chart in the cab\""), Vec::<String>::new());
    assert_eq!(with("rises = \"FILL IN: who\""), ["jobfile::placeholder", "jobfile::chart-rises-reach"]);
}
