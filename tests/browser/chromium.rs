//! Chromium and its driver, ended with this value: each by the id of its process.

use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

use fantoccini::ClientBuilder;
use fantoccini::wd::Capabilities;
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};

use super::tab::Tab;

/// Everything is drawn by the page's own colours and nothing is fetched on its own.
const OPTIONS: &[&str] = &[
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-dev-shm-usage",
    "--disable-lcd-text",
    "--force-color-profile=srgb",
];

static COUNT: AtomicU32 = AtomicU32::new(0);

/// The driver, and a folder in which each browser has its own.
pub(super) struct Chromium {
    driver: Child,
    port: u16,
    folder: PathBuf,
}

impl Chromium {
    pub(super) fn start() -> Self {
        let number = COUNT.fetch_add(1, Ordering::Relaxed);
        let name = format!("wetside-chromium-{}-{number}", std::process::id());
        let folder = std::env::temp_dir().join(name);
        std::fs::create_dir(&folder).unwrap();
        let driver = Command::new("chromedriver")
            .args(["--port=0", "--log-level=SEVERE"])
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn();
        let driver = driver.unwrap_or_else(|cause| {
            panic!("chromedriver ({cause}): run deploy/browser-tools, which installs it")
        });
        let mut started = Self {
            driver,
            port: 0,
            folder,
        };
        started.port = started.says_its_port();
        started
    }

    fn says_its_port(&mut self) -> u16 {
        let said = BufReader::new(self.driver.stdout.take().unwrap());
        let port = said.lines().map_while(Result::ok).find_map(|line| {
            let (_, port) = line.rsplit_once("successfully on port ")?;
            port.trim_end_matches('.').parse().ok()
        });
        port.unwrap_or_else(|| panic!("chromedriver did not say its port"))
    }

    /// A browser that has seen nothing yet.
    pub(super) async fn browser(&self, origin: &str) -> Tab {
        self.browser_that(origin, json!({}), "normal").await
    }

    /// A browser in which scripts are switched off.
    pub(super) async fn without_scripts(&self, origin: &str) -> Tab {
        let preferences = json!({"profile.managed_default_content_settings.javascript": 2});
        self.browser_that(origin, preferences, "normal").await
    }

    /// A browser that is asked on while a page is still on its way.
    pub(super) async fn that_does_not_wait(&self, origin: &str) -> Tab {
        self.browser_that(origin, json!({}), "none").await
    }

    async fn browser_that(&self, origin: &str, preferences: Value, waits: &str) -> Tab {
        let number = COUNT.fetch_add(1, Ordering::Relaxed);
        let profile = self.folder.join(number.to_string());
        let mut options: Vec<String> = OPTIONS.iter().map(|&option| option.to_owned()).collect();
        options.push(format!("--user-data-dir={}", profile.display()));
        let mut wanted = Capabilities::new();
        wanted.insert(
            "goog:chromeOptions".to_owned(),
            json!({"args": options, "prefs": preferences}),
        );
        wanted.insert("pageLoadStrategy".to_owned(), json!(waits));
        let client = ClientBuilder::new(HttpConnector::new())
            .capabilities(wanted)
            .connect(&format!("http://127.0.0.1:{}", self.port))
            .await
            .unwrap();
        Tab::new(client, origin.to_owned())
    }
}

/// The processes that name a path when they are called.
fn naming(folder: &Path) -> Vec<i32> {
    let name = folder.to_string_lossy().into_owned();
    let processes = std::fs::read_dir("/proc").unwrap().flatten();
    processes
        .filter_map(|process| {
            let pid = process.file_name().to_str()?.parse().ok()?;
            let call = std::fs::read(process.path().join("cmdline")).ok()?;
            String::from_utf8_lossy(&call)
                .contains(&name)
                .then_some(pid)
        })
        .collect()
}

impl Drop for Chromium {
    fn drop(&mut self) {
        drop(self.driver.kill());
        drop(self.driver.wait());
        let began = Instant::now();
        loop {
            let left = naming(&self.folder);
            for pid in &left {
                let pid = nix::unistd::Pid::from_raw(*pid);
                let _ = nix::sys::signal::kill(pid, nix::sys::signal::SIGKILL);
            }
            let is_gone = left.is_empty() && std::fs::remove_dir_all(&self.folder).is_ok();
            if is_gone || began.elapsed() > Duration::from_secs(5) {
                break;
            }
            std::thread::yield_now();
        }
    }
}
