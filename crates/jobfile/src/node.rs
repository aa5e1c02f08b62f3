//! A value of a TOML or JSON file with its byte range: what both parsers hand on.

/// A value and the bytes it stands in.
#[derive(Debug, Clone, PartialEq)]
pub struct Node {
    /// The value.
    pub value: Value,
    /// Byte range in the file.
    pub span: (usize, usize),
}

/// Kinds of value.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// Text.
    Text(String),
    /// A number as written; NaN and infinities included.
    Number(String),
    /// True or false.
    Bool(bool),
    /// TOML's date or time, as written.
    Date(String),
    /// JSON's null.
    Nothing,
    /// A list.
    List(Vec<Node>),
    /// A table.
    Table(Table),
}

/// A table: its entries in the order of the file.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Table {
    /// The entries.
    pub entries: Vec<Entry>,
}

/// A key with its value.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// The key.
    pub key: String,
    /// Byte range of the key.
    pub key_span: (usize, usize),
    /// The value.
    pub node: Node,
}

impl Table {
    /// The value of a key.
    pub fn get(&self, key: &str) -> Option<&Node> {
        self.entries.iter().find(|e| e.key == key).map(|e| &e.node)
    }
}

impl Value {
    /// The text id that names the kind.
    pub fn kind(&self) -> evidence::TextId {
        match self {
            Self::Text(_) => crate::text::TYPE_TEXT,
            Self::Number(_) => crate::text::TYPE_NUMBER,
            Self::Bool(_) => crate::text::TYPE_BOOL,
            Self::Date(_) => crate::text::TYPE_DATE,
            Self::Nothing => crate::text::TYPE_NOTHING,
            Self::List(_) => crate::text::TYPE_LIST,
            Self::Table(_) => crate::text::TYPE_TABLE,
        }
    }
}

/// Something that breaks the grammar.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct SyntaxError {
    /// The parser's words.
    pub(crate) detail: String,
    /// Where.
    pub(crate) span: (usize, usize),
    /// True for a key given twice.
    pub(crate) duplicate_key: bool,
}
