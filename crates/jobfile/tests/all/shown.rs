//! Faults as one line each: `line:column code key`, with the text that the place points at.

use evidence::{Arg, Fault, Faults, Message};

/// `line:column code \`text at the place\` key`
pub(crate) fn fault(fault: &Fault, text: &str) -> String {
    let place = &fault.place;
    let line = place.line.map_or_else(String::new, |l| l.to_string());
    let column = place.column.map_or_else(String::new, |c| format!(":{c}"));
    let pointed = place.span.map_or("", |(from, to)| text.get(from..to).unwrap_or("<bad span>"));
    let pointed = pointed.lines().next().unwrap_or_default();
    format!("{line}{column} {} `{pointed}`", fault.code)
}

/// The same for all, one a line.
pub(crate) fn all(faults: &Faults, text: &str) -> Vec<String> {
    faults.list.iter().map(|f| fault(f, text)).collect()
}

/// The arguments of a message, to see what it will say.
pub(crate) fn args(message: &Message) -> String {
    let shown = |arg: &Arg| match arg {
        Arg::Text(t) => t.clone(),
        Arg::Quantity(q) => format!("{:.4} {}", q.si, q.dimension.si_unit()),
        Arg::Count(n) => n.to_string(),
        Arg::Message(m) => m.id.to_string(),
    };
    message.args.iter().map(|(name, arg)| format!("{name}={}", shown(arg))).collect::<Vec<_>>().join(" ")
}

/// What the hint of a fault says: its id and arguments.
pub(crate) fn hint(fault: &Fault) -> String {
    fault.hint.as_ref().map_or_else(String::new, |h| format!("{} {}", h.id, args(h)))
}
