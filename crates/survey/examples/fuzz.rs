//! Mutates files for so many seconds and calls every reader on them: nothing may panic, hang or fill
//! memory. `cargo run --release -p survey --example fuzz -- SECONDS SEED FILE…`
//!
//! Coverage does not guide it; seeds are real or made files of every kind. An input that takes longer
//! than two seconds, and the last one before a panic, is left in the folder of temporary files.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a tool for development: it measures time"
)]

use std::time::{Duration, Instant};
use survey::{BringOptions, GroundFilter, GroundOptions, LengthUnit, StoredSite, bring_in};

struct Dice(u64);
impl Dice {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }
    fn below(&mut self, n: usize) -> usize {
        (self.next() % n.max(1) as u64) as usize
    }
}

const WORDS: [&[u8]; 14] = [
    b"0",
    b"-1",
    b"1e308",
    b"nan",
    b"99999999999999999999",
    b"\n",
    b"<",
    b"{",
    b"]",
    b"\0\0\0\0",
    b"\xFF\xFF\xFF\xFF",
    b"\x7F\xFF\xFF\xFF",
    b"SECTION\n",
    b"\"coordinates\":",
];

fn mutated(seed: &[u8], dice: &mut Dice) -> Vec<u8> {
    let mut bytes = seed.to_vec();
    for _ in 0..=dice.below(6) {
        if bytes.is_empty() {
            break;
        }
        // Half of the hits near the head, where sizes and places stand.
        let near = if dice.below(2) == 0 { bytes.len().min(1024) } else { bytes.len() };
        let at = dice.below(near);
        match dice.below(7) {
            0 => bytes[at] ^= 1 << dice.below(8),
            1 => bytes[at] = dice.next() as u8,
            2 => bytes.truncate(at),
            3 => {
                let word = WORDS[dice.below(WORDS.len())];
                bytes.splice(at..at, word.iter().copied());
            }
            4 => {
                let end = (at + dice.below(64)).min(bytes.len());
                bytes.drain(at..end);
            }
            5 => {
                let end = (at + dice.below(256)).min(bytes.len());
                let piece = bytes[at..end].to_vec();
                bytes.splice(at..at, piece);
            }
            _ => {
                let word = WORDS[dice.below(WORDS.len())];
                let end = (at + word.len()).min(bytes.len());
                bytes.splice(at..end, word.iter().copied());
            }
        }
    }
    bytes
}

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [seconds, seed, files @ ..] = &args[..] else {
        println!("fuzz SECONDS SEED FILE…");
        return;
    };
    let limit = Duration::from_secs(seconds.parse().unwrap());
    let mut dice = Dice(seed.parse().unwrap());
    let seeds: Vec<(String, Vec<u8>)> =
        files.iter().map(|f| (f.rsplit('/').next().unwrap().to_owned(), std::fs::read(f).unwrap())).collect();
    let last = std::env::temp_dir().join(format!("counterpoise-fuzz-{seed}"));
    let (start, mut runs, mut read, mut slowest) = (Instant::now(), 0_u64, 0_u64, Duration::ZERO);
    while start.elapsed() < limit {
        let (name, bytes) = &seeds[dice.below(seeds.len())];
        let input = mutated(bytes, &mut dice);
        std::fs::write(&last, &input).unwrap();
        let ground = GroundOptions {
            units: Some(LengthUnit::Metre),
            ground_filter: (dice.below(8) == 0).then(GroundFilter::default),
            survey_points: dice.below(4) == 0,
            layers: (dice.below(4) == 0).then(|| vec![String::from("0")]),
            ..GroundOptions::default()
        };
        let options = BringOptions {
            ground,
            accuracy: Some(0.05),
            plan_accuracy: 0.1,
            above: dice.below(4) == 0,
            as_ground: dice.below(3) == 0,
            ..BringOptions::default()
        };
        let began = Instant::now();
        let files: [(&str, &[u8]); 1] = [(name, &input)];
        read += u64::from(bring_in(&StoredSite::default(), &files, &options).is_ok());
        let took = began.elapsed();
        if took > slowest {
            slowest = took;
            if took > Duration::from_secs(2) {
                let kept = std::env::temp_dir().join(format!("counterpoise-fuzz-slow-{seed}-{runs}-{name}"));
                std::fs::write(kept, &input).unwrap();
            }
        }
        runs += 1;
    }
    println!("{runs} inputs, {read} read, slowest {:.2} s, no panic", slowest.as_secs_f64());
}
