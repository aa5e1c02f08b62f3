//! How the reader wants to read: language, units, paper; from the query of the address.

use crate::problem::Problem;
use axum::extract::{FromRequestParts, Query};
use axum::http::Uri;
use axum::http::request::Parts;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use utoipa::{IntoParams, ToSchema};
use wording::Wording;

/// A language that every text exists in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize, serde::Serialize, ToSchema)]
#[serde(rename_all = "lowercase")]
pub(crate) enum Language {
    /// English.
    #[default]
    En,
    /// Spanish.
    Es,
}

/// Units of every value in an answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize, serde::Serialize, ToSchema)]
#[serde(rename_all = "lowercase")]
pub(crate) enum Units {
    /// Metres, kilograms, kilonewtons.
    #[default]
    Si,
    /// Feet, pounds.
    Us,
}

/// Size of the paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize, serde::Serialize, ToSchema)]
#[serde(rename_all = "lowercase")]
pub(crate) enum Paper {
    /// 210 × 297 mm.
    #[default]
    A4,
    /// 8.5 × 11 in.
    Letter,
}

/// Language and units of an answer.
#[derive(Debug, Clone, Copy, Default, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct Preference {
    /// Language of all texts. Without it: `en`.
    #[serde(default)]
    pub(crate) lang: Language,
    /// Units of all values. Without it: `si`.
    #[serde(default)]
    pub(crate) units: Units,
}

/// Language, units and size of a drawing.
#[derive(Debug, Clone, Copy, Default, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct DrawingChoice {
    /// Language of all texts. Without it: `en`.
    #[serde(default)]
    pub(crate) lang: Language,
    /// Units of all values. Without it: `si`.
    #[serde(default)]
    pub(crate) units: Units,
    /// Width at which the drawing will be shown, in CSS pixels: text keeps its size. Without it: 720.
    #[serde(default)]
    #[param(minimum = 320, maximum = 4000)]
    pub(crate) width: Option<u16>,
}

/// Language of an answer without values.
#[derive(Debug, Clone, Copy, Default, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct LanguageChoice {
    /// Language of all texts. Without it: `en`.
    #[serde(default)]
    pub(crate) lang: Language,
}

/// Language, units and paper of a document.
#[derive(Debug, Clone, Copy, Default, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct SheetChoice {
    /// Language of all texts. Without it: `en`.
    #[serde(default)]
    pub(crate) lang: Language,
    /// Units of all values. Without it: `si`.
    #[serde(default)]
    pub(crate) units: Units,
    /// Paper size. Without it: `a4`.
    #[serde(default)]
    pub(crate) paper: Paper,
}

impl Language {
    /// The other language, for the link that changes to it.
    pub(crate) fn other(self) -> Self {
        match self {
            Self::En => Self::Es,
            Self::Es => Self::En,
        }
    }
    /// As `wording` has it.
    pub(crate) fn spoken(self) -> wording::Language {
        match self {
            Self::En => wording::Language::English,
            Self::Es => wording::Language::Spanish,
        }
    }
}

impl Units {
    /// As in the query.
    pub(crate) fn tag(self) -> &'static str {
        match self {
            Self::Si => "si",
            Self::Us => "us",
        }
    }
    /// The other system, for the link that changes to it.
    pub(crate) fn other(self) -> Self {
        match self {
            Self::Si => Self::Us,
            Self::Us => Self::Si,
        }
    }
}

impl Preference {
    /// The words for it.
    pub(crate) fn wording(self) -> Wording {
        let units = match self.units {
            Units::Si => quantity::UnitSystem::Si,
            Units::Us => quantity::UnitSystem::Us,
        };
        Wording::new(self.lang.spoken(), units)
    }
}

/// The query of a request as `T`, or the problem in it.
#[derive(Debug)]
pub(crate) struct Asked<T>(pub(crate) T);

impl<T: DeserializeOwned> Asked<T> {
    /// From an address.
    pub(crate) fn from_uri(uri: &Uri) -> Result<Self, Problem> {
        Query::try_from_uri(uri).map(|Query(asked)| Self(asked)).map_err(|e| Problem::Query { detail: e.body_text() })
    }
}

impl<S: Send + Sync, T: DeserializeOwned> FromRequestParts<S> for Asked<T> {
    type Rejection = Problem;
    async fn from_request_parts(parts: &mut Parts, _state: &S) -> Result<Self, Problem> {
        Self::from_uri(&parts.uri)
    }
}
