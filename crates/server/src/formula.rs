//! Formulas and symbols in pieces, so that every screen lowers an index the same way.

use crate::wire::Piece;

/// `x_P − c₀` as x, lowered P, " − c", lowered 0. An index is what follows `_` as far as letters and
/// digits go, or a run of the small digits of Unicode.
pub(crate) fn pieces(formula: &str) -> Vec<Piece> {
    let mut pieces: Vec<Piece> = Vec::new();
    let mut add = |text: char, lowered: bool| match pieces.last_mut() {
        Some(last) if last.lowered == lowered => last.text.push(text),
        _ => pieces.push(Piece { text: text.to_string(), lowered }),
    };
    let mut after_mark = false;
    let mut chars = formula.chars().peekable();
    while let Some(c) = chars.next() {
        if c == '_' && chars.peek().is_some_and(|next| next.is_alphanumeric()) {
            after_mark = true;
            continue;
        }
        let small = small_digit(c);
        after_mark = after_mark && c.is_alphanumeric() && small.is_none();
        add(small.unwrap_or(c), after_mark || small.is_some());
    }
    pieces
}

/// The digit that a small digit below the line stands for.
fn small_digit(c: char) -> Option<char> {
    let value = u32::from(c).checked_sub(u32::from('₀'))?;
    char::from_digit(value, 10)
}

#[cfg(test)]
mod tests {
    use super::pieces;

    fn marked(formula: &str) -> String {
        let mark = |p: crate::wire::Piece| if p.lowered { format!("<{}>", p.text) } else { p.text };
        pieces(formula).into_iter().map(mark).collect()
    }

    #[test]
    fn an_index_is_lowered_and_no_mark_of_it_is_left() {
        for (formula, expected) in [
            ("x_P", "x<P>"),
            ("r_max = r + e", "r<max> = r + e"),
            ("Δr = c − c₀", "Δr = c − c<0>"),
            ("c_10+c₁₂", "c<10>+c<12>"),
            ("ĝ_x·a", "ĝ<x>·a"),
            ("|(u × S)_xy|,  F = ΣF_i", "|(u × S)<xy>|,  F = ΣF<i>"),
            ("k = W_t / W", "k = W<t> / W"),
            ("a_", "a_"),
            ("", ""),
        ] {
            assert_eq!(marked(formula), expected);
        }
    }
}
