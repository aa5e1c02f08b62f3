//! Text into HTML: escaped, so that a name from a job file is never markup.

use crate::wire::Piece;
use std::fmt;

/// A text as the content of an element or of an attribute in double quotes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Escaped<'a>(pub(crate) &'a str);

impl fmt::Display for Escaped<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for c in self.0.chars() {
            match c {
                '&' => f.write_str("&amp;")?,
                '<' => f.write_str("&lt;")?,
                '>' => f.write_str("&gt;")?,
                '"' => f.write_str("&quot;")?,
                '\'' => f.write_str("&#39;")?,
                // Control characters but tab and line break have no place in HTML.
                c if c.is_control() && c != '\t' && c != '\n' => {}
                c => write!(f, "{c}")?,
            }
        }
        Ok(())
    }
}

/// A formula as the content of an element.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Formula<'a>(pub(crate) &'a [Piece]);

impl fmt::Display for Formula<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|piece| {
            let text = Escaped(&piece.text);
            if piece.lowered { write!(f, "<sub>{text}</sub>") } else { write!(f, "{text}") }
        })
    }
}

#[cfg(test)]
mod tests {
    use super::Escaped;

    #[test]
    fn markup_becomes_text() {
        assert_eq!(
            Escaped("<img src=x onerror=\"a('b')\">&\u{0}\u{7}ñ").to_string(),
            "&lt;img src=x onerror=&quot;a(&#39;b&#39;)&quot;&gt;&amp;ñ"
        );
    }
}
