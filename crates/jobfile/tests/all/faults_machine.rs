//! Faults of machine files: where they point and what they say.

use crate::shown;
use evidence::Faults;

/// The reference machine, without charts.
pub(crate) fn plain() -> String {
    std::fs::read_to_string(crate::folder::project().join("validation/machines/r1.toml")).unwrap()
}

const CHART: &str = r#"
[[chart]]
attachment = "forks"
support = "tyres"
source = "chart"
load_centre = "0.61 m"
reach_from = "front-tyre-face"
reach_to = "load-centre"
height_to = "fork-top"
level_sideways = "3°"
level_fore_aft = "3°"
unit = "m"
[[chart.zone]]
name = "A"
capacity = "4000 kg"
outline = [[1.0, 0.5], [3.0, 0.5], [3.0, 6.0], [1.0, 6.0]]
[[chart.zone]]
name = "B"
capacity = "1500 kg"
outline = [[3.0, 0.5], [6.0, 0.5], [6.0, 6.0], [3.0, 6.0]]
"#;

/// A machine with a chart that is in order.
pub(crate) fn with_chart() -> String {
    plain() + CHART
}

fn faults(text: &str) -> Faults {
    match jobfile::read_machine("m.toml", text.as_bytes()) {
        Ok((_, warnings)) => warnings,
        Err(faults) => faults,
    }
}

/// Replaces `from` (its first place) by `to`, and expects exactly the faults `expected`, each as
/// "code `text it points at`" with " : " and the message's arguments where given.
fn check(from: &str, to: &str, expected: &[&str]) {
    let whole = with_chart();
    assert!(whole.contains(from), "nothing to replace: {from}");
    let text = whole.replacen(from, to, 1);
    let found: Vec<String> = faults(&text)
        .list
        .iter()
        .zip(expected.iter().map(Some).chain(std::iter::repeat(None)))
        .map(|(f, wanted)| {
            let line = shown::fault(f, &text);
            let line = line.split_once(' ').unwrap().1.to_owned();
            if wanted.is_some_and(|w| w.contains(" : ")) {
                format!("{line} : {}", shown::args(&f.message))
            } else {
                line
            }
        })
        .collect();
    assert_eq!(found, expected, "after {from} -> {to}");
}

#[test]
fn a_machine_in_order_has_no_faults() {
    assert_eq!(faults(&with_chart()), Faults::default());
}

#[test]
fn format_is_asked_for() {
    check("format = \"counterpoise-machine/1\"\n", "", &["jobfile::format-missing ``"]);
    check(
        "counterpoise-machine/1",
        "counterpoise-machine/9",
        &["jobfile::format-unknown `\"counterpoise-machine/9\"`"],
    );
}

#[test]
fn keys() {
    check("id = \"R1\"", "idd = \"R1\"", &["jobfile::missing-key `` : key=id", "jobfile::unknown-key `idd`"]);
    check(
        "head_along =",
        "head_allong =",
        &["jobfile::missing-key `[boom]` : key=head_along", "jobfile::unknown-key `head_allong`"],
    );
    check("[limits]", "[limmits]", &["jobfile::missing-key `` : key=limits", "jobfile::unknown-key `limmits`"]);
}

#[test]
fn values() {
    check(
        "mass = \"8200 kg\"",
        "mass = 8200",
        &["quantity::missing-unit `8200` : value=8200 dimension=jobfile-dimension-mass"],
    );
    check("mass = \"8200 kg\"", "mass = \"8200\"", &["quantity::missing-unit `8200`"]);
    check(
        "mass = \"8200 kg\"",
        "mass = \"8200 kN\"",
        &[
            "quantity::wrong-dimension `kN` : value=8200 kN found=jobfile-dimension-force expected=jobfile-dimension-mass",
        ],
    );
    check("mass = \"8200 kg\"", "mass = \"8200 kgs\"", &["quantity::unknown-unit `kgs`"]);
    check("mass = \"8200 kg\"", "mass = \"heavy\"", &["quantity::no-number `heavy`"]);
    check(
        "mass = \"8200 kg\"",
        "mass = \"-8200 kg\"",
        &["jobfile::not-positive `\"-8200 kg\"` : key=mass value=-8200 kg"],
    );
    check("mass = \"8200 kg\"", "mass = \"0 kg\"", &["jobfile::not-positive `\"0 kg\"`"]);
    check(
        "mass = \"8200 kg\"",
        "mass = true",
        &["jobfile::wrong-type `true` : key=mass expected=jobfile-type-quantity found=jobfile-type-bool"],
    );
    check("mass = \"8200 kg\"", "mass = [\"8200 kg\"]", &["jobfile::wrong-type `[\"8200 kg\"]`"]);
    check("mass = \"8200 kg\"", "mass = \"8,200 kg\"", &["quantity::ambiguous-separator `8,200`"]);
    check("share = 0.5", "share = nan", &["quantity::not-finite `nan`"]);
    check("share = 0.5", "share = 1.5", &["jobfile::out-of-range `1.5`"]);
    check("invented = true", "invented = \"yes\"", &["jobfile::wrong-type `\"yes\"`"]);
}

#[test]
fn sources() {
    let nowhere = plain().replacen("source = \"invented\"\n", "", 1);
    let list = faults(&nowhere).list;
    assert!(list.len() > 40, "every value of the machine lacks its source: {}", list.len());
    assert!(list.iter().all(|f| f.code == "jobfile::no-source" || f.code == "jobfile::no-charts"));
    check("source = \"invented\"", "source = \"guess\"", &["jobfile::bad-choice `\"guess\"` : key=source value=guess"]);
    // One value may have its own.
    check("mass = \"8200 kg\"", "mass = { value = \"8200 kg\", source = \"weighed\" }", &[]);
    check(
        "mass = \"8200 kg\"",
        "mass = { value = \"8200 kg\", sorce = \"weighed\" }",
        &["jobfile::unknown-key `sorce`"],
    );
}

#[test]
fn impossible_geometry() {
    check("wheelbase = \"3.00 m\"", "wheelbase = \"0 m\"", &["jobfile::not-positive `\"0 m\"`"]);
    check(
        "pin_height = \"0.70 m\"",
        "pin_height = \"1.00 m\"",
        &["jobfile::pin-too-high `\"1.00 m\"` : pin=1.0000 m half_track=1.0000 m"],
    );
    // 12 600 kg with the boom down: the centre lies 1.37 m behind the front axle; moved 3 m forward it is ahead of it.
    let text = with_chart().replacen("[\"-1.90 m\", \"0 m\", \"1.00 m\"]", "[\"1.10 m\", \"0 m\", \"1.00 m\"]", 1);
    let found = faults(&text);
    assert_eq!(found.list.len(), 1);
    assert_eq!(found.list[0].code, "jobfile::centre-outside-wheelbase");
    let centre = -5743.3 * 3.0 / 12_600.0 + 8200.0 * 3.0 / 12_600.0;
    assert!(shown::args(&found.list[0].message).starts_with(&format!("centre={centre:.4}")), "{found:?}");
    check(
        "[\"-1.90 m\", \"0 m\", \"1.00 m\"]",
        "[\"-1.90 m\", \"1.60 m\", \"1.00 m\"]",
        &["jobfile::centre-outside-track `[[body]]`"],
    );
    check("angle = [\"-3°\", \"70°\"]", "angle = [\"70°\", \"-3°\"]", &["jobfile::angle-order `[\"70°\", \"-3°\"]`"]);
    check(
        "angle = [\"-3°\", \"70°\"]",
        "angle = [\"-3°\"]",
        &["jobfile::list-length `[\"-3°\"]` : key=angle expected=2 found=1"],
    );
    check("share = 1\n", "share = 0.9\n", &["jobfile::section-shares `[[boom.section]]`"]);
    check("rear = \"-4.30 m\"", "rear = \"0.70 m\"", &["jobfile::order `\"0.70 m\"`"]);
    check("kind = \"rear-axle\"", "kind = \"frame\"", &["jobfile::no-body `[[body]]` : kind=rear-axle"]);
    check("kind = \"rear-axle\"", "kind = \"rear-axel\"", &["jobfile::bad-choice `\"rear-axel\"`"]);
    check("thickness_now = \"49 mm\"", "thickness_now = \"51 mm\"", &["jobfile::blade-grew `\"51 mm\"`"]);
    check("\"0 m\", \"1.00 m\"]", "\"0 m\"]", &["jobfile::list-length `[\"-1.90 m\", \"0 m\"]`"]);
}

#[test]
fn absurd_values() {
    check(
        "mass = \"8200 kg\"",
        "mass = \"8200 t\"",
        &["jobfile::too-much `\"8200 t\"` : key=mass value=8200 t high=200000.0000 kg"],
    );
    check(
        "[\"-1.90 m\", \"0 m\", \"1.00 m\"]",
        "[\"-1900 m\", \"0 m\", \"1.00 m\"]",
        &["jobfile::out-of-range `\"-1900 m\"`"],
    );
    check("wheelbase = \"3.00 m\"", "wheelbase = \"300 m\"", &["jobfile::too-much `\"300 m\"`"]);
    let boom = plain();
    let line = boom.lines().find(|l| l.starts_with("extension")).unwrap();
    check(line, "extension = \"61 m\"", &["jobfile::too-much `\"61 m\"`"]);
    check(line, "extension = \"55.1 m\"", &["jobfile::boom-too-long `\"55.1 m\"` : length=60.1000 m high=60.0000 m"]);
    let line = boom.lines().find(|l| l.starts_with("flex")).unwrap();
    check(line, "flex = \"2.1 m\"", &["jobfile::too-much `\"2.1 m\"`"]);
}

#[test]
fn charts() {
    check(
        "attachment = \"forks\"",
        "attachment = \"fork\"",
        &["jobfile::unknown-reference `\"fork\"` : kind=jobfile-kind-attachment id=fork"],
    );
    check("reach_to = \"load-centre\"", "reach_to = \"hook\"", &["jobfile::datum-mismatch `\"hook\"`"]);
    check("reach_from = \"front-tyre-face\"\n", "", &["jobfile::missing-key `[[chart]]` : key=reach_from"]);
    let unitless = with_chart().replacen("unit = \"m\"\n", "", 1);
    let found = faults(&unitless).list;
    assert_eq!(found.len(), 2, "once for each outline");
    assert!(found.iter().all(|f| f.code == "quantity::missing-unit"));
    assert_eq!(shown::hint(&found[0]), "jobfile-hint-list-unit ");
    check("unit = \"m\"", "unit = \"kg\"", &["quantity::wrong-dimension `\"kg\"`"]);
    // Zones that share ground with different capacities.
    check(
        "[[3.0, 0.5], [6.0, 0.5], [6.0, 6.0], [3.0, 6.0]]",
        "[[2.0, 0.5], [6.0, 0.5], [6.0, 6.0], [2.0, 6.0]]",
        &[
            "jobfile::chart-overlap `[[2.0, 0.5], [6.0, 0.5], [6.0, 6.0], [2.0, 6.0]]` : zone=B other=A area=5.5000 m² reach=2.5000 m height=3.2500 m",
        ],
    );
    let overlap = with_chart().replacen("[[3.0, 0.5], [6.0, 0.5]", "[[2.0, 0.5], [6.0, 0.5]", 1);
    assert_eq!(shown::hint(&faults(&overlap).list[0]), "jobfile-hint-overlap ");
    // More than the plate of the machine, or of the attachment.
    check(
        "name = \"A\"\ncapacity = \"4000 kg\"",
        "name = \"A\"\ncapacity = \"4001 kg\"",
        &["jobfile::chart-above-plate `\"4001 kg\"` : zone=A capacity=4001.0000 kg most=4000.0000 kg"],
    );
    check(
        "capacity = \"4000 kg\"\nheel",
        "capacity = \"3900 kg\"\nheel",
        &["jobfile::chart-above-plate `\"4000 kg\"`"],
    );
    check(
        "outline = [[3.0, 0.5], [6.0, 0.5]",
        "outline = [[3.0, 0.5], [600.0, 0.5]",
        &["jobfile::out-of-range `600.0`"],
    );
    check("support = \"tyres\"", "support = \"tires\"", &[]);
    // An outline that crosses itself.
    check(
        "[[3.0, 0.5], [6.0, 0.5], [6.0, 6.0], [3.0, 6.0]]",
        "[[3.0, 0.5], [6.0, 6.0], [6.0, 0.5], [3.0, 6.0]]",
        &["jobfile::chart-bad-outline `[[3.0, 0.5], [6.0, 6.0], [6.0, 0.5], [3.0, 6.0]]` : zone=B"],
    );
    check(
        "[[3.0, 0.5], [6.0, 0.5], [6.0, 6.0], [3.0, 6.0]]",
        "[[3.0, 0.5], [6.0, 0.5]]",
        &["jobfile::list-too-short `[[3.0, 0.5], [6.0, 0.5]]`"],
    );
    // Behind the machine and above the boom: nothing of the zone can be reached.
    check(
        "[[3.0, 0.5], [6.0, 0.5], [6.0, 6.0], [3.0, 6.0]]",
        "[[20.0, 0.5], [30.0, 0.5], [30.0, 6.0], [20.0, 6.0]]",
        &[
            "jobfile::chart-pieces `[[chart]]` : count=2",
            "jobfile::chart-out-of-reach `[[20.0, 0.5], [30.0, 0.5], [30.0, 6.0], [20.0, 6.0]]` : zone=B",
        ],
    );
    check("capacity = \"1500 kg\"", "capacity = \"-1500 kg\"", &["jobfile::not-positive `\"-1500 kg\"`"]);
    check("level_sideways = \"3°\"", "level_sideways = \"30°\"", &["jobfile::out-of-range `\"30°\"`"]);
}

#[test]
fn a_hole_must_be_declared() {
    let ring = r#"
[[chart]]
attachment = "forks"
support = "tyres"
load_centre = "0.61 m"
reach_from = "front-tyre-face"
reach_to = "load-centre"
height_to = "fork-top"
level_sideways = "3°"
level_fore_aft = "3°"
unit = "m"
NOT_PERMITTED
[[chart.zone]]
name = "A"
capacity = "1500 kg"
outline = [[1.0, 0.5], [5.0, 0.5], [5.0, 5.0], [3.5, 5.0], [3.5, 2.0], [2.0, 2.0], [2.0, 5.0], [1.0, 5.0]]
[[chart.zone]]
name = "B"
capacity = "1200 kg"
outline = [[1.0, 5.0], [5.0, 5.0], [5.0, 6.0], [1.0, 6.0]]
"#;
    let open = plain() + &ring.replace("NOT_PERMITTED", "");
    let found = faults(&open);
    assert_eq!(shown::all(&found, &open).len(), 1, "{found:?}");
    assert_eq!(found.list[0].code, "jobfile::chart-hole");
    assert!(shown::args(&found.list[0].message).starts_with("area=4.5000 m²"), "{found:?}");
    let declared =
        plain() + &ring.replace("NOT_PERMITTED", "not_permitted = [[[2.0, 2.0], [3.5, 2.0], [3.5, 5.0], [2.0, 5.0]]]");
    assert_eq!(faults(&declared), Faults::default());
}

#[test]
fn the_same_chart_twice() {
    let text = with_chart() + CHART;
    let found = faults(&text);
    assert_eq!(found.list.len(), 1, "{found:?}");
    assert_eq!(found.list[0].code, "jobfile::chart-twice");
}

#[test]
fn broken_grammar_does_not_hide_the_rest() {
    // The first line is no TOML; the second fault is far away from it.
    let text = with_chart().replacen("id = \"R1\"", "id = = \"R1\"", 1).replacen("\"8200 kg\"", "\"8200 kN\"", 1);
    let found = shown::all(&faults(&text), &text);
    assert!(found.iter().any(|f| f.contains("jobfile::syntax")), "{found:?}");
    assert!(found.iter().any(|f| f.contains("quantity::wrong-dimension `kN`")), "{found:?}");
    let twice = with_chart().replacen("id = \"R1\"", "id = \"R1\"\nid = \"R2\"", 1);
    let found = shown::all(&faults(&twice), &twice);
    assert_eq!(found, ["6:1 jobfile::duplicate-key `id`"]);
    let bytes = b"format = \"counterpoise-machine/1\"\nname = \"\xff\"";
    let found = jobfile::read_machine("m.toml", bytes).unwrap_err();
    assert_eq!(found.list.iter().map(|f| f.code.as_str()).collect::<Vec<_>>(), ["jobfile::not-text"]);
}
