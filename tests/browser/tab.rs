//! A browser's one tab, and what a person or a judge does with it.

use std::time::{Duration, Instant};

use data_encoding::BASE64;
use fantoccini::Client;
use fantoccini::elements::Element;
use fantoccini::error::CmdError;
use fantoccini::wd::{Locator, WebDriverCompatibleCommand};
use serde_json::{Value, json};

use super::picture::Picture;

/// After so long what was waited for does not come any more.
pub(super) const PATIENCE: Duration = Duration::from_secs(20);

/// A command of the browser's own protocol, by way of its driver.
#[derive(Debug)]
struct Own(Value);

impl WebDriverCompatibleCommand for Own {
    fn endpoint(
        &self,
        base_url: &reqwest::Url,
        session: Option<&str>,
    ) -> Result<reqwest::Url, <reqwest::Url as std::str::FromStr>::Err> {
        base_url.join(&format!(
            "session/{}/goog/cdp/execute",
            session.unwrap_or_default()
        ))
    }

    fn method_and_body(&self, _: &reqwest::Url) -> (axum::http::Method, Option<String>) {
        (axum::http::Method::POST, Some(self.0.to_string()))
    }
}

/// A tab of a browser of its own.
pub(super) struct Tab {
    client: Client,
    origin: String,
}

impl Tab {
    pub(super) fn new(client: Client, origin: String) -> Self {
        Self { client, origin }
    }

    /// Asks the browser itself.
    pub(super) async fn own(&self, command: &str, parameters: Value) -> Value {
        let asked = Own(json!({"cmd": command, "params": parameters}));
        let answer = tokio::time::timeout(PATIENCE, self.client.issue_cmd(asked)).await;
        let answer = answer.unwrap_or_else(|_| panic!("{command} is not answered"));
        answer.unwrap_or_else(|cause| panic!("{command}: {cause}"))
    }

    /// Opens a path of ours.
    pub(super) async fn open(&self, path: &str) {
        let url = format!("{}{path}", self.origin);
        let opened = self.client.goto(&url).await;
        opened.unwrap_or_else(|cause| panic!("{path}: {cause}"));
    }

    /// The path and query that is shown.
    pub(super) async fn path(&self) -> String {
        let url = self.client.current_url().await.unwrap();
        let query = url.query().map(|query| format!("?{query}"));
        format!("{}{}", url.path(), query.unwrap_or_default())
    }

    /// Makes the page so many CSS pixels wide and high.
    pub(super) async fn size(&self, width: u32, height: u32) {
        let size =
            json!({"width": width, "height": height, "deviceScaleFactor": 1, "mobile": false});
        self.own("Emulation.setDeviceMetricsOverride", size).await;
    }

    /// Keeps a cookie of ours.
    pub(super) async fn keep(&self, name: &str, value: &str) {
        let is_secure = name.starts_with("__Host-");
        let cookie = json!({
            "url": self.origin, "name": name, "value": value,
            "path": "/", "secure": is_secure, "httpOnly": true,
        });
        let kept = self.own("Network.setCookie", cookie).await;
        assert_eq!(kept["success"], json!(true), "{name}");
    }

    /// Lets a cookie go.
    pub(super) async fn forget(&self, name: &str) {
        let which = json!({"url": self.origin, "name": name});
        self.own("Network.deleteCookies", which).await;
    }

    /// Takes the network from the page, or gives it back; the page hears of it.
    pub(super) async fn network(&self, is_there: bool) {
        let how = json!({
            "offline": !is_there, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1,
        });
        self.own("Network.enable", json!({})).await;
        self.own("Network.emulateNetworkConditions", how).await;
    }

    /// Runs these statements in every page before its own.
    pub(super) async fn run_first(&self, script: &str) {
        let script = json!({"source": script});
        self.own("Page.addScriptToEvaluateOnNewDocument", script)
            .await;
    }

    /// Runs statements in the page; `return` answers.
    pub(super) async fn run(&self, script: &str, arguments: Vec<Value>) -> Value {
        let answer = self.client.execute(script, arguments).await;
        answer.unwrap_or_else(|cause| panic!("{script}: {cause}"))
    }

    /// The same where the page answers later, by calling its last argument.
    pub(super) async fn run_later(&self, script: &str, arguments: Vec<Value>) -> Value {
        let answer = self.client.execute_async(script, arguments).await;
        answer.unwrap_or_else(|cause| panic!("{script}: {cause}"))
    }

    /// The whole page as it is drawn.
    pub(super) async fn whole_picture(&self) -> Picture {
        let size = self.own("Page.getLayoutMetrics", json!({})).await;
        let size = &size["cssContentSize"];
        let clip =
            json!({"x": 0, "y": 0, "width": size["width"], "height": size["height"], "scale": 1});
        self.picture(json!({"captureBeyondViewport": true, "clip": clip}))
            .await
    }

    /// What stands in the window, its scroll bars as well.
    pub(super) async fn window_picture(&self) -> Picture {
        self.picture(json!({})).await
    }

    /// A picture of a part of the page.
    pub(super) async fn picture(&self, mut how: Value) -> Picture {
        how["format"] = json!("png");
        how["optimizeForSpeed"] = json!(true);
        let shot = self.own("Page.captureScreenshot", how).await;
        let bytes = BASE64.decode(shot["data"].as_str().unwrap().as_bytes());
        Picture::read(&bytes.unwrap())
    }

    /// The page on paper, as its own style sheet sizes it.
    pub(super) async fn on_paper(&self) -> Vec<u8> {
        let how = json!({"preferCSSPageSize": true, "printBackground": false});
        let paper = self.own("Page.printToPDF", how).await;
        BASE64
            .decode(paper["data"].as_str().unwrap().as_bytes())
            .unwrap()
    }

    /// The text of the first element that matches, in one line.
    pub(super) async fn text(&self, css: &str) -> String {
        let found = self.client.find(Locator::Css(css)).await;
        let found = found.unwrap_or_else(|cause| panic!("{css}: {cause}"));
        let text = found.text().await.unwrap();
        text.split_whitespace().collect::<Vec<_>>().join(" ")
    }

    /// Whether anything matches.
    pub(super) async fn has(&self, css: &str) -> bool {
        !self
            .client
            .find_all(Locator::Css(css))
            .await
            .unwrap()
            .is_empty()
    }

    /// What is seen with these words on it: a link, a button, a choice, what opens.
    pub(super) async fn find(&self, words: &str) -> Element {
        let says = format!("starts-with(normalize-space(.), \"{words}\")");
        let path = format!(
            "//*[self::a or self::button or self::summary or self::label]\
             [{says} or span[not(@hidden) and {says}]]"
        );
        let found = self.client.find_all(Locator::XPath(&path)).await.unwrap();
        for element in found {
            if element.is_displayed().await.unwrap() {
                return element;
            }
        }
        let said = self.text("body").await;
        panic!(
            "nothing to tap says {words:?} on {}: {said}",
            self.path().await
        )
    }

    /// Taps what has these words.
    pub(super) async fn tap(&self, words: &str) {
        let tapped = self.find(words).await.click().await;
        tapped.unwrap_or_else(|cause| panic!("{words}: {cause}"));
    }

    /// Taps what leads to another page, and arrives there.
    pub(super) async fn go(&self, words: &str) {
        let here = self.document().await;
        self.tap(words).await;
        self.until_gone(&here, words).await;
    }

    /// The page as it is now, to be told from the next one.
    pub(super) async fn document(&self) -> Element {
        self.client.find(Locator::Css("html")).await.unwrap()
    }

    /// Waits until another page has taken this one's place.
    pub(super) async fn until_gone(&self, page: &Element, why: &str) {
        let began = Instant::now();
        while page.tag_name().await.is_ok() {
            assert!(
                began.elapsed() < PATIENCE,
                "{why} leads nowhere: {}",
                self.path().await
            );
            tokio::time::sleep(Duration::from_millis(10)).await;
        }
    }

    /// Writes into the field with this label, over what stands there.
    pub(super) async fn write(&self, label: &str, text: &str) {
        let path = format!("//*[@id=//label[normalize-space(.)=\"{label}\"]/@for]");
        let field = self.client.find(Locator::XPath(&path)).await;
        let field = field.unwrap_or_else(|cause| panic!("{label}: {cause}"));
        if field.tag_name().await.unwrap() == "select" {
            field.select_by_label(text).await.unwrap();
            return;
        }
        field.clear().await.unwrap();
        field.send_keys(text).await.unwrap();
    }

    /// Waits until the page answers yes, and fails where it does not.
    pub(super) async fn until(&self, what: &str, script: &str) {
        let began = Instant::now();
        loop {
            // Between two pages there is nobody to ask.
            let answer: Result<Value, CmdError> = self.client.execute(script, vec![]).await;
            if answer.is_ok_and(|answer| answer == json!(true)) {
                return;
            }
            if began.elapsed() > PATIENCE {
                let (path, said) = (self.path().await, self.text("body").await);
                panic!("{what} did not come about on {path}, which says: {said}");
            }
            tokio::time::sleep(Duration::from_millis(20)).await;
        }
    }
}
