//! Puts weight and malice on the helper's page: `serve-load EVERYSQUARE FOLDER`, with a built program and a folder to work in.
//!
//! A wall of 192 squares and a made photo of 12 megapixels. Measured: a check by the command against a photo sent to the page; twenty
//! photos at once; ten thousand hostile requests. Told: times, the peak of memory, what was answered. Ends with `N passed, M failed`.
//! Memory is read from `/proc`, so where there is none that is said and left out.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::fs;
use std::io::{BufRead, BufReader, Cursor, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, ExitCode, Stdio};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Mutex, OnceLock};
use std::thread;
use std::time::{Duration, Instant};

type Outcome<T> = Result<T, Box<dyn std::error::Error + Send + Sync>>;

const PORT: &str = "18418";
/// Times that each way of checking is measured.
const TIMES: usize = 5;
const AT_ONCE: usize = 20;
const HOSTILE: usize = 10_000;
/// Hostile requests at the same time; the page lets 32 connections of one address in.
const HANDS: usize = 16;
/// Memory that the program may take at most with twenty photos at once.
const MOST_MB: u64 = 600;
/// Memory that ten thousand hostile requests may leave behind.
const MOST_GROWN_MB: u64 = 40;
/// The page may take so many times as long as the command, and so many seconds more.
const MOST_TIMES: f64 = 1.2;
const MOST_MORE_S: f64 = 0.2;

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let (Some(program), Some(folder)) = (arguments.next(), arguments.next()) else {
        say("serve-load EVERYSQUARE FOLDER");
        return ExitCode::from(2);
    };
    match run(Path::new(&program), Path::new(&folder)) {
        Ok(tally) => {
            say(&format!("{} passed, {} failed", tally.passed, tally.failed));
            ExitCode::from(u8::from(tally.failed > 0))
        }
        Err(error) => {
            say(&format!("it could not be measured: {error}\n0 passed, 1 failed"));
            ExitCode::FAILURE
        }
    }
}

#[allow(clippy::print_stdout, reason = "this is a program of its own")]
fn say(line: &str) {
    println!("{line}");
}

#[derive(Default)]
struct Tally {
    passed: usize,
    failed: usize,
}

impl Tally {
    fn check(&mut self, what: &str, holds: bool) {
        if holds {
            self.passed += 1;
        } else {
            self.failed += 1;
        }
        say(&format!("{}  {what}", if holds { "ok    " } else { "FAILED" }));
    }
}

fn run(program: &Path, folder: &Path) -> Outcome<Tally> {
    let mut tally = Tally::default();
    let event = folder.join("load");
    if event.exists() {
        fs::remove_dir_all(&event)?;
    }
    let path = prepare(program, &event)?;
    let photo = fs::read(&path)?;
    say(&format!("a made photo of 192 squares, 4032 × 3024 pixels, {:.1} MB", float(photo.len()) / 1e6));

    let command = median(|| {
        let begun = Instant::now();
        // something to fix: exit code 1
        Command::new(program)
            .arg("check")
            .arg(&event)
            .arg(&path)
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .status()?;
        Ok(begun.elapsed().as_secs_f64())
    })?;
    let page = Page::start(program, &event)?;
    page.send(&photo)?; // the first one warms up
    let sent = median(|| {
        let begun = Instant::now();
        let answer = page.send(&photo)?;
        if answer.status != 200 {
            return Err(format!("a photo was answered with {}", answer.status).into());
        }
        Ok(begun.elapsed().as_secs_f64())
    })?;
    say(&format!(
        "check by the command {command:.2} s, photo to answer on the page {sent:.2} s (medians of {TIMES})"
    ));
    tally.check("the page is about as fast as the command", sent <= command * MOST_TIMES + MOST_MORE_S);
    at_once(&page, &photo, &mut tally);
    hostile(&page, &event, &photo, &mut tally)?;
    tally.check("and a photo is still read", page.send(&photo)?.status == 200);
    Ok(tally)
}

/// An event of 16 × 12 squares, printed, and a photo of its wall with some faults.
fn prepare(program: &Path, event: &Path) -> Outcome<PathBuf> {
    let call = |words: &[&str]| -> Outcome<()> {
        let done = Command::new(program).args(words).stdout(Stdio::null()).status()?;
        if done.success() { Ok(()) } else { Err(format!("everysquare {} failed", words.join(" ")).into()) }
    };
    let at = event.to_str().ok_or("the folder's name is no text")?;
    let picture = "samples/harbour-evening/picture.png";
    call(&["new", at, "--picture", picture, "--columns", "16", "--rows", "12", "--tag", "K7M"])?;
    call(&["print", at])?;
    call(&[
        "rehearse",
        at,
        "--seed",
        "5",
        "--swaps",
        "4",
        "--turns",
        "4",
        "--missing",
        "8",
        "--fill",
        "0.9",
    ])?;
    Ok(event.join("rehearsals/5.jpg"))
}

fn median(mut measure: impl FnMut() -> Outcome<f64>) -> Outcome<f64> {
    let mut times = (0..TIMES).map(|_| measure()).collect::<Outcome<Vec<f64>>>()?;
    times.sort_by(f64::total_cmp);
    Ok(times[TIMES / 2])
}

#[allow(clippy::cast_precision_loss, reason = "bytes of a photo")]
fn float(count: usize) -> f64 {
    count as f64
}

/// The program, serving.
struct Page {
    child: Child,
    host: String,
    secret: String,
}

struct Answer {
    status: u16,
    head: String,
}

impl Page {
    fn start(program: &Path, event: &Path) -> Outcome<Self> {
        let mut child = Command::new(program)
            .arg("serve")
            .arg(event)
            .args(["--no-browser", "--fresh", "--port", PORT])
            .stdout(Stdio::piped())
            .spawn()?;
        let out = child.stdout.take().ok_or("no output")?;
        let mut lines = BufReader::new(out).lines();
        let link = loop {
            let line = lines.next().ok_or("the page was not served")??;
            if let Some(at) = line.find("http://") {
                break line[at..].trim().to_owned();
            }
        };
        thread::spawn(move || lines.for_each(drop));
        let parts: Vec<&str> = link.split('/').collect();
        let (Some(host), Some(secret)) = (parts.get(2), parts.get(3)) else {
            return Err("no link was printed".into());
        };
        Ok(Self { host: (*host).to_owned(), secret: (*secret).to_owned(), child })
    }

    fn send(&self, photo: &[u8]) -> Outcome<Answer> {
        let head = self.head(photo.len());
        let mut stream = self.connect()?;
        stream.write_all(head.as_bytes())?;
        stream.write_all(photo)?;
        answer(&mut stream)
    }

    fn head(&self, length: usize) -> String {
        let (host, secret) = (&self.host, &self.secret);
        format!(
            "POST /{secret}/photo HTTP/1.1\r\nhost: {host}\r\norigin: http://{host}\r\ncontent-length: {length}\r\nconnection: close\r\n\r\n"
        )
    }

    fn connect(&self) -> Outcome<TcpStream> {
        let stream = TcpStream::connect(&self.host)?;
        stream.set_read_timeout(Some(Duration::from_secs(150)))?;
        stream.set_write_timeout(Some(Duration::from_secs(60)))?;
        Ok(stream)
    }

    /// A line of `/proc/…/status`, in MB; `None` where there is none.
    fn memory(&self, line: &str) -> Option<u64> {
        let status = fs::read_to_string(format!("/proc/{}/status", self.child.id())).ok()?;
        let line = status.lines().find_map(|own| own.strip_prefix(line))?;
        Some(line.trim_start_matches(':').trim().trim_end_matches(" kB").parse::<u64>().ok()? / 1024)
    }
}

impl Drop for Page {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// The beginning of an answer; the rest is read and forgotten.
fn answer(stream: &mut TcpStream) -> Outcome<Answer> {
    let mut all = Vec::new();
    stream.read_to_end(&mut all)?;
    let text = String::from_utf8_lossy(&all);
    let head = text.split("\r\n\r\n").next().unwrap_or_default().to_lowercase();
    let status = head.split(' ').nth(1).and_then(|status| status.parse().ok()).ok_or("no answer")?;
    Ok(Answer { status, head })
}

fn at_once(page: &Page, photo: &[u8], tally: &mut Tally) {
    let begun = Instant::now();
    let answers: Vec<Outcome<Answer>> = thread::scope(|scope| {
        let sending: Vec<_> = (0..AT_ONCE).map(|_| scope.spawn(|| page.send(photo))).collect();
        sending
            .into_iter()
            .map(|one| one.join().unwrap_or_else(|_| Err("a thread broke off".into())))
            .collect()
    });
    let read = answers.iter().flatten().filter(|answer| answer.status == 200).count();
    let waits = |answer: &&Answer| answer.status == 503 && answer.head.contains("retry-after");
    let told = answers.iter().flatten().filter(waits).count();
    say(&format!(
        "{AT_ONCE} photos at once: {read} read, {told} told to come again, {:.1} s in all",
        begun.elapsed().as_secs_f64()
    ));
    tally.check("each of them was read or told to come again", read + told == AT_ONCE && read > 0);
    match page.memory("VmHWM") {
        Some(peak) => {
            tally.check(&format!("peak of memory {peak} MB, at most {MOST_MB} MB"), peak <= MOST_MB);
        }
        None => say("no /proc here: memory is not measured"),
    }
}

/// One kind of malice: what it is called, and what is sent.
type Kind = (&'static str, fn(&Page, &[u8], usize) -> Outcome<Option<u16>>);

const KINDS: [Kind; 14] = [
    ("no secret", |page, _, n| {
        page.ask(&format!("GET /{} HTTP/1.1", ["", "favicon.ico", "admin", "wall.json"][n % 4]), b"")
    }),
    ("wrong secret", |page, _, n| {
        page.ask(&format!("GET /{}/ HTTP/1.1", "abcdefghijklmnopqrstuvwxyz".repeat(1 + n % 3)), b"")
    }),
    ("path tricks", |page, _, n| {
        let secret = &page.secret;
        let tricks = [
            "../event.toml",
            "%2e%2e/%2e%2e/event.toml",
            "cell/99999999999999999999",
            "cell/../../picture.png",
            "piece/%00",
            "//photo",
        ];
        page.ask(&format!("GET /{secret}/{} HTTP/1.1", tricks[n % tricks.len()]), b"")
    }),
    ("foreign host or origin", |page, _, n| {
        let secret = &page.secret;
        let head = ["GET", "POST", "DELETE"][n % 3];
        page.raw(&format!("{head} /{secret}/photo HTTP/1.1\r\nhost: example.org\r\norigin: http://example.org\r\nconnection: close\r\n\r\n"), b"")
    }),
    ("no HTTP", |page, _, n| {
        page.raw(
            &[
                "\0\0\0\0\r\n\r\n",
                "GET\r\n\r\n",
                "GET / HTTP/9.9\r\n\r\n",
                "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n",
            ][n % 4]
                .repeat(2),
            b"",
        )
    }),
    ("endless headers", |page, _, _| {
        page.raw(&format!("GET / HTTP/1.1\r\n{}", "x: aaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\r\n".repeat(4_000)), b"")
    }),
    ("broken off", |page, photo, n| {
        let mut stream = page.connect()?;
        let _ = stream.write_all(page.head(photo.len()).as_bytes());
        let _ = stream.write_all(&photo[..photo.len() * (n % 9) / 100]);
        Ok(None)
    }),
    ("cut or changed photo", |page, photo, n| {
        let mut bytes = photo[..20_000 + n % 20_000].to_vec();
        let at = n * 7_919 % bytes.len();
        bytes[at] ^= 0x5a;
        page.upload(&bytes)
    }),
    ("bomb", |page, _, n| page.upload(&bomb(20_000 + u32::try_from(n % 12_000)?))),
    ("true bomb", |page, _, n| if n % 40 == 0 { page.upload(&true_bomb()?) } else { Ok(None) }),
    ("slow", |page, photo, n| {
        let mut stream = page.connect()?;
        let head = page.head(photo.len());
        for byte in head.as_bytes().iter().skip(n % 2 * (head.len() - 8)).take(8) {
            let _ = stream.write_all(&[*byte]);
            thread::sleep(Duration::from_millis(40));
        }
        Ok(None)
    }),
    ("multipart, cut off", |page, photo, n| {
        let mut body =
            b"--x\r\ncontent-disposition: form-data; name=\"p\"; filename=\"../../event.toml\"\r\n\r\n"
                .to_vec();
        body.extend(&photo[..n % 3_000]);
        page.upload(&body)
    }),
    ("marks that are none", |page, photo, n| {
        let path = ["step", "piece", "undo"][n % 3];
        let key = "a".repeat(n % 3_000);
        let bodies = [
            format!("{{\"key\":\"{key}\",\"seen\":{n},\"state\":\"done\"}}").into_bytes(),
            format!("{{\"place\":{},\"state\":\"back\"}}", 192 + n).into_bytes(),
            b"[".repeat(n % 9_000),
            photo[..n % 9_000].to_vec(),
            format!("{{\"number\":{}}}", u64::MAX - u64::try_from(n)?).into_bytes(),
        ];
        let body = &bodies[n / 3 % bodies.len()];
        let head = format!(
            "POST /{}/{path} HTTP/1.1\r\nhost: {}\r\norigin: http://{}\r\nx-helper: {}\r\ncontent-length: {}\r\nconnection: close\r\n\r\n",
            page.secret,
            page.host,
            page.host,
            ["aaaabbbb1111", "", "../../../etc", "AAAABBBB1111"][n % 4],
            body.len()
        );
        page.raw(&head, body)
    }),
    ("no photo", |page, _, n| page.upload(&vec![u8::try_from(n % 256)?; n % 5_000])),
];

impl Page {
    fn ask(&self, line: &str, body: &[u8]) -> Outcome<Option<u16>> {
        self.raw(&format!("{line}\r\nhost: {}\r\nconnection: close\r\n\r\n", self.host), body)
    }

    fn upload(&self, bytes: &[u8]) -> Outcome<Option<u16>> {
        Ok(Some(self.send(bytes)?.status))
    }

    /// Sends whatever it is. No answer at all is a good answer too.
    fn raw(&self, head: &str, body: &[u8]) -> Outcome<Option<u16>> {
        let mut stream = self.connect()?;
        let _ = stream.write_all(head.as_bytes());
        let _ = stream.write_all(body);
        let _ = stream.shutdown(std::net::Shutdown::Write);
        Ok(answer(&mut stream).ok().map(|answer| answer.status))
    }
}

/// The beginning of a PNG that says it is enormous (RFC 2083: signature, then IHDR with its CRC left wrong or nought).
fn bomb(side: u32) -> Vec<u8> {
    let mut bytes = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR".to_vec();
    let mut head = b"IHDR".to_vec();
    for value in [side, side] {
        bytes.extend(value.to_be_bytes());
        head.extend(value.to_be_bytes());
    }
    bytes.extend([8, 2, 0, 0, 0]);
    head.extend([8, 2, 0, 0, 0]);
    bytes.extend(crc(&head).to_be_bytes());
    bytes.extend(b"\0\0\0\x04IDAT\x78\x9c\x63\0");
    bytes
}

/// A PNG of 49 million black pixels in some 50 kB, as large as is still opened.
fn true_bomb() -> Outcome<Vec<u8>> {
    static MADE: OnceLock<Vec<u8>> = OnceLock::new();
    if let Some(made) = MADE.get() {
        return Ok(made.clone());
    }
    let mut file = Cursor::new(Vec::new());
    image::GrayImage::new(7_000, 7_000).write_to(&mut file, image::ImageFormat::Png)?;
    Ok(MADE.get_or_init(|| file.into_inner()).clone())
}

/// The check of a PNG's chunk (RFC 2083, section 15).
fn crc(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0, |crc, byte| {
        (0..8).fold(
            crc ^ u32::from(*byte),
            |crc, _| if crc & 1 == 1 { 0xedb8_8320 ^ (crc >> 1) } else { crc >> 1 },
        )
    })
}

fn hostile(page: &Page, event: &Path, photo: &[u8], tally: &mut Tally) -> Outcome<()> {
    let files_before = files(event)?;
    let memory_before = page.memory("VmRSS");
    let next = AtomicUsize::new(0);
    let answers: Mutex<BTreeMap<(&str, u16), usize>> = Mutex::default();
    let begun = Instant::now();
    thread::scope(|scope| {
        for _ in 0..HANDS {
            scope.spawn(|| {
                loop {
                    let n = next.fetch_add(1, Ordering::Relaxed);
                    if n >= HOSTILE {
                        break;
                    }
                    let (name, send) = KINDS[n % KINDS.len()];
                    let status = send(page, photo, n / KINDS.len()).ok().flatten().unwrap_or(0);
                    if let Ok(mut answers) = answers.lock() {
                        *answers.entry((name, status)).or_default() += 1;
                    }
                }
            });
        }
    });
    let answers = answers.into_inner().map_err(|_| "a thread broke off")?;
    let mut lines = String::new();
    for ((name, status), count) in &answers {
        let _ = write!(
            lines,
            "\n    {name}: {count} × {}",
            if *status == 0 { "closed".to_owned() } else { status.to_string() }
        );
    }
    say(&format!("{HOSTILE} hostile requests in {:.1} s:{lines}", begun.elapsed().as_secs_f64()));
    let good = |status: u16| (400..500).contains(&status) || status == 503 || status == 0;
    tally.check("no success, and no 5xx but the polite 503", answers.keys().all(|(_, status)| good(*status)));
    tally.check("nothing was written", files(event)? == files_before);
    thread::sleep(Duration::from_secs(2));
    if let (Some(before), Some(after)) = (memory_before, page.memory("VmRSS")) {
        let grown = after.saturating_sub(before);
        tally.check(
            &format!("memory {before} MB before, {after} MB after, at most {MOST_GROWN_MB} MB more"),
            grown <= MOST_GROWN_MB,
        );
    }
    if let Some(peak) = page.memory("VmHWM") {
        tally.check(&format!("peak of memory {peak} MB, at most {MOST_MB} MB"), peak <= MOST_MB);
    }
    Ok(())
}

/// Every file below a folder, with its size.
fn files(folder: &Path) -> Outcome<BTreeMap<PathBuf, u64>> {
    let mut found = BTreeMap::new();
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        if entry.file_type()?.is_dir() {
            found.extend(files(&entry.path())?);
        } else {
            found.insert(entry.path(), entry.metadata()?.len());
        }
    }
    Ok(found)
}
