//! Mutates files for so many seconds and calls every reader on them: nothing may panic, hang or fill
//! memory. `cargo run --release -p survey --example fuzz -- SECONDS SEED FILE…`
//!
//! Seeds are real or made files of every kind; the parts of a shapefile are one seed, of which one part
//! is changed. `site:FILE` is the stored site that the file makes; in stored sites mostly the unpacked
//! blocks are changed, behind their checksums. Clouds are also gridded and searched for conductors.
//!
//! What guides it is the outcome: an input whose codes, all together, were never seen before becomes a
//! seed and is kept in the folder of temporary files, `counterpoise-fuzz-SEED`, as are one that panics
//! and those that take longer than a second of the processor. The same seed makes the same inputs again.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a tool for development: it measures time"
)]

use evidence::Faults;
use std::collections::{BTreeMap, BTreeSet};
use std::panic::AssertUnwindSafe;
use std::path::Path;
use std::time::{Duration, Instant};
use survey::{BringOptions, ConductorOptions, GroundFilter, GroundOptions, LengthUnit, StoredSite, ThingOptions};
use survey::{bring_in, grid_cloud, likely_conductors, read_stored, things_above, write_stored};

/// An input this slow is kept.
const SLOW: Duration = Duration::from_secs(1);

/// Seeds that outcomes add, at most.
const MOST_SEEDS: usize = 4000;

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

/// Files that are given together: one, or the parts of a shapefile.
type Files = Vec<(String, Vec<u8>)>;

/// A change behind the checksums of a stored site.
fn mutated_site(site: &[u8], dice: &mut Dice) -> Option<Vec<u8>> {
    let (head, mut rest) = site.split_at_checked(12)?;
    let mut blocks = Vec::new();
    while !rest.is_empty() {
        let length = u32::from_le_bytes(*rest.first_chunk()?) as usize;
        blocks.push(miniz_oxide::inflate::decompress_to_vec_with_limit(rest.get(8..8 + length)?, 1 << 24).ok()?);
        rest = &rest[8 + length..];
    }
    let changed = dice.below(blocks.len());
    blocks[changed] = mutated(&blocks[changed], dice);
    let mut out = head.to_vec();
    for block in blocks {
        let packed = miniz_oxide::deflate::compress_to_vec(&block, 6);
        out.extend((packed.len() as u32).to_le_bytes());
        out.extend(crc32fast::hash(&packed).to_le_bytes());
        out.extend(packed);
    }
    Some(out)
}

/// The seeds: the parts of a shapefile together, every other file by itself.
fn seeds(paths: &[String]) -> Vec<Files> {
    let mut out: BTreeMap<String, Files> = BTreeMap::new();
    for path in paths {
        if let Some(path) = path.strip_prefix("site:") {
            let bytes = std::fs::read(path).unwrap();
            let options = BringOptions {
                ground: GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() },
                accuracy: Some(0.05),
                plan_accuracy: 0.1,
                above: true,
                ..BringOptions::default()
            };
            let brought = bring_in(&StoredSite::default(), &[(path, &bytes)], &options).unwrap();
            let site = write_stored(&brought.stored).unwrap();
            out.insert(format!("site:{path}"), vec![("made.site".to_owned(), site)]);
            continue;
        }
        let (stem, extension) = path.rsplit_once('.').unwrap();
        let part = ["shp", "dbf", "shx", "prj", "cpg"].contains(&extension);
        let key = if part { stem.to_owned() } else { path.clone() };
        let name = path.rsplit('/').next().unwrap().to_owned();
        out.entry(key).or_default().push((name, std::fs::read(path).unwrap()));
    }
    out.into_values().collect()
}

fn ending(name: &str) -> &str {
    name.rsplit_once('.').map_or("", |(_, ending)| ending)
}

/// Calls the readers; the codes of all faults, and whether anything was read.
fn called(files: &Files, dice: &mut Dice) -> (BTreeSet<String>, bool) {
    let ground = GroundOptions {
        // Mostly stated: half of the clouds and all drawings would be refused for want of a unit.
        units: (dice.below(8) > 0).then_some(LengthUnit::Metre),
        ground_filter: (dice.below(3) == 0).then(GroundFilter::default),
        survey_points: dice.below(4) == 0,
        layers: (dice.below(4) == 0).then(|| vec![String::from("0")]),
        ..GroundOptions::default()
    };
    let options = BringOptions {
        ground: ground.clone(),
        accuracy: Some(0.05),
        plan_accuracy: 0.1,
        above: dice.below(2) == 0,
        as_ground: dice.below(3) == 0,
        ..BringOptions::default()
    };
    let given: Vec<(&str, &[u8])> = files.iter().map(|(name, bytes)| (name.as_str(), &bytes[..])).collect();
    let mut codes = BTreeSet::new();
    let brought = bring_in(&StoredSite::default(), &given, &options);
    let read = brought.is_ok();
    match &brought {
        Ok(brought) => add(&mut codes, "read", &brought.notes),
        Err(faults) => add(&mut codes, "refused", faults),
    }
    if let Ok(brought) = &brought {
        // What was brought in can be stored, and opens again.
        match write_stored(&brought.stored) {
            Ok(bytes) => {
                if let Err(faults) = read_stored("again.site", &bytes) {
                    add(&mut codes, "does not open again", &faults);
                }
            }
            Err(error) => drop(codes.insert(format!("not stored: {error:?}"))),
        }
    }
    if !files.iter().all(|(name, _)| ["las", "laz"].contains(&ending(name))) {
        return (codes, read);
    }
    match grid_cloud(&given, &ground, [0.25, 1.0, 5.0][dice.below(3)]) {
        Ok(grid) => add(&mut codes, "gridded", &grid.notes),
        Err(faults) => add(&mut codes, "not gridded", &faults),
    }
    let surface = brought.ok().and_then(|b| b.stored.site.ground.surfaces.into_iter().next());
    if let Some(surface) = surface {
        let lines = ConductorOptions { cloud: ground.clone(), ..ConductorOptions::default() };
        if let Err(faults) = likely_conductors(&given, &surface.terrain, &lines) {
            add(&mut codes, "no conductors", &faults);
        }
        let things = ThingOptions { cloud: ground, ..ThingOptions::default() };
        if let Err(faults) = things_above(&given, &surface.terrain, &things) {
            add(&mut codes, "nothing above", &faults);
        }
    }
    (codes, read)
}

fn add(codes: &mut BTreeSet<String>, from: &str, faults: &Faults) {
    codes.extend(faults.list.iter().map(|f| format!("{from} {}", f.code)));
}

fn keep(folder: &Path, label: &str, files: &Files) {
    for (name, bytes) in files {
        std::fs::write(folder.join(format!("{label}-{name}")), bytes).unwrap();
    }
}

/// Time that the processor gave this program; on other systems than Linux, time that passed.
fn processor_time(start: Instant) -> Duration {
    let told = std::fs::read_to_string("/proc/self/schedstat").ok();
    let told = told.and_then(|t| t.split_whitespace().next()?.parse().ok());
    told.map_or_else(|| start.elapsed(), Duration::from_nanos)
}

/// Peak of the memory in use, MiB; Linux only.
fn peak_mib() -> Option<f64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find(|l| l.starts_with("VmHWM:"))?;
    Some(line.split_whitespace().nth(1)?.parse::<f64>().ok()? / 1024.0)
}

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [seconds, seed, paths @ ..] = &args[..] else {
        println!("fuzz SECONDS SEED FILE…");
        return;
    };
    let limit = Duration::from_secs(seconds.parse().unwrap());
    let mut dice = Dice(seed.parse().unwrap());
    let mut pool = seeds(paths);
    let folder = std::env::temp_dir().join(format!("counterpoise-fuzz-{seed}"));
    std::fs::create_dir_all(&folder).unwrap();
    let mut seen: BTreeSet<BTreeSet<String>> = BTreeSet::new();
    let (mut runs, mut read, mut slow, mut slowest) = (0_u64, 0_u64, 0_u64, Duration::ZERO);
    let start = Instant::now();
    while start.elapsed() < limit {
        let chosen = &pool[dice.below(pool.len())];
        let mut input = chosen.clone();
        let part = dice.below(input.len());
        let behind = ending(&input[part].0) == "site" && dice.below(8) > 0;
        let changed = behind.then(|| mutated_site(&chosen[part].1, &mut dice)).flatten();
        input[part].1 = changed.unwrap_or_else(|| mutated(&chosen[part].1, &mut dice));
        let began = processor_time(start);
        let result = std::panic::catch_unwind(AssertUnwindSafe(|| called(&input, &mut dice)));
        let Ok((codes, ok)) = result else {
            keep(&folder, &format!("panic-{runs}"), &input);
            println!("input {runs} panics, see {}", folder.display());
            std::process::exit(1);
        };
        let took = processor_time(start).saturating_sub(began);
        slowest = slowest.max(took);
        if took > SLOW {
            slow += 1;
            keep(&folder, &format!("slow-{}-ms-{runs}", took.as_millis()), &input);
        }
        if let Some(odd) = codes.iter().find(|c| c.starts_with("does not open") || c.starts_with("not stored"))
            && !seen.contains(&codes)
        {
            println!("{odd}: input {runs}");
        }
        if seen.insert(codes) && pool.len() < MOST_SEEDS {
            keep(&folder, &format!("new-{runs}"), &input);
            pool.push(input);
        }
        runs += 1;
        read += u64::from(ok);
    }
    let [minutes, busy] = [start.elapsed(), processor_time(start)].map(|t| t.as_secs_f64() / 60.0);
    println!(
        "{minutes:.1} min ({busy:.1} of the processor), {runs} inputs, {read} read, {} outcomes; slowest {:.2} s, {slow} over {} s; peak {} MiB; no panic",
        seen.len(),
        slowest.as_secs_f64(),
        SLOW.as_secs(),
        peak_mib().map_or_else(|| "?".to_owned(), |p| format!("{p:.0}")),
    );
}
