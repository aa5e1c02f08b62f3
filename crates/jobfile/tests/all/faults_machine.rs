//! Faults of machine files: where they point and what they say.

use crate::shown;
use evidence::Faults;

fn plain() -> String {
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
