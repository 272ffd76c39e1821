//! What a process tells, and the table that comes of it.

use std::io::Read;
use std::process::{Command, Stdio};
use std::sync::OnceLock;
use std::time::{Duration, Instant};

use serde::{Deserialize, Serialize};

use super::{Case, Outcome};

/// Figures of one process.
#[derive(Debug, Default, Serialize, Deserialize)]
pub struct Told {
    /// Stages and their seconds, in order; what is part of the stage above it begins with spaces.
    pub seconds: Vec<(String, f64)>,
    /// Peak of memory in MiB, where the system tells it.
    pub peak_mib: Option<f64>,
    /// Anything to add.
    pub remarks: Vec<String>,
}

impl Told {
    /// The figures, with this process's peak of memory.
    pub fn now(seconds: Vec<(String, f64)>, remarks: Vec<String>) -> Self {
        Self { seconds, peak_mib: peak_mib(), remarks }
    }
}

/// The most memory that this process has held: `VmHWM`, which Linux counts in KiB.
fn peak_mib() -> Option<f64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    Some(line.trim().trim_end_matches("kB").trim().parse::<f64>().ok()? / 1024.0)
}

/// Seconds that `work` takes: the median of `rounds`, and what it gave last.
pub fn timed<T>(rounds: usize, mut work: impl FnMut() -> T) -> (f64, Option<T>) {
    let mut seconds = Vec::new();
    let mut last = None;
    for _ in 0..rounds.max(1) {
        let begin = Instant::now();
        last = Some(work());
        seconds.push(begin.elapsed().as_secs_f64());
    }
    seconds.sort_by(f64::total_cmp);
    (seconds.get(seconds.len() / 2).copied().unwrap_or(f64::NAN), last)
}

/// Seconds that all cores together have worked for this process, by Linux's count in hundredths; elsewhere those that passed.
pub fn worked() -> f64 {
    let told = || -> Option<f64> {
        let stat = std::fs::read_to_string("/proc/self/stat").ok()?;
        // behind the name, which may hold anything: fields 14 and 15 of proc(5)
        let mut fields = stat.rsplit_once(')')?.1.split_whitespace().skip(11);
        let mut ticks = || fields.next()?.parse::<f64>().ok();
        Some((ticks()? + ticks()?) / 100.0)
    };
    static BEGIN: OnceLock<Instant> = OnceLock::new();
    let begin = BEGIN.get_or_init(Instant::now);
    told().unwrap_or_else(|| begin.elapsed().as_secs_f64())
}

/// Has a process of its own do a job; one that takes longer than `patience` is ended.
pub fn ask(job: &str, case: &Case, rounds: usize, patience: Duration) -> Outcome<Told> {
    let words = [job.to_owned(), case.columns.to_string(), case.rows.to_string(), rounds.to_string()];
    ask_words(&words, patience)
}

/// The same, told in words.
pub fn ask_words(words: &[String], patience: Duration) -> Outcome<Told> {
    let mut child = Command::new(std::env::current_exe()?)
        .args(words)
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()?;
    let begin = Instant::now();
    let status = loop {
        if let Some(status) = child.try_wait()? {
            break status;
        }
        if begin.elapsed() > patience {
            child.kill()?;
            child.wait()?;
            let remarks = vec![format!("not done after {} s, ended", patience.as_secs())];
            return Ok(Told { remarks, ..Told::default() });
        }
        std::thread::sleep(Duration::from_millis(20));
    };
    if !status.success() {
        return Ok(Told { remarks: vec![format!("ended with {status}")], ..Told::default() });
    }
    let mut text = String::new();
    child.stdout.take().ok_or("no answer")?.read_to_string(&mut text)?;
    Ok(serde_json::from_str(&text)?)
}

/// Prints a process's times, beside those of the bare decoding, and gives its first.
pub fn show(job: &str, told: Told, decoding: Option<f64>) -> Option<f64> {
    for (stage, seconds) in &told.seconds {
        show_one(job, stage, *seconds, decoding);
    }
    for remark in &told.remarks {
        println!("  {job:8} {remark}");
    }
    told.seconds.first().map(|(_, seconds)| *seconds)
}

/// Of processes that each tell one time the one in the middle.
pub fn median(mut told: Vec<Told>) -> Told {
    let first = |told: &Told| told.seconds.first().map_or(f64::NAN, |(_, seconds)| *seconds);
    told.sort_by(|a, b| first(a).total_cmp(&first(b)));
    let middle = told.len() / 2;
    told.into_iter().nth(middle).unwrap_or_default()
}

fn show_one(job: &str, stage: &str, seconds: f64, decoding: Option<f64>) {
    let times = decoding.map(|bare| format!("{:6.1} x bare decoding", seconds / bare)).unwrap_or_default();
    println!("  {job:8} {stage:34} {:8.1} ms {times}", seconds * 1e3);
}

/// Prints a process's peak of memory.
pub fn memory(what: &str, told: &Told) {
    match told.peak_mib {
        Some(mib) => println!("  memory   {what:34} {mib:8.0} MiB at most"),
        None => println!("  memory   {what:34} not told by this system (Linux only)"),
    }
}
