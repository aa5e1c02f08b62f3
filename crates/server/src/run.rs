//! Listening: on this computer only.

use crate::router::router;
use crate::state::Served;
use planning::Plan;
use std::fmt;
use std::net::{Ipv4Addr, SocketAddr};

/// Where to listen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ServeOptions {
    /// Address and port; port 0 takes any free one.
    pub addr: SocketAddr,
}

impl Default for ServeOptions {
    /// 127.0.0.1, any free port.
    fn default() -> Self {
        Self { addr: SocketAddr::from((Ipv4Addr::LOCALHOST, 0)) }
    }
}

/// Why a plan cannot be served.
#[derive(Debug)]
pub enum ServeError {
    /// The address would let other computers in, and there are no accounts to tell them apart.
    NotLoopback {
        /// The address asked for.
        addr: SocketAddr,
    },
    /// The address cannot be listened on: in use, or not allowed.
    Bind {
        /// The address asked for.
        addr: SocketAddr,
        /// What the system said.
        source: std::io::Error,
    },
    /// The system refused what a server needs (threads, sockets).
    System(std::io::Error),
    /// The description of the API could not be written.
    Description(serde_json::Error),
}

impl ServeError {
    /// What to do about it.
    pub fn hint(&self) -> &'static str {
        match self {
            Self::NotLoopback { .. } => "listen on 127.0.0.1 or [::1]",
            Self::Bind { .. } => "choose another port, or leave the port out to take any free one",
            Self::System(_) => "close other programs and try again",
            Self::Description(_) => "this is a fault of the program: please report it",
        }
    }
}

impl fmt::Display for ServeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotLoopback { addr } => {
                write!(f, "{addr} would serve the plan to other computers, expected a loopback address")
            }
            Self::Bind { addr, source } => write!(f, "cannot listen on {addr}: {source}"),
            Self::System(source) => write!(f, "the system refuses to serve: {source}"),
            Self::Description(source) => write!(f, "the description of the service cannot be written: {source}"),
        }
    }
}

impl std::error::Error for ServeError {
    fn source(&self) -> Option<&(dyn std::error::Error + 'static)> {
        match self {
            Self::NotLoopback { .. } => None,
            Self::Bind { source, .. } | Self::System(source) => Some(source),
            Self::Description(source) => Some(source),
        }
    }
}

/// Serves `plan` until the process is asked to end. Starts its own runtime; `on_ready` is called
/// once with the address it listens on.
pub fn run(plan: Plan, options: ServeOptions, on_ready: impl FnOnce(SocketAddr)) -> Result<(), ServeError> {
    let runtime = tokio::runtime::Runtime::new().map_err(ServeError::System)?;
    runtime.block_on(serve(Served::new(plan), options, on_ready))
}

/// Serves inside a runtime; see [`run`].
pub async fn serve(served: Served, options: ServeOptions, on_ready: impl FnOnce(SocketAddr)) -> Result<(), ServeError> {
    let addr = options.addr;
    if !addr.ip().is_loopback() {
        return Err(ServeError::NotLoopback { addr });
    }
    let bound = tokio::net::TcpListener::bind(addr).await;
    let listener = bound.map_err(|source| ServeError::Bind { addr, source })?;
    let router = router(served).map_err(ServeError::Description)?;
    on_ready(listener.local_addr().map_err(ServeError::System)?);
    // No waiting for open connections: nothing is written, so nothing can be cut in half.
    let serving = async { axum::serve(listener, router).await };
    tokio::select! {
        ended = serving => ended.map_err(ServeError::System),
        () = asked_to_end() => Ok(()),
    }
}

async fn asked_to_end() {
    let interrupt = async {
        if tokio::signal::ctrl_c().await.is_err() {
            std::future::pending::<()>().await;
        }
    };
    #[cfg(unix)]
    let terminate = async {
        match tokio::signal::unix::signal(tokio::signal::unix::SignalKind::terminate()) {
            Ok(mut signal) => {
                signal.recv().await;
            }
            Err(_) => std::future::pending::<()>().await,
        }
    };
    #[cfg(not(unix))]
    let terminate = std::future::pending::<()>();
    tokio::select! {
        () = interrupt => {}
        () = terminate => {}
    }
}
