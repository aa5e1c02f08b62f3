//! What a lift asks of the plan of the whole job: what may be chosen, from where, when, behind which others.

use crate::ids::Ids;
use crate::job_file::all;
use crate::table::Reader;
use crate::text;
use crate::zone_section::day_time;
use planning::Choose;
use site::DayTime;

#[derive(Clone, Copy)]
enum What {
    Stand,
    Machine,
    Attachment,
    Support,
}

const CHOICES: [(&str, What); 4] =
    [("stand", What::Stand), ("machine", What::Machine), ("attachment", What::Attachment), ("support", What::Support)];

/// `choose = ["stand"]`. What could not be read counts as everything, so that nothing is missing beside that fault.
pub(crate) fn choose(t: &Reader<'_>) -> (Choose, bool) {
    let Some(node) = t.optional("choose") else { return (Choose::default(), true) };
    let Some(items) = t.as_list(node, "choose") else { return (Choose::ALL, false) };
    let mut choose = Choose::default();
    let mut read = true;
    for item in items {
        match t.as_choice(item, "choose", &CHOICES) {
            Some(What::Stand) => choose.stand = true,
            Some(What::Machine) => choose.machine = true,
            Some(What::Attachment) => choose.attachment = true,
            Some(What::Support) => choose.support = true,
            None => read = false,
        }
    }
    (if read { choose } else { Choose::ALL }, read)
}

/// When and from where a lift is wanted.
pub(crate) struct Wishes {
    pub(crate) from: Option<usize>,
    pub(crate) window: Option<DayTime>,
    pub(crate) priority: Option<u8>,
    pub(crate) minutes: Option<u16>,
}

/// `None`: a fault.
pub(crate) fn wishes(t: &Reader<'_>, pickups: &Ids) -> Option<Wishes> {
    let from = t.optional("from").map(|node| {
        let id = t.as_text(node, "from")?;
        pickups.find(t, node, "from", id, text::KIND_PICKUP)
    });
    let window = span_of_day(t, "window", false);
    let priority = t.count_or_none("priority", (1, 9));
    let minutes = t.count_or_none("minutes", (1, 1440));
    let read = (priority.is_some() || !t.has("priority")) && (minutes.is_some() || !t.has("minutes"));
    // Asked for here, read once all lifts are known.
    t.optional("after");
    let from = match from {
        None => None,
        Some(read) => Some(read?),
    };
    let window = window?;
    read.then_some(Wishes {
        from,
        window,
        priority: priority.and_then(|p| u8::try_from(p).ok()),
        minutes: minutes.and_then(|m| u16::try_from(m).ok()),
    })
}

/// `after = ["1"]`: indexes of lifts; a lift that waits for itself waits for ever.
pub(crate) fn after(t: &Reader<'_>, lifts: &Ids, own: usize) -> Option<Vec<usize>> {
    let Some(node) = t.optional("after") else { return Some(Vec::new()) };
    let one = |item| {
        let id = t.as_text(item, "after")?;
        let found = lifts.find(t, item, "after", id, text::KIND_LIFT)?;
        if found == own {
            t.fault_at(item, "after", text::AFTER_ITSELF.with("id", id), None);
            return None;
        }
        Some(found)
    };
    all(t.as_list(node, "after")?.iter().map(one).collect())
}

/// `["07:30", "09:00"]`: from and to. Outer `None`: a fault; inner: left out.
#[expect(clippy::option_option, reason = "a fault and a key left out are two things")]
pub(crate) fn span_of_day(t: &Reader<'_>, key: &str, needed: bool) -> Option<Option<DayTime>> {
    let example = format!("{key} = [\"07:30\", \"09:00\"]");
    let node = match t.optional(key) {
        None if !needed => return Some(None),
        None => t.required(key, &example)?,
        Some(node) => node,
    };
    let items = t.as_list(node, key)?;
    let words: Option<Vec<&str>> = all(items.iter().map(|item| t.as_text(item, key)).collect());
    let words = words?;
    let time = match words[..] {
        [from, to] => day_time(&format!("{from}-{to}")),
        _ => None,
    };
    if time.is_none() {
        let message = text::BAD_TIME.with("time", words.join(", "));
        t.fault_at(node, key, message, Some(text::HINT_EXAMPLE.with("example", example)));
    }
    time.map(Some)
}
