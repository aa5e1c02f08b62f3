//! Texts as ids with typed arguments.

use quantity::Quantity;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;

/// A text id as declared by [`crate::messages!`]: the id and the names of its arguments.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct TextId {
    /// The id, kebab-case, the same in every language's catalogue.
    pub id: &'static str,
    /// Names of the arguments the text may use.
    pub args: &'static [&'static str],
}

impl TextId {
    /// The message with no arguments yet.
    pub fn message(self) -> Message {
        Message { id: Cow::Borrowed(self.id), args: Vec::new() }
    }
    /// The message with one argument.
    pub fn with(self, name: &'static str, arg: impl Into<Arg>) -> Message {
        self.message().with(name, arg)
    }
}

impl From<TextId> for Message {
    fn from(id: TextId) -> Self {
        id.message()
    }
}

/// A text id with its arguments, ready for `wording`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Message {
    /// The id in the catalogues.
    pub id: Cow<'static, str>,
    /// Arguments by name, in the order given.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub args: Vec<(Cow<'static, str>, Arg)>,
}

impl Message {
    /// The same with one more argument.
    #[must_use]
    pub fn with(mut self, name: &'static str, arg: impl Into<Arg>) -> Self {
        self.args.push((Cow::Borrowed(name), arg.into()));
        self
    }
    /// The argument of that name.
    pub fn arg(&self, name: &str) -> Option<&Arg> {
        self.args.iter().find(|(n, _)| n == name).map(|(_, a)| a)
    }
}

/// An argument of a text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Arg {
    /// Words of the user's own: a name, a file, a statement. Never translated.
    Text(String),
    /// A measured value; shown in the reader's units.
    Quantity(Quantity),
    /// A whole number.
    Count(i64),
    /// Another text, rendered in the same language.
    Message(Box<Message>),
}

impl From<&str> for Arg {
    fn from(s: &str) -> Self {
        Self::Text(s.to_owned())
    }
}
impl From<String> for Arg {
    fn from(s: String) -> Self {
        Self::Text(s)
    }
}
impl From<&String> for Arg {
    fn from(s: &String) -> Self {
        Self::Text(s.clone())
    }
}
impl From<i64> for Arg {
    fn from(n: i64) -> Self {
        Self::Count(n)
    }
}
impl From<usize> for Arg {
    fn from(n: usize) -> Self {
        Self::Count(i64::try_from(n).unwrap_or(i64::MAX))
    }
}
impl From<Message> for Arg {
    fn from(m: Message) -> Self {
        Self::Message(Box::new(m))
    }
}
impl From<TextId> for Arg {
    fn from(id: TextId) -> Self {
        Self::Message(Box::new(id.message()))
    }
}
macro_rules! from_quantity {
    ($($t:ty),*) => {$(
        impl From<$t> for Arg { fn from(q: $t) -> Self { Self::Quantity(q.into()) } }
    )*};
}
from_quantity!(
    Quantity,
    quantity::Length,
    quantity::Mass,
    quantity::Angle,
    quantity::Force,
    quantity::Moment,
    quantity::Pressure,
    quantity::Speed,
    quantity::Voltage,
    quantity::Area
);

/// Declares text ids: constants, and `ALL` so that a test can prove each in every language.
///
/// ```
/// evidence::messages! {
///     /// The load is within the chart.
///     CHART_WITHIN = "chart-within" [capacity, zone];
/// }
/// assert_eq!(ALL.len(), 1);
/// assert_eq!(CHART_WITHIN.args, ["capacity", "zone"]);
/// ```
#[macro_export]
macro_rules! messages {
    ($($(#[$doc:meta])* $name:ident = $id:literal [$($arg:ident),* $(,)?];)*) => {
        $($(#[$doc])* pub const $name: $crate::TextId =
            $crate::TextId { id: $id, args: &[$(stringify!($arg)),*] };)*
        /// Every text id declared here.
        pub const ALL: &[$crate::TextId] = &[$($name),*];
    };
}
