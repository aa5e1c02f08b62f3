//! Rust source with what the compiler does not see, and what only tests see, blanked out.

/// The same text with comments, the insides of strings and characters, and items under
/// `#[cfg(test)]` replaced by spaces; line breaks stay, so that line numbers hold.
pub(super) fn code_only(source: &str) -> String {
    without_tests(&without_words(source))
}

fn without_words(source: &str) -> String {
    let text: Vec<char> = source.chars().collect();
    let mut out = String::with_capacity(source.len());
    let mut at = 0;
    while at < text.len() {
        let end = match text[at] {
            '/' if text.get(at + 1) == Some(&'/') => line_end(&text, at),
            '/' if text.get(at + 1) == Some(&'*') => block_end(&text, at),
            '"' => string_end(&text, at + 1),
            'r' | 'b' | 'c' if !is_word(text.get(at.wrapping_sub(1))) => raw_end(&text, at).unwrap_or(at),
            '\'' => character_end(&text, at).unwrap_or(at),
            _ => at,
        };
        if end > at {
            out.extend(text[at..end].iter().map(|c| if *c == '\n' { '\n' } else { ' ' }));
            at = end;
        } else {
            out.push(text[at]);
            at += 1;
        }
    }
    out
}

fn is_word(c: Option<&char>) -> bool {
    c.is_some_and(|c| c.is_alphanumeric() || *c == '_')
}

fn line_end(text: &[char], at: usize) -> usize {
    text[at..].iter().position(|c| *c == '\n').map_or(text.len(), |n| at + n)
}

fn block_end(text: &[char], at: usize) -> usize {
    let (mut depth, mut i) = (0_usize, at);
    while i < text.len() {
        match (text[i], text.get(i + 1)) {
            ('/', Some('*')) => (depth, i) = (depth + 1, i + 2),
            ('*', Some('/')) if depth == 1 => return i + 2,
            ('*', Some('/')) => (depth, i) = (depth - 1, i + 2),
            _ => i += 1,
        }
    }
    text.len()
}

/// End of a string whose inside starts at `at`.
fn string_end(text: &[char], mut at: usize) -> usize {
    while at < text.len() {
        match text[at] {
            '\\' => at += 2,
            '"' => return at + 1,
            _ => at += 1,
        }
    }
    text.len()
}

/// End of `r"…"`, `r#"…"#`, `br#"…"#` that starts at `at`; `None` if it is something else.
fn raw_end(text: &[char], at: usize) -> Option<usize> {
    let mut i = at;
    if matches!(text.get(i), Some('b' | 'c')) {
        i += 1;
    }
    let raw = text.get(i) == Some(&'r');
    if !raw {
        return (text.get(i) == Some(&'"')).then(|| string_end(text, i + 1));
    }
    i += 1;
    let hashes = text[i..].iter().take_while(|c| **c == '#').count();
    i += hashes;
    if text.get(i) != Some(&'"') {
        return None;
    }
    i += 1;
    while i < text.len() {
        if text[i] == '"' && text[i + 1..].iter().take(hashes).filter(|c| **c == '#').count() == hashes {
            return Some(i + 1 + hashes);
        }
        i += 1;
    }
    Some(text.len())
}

/// End of a character literal; `None` for a lifetime.
fn character_end(text: &[char], at: usize) -> Option<usize> {
    if text.get(at + 1) == Some(&'\\') {
        return text.get(at + 3..)?.iter().position(|c| *c == '\'').map(|n| at + 3 + n + 1);
    }
    (text.get(at + 2) == Some(&'\'')).then_some(at + 3)
}

fn without_tests(code: &str) -> String {
    const MARK: &str = "#[cfg(test)]";
    let mut out = String::with_capacity(code.len());
    let mut rest = code;
    while let Some(start) = rest.find(MARK) {
        out.push_str(&rest[..start]);
        let item = &rest[start..];
        let end = item_end(item);
        out.extend(item[..end].chars().map(|c| if c == '\n' { '\n' } else { ' ' }));
        rest = &item[end..];
    }
    out + rest
}

/// End of the first item: its `;`, or the brace that closes its first one.
fn item_end(item: &str) -> usize {
    let mut depth = 0_usize;
    for (i, c) in item.char_indices() {
        match c {
            ';' if depth == 0 => return i + 1,
            '{' => depth += 1,
            '}' if depth <= 1 => return i + 1,
            '}' => depth -= 1,
            _ => {}
        }
    }
    item.len()
}

#[cfg(test)]
mod tests {
    use super::code_only;

    #[test]
    fn words_go_and_code_stays_on_its_line() {
        let code = code_only(
            "a(); // std::fs\n/* std::net /* x */ */ b(\"std::env \\\" //\", r#\"x\"y\"#);\nc('\"', 'a, '\\'');",
        );
        assert!(!code.contains("std"), "{code}");
        assert_eq!(code.lines().count(), 3);
        let lines: Vec<_> = code.lines().map(str::trim).collect();
        assert!(lines[0].starts_with("a();"));
        assert!(lines[1].starts_with("b("));
        assert!(lines[2].contains("'a,"), "a lifetime is no character: {}", lines[2]);
    }

    #[test]
    fn items_for_tests_go() {
        let code =
            code_only("use a;\n#[cfg(test)]\nmod tests {\n fn f() { std::fs(); }\n}\n#[cfg(test)]\nmod more;\nlet z;");
        assert!(!code.contains("fs") && !code.contains("more"));
        assert!(code.contains("use a;") && code.contains("let z;"));
        assert_eq!(code.lines().count(), 8);
    }

    #[test]
    fn unfinished_text_ends_quietly() {
        for text in ["\"abc", "/* abc", "r#\"abc", "'\\", "#[cfg(test)] mod a {"] {
            assert!(code_only(text).len() >= text.len() - 1, "{text}");
        }
    }
}
