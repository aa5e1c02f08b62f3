//! All routes with what stands before them.

use crate::problem::Problem;
use crate::state::{Served, Shared};
use crate::{api, client, guard, plain};
use axum::Router;
use axum::http::{HeaderValue, header};
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use std::sync::Arc;
use tower_http::compression::CompressionLayer;

/// Every route over a plan.
pub fn router(served: Served) -> Router {
    let shared: Shared = Arc::new(served);
    let (api, description) = api::routes().split_for_parts();
    let description = description.to_json().unwrap_or_default();
    let described = move || async move { json(description) };
    api.route("/api/openapi.json", get(described))
        .route("/", get(client::index))
        .route("/plain", get(plain::page))
        .route("/plain.css", get(plain::style))
        .fallback(client::file)
        .method_not_allowed_fallback(|| async { Problem::MethodNotAllowed })
        .with_state(shared)
        .layer(CompressionLayer::new())
        .layer(axum::middleware::from_fn(guard::guard))
}

/// The OpenAPI 3.1 description of the API, as pretty JSON with a final line break.
pub fn openapi() -> String {
    let (_, description) = api::routes().split_for_parts();
    description.to_pretty_json().unwrap_or_default() + "\n"
}

fn json(text: String) -> Response {
    ([(header::CONTENT_TYPE, HeaderValue::from_static("application/json"))], text).into_response()
}
