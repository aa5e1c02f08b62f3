//! What stands before every route.

use crate::asking::{ask, get};
use crate::handmade;
use axum::http::{Request, StatusCode};
use server::{ServeError, ServeOptions, Served, serve};

const EVERYWHERE: [&str; 8] = [
    "/",
    "/plain",
    "/plain.css",
    "/api/jobs/current",
    "/api/jobs/current/lifts/none",
    "/api/openapi.json",
    "/api/fonts.css",
    "/nothing-here",
];

#[tokio::test]
async fn every_answer_forbids_anything_from_elsewhere() {
    for path in EVERYWHERE {
        let answer = get(path).await;
        let policy = answer.header("content-security-policy");
        assert!(policy.starts_with("default-src 'none'; script-src 'self';"), "{path}: {policy}");
        assert!(!policy.contains("unsafe") && !policy.contains("http"), "{path}: {policy}");
        assert_eq!(answer.header("x-content-type-options"), "nosniff", "{path}");
        assert_eq!(answer.header("referrer-policy"), "no-referrer", "{path}");
        assert!(answer.headers.contains_key("cache-control"), "{path}");
    }
}

#[tokio::test]
async fn a_name_that_is_not_this_computer_is_refused_on_every_route() {
    for path in EVERYWHERE {
        let answer = ask(handmade::plan(), Request::get(path).header("host", "rebound.example:8087")).await;
        assert_eq!(answer.status, StatusCode::MISDIRECTED_REQUEST, "{path}");
        assert_eq!(answer.problem(), "host-refused", "{path}");
        assert!(!answer.text().contains("Three pallets"), "{path}");
    }
    assert_eq!(ask(handmade::plan(), Request::get("/plain")).await.status, StatusCode::MISDIRECTED_REQUEST);
}

#[tokio::test]
async fn nothing_can_be_written() {
    for method in ["POST", "PUT", "DELETE", "PATCH"] {
        let request = Request::builder().method(method).uri("/api/jobs/current").header("host", "localhost");
        let answer = ask(handmade::plan(), request).await;
        assert_eq!(answer.status, StatusCode::METHOD_NOT_ALLOWED, "{method}");
        assert_eq!(answer.problem(), "method-not-allowed", "{method}");
    }
}

#[tokio::test]
async fn answers_are_compressed_for_those_who_ask() {
    let request = Request::get("/plain").header("host", "localhost").header("accept-encoding", "gzip");
    let answer = ask(handmade::plan(), request).await;
    assert_eq!(answer.header("content-encoding"), "gzip");
    assert_eq!(answer.body[..2], [0x1f, 0x8b]);
}

#[tokio::test]
async fn other_computers_are_not_let_in() {
    for open in ["0.0.0.0:0", "192.0.2.7:8087", "[::]:0"] {
        let options = ServeOptions { addr: open.parse().unwrap() };
        let refused = serve(Served::new(handmade::plan()), options, |_| panic!("listened on {open}")).await;
        let error = refused.unwrap_err();
        assert!(matches!(error, ServeError::NotLoopback { .. }), "{open}");
        assert!(error.to_string().contains("expected a loopback address"), "{error}");
        assert!(error.hint().contains("127.0.0.1"));
    }
}

#[tokio::test]
async fn a_taken_port_is_an_error_that_names_it() {
    let taken = std::net::TcpListener::bind("127.0.0.1:0").unwrap();
    let addr = taken.local_addr().unwrap();
    let error = serve(Served::new(handmade::plan()), ServeOptions { addr }, |_| {}).await.unwrap_err();
    assert!(error.to_string().starts_with(&format!("cannot listen on {addr}")), "{error}");
}
