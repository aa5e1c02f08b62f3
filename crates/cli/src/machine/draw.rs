//! `machine draw`: dimensioned drawings of a machine and of each of its load charts.

use super::text;
use crate::args::DrawArgs;
use crate::failure::Failure;
use crate::outputs::{WIDTH, beside, put_in_place};
use crate::{Outcome, Run, terminal};
use drawing::Style;
use machine::Machine;
use std::fs;
use std::path::Path;
use wording::Wording;

const SIDE: &str = "side-view.svg";
const FRONT: &str = "front-view.svg";
const CHART: &str = "load-chart-";

pub(super) fn run(args: &DrawArgs) -> Run {
    let said = args.said;
    let machine = crate::check::read_machine(&args.file, said)?;
    let (out, folder) = (&args.out, args.out.display().to_string());
    if out.exists() && !replaceable(out) {
        let hint = Some(crate::text::HINT_OUT.message());
        let message = text::DRAW_NOT_OURS.with("folder", &folder);
        return Err(Failure::one(said, "cli::out-not-ours", &folder, message, hint));
    }
    let wording = said.wording();
    let drawings = drawings(&machine, wording);
    let temporary = beside(out, "writing");
    let written = (|| -> std::io::Result<()> {
        let _ = fs::remove_dir_all(&temporary);
        fs::create_dir_all(&temporary)?;
        for (name, svg) in &drawings {
            fs::write(temporary.join(name), svg)?;
        }
        put_in_place(&temporary, out)
    })();
    if let Err(e) = written {
        let _ = fs::remove_dir_all(&temporary);
        return Err(Failure::cannot_write(said, &folder, &e.to_string()));
    }
    if said.json() {
        let names: Vec<&String> = drawings.iter().map(|(name, _)| name).collect();
        terminal::print_json(&names);
    } else {
        let written = text::DRAW_WRITTEN.with("folder", &folder).with("count", drawings.len());
        terminal::paragraph(&wording.render(&written), "", "");
    }
    Ok(Outcome::Done)
}

/// File names and drawings.
fn drawings(machine: &Machine, wording: Wording) -> Vec<(String, String)> {
    let style = Style::paper(WIDTH);
    let mut out = vec![
        (SIDE.to_owned(), drawing::machine_side(machine, &wording, &style)),
        (FRONT.to_owned(), drawing::machine_front(machine, &wording, &style)),
    ];
    for (i, chart) in machine.charts.iter().enumerate() {
        let support = chart.support.word();
        let attachment: String =
            chart.attachment.chars().map(|c| if c.is_ascii_alphanumeric() { c } else { '-' }).take(40).collect();
        let name = format!("{CHART}{:02}-{attachment}-{support}.svg", i + 1);
        out.push((name, drawing::machine_chart(machine, chart, &wording, &style)));
    }
    out
}

/// True for an empty folder, or one with earlier drawings of a machine and nothing else.
fn replaceable(out: &Path) -> bool {
    let Ok(entries) = fs::read_dir(out) else { return false };
    entries.flatten().all(|e| {
        let name = e.file_name().to_string_lossy().into_owned();
        let svg = Path::new(&name).extension().is_some_and(|x| x == "svg");
        e.path().is_file() && (name == SIDE || name == FRONT || (name.starts_with(CHART) && svg))
    })
}
