//! Proof that the settings of `crates/clippy.toml` really refuse what they list: a scratch crate
//! calls each forbidden method once, and clippy must name every one of them.
//!
//! Clippy takes settings from the nearest file only and warns softly, or not at all, where a path
//! in them means nothing; without this proof a slip there would switch the rule off unseen.

use crate::programs::{Project, shown};
use std::path::Path;
use std::process::Stdio;

/// One call for each forbidden path.
const CALLS: [(&str, &str); 25] = [
    ("f64::sin", "let _ = 1.0_f64.sin();"),
    ("f64::cos", "let _ = 1.0_f64.cos();"),
    ("f64::tan", "let _ = 1.0_f64.tan();"),
    ("f64::sin_cos", "let _ = 1.0_f64.sin_cos();"),
    ("f64::asin", "let _ = 1.0_f64.asin();"),
    ("f64::acos", "let _ = 1.0_f64.acos();"),
    ("f64::atan", "let _ = 1.0_f64.atan();"),
    ("f64::atan2", "let _ = 1.0_f64.atan2(2.0);"),
    ("f64::sinh", "let _ = 1.0_f64.sinh();"),
    ("f64::cosh", "let _ = 1.0_f64.cosh();"),
    ("f64::tanh", "let _ = 1.0_f64.tanh();"),
    ("f64::hypot", "let _ = 1.0_f64.hypot(2.0);"),
    ("f64::exp", "let _ = 1.0_f64.exp();"),
    ("f64::exp2", "let _ = 1.0_f64.exp2();"),
    ("f64::exp_m1", "let _ = 1.0_f64.exp_m1();"),
    ("f64::ln", "let _ = 1.0_f64.ln();"),
    ("f64::ln_1p", "let _ = 1.0_f64.ln_1p();"),
    ("f64::log2", "let _ = 1.0_f64.log2();"),
    ("f64::log10", "let _ = 1.0_f64.log10();"),
    ("f64::log", "let _ = 1.0_f64.log(2.0);"),
    ("f64::powf", "let _ = 1.0_f64.powf(2.0);"),
    ("f64::powi", "let _ = 1.0_f64.powi(2);"),
    ("f64::cbrt", "let _ = 1.0_f64.cbrt();"),
    ("std::time::Instant::now", "let _ = std::time::Instant::now();"),
    ("std::time::SystemTime::now", "let _ = std::time::SystemTime::now();"),
];

/// Writes the scratch crate under the target folder and looks at what clippy says of it.
pub(super) fn run(project: &Project) -> Result<(), String> {
    let listed = std::fs::read_to_string(project.path(super::lints::STRICT)).map_err(|e| e.to_string())?;
    let folder = project.target().join("lint-proof");
    write(&folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    let mut command = project.cargo(&["clippy", "--quiet", "--offline", "--message-format", "short"]);
    command.current_dir(&folder).env("CLIPPY_CONF_DIR", project.path("crates")).env("CARGO_TARGET_DIR", &folder);
    let out = command.stdin(Stdio::null()).output().map_err(|e| format!("cannot start `{}`: {e}", shown(&command)))?;
    let said = String::from_utf8_lossy(&out.stderr);
    let missing: Vec<_> = CALLS.iter().map(|(path, _)| *path).filter(|p| !refuses(&said, p)).collect();
    if !missing.is_empty() {
        print!("{said}");
        return Err(format!("clippy lets pass: {}", missing.join(", ")));
    }
    let unproven: Vec<_> = paths_in(&listed).filter(|p| !CALLS.iter().any(|(path, _)| path == p)).collect();
    if !unproven.is_empty() {
        return Err(format!("listed, but never tried here: {}", unproven.join(", ")));
    }
    println!("clippy refuses all {} of them", CALLS.len());
    Ok(())
}

fn write(folder: &Path) -> std::io::Result<()> {
    std::fs::create_dir_all(folder.join("src"))?;
    let manifest = "[package]\nname = \"lint-proof\"\nversion = \"0.0.0\"\nedition = \"2024\"\n\n[workspace]\n";
    std::fs::write(folder.join("Cargo.toml"), manifest)?;
    let calls = CALLS.map(|(_, call)| format!("    {call}\n")).concat();
    std::fs::write(
        folder.join("src/lib.rs"),
        format!("//! Calls that clippy must refuse.\npub fn all() {{\n{calls}}}\n"),
    )
}

fn refuses(said: &str, path: &str) -> bool {
    said.contains(&format!("use of a disallowed method `{path}`"))
}

/// Paths listed in the settings.
fn paths_in(settings: &str) -> impl Iterator<Item = &str> {
    settings.split("path = \"").skip(1).filter_map(|rest| rest.split('"').next())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn settings_and_answers_are_read() {
        let settings = "disallowed-methods = [\n  { path = \"f64::sin\", reason = \"x\" },\n  { path = \"a::b\" },\n]";
        assert_eq!(paths_in(settings).collect::<Vec<_>>(), ["f64::sin", "a::b"]);
        let said = "src/lib.rs:4:20: warning: use of a disallowed method `f64::sin`: use libm";
        assert!(refuses(said, "f64::sin"));
        assert!(!refuses(said, "f64::sin_cos"));
    }
}
