//! HTTP service and the embedded web client
