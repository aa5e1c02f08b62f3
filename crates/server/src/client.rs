//! The built web client, part of the binary where it was built before (`web/dist`).

use crate::plain;
use crate::problem::Problem;
use crate::state::Shared;
use axum::extract::{RawQuery, State};
use axum::http::{HeaderValue, Uri, header};
use axum::response::{Html, IntoResponse, Redirect, Response};

#[derive(rust_embed::RustEmbed)]
#[folder = "../../web/dist"]
#[allow_missing = true]
struct Dist;

/// `/`: the client, or the plain page where no client was built.
pub(crate) async fn index(State(served): State<Shared>, RawQuery(query): RawQuery) -> Response {
    match page(Dist::get("index.html").map(|f| f.data.into_owned())) {
        Some(html) => html,
        None => match plain::answer(served, query.as_deref()).await {
            Ok(html) => html.into_response(),
            Err(problem) => problem.into_response(),
        },
    }
}

fn page(bytes: Option<Vec<u8>>) -> Option<Response> {
    let text = String::from_utf8(bytes?).ok()?;
    Some(Html(text).into_response())
}

/// Anything that no route serves: a file of the client, or a problem.
pub(crate) async fn file(uri: Uri) -> Response {
    let path = uri.path().trim_start_matches('/');
    if path == "index.html" {
        return Redirect::permanent("/").into_response();
    }
    let Some(file) = Dist::get(path) else {
        return Problem::NotFound { path: uri.path().to_owned() }.into_response();
    };
    let mut response = file.data.into_owned().into_response();
    let headers = response.headers_mut();
    headers.insert(header::CONTENT_TYPE, HeaderValue::from_static(content_type(path)));
    // Names under assets/ carry a hash of their content, so they never change.
    if path.starts_with("assets/") {
        headers.insert(header::CACHE_CONTROL, HeaderValue::from_static("public, max-age=31536000, immutable"));
    }
    response
}

/// Content type by file name, for the kinds that the client is made of.
pub(crate) fn content_type(path: &str) -> &'static str {
    match path.rsplit_once('.').map_or("", |(_, end)| end) {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "svg" => "image/svg+xml; charset=utf-8",
        "json" | "webmanifest" => "application/json",
        "ttf" => "font/ttf",
        "otf" => "font/otf",
        "woff2" => "font/woff2",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}
