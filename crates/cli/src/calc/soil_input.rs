//! Soil as calculations read it: by the keys of a job's `[[soil]]`.

use evidence::Trace;
use ground::Profile;
use jobfile::{Reader, soil_profile};

/// Keys of soil, commented: for examples to end with, since tables of a list come last in such a file.
pub(super) const SOIL_EXAMPLE: &str = r#"water = "1.2 m"              # below the surface; "unknown" counts as at it
state = "as-stated"          # or "wetted", "thawing", "measured-frozen"
# Layers from the surface down. State undrained_strength, or friction with
# cohesion, or both; what is less counts. A named person answers for them.
# Instead of undrained_strength one test: cbr = "4 %"; vane = "45 kPa" with
# plasticity = "30 %"; penetration_per_blow = "30 mm"; cone_index = "600 kPa";
# plate = { diameter = "0.45 m", pressure = "250 kPa", settlement = "8 mm" }.
# Of a test the low end counts.
[[layer]]
thickness = "0.50 m"
unit_weight = "19 kN/m³"
undrained_strength = "60 kPa"
cohesion = "3 kPa"
friction = "28°"
modulus = "15 MPa"           # for settlement only
poisson = "0.4"              # left out: 0.3
[[layer]]
thickness = "5 m"            # left out of the last: it goes on
unit_weight = "18 kN/m³"
undrained_strength = "45 kPa"
cohesion = "2 kPa"
friction = "25°"
modulus = "8 MPa"
poisson = "0.4"
"#;

/// Reads the profile of a table, with the steps of strengths that come from tests; none where a fault was noted.
pub(super) fn soil(root: &Reader<'_>, trace: &mut impl Trace) -> Option<Profile> {
    root.stated();
    soil_profile(root, trace)
}
