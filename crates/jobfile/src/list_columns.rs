//! The columns that a list of loads or of deliveries may have.

/// How a cell is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Form {
    /// Words.
    Text,
    /// A value with its unit, in the cell or behind the column's name.
    Quantity,
    /// A whole number.
    Count,
    /// Several words, with `|`, `;` or `,` between.
    List,
    /// From and to: `07:30-09:00`.
    Span,
}

/// A column: its name, and the key that it becomes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Column {
    pub(crate) name: &'static str,
    pub(crate) form: Form,
    /// The list of tables that it belongs to.
    pub(crate) list: &'static str,
    /// The table or list inside that one, where the key is not its own.
    pub(crate) inside: Option<&'static str>,
    /// The key; empty for an entry of the list around it.
    pub(crate) key: &'static str,
    /// Every row has to have it, or the shared words.
    pub(crate) needed: bool,
}

const fn own(list: &'static str, name: &'static str, form: Form) -> Column {
    Column { name, form, list, inside: None, key: name, needed: false }
}

const fn part(name: &'static str, around: &'static str, key: &'static str) -> Column {
    Column { name, form: Form::Quantity, list: "load", inside: Some(around), key, needed: true }
}

const fn needed(column: Column) -> Column {
    Column { needed: true, ..column }
}

/// Columns of a list of loads. `id` and `name` are those of the load and of its lift.
pub(crate) const LOADS: [Column; 31] = [
    needed(own("load", "id", Form::Text)),
    needed(own("load", "name", Form::Text)),
    needed(own("load", "source", Form::Text)),
    needed(own("load", "mass", Form::Quantity)),
    own("load", "ticket", Form::Text),
    own("load", "left_out", Form::Quantity),
    part("depth", "size", "depth"),
    part("width", "size", "width"),
    part("height", "size", "height"),
    part("centre_ahead", "centre", ""),
    part("centre_left", "centre", ""),
    part("centre_up", "centre", ""),
    needed(own("load", "centre_error", Form::Quantity)),
    needed(own("load", "condition", Form::Text)),
    own("load", "wind_factor", Form::Quantity),
    own("load", "defects", Form::List),
    Column { name: "id", form: Form::Text, list: "lift", inside: None, key: "id", needed: false },
    Column { name: "name", form: Form::Text, list: "lift", inside: None, key: "name", needed: false },
    Column { name: "id", form: Form::Text, list: "lift", inside: None, key: "load", needed: false },
    needed(own("lift", "landing", Form::Text)),
    own("lift", "machine", Form::Text),
    own("lift", "attachment", Form::Text),
    own("lift", "support", Form::Text),
    own("lift", "from", Form::Text),
    own("lift", "window", Form::Span),
    own("lift", "after", Form::List),
    own("lift", "priority", Form::Count),
    own("lift", "minutes", Form::Count),
    needed(own("lift", "clear", Form::Quantity)),
    own("lift", "stop_gust", Form::Quantity),
    needed(own("lift", "stops", Form::List)),
];

/// Columns of a list of deliveries.
pub(crate) const SLOTS: [Column; 5] = [
    own("delivery", "id", Form::Text),
    needed(own("delivery", "loads", Form::List)),
    Column { name: "from", form: Form::Text, list: "delivery", inside: Some("slot"), key: "", needed: true },
    Column { name: "to", form: Form::Text, list: "delivery", inside: Some("slot"), key: "", needed: true },
    own("delivery", "place", Form::Text),
];

/// The column of that name, whatever the unit behind it.
pub(crate) fn column<'c>(columns: &'c [Column], header: &str) -> Option<&'c Column> {
    let (name, _) = splits(header);
    columns.iter().find(|c| c.name == name)
}

/// A name of a column without its unit, and the unit: `Centre ahead (m)` is `centre_ahead` and `m`.
pub(crate) fn splits(header: &str) -> (String, Option<String>) {
    let header = header.trim();
    let (name, unit) = match header.split_once(['(', '[']) {
        Some((name, rest)) => (name, Some(rest.trim_end_matches([')', ']', ' ']).trim().to_owned())),
        None => (header, None),
    };
    let name: Vec<String> = name.split([' ', '_', '-']).filter(|w| !w.is_empty()).map(str::to_lowercase).collect();
    (name.join("_"), unit.filter(|u| !u.is_empty()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_and_units_part() {
        assert_eq!(splits("Centre ahead (m)"), ("centre_ahead".into(), Some("m".into())));
        assert_eq!(splits(" mass [kg] "), ("mass".into(), Some("kg".into())));
        assert_eq!(splits("stop-gust"), ("stop_gust".into(), None));
    }
}
