//! The languages there are.

use core::fmt;
use core::str::FromStr;

/// A language with a catalogue.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// Spanish.
    Spanish,
}

impl Language {
    /// Every language, in the order in which a chooser shows them.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// The language code of ISO 639-1: "en", "es". For `lang` attributes.
    pub fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// Its name in itself, for a chooser.
    pub fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
        }
    }
}

/// A language code without a catalogue.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct UnknownLanguage {
    /// The code as written.
    pub code: String,
}

impl fmt::Display for UnknownLanguage {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "no catalogue for language {:?}; there are en and es", self.code)
    }
}

impl std::error::Error for UnknownLanguage {}

impl FromStr for Language {
    type Err = UnknownLanguage;

    /// Reads "en", "es", and the same with a region: "es-MX", "en_US".
    fn from_str(code: &str) -> Result<Self, UnknownLanguage> {
        let main = code.trim().split(['-', '_']).next().unwrap_or_default().to_ascii_lowercase();
        Self::ALL.into_iter().find(|l| l.code() == main).ok_or_else(|| UnknownLanguage { code: code.to_owned() })
    }
}

impl fmt::Display for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code())
    }
}
