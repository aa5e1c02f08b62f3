//! Which checks of a lift rest on which keys of a machine file.

/// The checks that a machine file has a part in, by the ids that findings carry, in the order of a plan.
pub const MACHINE_CHECKS: [&str; 13] = [
    "machine",
    "identity",
    "attachment",
    "forks",
    "rigging",
    "level",
    "chart",
    "load-factor",
    "tilt",
    "wind",
    "line",
    "ground",
    "approach",
];

/// Keys by the start of their path, longest first where two fit; what is not listed counts for `machine`.
const RESTS: [(&str, &[&str]); 64] = [
    ("basket", &["attachment"]),
    ("bucket[].heel", &["attachment", "chart", "load-factor", "tilt", "line"]),
    ("bucket", &["attachment", "load-factor", "tilt"]),
    ("cage", &["attachment"]),
    ("chart_number", &["identity"]),
    ("clamp[].heel", &["attachment", "chart", "load-factor", "tilt", "line"]),
    ("clamp[].width", &["line"]),
    ("clamp", &["attachment", "load-factor", "tilt"]),
    ("counterweight", &["identity"]),
    ("forks[].coupling", &["attachment"]),
    ("id", &["machine"]),
    ("options", &["identity"]),
    ("other[].heel", &["attachment", "chart", "load-factor", "tilt", "line"]),
    ("other[].width", &["line"]),
    ("other", &["attachment", "load-factor", "tilt"]),
    ("platform", &["attachment"]),
    ("serial", &["identity"]),
    ("tyres", &["identity"]),
    ("work_platform", &["attachment"]),
    ("body", &["load-factor", "tilt", "ground"]),
    ("boom.angle", &["chart", "load-factor", "tilt", "line", "approach"]),
    ("boom.carriage", &["load-factor", "tilt", "ground"]),
    ("boom.depth", &["wind", "line", "tilt"]),
    ("boom.extension", &["chart", "load-factor", "tilt", "line", "approach"]),
    ("boom.flex", &["chart", "load-factor", "line"]),
    ("boom.section", &["load-factor", "tilt", "ground"]),
    ("boom", &["chart", "load-factor", "tilt", "line", "approach"]),
    ("chart[].level", &["level"]),
    ("chart", &["chart"]),
    ("forks[].capacity", &["attachment", "chart"]),
    ("forks[].centre", &["load-factor", "tilt", "ground"]),
    ("forks[].heel", &["chart", "load-factor", "tilt", "line", "approach"]),
    ("forks[].id", &["attachment"]),
    ("forks[].left.length", &["forks", "approach"]),
    ("forks[].load_centre", &["chart", "forks"]),
    ("forks[].mass", &["load-factor", "tilt", "ground"]),
    ("forks[].name", &["attachment"]),
    ("forks[].right.length", &["forks", "approach"]),
    ("forks[]", &["forks"]),
    ("forks", &["attachment", "chart", "forks"]),
    ("front_axle.tyre.pressure", &["ground"]),
    ("front_axle.tyre.radius", &["chart", "line"]),
    ("front_axle.tyre.width", &["line"]),
    ("front_axle", &["level", "load-factor", "tilt", "ground"]),
    ("greatest_capacity", &["chart"]),
    ("jib[].capacity", &["attachment", "chart"]),
    ("jib[].hook", &["chart", "load-factor", "tilt", "line", "rigging"]),
    ("jib", &["attachment", "load-factor", "tilt"]),
    ("limits.carry", &["load-factor", "tilt", "line"]),
    ("limits.wind", &["wind"]),
    ("outriggers.pad_area", &["ground"]),
    ("outriggers", &["level", "load-factor", "tilt", "ground"]),
    ("outline", &["line"]),
    ("rear_axle.lock", &["load-factor", "tilt"]),
    ("rear_axle.tyre.pressure", &["ground"]),
    ("rear_axle.tyre.rim", &["load-factor", "tilt"]),
    ("rear_axle.tyre.stiffness", &["load-factor", "tilt"]),
    ("rear_axle.tyre", &["line"]),
    ("rear_axle", &["level", "load-factor", "tilt", "ground"]),
    ("levelling", &["load-factor", "tilt"]),
    ("slew", &["load-factor", "tilt"]),
    ("stabilizers.pad_area", &["ground"]),
    ("stabilizers", &["level", "load-factor", "tilt", "ground"]),
    ("wind_areas", &["load-factor", "tilt", "wind"]),
];

/// The checks that rest on a key, by its path without numbers.
pub(crate) fn checks_of(path: &str) -> &'static [&'static str] {
    let fits = RESTS.iter().filter(|(start, _)| path.starts_with(start));
    fits.max_by_key(|(start, _)| start.len()).map_or(&["machine"], |(_, checks)| checks)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_check_has_its_keys_and_every_key_known_checks() {
        for (start, checks) in RESTS {
            assert!(!checks.is_empty() && checks.iter().all(|c| MACHINE_CHECKS.contains(c)), "{start}");
        }
        for check in MACHINE_CHECKS {
            assert!(check == "machine" || RESTS.iter().any(|(_, checks)| checks.contains(&check)), "{check}");
            assert!(planning::check_name(check).is_some(), "{check}");
        }
    }

    #[test]
    fn the_longest_start_counts() {
        assert_eq!(checks_of("chart[].level_sideways"), ["level"]);
        assert_eq!(checks_of("chart[].zone"), ["chart"]);
        assert_eq!(checks_of("serial"), ["identity"]);
        assert_eq!(checks_of("name"), ["machine"]);
    }
}
