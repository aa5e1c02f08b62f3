//! Serves a small plan written by hand, for trying the screens: `cargo run -p server --example
//! handmade -- --port 7575`.
#![expect(clippy::print_stdout, reason = "it says where it serves")]

#[path = "../tests/api/handmade.rs"]
#[expect(dead_code, unreachable_pub, reason = "shared with the tests")]
mod handmade;

use std::net::{Ipv4Addr, SocketAddr};

fn main() -> Result<(), server::ServeError> {
    let asked = std::env::args().skip_while(|arg| arg != "--port").nth(1);
    let port = asked.and_then(|port| port.parse().ok()).unwrap_or(0);
    let options = server::ServeOptions { addr: SocketAddr::from((Ipv4Addr::LOCALHOST, port)) };
    server::run(handmade::plan(), options, |addr| println!("http://{addr}/"))
}
