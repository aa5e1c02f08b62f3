//! Whether two marks name the same thing: a serial number on the plate and in a file.

/// True if two marks are the same but for case, spaces and hyphens that carry no meaning.
///
/// A mark is cut into runs of letters and runs of digits; a space or hyphen (of any length and kind)
/// between two runs of different kind says no more than the change itself and is dropped, so that
/// "TH 0042", "th-0042" and "TH0042" are one. Between two runs of the same kind it tells them apart
/// ("1-10" is not "11-0", "AB-C" not "A-BC") and counts. Every other sign counts as it stands; a
/// letter O is never a zero, and leading zeros count.
pub fn same_mark(a: &str, b: &str) -> bool {
    plain(a) == plain(b)
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Letter,
    Digit,
    Sign,
}

fn kind(c: char) -> Kind {
    if c.is_numeric() {
        Kind::Digit
    } else if c.is_alphabetic() {
        Kind::Letter
    } else {
        Kind::Sign
    }
}

fn separates(c: char) -> bool {
    c.is_whitespace() || matches!(c, '-' | '\u{2010}'..='\u{2015}' | '\u{2212}')
}

fn plain(mark: &str) -> String {
    let mut out = String::with_capacity(mark.len());
    let mut last: Option<Kind> = None;
    let mut gap = false;
    for c in mark.chars() {
        if separates(c) {
            gap = true;
            continue;
        }
        let now = kind(c);
        if gap && last == Some(now) {
            out.push('-');
        }
        out.extend(c.to_uppercase());
        (last, gap) = (Some(now), false);
    }
    out
}

/// True if two lists of marks hold the same ones, in any order.
pub fn same_marks(a: &[String], b: &[String]) -> bool {
    let sorted = |list: &[String]| {
        let mut marks: Vec<String> = list.iter().map(|m| plain(m)).collect();
        marks.sort();
        marks.dedup();
        marks
    };
    sorted(a) == sorted(b)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_carries_no_meaning_is_passed_over_and_nothing_else() {
        for (a, b) in [("TH-0042", "th 0042"), ("TH0042", "TH–0042"), (" 330 kg ", "330kg"), ("12-34", "12  34")] {
            assert!(same_mark(a, b), "{a} {b}");
        }
        for (a, b) in [
            ("1-10", "11-0"),
            ("1 234", "1234"),
            ("AB-C", "A-BC"),
            ("AB-C", "ABC"),
            ("TH-0042", "TH-042"),
            ("TH-O042", "TH-0042"),
            ("12.5-80", "125-80"),
            ("A/1", "A1"),
            ("", "0"),
        ] {
            assert!(!same_mark(a, b), "{a} {b}");
        }
        let list = |marks: &[&str]| marks.iter().map(|m| (*m).to_owned()).collect::<Vec<_>>();
        assert!(same_marks(&list(&["Winch 2", "frame level"]), &list(&["Frame level", "winch-2"])));
        assert!(!same_marks(&list(&["winch"]), &list(&[])));
    }
}
