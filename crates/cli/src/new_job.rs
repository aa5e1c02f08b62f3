//! `counterpoise new`.

use crate::args::{Form, Format, Lang, NewArgs, Said, Units};
use crate::failure::Failure;
use crate::{Outcome, Run, terminal, text};
use std::fs;

pub(crate) fn run(args: &NewArgs) -> Run {
    let said = Said { format: Format::Text, units: Units::Si, lang: Lang::En };
    let folder = args.job.display().to_string();
    let free =
        !args.job.exists() || (args.job.is_dir() && fs::read_dir(&args.job).is_ok_and(|mut d| d.next().is_none()));
    if !free {
        let message = text::NEW_NOT_EMPTY.with("folder", &folder);
        return Err(Failure::one(said, "cli::new-not-empty", &folder, message, Some(text::HINT_OUT.message())));
    }
    let schemas = [("job-file", Form::JobFile), ("machine-file", Form::MachineFile)]
        .map(|(name, form)| (format!("schemas/{name}.schema.json"), terminal::json(&crate::schema::schema(form))));
    for (path, content) in jobfile::starter_job().into_iter().chain(schemas) {
        let file = args.job.join(&path);
        let parent = file.parent().unwrap_or(&args.job);
        fs::create_dir_all(parent)
            .and_then(|()| fs::write(&file, content))
            .map_err(|e| Failure::cannot_write(said, &file.display().to_string(), &e.to_string()))?;
    }
    let wording = said.wording();
    terminal::paragraph(&wording.render(&text::NEW_WRITTEN.with("folder", &folder)), "", "");
    Ok(Outcome::Done)
}
