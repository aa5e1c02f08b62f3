//! From a byte to line and column.

/// Where the lines of a text start.
#[derive(Debug, Clone)]
pub(crate) struct LineIndex {
    starts: Vec<usize>,
}

impl LineIndex {
    pub(crate) fn new(text: &str) -> Self {
        let starts = std::iter::once(0).chain(text.match_indices('\n').map(|(i, _)| i + 1)).collect();
        Self { starts }
    }
    /// Line and column of a byte, both from 1; the column counts characters.
    pub(crate) fn at(&self, text: &str, byte: usize) -> (usize, usize) {
        let byte = byte.min(text.len());
        let line = self.starts.partition_point(|&s| s <= byte).max(1);
        let start = self.starts[line - 1];
        let column = text[start..].char_indices().take_while(|(i, _)| start + i < byte).count() + 1;
        (line, column)
    }
}
