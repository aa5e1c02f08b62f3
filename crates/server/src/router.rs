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

/// Every route over a plan. Fails only if the description of the API cannot be written as JSON.
pub fn router(served: Served) -> Result<Router, serde_json::Error> {
    let shared: Shared = Arc::new(served);
    let (api, description) = api::routes().split_for_parts();
    let description = description.to_json()?;
    let described = move || async move { json(description) };
    let routes = api
        .route("/api/openapi.json", get(described))
        .route("/", get(client::index))
        .route("/plain", get(plain::page))
        .route("/plain.css", get(plain::style))
        .fallback(client::file)
        .method_not_allowed_fallback(|| async { Problem::MethodNotAllowed })
        .with_state(shared)
        .layer(CompressionLayer::new())
        .layer(axum::middleware::from_fn(guard::guard));
    Ok(routes)
}

/// The OpenAPI 3.1 description of the API, as pretty JSON with a final line break.
pub fn openapi() -> Result<String, serde_json::Error> {
    let (_, description) = api::routes().split_for_parts();
    Ok(description.to_pretty_json()? + "\n")
}

fn json(text: String) -> Response {
    ([(header::CONTENT_TYPE, HeaderValue::from_static("application/json"))], text).into_response()
}
