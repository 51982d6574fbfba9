//! A person at a page, by finger or by keyboard alone: the same walk with either.

use serde_json::{Value, json};

use super::tab::Tab;

/// With what the page is worked.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub(super) enum By {
    Finger,
    Keyboard,
}

/// Somebody at a page.
pub(super) struct Hands<'t> {
    pub(super) tab: &'t Tab,
    by: By,
    /// How often they tapped, or pressed what a tap would have.
    pub(super) taps: usize,
}

/// More stops than any page has.
const MOST_STOPS: usize = 150;

impl<'t> Hands<'t> {
    pub(super) fn at(tab: &'t Tab, by: By) -> Self {
        Self { tab, by, taps: 0 }
    }

    /// Taps what says these words, where that opens or chooses something here.
    pub(super) async fn tap(&mut self, words: &str) {
        self.taps += 1;
        match self.by {
            By::Finger => self.tab.tap(words).await,
            By::Keyboard => {
                self.reach(words).await;
                let is_link = "return document.activeElement.tagName === 'A'";
                match self.tab.run(is_link, vec![]).await == json!(true) {
                    true => self.key("Enter", 13, "\r").await,
                    false => self.key(" ", 32, " ").await,
                }
            }
        }
    }

    /// Taps what leads to another page, and arrives there.
    pub(super) async fn go(&mut self, words: &str) {
        let here = self.tab.document().await;
        self.tap(words).await;
        self.tab.until_gone(&here, words).await;
    }

    /// Writes into the field with this label.
    pub(super) async fn write(&mut self, label: &str, text: &str) {
        if self.by == By::Finger {
            return self.tab.write(label, text).await;
        }
        self.reach(label).await;
        let is_list = "return document.activeElement.tagName === 'SELECT'";
        if self.tab.run(is_list, vec![]).await == json!(true) {
            for letter in text.chars() {
                self.key(&letter.to_string(), 0, &letter.to_string()).await;
            }
            let chosen = "return document.activeElement.selectedOptions[0].text";
            assert_eq!(self.tab.run(chosen, vec![]).await, json!(text));
            return;
        }
        // Tab selects what stands in a field, so that typing replaces it.
        self.tab
            .own("Input.insertText", json!({"text": text}))
            .await;
    }

    /// Goes from stop to stop until the focus is on what says these words.
    async fn reach(&self, words: &str) {
        let mut passed = Vec::new();
        for _ in 0..MOST_STOPS {
            self.key("Tab", 9, "").await;
            let stop = self.tab.run(STOP, vec![]).await;
            let said = stop["said"].as_str().unwrap_or_default().to_owned();
            assert_eq!(
                stop["isSeen"],
                json!(true),
                "the focus is not seen on {said:?}"
            );
            if said.starts_with(words) {
                return;
            }
            passed.push(said);
        }
        panic!("the keyboard does not reach {words:?}: {passed:?}");
    }

    async fn key(&self, key: &str, code: u32, text: &str) {
        for kind in ["keyDown", "keyUp"] {
            let mut event = json!({"type": kind, "key": key});
            if code != 0 {
                event["windowsVirtualKeyCode"] = json!(code);
            }
            if kind == "keyDown" && !text.is_empty() {
                event["text"] = Value::from(text);
            }
            self.tab.own("Input.dispatchKeyEvent", event).await;
        }
    }
}

/// What has the focus says, and whether one can see that it has it.
const STOP: &str = "
    const at = document.activeElement;
    if (at === document.body) return { said: '', isSeen: true };
    const label = at.closest('label') ?? (at.id ? document.querySelector(`label[for='${at.id}']`) : null);
    const own = at.matches('a, button, summary') ? at : label;
    const face = at.closest('.target')?.querySelector('.target-face') ?? at;
    const style = getComputedStyle(face);
    const box = face.getBoundingClientRect();
    return {
        said: (own?.textContent ?? '').replace(/\\s+/g, ' ').trim(),
        isSeen: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2
            && box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth,
    };";
