//! Errors over HTTP: RFC 9457 problems (`application/problem+json`), one enum and one status function.

use axum::http::{HeaderValue, StatusCode, header};
use axum::response::{IntoResponse, Response};
use serde::Serialize;
use utoipa::ToSchema;

/// What can go wrong between a request and its answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Problem {
    /// A query parameter is not one of those expected.
    Query {
        /// What was wrong with it.
        detail: String,
    },
    /// No lift of that id in the plan.
    LiftUnknown {
        /// The id asked for.
        id: String,
        /// Ids that exist.
        known: Vec<String>,
    },
    /// The lift has no such drawing, because the machine could not be posed or no chart exists.
    DrawingAbsent {
        /// The id of the lift.
        id: String,
        /// Which drawing.
        drawing: &'static str,
    },
    /// No such page, file or route.
    NotFound {
        /// The path asked for.
        path: String,
    },
    /// The route exists, but not for this method.
    MethodNotAllowed,
    /// The request names a host that is not this machine.
    HostRefused {
        /// The host asked for.
        host: String,
    },
    /// The document could not be made; the reason was written to standard error.
    DocumentFailed,
}

/// A problem as sent (RFC 9457).
#[derive(Debug, Serialize, ToSchema)]
#[schema(as = Problem)]
pub(crate) struct ProblemBody {
    /// Stable name of the kind of problem, a URN.
    #[serde(rename = "type")]
    kind: String,
    /// What kind of problem, in English.
    title: &'static str,
    /// HTTP status.
    status: u16,
    /// What happened this time and what to do, in English.
    detail: String,
}

impl Problem {
    fn status(&self) -> StatusCode {
        match self {
            Self::Query { .. } => StatusCode::BAD_REQUEST,
            Self::LiftUnknown { .. } | Self::DrawingAbsent { .. } | Self::NotFound { .. } => StatusCode::NOT_FOUND,
            Self::MethodNotAllowed => StatusCode::METHOD_NOT_ALLOWED,
            Self::HostRefused { .. } => StatusCode::MISDIRECTED_REQUEST,
            Self::DocumentFailed => StatusCode::INTERNAL_SERVER_ERROR,
        }
    }

    fn code(&self) -> &'static str {
        match self {
            Self::Query { .. } => "query",
            Self::LiftUnknown { .. } => "lift-unknown",
            Self::DrawingAbsent { .. } => "drawing-absent",
            Self::NotFound { .. } => "not-found",
            Self::MethodNotAllowed => "method-not-allowed",
            Self::HostRefused { .. } => "host-refused",
            Self::DocumentFailed => "document-failed",
        }
    }

    fn title(&self) -> &'static str {
        match self {
            Self::Query { .. } => "A parameter of the address is not understood",
            Self::LiftUnknown { .. } => "No such lift in this plan",
            Self::DrawingAbsent { .. } => "This lift has no such drawing",
            Self::NotFound { .. } => "Nothing at this address",
            Self::MethodNotAllowed => "This address cannot be used that way",
            Self::HostRefused { .. } => "Asked for under a name that is not this computer",
            Self::DocumentFailed => "The document could not be made",
        }
    }

    fn detail(&self) -> String {
        match self {
            Self::Query { detail } => detail.clone(),
            Self::LiftUnknown { id, known } => {
                format!("there is no lift \"{id}\"; the plan has {}", known.join(", "))
            }
            Self::DrawingAbsent { id, drawing } => {
                format!("lift \"{id}\" has no {drawing}: see its findings for what is missing")
            }
            Self::NotFound { path } => format!("nothing is served at {path}; the plan is at /"),
            Self::MethodNotAllowed => "this service only reads: use GET".to_owned(),
            Self::HostRefused { host } => {
                format!("\"{host}\" is not a name of this computer; use localhost or 127.0.0.1")
            }
            Self::DocumentFailed => "see the terminal in which the server runs".to_owned(),
        }
    }

    fn body(&self) -> ProblemBody {
        ProblemBody {
            kind: format!("urn:counterpoise:problem:{}", self.code()),
            title: self.title(),
            status: self.status().as_u16(),
            detail: self.detail(),
        }
    }
}

impl IntoResponse for Problem {
    fn into_response(self) -> Response {
        let mut response = (self.status(), axum::Json(self.body())).into_response();
        response.headers_mut().insert(header::CONTENT_TYPE, HeaderValue::from_static("application/problem+json"));
        response
    }
}
