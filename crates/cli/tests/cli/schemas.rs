//! The published JSON Schemas are those of the program. `COUNTERPOISE_WRITE_SCHEMAS` writes them.

use crate::support::{root, run};

#[test]
fn published_schemas_are_fresh() {
    for form in [
        "plan",
        "stands",
        "order",
        "check",
        "calc-chart",
        "calc-reactions",
        "calc-stability",
        "calc-travel-stability",
        "calc-wind",
        "calc-fit",
        "calc-platform",
        "calc-bearing",
        "calc-mat",
        "calc-settlement",
        "calc-presumed",
        "calc-rut",
        "calc-working-platform",
        "calc-stress",
        "calc-edge",
        "calc-buried",
        "calc-landing",
        "faults",
        "machine-explain",
        "machine-compare",
        "machine-missing",
        "machine-reserve",
        "machine-file",
        "job-file",
    ] {
        let said = run(&["schema", form]);
        assert_eq!(said.code, 0, "{}", said.err);
        let _: serde_json::Value = serde_json::from_str(&said.out).unwrap();
        let file = root().join(format!("docs/schemas/{form}.schema.json"));
        if std::env::var_os("COUNTERPOISE_WRITE_SCHEMAS").is_some() {
            std::fs::write(&file, &said.out).unwrap();
        }
        let published = std::fs::read_to_string(&file).unwrap_or_default();
        assert!(published == said.out, "{form}: stale; set COUNTERPOISE_WRITE_SCHEMAS and run again");
    }
}
