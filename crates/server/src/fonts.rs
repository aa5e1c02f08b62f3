//! The text face of drawings, documents and screens, served to the client.

use crate::client::content_type;
use crate::problem::{Problem, ProblemBody};
use axum::extract::Path;
use axum::http::header;
use axum::response::{IntoResponse, Response};
use std::fmt::Write as _;

const KEEP_A_DAY: (header::HeaderName, &str) = (header::CACHE_CONTROL, "public, max-age=86400");

/// Style sheet that declares the text face.
#[utoipa::path(get, path = "/api/fonts.css", responses((status = OK, body = String, content_type = "text/css")))]
pub(crate) async fn sheet() -> Response {
    let mut css = String::new();
    for font in report::font_files() {
        let _ = writeln!(
            css,
            "@font-face {{ font-family: \"{}\"; font-weight: {}; font-style: {}; font-display: swap; \
             src: url(\"/api/fonts/{}\"); }}",
            report::FAMILY,
            font.weight,
            if font.italic { "italic" } else { "normal" },
            font.name,
        );
    }
    ([(header::CONTENT_TYPE, "text/css; charset=utf-8"), KEEP_A_DAY], css).into_response()
}

/// A file of the text face.
#[utoipa::path(get, path = "/api/fonts/{file}", params(("file" = String, Path, description = "File name")), responses(
    (status = OK, body = Vec<u8>, content_type = "font/ttf"),
    (status = NOT_FOUND, body = ProblemBody, content_type = "application/problem+json"),
))]
pub(crate) async fn file(Path(name): Path<String>) -> Result<Response, Problem> {
    let found = report::font_files().iter().find(|f| f.name == name);
    let font = found.ok_or_else(|| Problem::NotFound { path: format!("/api/fonts/{name}") })?;
    Ok(([(header::CONTENT_TYPE, content_type(font.name)), KEEP_A_DAY], font.bytes).into_response())
}
