//! The known word nearest to a mistyped one.

/// The candidate with the fewest edits from `word`, if they are few enough to be a slip: at most a
/// third of its letters, at least one.
pub(crate) fn nearest<'a>(word: &str, candidates: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let most = (word.chars().count() / 3).max(1);
    candidates
        .into_iter()
        .map(|c| (edits(&word.to_lowercase().replace('-', "_"), &c.to_lowercase().replace('-', "_")), c))
        .filter(|(n, _)| *n <= most)
        .min_by_key(|(n, _)| *n)
        .map(|(_, c)| c)
}

/// Number of insertions, deletions, replacements and swaps of neighbours between two words.
fn edits(a: &str, b: &str) -> usize {
    let (a, b): (Vec<char>, Vec<char>) = (a.chars().collect(), b.chars().collect());
    let mut before_last: Vec<usize> = Vec::new();
    let mut last: Vec<usize> = (0..=b.len()).collect();
    for i in 1..=a.len() {
        let mut row = vec![i; b.len() + 1];
        for j in 1..=b.len() {
            let replace = last[j - 1] + usize::from(a[i - 1] != b[j - 1]);
            row[j] = replace.min(last[j] + 1).min(row[j - 1] + 1);
            if i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] {
                row[j] = row[j].min(before_last[j - 2] + 1);
            }
        }
        before_last = std::mem::replace(&mut last, row);
    }
    last[b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slips_are_found_and_strangers_are_not() {
        assert_eq!(nearest("haeding", ["heading", "at"]), Some("heading"));
        assert_eq!(nearest("wheel-base", ["wheelbase", "track"]), Some("wheelbase"));
        assert_eq!(nearest("colour", ["heading", "at"]), None);
    }
}
