//! The ids of the texts.

use std::collections::BTreeSet;

#[test]
fn ids_are_ours_and_stand_once() {
    let ids: BTreeSet<&str> = survey::text::ALL.iter().map(|t| t.id).collect();
    assert_eq!(ids.len(), survey::text::ALL.len());
    assert!(ids.iter().all(|id| id.starts_with("survey-")));
}
