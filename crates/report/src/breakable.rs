//! Words so long that no line could hold them get places to break.

/// Characters in a row without a space that a narrow column still holds.
const LONGEST: usize = 16;

/// The text with zero-width spaces in overlong words: after separators where there are any, else
/// every [`LONGEST`] characters. Control characters become spaces.
pub(crate) fn breakable(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 8);
    for (i, word) in text.split(|c: char| c.is_whitespace() && !is_tie(c)).enumerate() {
        if i > 0 {
            out.push(' ');
        }
        let long = word.chars().count() > LONGEST;
        let mut run = 0;
        for c in word.chars() {
            out.push(if c.is_control() { ' ' } else { c });
            run += 1;
            if long
                && (run >= LONGEST
                    || (run > 3 && matches!(c, '/' | '[' | ']' | '_' | '.' | ',' | ';' | ':' | '-' | '\\' | '@')))
            {
                out.push('\u{200b}');
                run = 0;
            }
        }
    }
    out
}

/// Spaces that hold a number and its unit together.
fn is_tie(c: char) -> bool {
    matches!(c, '\u{a0}' | '\u{202f}' | '\u{2060}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_words_get_places_to_break_and_short_ones_stay() {
        assert_eq!(breakable("a short text, 1,850\u{a0}kg"), "a short text, 1,850\u{a0}kg");
        let broken = breakable(&"x".repeat(100));
        assert!(broken.split('\u{200b}').all(|p| p.len() <= LONGEST));
        assert_eq!(broken.replace('\u{200b}', ""), "x".repeat(100));
        assert!(breakable("machines/demo-fourteen.toml").contains("machines/\u{200b}"));
    }
}
