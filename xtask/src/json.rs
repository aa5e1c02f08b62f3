//! A reader of JSON, enough for what cargo says about the workspace.

use std::collections::BTreeMap;

/// A JSON value. Numbers stay text: nothing here computes with them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Json {
    Null,
    Bool(bool),
    Number(String),
    Text(String),
    List(Vec<Json>),
    Object(BTreeMap<String, Json>),
}

impl Json {
    /// Reads a whole text.
    pub(crate) fn read(text: &str) -> Result<Self, String> {
        let mut reader = Reader { bytes: text.as_bytes(), at: 0 };
        let value = reader.value()?;
        reader.blank();
        if reader.at == reader.bytes.len() { Ok(value) } else { Err(reader.wrong("the end")) }
    }

    /// A member of an object.
    pub(crate) fn get(&self, key: &str) -> Option<&Self> {
        match self {
            Self::Object(map) => map.get(key),
            _ => None,
        }
    }

    /// The text of a string.
    pub(crate) fn text(&self) -> Option<&str> {
        match self {
            Self::Text(text) => Some(text),
            _ => None,
        }
    }

    /// The items of a list; none for anything else.
    pub(crate) fn items(&self) -> &[Self] {
        match self {
            Self::List(items) => items,
            _ => &[],
        }
    }
}

struct Reader<'a> {
    bytes: &'a [u8],
    at: usize,
}

impl Reader<'_> {
    fn wrong(&self, expected: &str) -> String {
        format!("JSON: expected {expected} at byte {}", self.at)
    }

    fn blank(&mut self) {
        while self.bytes.get(self.at).is_some_and(u8::is_ascii_whitespace) {
            self.at += 1;
        }
    }

    fn peek(&mut self) -> Option<u8> {
        self.blank();
        self.bytes.get(self.at).copied()
    }

    fn take(&mut self, byte: u8) -> Result<(), String> {
        if self.peek() == Some(byte) {
            self.at += 1;
            Ok(())
        } else {
            Err(self.wrong(&format!("`{}`", char::from(byte))))
        }
    }

    fn word(&mut self, word: &str, value: Json) -> Result<Json, String> {
        if self.bytes[self.at..].starts_with(word.as_bytes()) {
            self.at += word.len();
            Ok(value)
        } else {
            Err(self.wrong(word))
        }
    }

    fn value(&mut self) -> Result<Json, String> {
        match self.peek() {
            Some(b'{') => self.object(),
            Some(b'[') => self.list(),
            Some(b'"') => self.string().map(Json::Text),
            Some(b't') => self.word("true", Json::Bool(true)),
            Some(b'f') => self.word("false", Json::Bool(false)),
            Some(b'n') => self.word("null", Json::Null),
            Some(b'-' | b'0'..=b'9') => Ok(self.number()),
            _ => Err(self.wrong("a value")),
        }
    }

    fn object(&mut self) -> Result<Json, String> {
        let mut map = BTreeMap::new();
        self.take(b'{')?;
        if self.peek() == Some(b'}') {
            self.at += 1;
            return Ok(Json::Object(map));
        }
        loop {
            self.blank();
            let key = self.string()?;
            self.take(b':')?;
            map.insert(key, self.value()?);
            if self.peek() == Some(b',') {
                self.at += 1;
            } else {
                self.take(b'}')?;
                return Ok(Json::Object(map));
            }
        }
    }

    fn list(&mut self) -> Result<Json, String> {
        let mut items = Vec::new();
        self.take(b'[')?;
        if self.peek() == Some(b']') {
            self.at += 1;
            return Ok(Json::List(items));
        }
        loop {
            items.push(self.value()?);
            if self.peek() == Some(b',') {
                self.at += 1;
            } else {
                self.take(b']')?;
                return Ok(Json::List(items));
            }
        }
    }

    fn number(&mut self) -> Json {
        let start = self.at;
        while self.bytes.get(self.at).is_some_and(|b| b.is_ascii_digit() || b"+-.eE".contains(b)) {
            self.at += 1;
        }
        Json::Number(String::from_utf8_lossy(&self.bytes[start..self.at]).into_owned())
    }

    fn string(&mut self) -> Result<String, String> {
        self.take(b'"')?;
        let mut out = Vec::new();
        loop {
            match self.bytes.get(self.at).copied() {
                None => return Err(self.wrong("`\"`")),
                Some(b'"') => {
                    self.at += 1;
                    return String::from_utf8(out).map_err(|_| self.wrong("UTF-8"));
                }
                Some(b'\\') => {
                    self.at += 1;
                    let c = self.escape()?;
                    out.extend_from_slice(c.encode_utf8(&mut [0; 4]).as_bytes());
                }
                Some(byte) => {
                    out.push(byte);
                    self.at += 1;
                }
            }
        }
    }

    fn escape(&mut self) -> Result<char, String> {
        let byte = self.bytes.get(self.at).copied().ok_or_else(|| self.wrong("an escape"))?;
        self.at += 1;
        Ok(match byte {
            b'n' => '\n',
            b't' => '\t',
            b'r' => '\r',
            b'b' => '\u{8}',
            b'f' => '\u{c}',
            b'u' => {
                let first = self.four_digits()?;
                let code = if (0xD800..0xDC00).contains(&first) && self.bytes[self.at..].starts_with(b"\\u") {
                    self.at += 2;
                    0x1_0000 + ((first - 0xD800) << 10) + (self.four_digits()?.wrapping_sub(0xDC00) & 0x3FF)
                } else {
                    first
                };
                char::from_u32(code).ok_or_else(|| self.wrong("a character"))?
            }
            b'"' | b'\\' | b'/' => char::from(byte),
            _ => return Err(self.wrong("an escape")),
        })
    }

    fn four_digits(&mut self) -> Result<u32, String> {
        let digits = self.bytes.get(self.at..self.at + 4).and_then(|d| std::str::from_utf8(d).ok());
        let value = digits.and_then(|d| u32::from_str_radix(d, 16).ok()).ok_or_else(|| self.wrong("four digits"))?;
        self.at += 4;
        Ok(value)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn values_of_every_kind() {
        let json = Json::read(r#" {"a": [1, -2.5e3, true, false, null], "b": {"c": "x\"\\\n\u00b0\ud83d\ude00"}} "#);
        let json = json.unwrap();
        assert_eq!(json.get("a").unwrap().items().len(), 5);
        assert_eq!(json.get("a").unwrap().items()[1], Json::Number("-2.5e3".into()));
        assert_eq!(json.get("b").unwrap().get("c").unwrap().text(), Some("x\"\\\n°😀"));
        assert_eq!(Json::read("{}").unwrap(), Json::Object(BTreeMap::new()));
        assert_eq!(Json::read("[]").unwrap().items(), []);
    }

    #[test]
    fn broken_texts_are_errors() {
        for text in ["", "{", "[1,", "{\"a\" 1}", "\"abc", "tru", "[1] 2", "\"\\q\"", "\"\\u12\"", "{1: 2}"] {
            assert!(Json::read(text).is_err(), "{text}");
        }
    }
}
