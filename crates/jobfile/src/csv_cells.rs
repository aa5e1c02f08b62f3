//! Cells of a list of commas, semicolons or tabs, each with where it stands (RFC 4180, section 2, and any of the three
//! separators). The reader of levels does not say where a cell begins; faults in a list of loads have to.

/// A cell: its text without quotes and outer blanks, and the bytes it stands in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Cell {
    pub(crate) text: String,
    pub(crate) span: (usize, usize),
}

/// A row that is not blank.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Row {
    pub(crate) cells: Vec<Cell>,
    pub(crate) span: (usize, usize),
}

/// Separators that are tried.
pub(crate) const SEPARATORS: [char; 3] = [';', '\t', ','];

/// The rows of a text.
///
/// # Errors
/// Where a quote begins that nothing closes.
pub(crate) fn rows(text: &str, separator: char) -> Result<Vec<Row>, (usize, usize)> {
    let mut rows = Vec::new();
    let mut at = 0;
    while at < text.len() {
        let start = at;
        let mut cells = Vec::new();
        loop {
            let (cell, end) = cell(text, at, separator)?;
            cells.push(cell);
            at = end;
            if text[at..].starts_with(separator) {
                at += separator.len_utf8();
                continue;
            }
            break;
        }
        let span = (start, at);
        at += if text[at..].starts_with("\r\n") { 2 } else { 1 };
        if cells.iter().any(|c| !c.text.is_empty()) {
            rows.push(Row { cells, span });
        }
    }
    Ok(rows)
}

/// The cell that begins at `at`, and where it ends.
fn cell(text: &str, at: usize, separator: char) -> Result<(Cell, usize), (usize, usize)> {
    let rest = &text[at..];
    let blanks = rest.len() - rest.trim_start_matches(' ').len();
    let ends = |c: char| c == separator || c == '\n' || c == '\r';
    if !rest[blanks..].starts_with('"') {
        let length = rest.find(ends).unwrap_or(rest.len());
        let raw = &rest[..length];
        let (from, inside) = (raw.len() - raw.trim_start().len(), raw.trim());
        let span = (at + from, at + from + inside.len());
        return Ok((Cell { text: inside.to_owned(), span }, at + length));
    }
    let begin = blanks + 1;
    let mut said = String::new();
    let mut from = begin;
    loop {
        let Some(quote) = rest[from..].find('"').map(|i| from + i) else { return Err((at + blanks, text.len())) };
        said.push_str(&rest[from..quote]);
        if rest[quote + 1..].starts_with('"') {
            said.push('"');
            from = quote + 2;
            continue;
        }
        // What stands behind the closing quote belongs to nothing; it is kept, so that somebody sees it.
        let behind = rest[quote + 1..].find(ends).map_or(rest.len(), |i| quote + 1 + i);
        said.push_str(rest[quote + 1..behind].trim_end());
        let cell = Cell { text: said.trim().to_owned(), span: (at + begin, at + quote) };
        return Ok((cell, at + behind));
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "tests")]
mod tests {
    use super::*;

    fn texts(text: &str, separator: char) -> Vec<Vec<String>> {
        rows(text, separator).unwrap().into_iter().map(|r| r.cells.into_iter().map(|c| c.text).collect()).collect()
    }

    #[test]
    fn cells_come_without_quotes_and_blanks() {
        assert_eq!(texts("a, b\r\n\r\n1,\"2,5 \"\"x\"\"\"\n", ','), [["a", "b"], ["1", "2,5 \"x\""]]);
        assert_eq!(texts("a;b\n1;", ';'), [["a", "b"], ["1", ""]]);
        assert_eq!(texts("a\n\"two\nlines\"", ','), [["a"], ["two\nlines"]]);
        assert!(rows("a,b\n1,\"never closed\n", ',').is_err());
        assert!(texts("", ',').is_empty() && texts("\n , \n", ',').is_empty());
    }

    #[test]
    fn a_cell_knows_where_it_stands() {
        let text = "id;mass\nb1; 1200 kg ;\"é\"\n";
        for row in rows(text, ';').unwrap() {
            for cell in row.cells {
                assert_eq!(&text[cell.span.0..cell.span.1], cell.text);
            }
        }
    }
}
