//! `[[zone]]`: parts of the site with a rule of their own.

use crate::ids::Ids;
use crate::job_file::all;
use crate::landing_section::heading;
use crate::plan_shape_keys::shape;
use crate::quantity_value::Bound::UpTo;
use crate::schema_notes::Kind;
use crate::table::Reader;
use crate::text;
use quantity::Dimension as D;
use site::{DayTime, Zone, ZoneRule};

#[derive(Clone, Copy, PartialEq)]
enum Word {
    NoGo,
    People,
    OneWay,
    Speed,
    Soft,
    SlopeLimit,
}

const RULES: [(&str, Word); 6] = [
    ("no-go", Word::NoGo),
    ("people", Word::People),
    ("one-way", Word::OneWay),
    ("speed", Word::Speed),
    ("soft", Word::Soft),
    ("slope-limit", Word::SlopeLimit),
];

pub(crate) fn zones(root: &Reader<'_>) -> Option<Vec<Zone>> {
    let mut ids = Ids::default();
    all(root.tables("zone").iter().map(|t| zone(t, &mut ids)).collect())
}

fn zone(t: &Reader<'_>, ids: &mut Ids) -> Option<Zone> {
    let id = ids.add(t);
    let name = t.text("name", "name = \"Footpath to the canteen\"");
    let shape = shape(t);
    let word = t.choice("rule", &RULES);
    // Each is asked for only where the rule needs it; elsewhere it is a key too many.
    let all_of_them = word.is_none();
    let asked = |rule: Word| all_of_them || word == Some(rule);
    let heading =
        if asked(Word::OneWay) && (word.is_some() || t.has("heading")) { heading(t, "heading") } else { None };
    let speed = |t: &Reader<'_>| t.decision("speed", D::Speed, UpTo(30.0));
    let speed = if asked(Word::Speed) && (word.is_some() || t.has("speed")) { speed(t) } else { None };
    let slope = |t: &Reader<'_>| t.decision("slope", D::Angle, UpTo(1.0));
    let slope = if asked(Word::SlopeLimit) && (word.is_some() || t.has("slope")) { slope(t) } else { None };
    let times = times(t);
    let by = t.text("by", "by = \"A. Planner, site manager\"");
    t.done();
    let rule = match word? {
        Word::NoGo => ZoneRule::NoGo,
        Word::People => ZoneRule::People,
        Word::OneWay => ZoneRule::OneWay { heading: heading? },
        Word::Speed => ZoneRule::Speed { most: speed? },
        Word::Soft => ZoneRule::Soft,
        Word::SlopeLimit => ZoneRule::SlopeLimit { most: libm::tan(slope?) },
    };
    Some(Zone { id: id?, name: name?, shape: shape?, rule, times: times?, by: by? })
}

/// `times = ["07:00-09:30"]`; left out: always.
pub(crate) fn times(t: &Reader<'_>) -> Option<Vec<DayTime>> {
    let Some(node) = t.optional("times") else { return Some(Vec::new()) };
    let items = t.as_list(node, "times")?;
    t.expects("times", || Kind::Text);
    let read = items.iter().map(|item| {
        let written = t.as_text(item, "times")?;
        let time = day_time(written);
        if time.is_none() {
            let hint = text::HINT_EXAMPLE.with("example", "times = [\"07:00-09:30\"]");
            t.fault_at(item, "times", text::BAD_TIME.with("time", written), Some(hint));
        }
        time
    });
    all(read.collect())
}

pub(crate) fn day_time(written: &str) -> Option<DayTime> {
    let minute = |clock: &str| {
        let (h, m) = clock.trim().split_once(':')?;
        let (h, m) = (h.parse::<u16>().ok()?, m.parse::<u16>().ok().filter(|_| m.len() == 2)?);
        (m < 60 && (h < 24 || (h == 24 && m == 0))).then_some(h * 60 + m)
    };
    let (from, to) = written.split_once(['-', '–'])?;
    let (from, to) = (minute(from)?, minute(to)?);
    (from != to).then_some(DayTime { from, to })
}

#[cfg(test)]
mod tests {
    use super::{DayTime, day_time};

    #[test]
    fn times_of_the_day() {
        assert_eq!(day_time("07:00-09:30"), Some(DayTime { from: 420, to: 570 }));
        assert_eq!(day_time("22:00 – 06:00"), Some(DayTime { from: 1320, to: 360 }));
        assert_eq!(day_time("0:00-24:00"), Some(DayTime { from: 0, to: 1440 }));
        for bad in ["7-9", "07:00", "07:60-08:00", "25:00-26:00", "07:0-08:00", "08:00-08:00", ""] {
            assert_eq!(day_time(bad), None, "{bad}");
        }
    }
}
