//! `counterpoise serve`.

use crate::args::{Format, Lang, Said, ServeArgs, Units};
use crate::failure::Failure;
use crate::{Outcome, Run, plan, terminal, text};
use std::net::{Ipv4Addr, SocketAddr};

pub(crate) fn run(args: &ServeArgs) -> Run {
    let said = Said { format: Format::Text, units: Units::Si, lang: Lang::En };
    let plan = plan::plan_of(&args.job, said)?;
    let options = server::ServeOptions { addr: SocketAddr::from((Ipv4Addr::LOCALHOST, args.port)) };
    let ready = |addr: SocketAddr| {
        let said_at = text::SERVING.with("address", format!("http://{addr}/"));
        terminal::line(&said.wording().render(&said_at));
    };
    server::run(plan, options, ready).map_err(|e| {
        let message = text::CANNOT_SERVE.with("reason", format!("{e}; {}", e.hint()));
        Failure::one(said, "cli::cannot-serve", "", message, None)
    })?;
    Ok(Outcome::Done)
}
