//! `cargo xtask run`: from sources to the demo job on the screen.

use crate::http;
use crate::programs::{self, Project};
use crate::steps::{Outcome, Steps};
use crate::web::Npm;
use std::io::{BufRead, BufReader, Read};
use std::path::Path;
use std::process::{Child, Command, ExitCode, Stdio};
use std::sync::mpsc::{Receiver, Sender, channel};
use std::time::{Duration, Instant};

/// How long the server stays.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Until {
    /// Until somebody ends it.
    Interrupted,
    /// Until it has answered one request.
    AnsweredOnce,
}

const JOB: &str = "examples/demo-job";
const OUT: &str = "out/demo";
/// Ends of `plan` that are a verdict: go, no-go, go with conditions. The demo has lifts that must
/// not be done, so a no-go is what it should say.
const VERDICTS: [i32; 3] = [0, 3, 4];
/// The server is up in a second; a slow first start of a large program may take longer.
const PATIENCE: Duration = Duration::from_mins(1);

/// Builds, plans, serves.
pub(crate) fn run(project: &Project, until: Until) -> ExitCode {
    let mut steps = Steps::new();
    println!("Counterpoise: building everything, planning the demo job, serving it.");
    if let Err(code) = prepare(project, &mut steps) {
        return code;
    }
    match serve(project, &mut steps, until) {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            eprintln!("error: {why}");
            ExitCode::FAILURE
        }
    }
}

fn prepare(project: &Project, steps: &mut Steps) -> Result<(), ExitCode> {
    let must = |passed: bool| if passed { Ok(()) } else { Err(ExitCode::FAILURE) };
    match Npm::find(project) {
        Ok(npm) => {
            must(steps.must("web client: packages", || npm.install()))?;
            must(steps.must("web client: build", || npm.script("build", &[])))?;
        }
        Err(how) => {
            steps.step("web client", || {
                Ok(Outcome::LeftOut(format!("{how}. Going on with the page that the server draws itself")))
            });
        }
    }
    must(steps.must("build", || programs::run(&mut project.cargo(&["build", "--locked"]))))?;
    must(steps.must("plan the demo job", || plan(project)))
}

fn plan(project: &Project) -> Result<(), String> {
    let out = project.path(OUT);
    // What an earlier run left must not pass for what this one wrote.
    if out.is_dir() {
        std::fs::remove_dir_all(&out).map_err(|e| format!("{OUT}: {e}"))?;
    }
    let mut command = Command::new(project.binary());
    command.args(["plan", JOB, "--out", OUT]).current_dir(&project.root).stdin(Stdio::null());
    println!("counterpoise plan {JOB} --out {OUT}");
    let status = command.status().map_err(|e| format!("cannot start {}: {e}", project.binary().display()))?;
    if !status.code().is_some_and(|code| VERDICTS.contains(&code)) {
        return Err(format!("planning ended with {status}; 0, 3 and 4 are verdicts, this is none"));
    }
    let written = files_under(&out);
    for kind in ["pdf", "svg"] {
        let n = written.iter().filter(|f| f.ends_with(&format!(".{kind}"))).count();
        if n == 0 {
            return Err(format!("no .{kind} in {OUT}"));
        }
        println!("{n} {kind} in {OUT}");
    }
    Ok(())
}

/// Names of the files in a folder and the folders in it.
fn files_under(folder: &Path) -> Vec<String> {
    let Ok(entries) = std::fs::read_dir(folder) else { return Vec::new() };
    let mut out = Vec::new();
    for path in entries.filter_map(|e| Some(e.ok()?.path())) {
        if path.is_dir() {
            out.extend(files_under(&path));
        } else {
            out.extend(path.file_name().and_then(|n| n.to_str()).map(str::to_owned));
        }
    }
    out
}

fn serve(project: &Project, steps: &mut Steps, until: Until) -> Result<(), String> {
    // A check takes any free port; a person gets the one that is always the same.
    let args: &[&str] = match until {
        Until::AnsweredOnce => &["serve", JOB, "--port", "0"],
        Until::Interrupted => &["serve", JOB],
    };
    println!("\n== serve (at {})\ncounterpoise {}", steps.elapsed(), args.join(" "));
    let mut child = Command::new(project.binary())
        .args(args)
        .current_dir(&project.root)
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(|e| format!("cannot start {}: {e}", project.binary().display()))?;
    let address = found_address(&mut child).and_then(|address| http::get(&address, "/").map(|_| address));
    let served = address.and_then(|address| match until {
        Until::AnsweredOnce => {
            println!("http://{address}/ answered; everything took {}", steps.elapsed());
            Ok(())
        }
        Until::Interrupted => {
            println!("\nOpen http://{address}/ in a browser. Documents are in {OUT}. Ctrl+C ends the server.");
            let status = child.wait().map_err(|e| e.to_string())?;
            if status.success() { Ok(()) } else { Err(format!("the server ended with {status}")) }
        }
    });
    // Ended already where somebody interrupted it; then there is nothing to end.
    let _ = child.kill();
    let _ = child.wait();
    served
}

/// Shows what the server says, and returns the address it names.
fn found_address(child: &mut Child) -> Result<String, String> {
    let (sender, lines) = channel();
    if let Some(stream) = child.stdout.take() {
        show(stream, sender.clone());
    }
    if let Some(stream) = child.stderr.take() {
        show(stream, sender);
    }
    first_address(&lines, PATIENCE)
}

fn show(stream: impl Read + Send + 'static, sender: Sender<String>) {
    std::thread::spawn(move || {
        for line in BufReader::new(stream).lines().map_while(Result::ok) {
            println!("{line}");
            // Nobody listens any more once the address is known.
            let _ = sender.send(line);
        }
    });
}

fn first_address(lines: &Receiver<String>, patience: Duration) -> Result<String, String> {
    let end = Instant::now() + patience;
    loop {
        let left = end.saturating_duration_since(Instant::now());
        match lines.recv_timeout(left) {
            Ok(line) => {
                if let Some(address) = http::address_in(&line) {
                    return Ok(address);
                }
            }
            Err(_) => return Err("the server named no address".into()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_address_is_taken_and_silence_is_an_error() {
        let (sender, lines) = channel();
        for line in ["warming up", "open http://127.0.0.1:81/ now", "http://127.0.0.1:82/"] {
            sender.send(line.to_owned()).unwrap();
        }
        assert_eq!(first_address(&lines, PATIENCE).as_deref(), Ok("127.0.0.1:81"));
        drop(sender);
        assert_eq!(first_address(&lines, PATIENCE).as_deref(), Ok("127.0.0.1:82"));
        assert!(first_address(&lines, PATIENCE).is_err());
    }
}
