//! Whatever the bytes, reading ends with a job or with faults, never with a panic.

use crate::folder::demo;
use evidence::Faults;

/// A small generator, so that the same inputs are made on every machine (xorshift64*).
struct Dice(u64);
impl Dice {
    fn roll(&mut self, below: usize) -> usize {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        (self.0.wrapping_mul(0x2545_F491_4F6C_DD1D) >> 33) as usize % below.max(1)
    }
}

/// Pieces that break things: signs, quotes, units, huge numbers, structure.
const PIECES: [&str; 26] = [
    "\"",
    "[",
    "]",
    "{",
    "}",
    "=",
    "\n",
    "-",
    "nan",
    "inf",
    "1e308",
    "-1e308",
    "1e-320",
    "0",
    "m",
    "kg",
    "\\u0000",
    "é",
    "\u{202e}",
    "[[load]]",
    "[boom]",
    "'''",
    "#",
    ",",
    "9999999999999999999",
    "../",
];

fn mutate(bytes: &[u8], dice: &mut Dice) -> Vec<u8> {
    let mut out = bytes.to_vec();
    for _ in 0..=dice.roll(4) {
        let at = dice.roll(out.len());
        let end = (at + dice.roll(40)).min(out.len());
        match dice.roll(6) {
            0 => out.truncate(at),
            1 => drop(out.drain(at..end)),
            2 => {
                let piece = PIECES[dice.roll(PIECES.len())];
                out.splice(at..at, piece.bytes());
            }
            3 if !out.is_empty() => {
                let i = at.min(out.len() - 1);
                out[i] = dice.roll(256) as u8;
            }
            4 => {
                let copy = out[at..end].to_vec();
                out.splice(at..at, copy);
            }
            _ => {
                let piece = PIECES[dice.roll(PIECES.len())];
                out.splice(at..end, piece.bytes());
            }
        }
    }
    out
}

/// Every place lies in the file and is what its line and column say.
fn places_are_true(faults: &Faults, file: &str, bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let text = text.trim_start_matches('\u{feff}');
    for fault in faults.list.iter().filter(|f| f.place.file == file) {
        let Some((from, to)) = fault.place.span else { continue };
        assert!(from <= to && to <= text.len(), "{fault:?}");
        let before = text.get(..from).unwrap_or_else(|| panic!("span splits a character: {fault:?}"));
        assert!(text.is_char_boundary(to), "{fault:?}");
        let line = before.matches('\n').count() + 1;
        let column = before.rsplit('\n').next().unwrap().chars().count() + 1;
        assert_eq!((fault.place.line, fault.place.column), (Some(line), Some(column)), "{fault:?}");
    }
}

#[test]
fn mutated_jobs_never_panic() {
    let whole = demo();
    let mut dice = Dice(0x00C0_FFEE);
    let names: Vec<String> = whole.keys().cloned().collect();
    let mut refused = 0;
    for _ in 0..400 {
        let mut folder = whole.clone();
        let name = &names[dice.roll(names.len())];
        let bytes = mutate(&whole[name], &mut dice);
        folder.insert(name.clone(), bytes.clone());
        match jobfile::read_job(&folder) {
            Ok((_, warnings)) => assert!(!warnings.any_error()),
            Err(faults) => {
                refused += 1;
                assert!(faults.any_error(), "refused without saying why");
                if name.ends_with("toml") {
                    places_are_true(&faults, name, &bytes);
                }
            }
        }
    }
    assert!(refused > 200, "mutations that break nothing test nothing: {refused} of 400");
}

#[test]
fn mutated_machines_with_charts_never_panic() {
    let machine = crate::faults_machine::with_chart();
    let mut dice = Dice(42);
    for _ in 0..600 {
        let bytes = mutate(machine.as_bytes(), &mut dice);
        if let Err(faults) = jobfile::read_machine("m.toml", &bytes) {
            places_are_true(&faults, "m.toml", &bytes);
        }
    }
}

#[test]
fn mutated_json_never_panics() {
    let json = r#"{"mass": "1200 kg", "list": [1, 2, {"a": "é\"x", "b": null}], "on": true, "n": -1.5e3}"#;
    let mut dice = Dice(7);
    for _ in 0..2000 {
        let bytes = mutate(json.as_bytes(), &mut dice);
        let document = jobfile::read_table("x.json", &bytes);
        let root = document.root();
        root.decision("mass", quantity::Dimension::Mass, jobfile::Bound::Positive);
        root.done();
        places_are_true(&document.faults(), "x.json", &bytes);
    }
}

#[test]
fn deep_nesting_is_a_fault() {
    for (name, open, close) in [("x.toml", "a = [", "]"), ("x.json", "[", "]")] {
        let text = format!("{open}{}{}{close}", "[".repeat(5000), "]".repeat(5000));
        let document = jobfile::read_table(name, text.as_bytes());
        assert!(document.faults().any_error(), "{name}");
    }
}
