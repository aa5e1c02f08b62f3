//! Texts of a drawing: encodings, special characters, and the marks of formatted text.

/// Windows-1252 from 0x80 to 0x9F; the rest is Latin-1. From memory, checked against Python.
const HIGH: [char; 32] = [
    '€', '\u{81}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{8D}', 'Ž', '\u{8F}', '\u{90}', '‘', '’',
    '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{9D}', 'ž', 'Ÿ',
];

/// UTF-8 where it is that, otherwise Windows-1252; `\U+00E9` becomes its character.
pub(crate) fn decoded(bytes: &[u8]) -> String {
    let plain = match std::str::from_utf8(bytes) {
        Ok(text) => text.to_owned(),
        Err(_) => bytes
            .iter()
            .map(|&b| if (0x80..0xA0).contains(&b) { HIGH[usize::from(b) - 0x80] } else { char::from(b) })
            .collect(),
    };
    if !plain.contains("\\U+") {
        return plain;
    }
    let mut out = String::with_capacity(plain.len());
    let mut rest = plain.as_str();
    while let Some(at) = rest.find("\\U+") {
        out.push_str(&rest[..at]);
        let digits = rest.get(at + 3..at + 7);
        if let Some(c) = digits.and_then(|d| u32::from_str_radix(d, 16).ok()).and_then(char::from_u32) {
            out.push(c);
            rest = &rest[at + 7..];
        } else {
            out.push_str("\\U+");
            rest = &rest[at + 3..];
        }
    }
    out.push_str(rest);
    out
}

/// A single line: `%%d` is a degree sign, `%%p` plus-minus, `%%c` a diameter, `%%u` underlines.
pub(crate) fn single_line(bytes: &[u8]) -> String {
    let text = decoded(bytes);
    let mut out = String::with_capacity(text.len());
    let mut rest = text.as_str();
    while let Some(at) = rest.find("%%") {
        out.push_str(&rest[..at]);
        let mut after = rest[at + 2..].chars();
        match after.next() {
            Some('d' | 'D') => out.push('°'),
            Some('p' | 'P') => out.push('±'),
            Some('c' | 'C') => out.push('⌀'),
            Some('u' | 'U' | 'o' | 'O' | 'k' | 'K') | None => {}
            Some(other) => out.push(other),
        }
        rest = after.as_str();
    }
    out.push_str(rest);
    out
}

/// Formatted text without its marks: `\P` starts a line, `{\fArial;x}` is x, `\S1/2;` is 1/2.
pub(crate) fn formatted(bytes: &[u8]) -> String {
    let text = single_line(bytes);
    let mut out = String::with_capacity(text.len());
    let mut chars = text.chars();
    while let Some(c) = chars.next() {
        match c {
            '{' | '}' => {}
            '\\' => match chars.next() {
                Some('P' | 'N' | 'X') => out.push('\n'),
                Some('~') => out.push(' '),
                Some(c @ ('\\' | '{' | '}')) => out.push(c),
                Some('S') => out.extend(
                    chars.by_ref().take_while(|&c| c != ';').map(|c| if c == '^' || c == '#' { '/' } else { c }),
                ),
                Some('A' | 'C' | 'c' | 'f' | 'F' | 'H' | 'Q' | 'T' | 'W' | 'p') => {
                    // The mark's own value ends at the semicolon.
                    let _ = chars.by_ref().find(|&c| c == ';');
                }
                _ => {}
            },
            c => out.push(c),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_lose_their_marks() {
        assert_eq!(decoded(b"Stra\xDFe \x80"), "Straße €");
        assert_eq!(decoded("Straße".as_bytes()), "Straße");
        assert_eq!(decoded(br"caf\U+00E9 \U+ZZ"), r"café \U+ZZ");
        assert_eq!(single_line(b"45%%d %%p0.1 %%c20 100%%%"), "45° ±0.1 ⌀20 100%");
        assert_eq!(formatted(br"{\fArial|b0;Hall \C1;A}\P{h} 7\S1/2; \\ x"), "Hall A\nh 71/2 \\ x");
        assert_eq!(formatted(br"\f"), "");
    }
}
