//! One request, one answer.

use crate::handmade;
use axum::body::Body;
use axum::http::{HeaderMap, Request, StatusCode};
use http_body_util::BodyExt as _;
use tower::ServiceExt as _;

/// An answer, read to its end.
pub struct Answer {
    pub status: StatusCode,
    pub headers: HeaderMap,
    pub body: Vec<u8>,
}

impl Answer {
    pub fn text(&self) -> String {
        String::from_utf8(self.body.clone()).unwrap()
    }
    pub fn json(&self) -> serde_json::Value {
        serde_json::from_slice(&self.body).unwrap()
    }
    pub fn header(&self, name: &str) -> &str {
        self.headers.get(name).map_or("", |v| v.to_str().unwrap())
    }
    /// The kind of problem, after checking that it is one.
    pub fn problem(&self) -> String {
        assert_eq!(self.header("content-type"), "application/problem+json");
        let body = self.json();
        assert_eq!(body["status"], self.status.as_u16());
        assert!(body["title"].as_str().is_some_and(|t| !t.is_empty()));
        assert!(body["detail"].as_str().is_some_and(|t| !t.is_empty()));
        body["type"].as_str().unwrap().trim_start_matches("urn:counterpoise:problem:").to_owned()
    }
}

/// Asks for `path` of the hand-made plan.
pub async fn get(path: &str) -> Answer {
    ask(handmade::plan(), Request::get(path).header("host", "127.0.0.1:8087")).await
}

/// Sends a request to a service over `plan`.
pub async fn ask(plan: planning::Plan, request: axum::http::request::Builder) -> Answer {
    let router = server::router(server::Served::new(plan)).unwrap();
    let response = router.oneshot(request.body(Body::empty()).unwrap()).await.unwrap();
    let (parts, body) = response.into_parts();
    let body = body.collect().await.unwrap().to_bytes().to_vec();
    Answer { status: parts.status, headers: parts.headers, body }
}
