//! Text in DXF: ASCII only, lines short enough.

/// Longest text of one entity or tag in bytes; the format's own limit is 255.
const LONGEST: usize = 250;

/// Letters in a line of notes.
const LINE: usize = 110;

/// ASCII with `\U+XXXX` for everything else. What breaks lines becomes a space. The format has four digits and no more:
/// letters beyond them stand as `(U+1F3D7)`, which every reader takes.
fn letter(c: char) -> String {
    match c {
        '\\' => unit(c),
        ' '..='~' => c.to_string(),
        _ if c.is_control() => " ".to_owned(),
        _ if u32::from(c) > 0xFFFF => format!("(U+{:X})", u32::from(c)),
        _ => unit(c),
    }
}

fn unit(c: char) -> String {
    format!("\\U+{:04X}", u32::from(c))
}

/// The same for text that is shown, where some signs are commands: braces and carets as the format has them. A backslash,
/// and a per cent sign after another, become signs that look like them (∖, ％), since readers differ in when and how
/// often they decode.
fn shown(c: char, before: char) -> String {
    match c {
        '{' | '}' => format!("\\{c}"),
        '^' => "^ ".to_owned(),
        '\\' => unit('∖'),
        '%' if before == '%' => unit('％'),
        _ => letter(c),
    }
}

/// Encoded pieces of comments and extended data, none longer than the format takes, cut between letters.
pub(super) fn pieces(text: &str) -> Vec<String> {
    cut(text.chars().map(letter))
}

/// Encoded pieces of text that is shown.
pub(super) fn shown_pieces(text: &str) -> Vec<String> {
    let before = std::iter::once(' ').chain(text.chars());
    cut(text.chars().zip(before).map(|(c, before)| shown(c, before)))
}

fn cut(letters: impl Iterator<Item = String>) -> Vec<String> {
    let mut out = vec![String::new()];
    for letter in letters {
        match out.last_mut() {
            Some(last) if last.len() + letter.len() <= LONGEST => last.push_str(&letter),
            _ => out.push(letter),
        }
    }
    out
}

/// Lines of a note, broken between words where it has them.
pub(super) fn wrapped(text: &str) -> Vec<String> {
    let mut out = vec![String::new()];
    for word in text.split_whitespace() {
        let letters = |s: &str| s.chars().count();
        let last = out.last().map_or(0, |l| letters(l));
        if last > 0 && last + 1 + letters(word) > LINE {
            out.push(String::new());
        }
        if let Some(line) = out.last_mut() {
            if !line.is_empty() {
                line.push(' ');
            }
            line.push_str(word);
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_beyond_ascii_and_commands_are_coded() {
        assert_eq!(pieces("Gerüst Süd"), ["Ger\\U+00FCst S\\U+00FCd"]);
        assert_eq!(pieces("塔 a\nb\t"), ["\\U+5854 a b "]);
        assert_eq!(pieces("🏗 \\U+0041"), ["(U+1F3D7) \\U+005CU+0041"]);
        assert_eq!(shown_pieces("5 % %%d {^J} a\\b"), ["5 % %\\U+FF05d \\{^ J\\} a\\U+2216b"]);
    }

    #[test]
    fn long_texts_are_cut_between_letters() {
        let text = "ü".repeat(100);
        let pieces = pieces(&text);
        assert!(pieces.iter().all(|p| p.len() <= LONGEST && p.len() % 7 == 0), "{pieces:?}");
        assert_eq!(pieces.concat(), "\\U+00FC".repeat(100));
        let note = "word ".repeat(60);
        assert!(wrapped(&note).iter().all(|l| l.len() <= LINE) && wrapped(&note).join(" ") == note.trim());
    }
}
