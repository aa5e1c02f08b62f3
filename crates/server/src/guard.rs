//! What stands before every route: only this computer's names are answered, and every answer
//! says that it may load nothing from elsewhere.

use crate::problem::Problem;
use axum::extract::Request;
use axum::http::{HeaderName, HeaderValue, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};

/// No script, style, font, picture or connection from anywhere but this server; no inline script.
pub(crate) const CONTENT_SECURITY_POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; \
     img-src 'self' data:; font-src 'self'; connect-src 'self'; manifest-src 'self'; base-uri 'none'; \
     form-action 'none'; frame-ancestors 'none'";

const HEADERS: [(HeaderName, &str); 6] = [
    (header::CONTENT_SECURITY_POLICY, CONTENT_SECURITY_POLICY),
    (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
    (header::REFERRER_POLICY, "no-referrer"),
    (HeaderName::from_static("cross-origin-opener-policy"), "same-origin"),
    (HeaderName::from_static("cross-origin-resource-policy"), "same-origin"),
    (HeaderName::from_static("permissions-policy"), "camera=(), geolocation=(), microphone=()"),
];

/// Refuses any Host but a loopback name, so that a page from elsewhere whose name is made to point
/// at this computer cannot read the plan (DNS rebinding); then adds the headers.
pub(crate) async fn guard(request: Request, next: Next) -> Response {
    let host = asked_host(&request);
    let mut response =
        if is_loopback_name(&host) { next.run(request).await } else { Problem::HostRefused { host }.into_response() };
    let headers = response.headers_mut();
    for (name, value) in HEADERS {
        headers.insert(name, HeaderValue::from_static(value));
    }
    if !headers.contains_key(header::CACHE_CONTROL) {
        headers.insert(header::CACHE_CONTROL, HeaderValue::from_static("no-store"));
    }
    response
}

fn asked_host(request: &Request) -> String {
    let header = request.headers().get(header::HOST).map(|h| String::from_utf8_lossy(h.as_bytes()).into_owned());
    header.or_else(|| request.uri().authority().map(ToString::to_string)).unwrap_or_default()
}

/// True for `localhost`, a loopback IPv4 address or `[::1]`, with or without a port.
fn is_loopback_name(host: &str) -> bool {
    let name = match host.rsplit_once(':') {
        Some((name, port)) if !name.is_empty() && port.chars().all(|c| c.is_ascii_digit()) => name,
        _ => host,
    };
    let bare = name.strip_prefix('[').and_then(|n| n.strip_suffix(']'));
    match bare {
        Some(six) => six.parse::<std::net::Ipv6Addr>().is_ok_and(|a| a.is_loopback()),
        None => {
            name.eq_ignore_ascii_case("localhost") || name.parse::<std::net::Ipv4Addr>().is_ok_and(|a| a.is_loopback())
        }
    }
}

#[cfg(test)]
mod tests {
    use super::is_loopback_name;

    #[test]
    fn loopback_names_pass_and_others_do_not() {
        for good in ["localhost", "LOCALHOST:8087", "127.0.0.1", "127.0.0.1:1", "127.1.2.3:80", "[::1]", "[::1]:8087"] {
            assert!(is_loopback_name(good), "{good}");
        }
        for bad in [
            "",
            ":80",
            "example.org",
            "localhost.example.org",
            "127.0.0.1.example.org:80",
            "192.168.1.4",
            "0.0.0.0",
            "::1",
            "[::2]:80",
            "localhost:80x",
            "[127.0.0.1]",
        ] {
            assert!(!is_loopback_name(bad), "{bad}");
        }
    }
}
