//! Words of the client: each id it asks for stands in the catalogue, in every language.

use crate::asking::get;
use std::collections::BTreeSet;

/// Ids named in the client's list of words.
fn asked() -> BTreeSet<String> {
    let source = include_str!("../../../../web/src/reader/texts.ts");
    source.split('\'').filter(|s| s.starts_with("ui-")).map(str::to_owned).collect()
}

#[tokio::test]
async fn every_word_of_the_client_is_served_in_every_language() {
    let asked = asked();
    assert!(asked.len() > 40, "the list of words was not found: {asked:?}");
    for lang in ["en", "es"] {
        let texts = get(&format!("/api/texts?lang={lang}")).await.json();
        let missing: Vec<_> =
            asked.iter().filter(|id| texts["texts"][id.as_str()].as_str().is_none_or(str::is_empty)).collect();
        assert!(missing.is_empty(), "{lang}: {missing:?}");
    }
}
