//! Prints the OpenAPI description of the service, for the client's generated types.
#![expect(clippy::print_stdout, reason = "printing is what it is for")]

fn main() -> Result<(), Box<dyn std::error::Error>> {
    print!("{}", server::openapi()?);
    Ok(())
}
