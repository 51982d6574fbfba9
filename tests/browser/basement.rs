//! Notes without a network, each on a phone in Safelight: they wait on the phone, say so,
//! and reach the book once, under the name of whoever made them.

use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};

use axum::Router;
use axum::extract::Request;
use axum::http::{Method, StatusCode};
use axum::middleware::{Next, from_fn};
use time::Duration;
use tokio::sync::Notify;
use wetside::database::Scope;
use wetside::identity::{Person, sessions};
use wetside::sheets::{self, Pass};

use super::chromium::Chromium;
use super::relay::Relay;
use super::site::Site;
use super::tab::{PATIENCE, Tab};
use super::walk::{hold_fit, in_safelight};
use crate::harness::{PASSWORD, Stage, scenario};

/// A clock that can be wrong: `ahead` is by how many milliseconds.
const CLOCK: &str = "{
    const True = Date;
    window.Date = class extends True {
        constructor(...parts) {
            if (parts.length === 0) super(window.Date.now());
            else super(...parts);
        }
        static now() {
            return True.now() + (window.ahead ?? 0);
        }
    };
}";

/// The worker has put away what is needed without a network.
pub(super) const KEPT: &str = "
    return navigator.serviceWorker.controller !== null
        && caches.match('/kept').then((found) => found !== undefined);";

/// Nothing waits on the phone any more.
const EMPTY: &str = "
    return new Promise((done) => {
        const asked = indexedDB.open('wetside', 1);
        asked.onsuccess = () => {
            const count = asked.result.transaction('notes').objectStore('notes').count();
            count.onsuccess = () => {
                asked.result.close();
                done(count.result === 0);
            };
        };
    });";

/// A member's phone at the bench.
struct Phone {
    stage: Stage,
    relay: Arc<Relay>,
    site: Site,
    tab: Tab,
    _chromium: Chromium,
}

impl Phone {
    async fn of(stage: &Stage) -> Self {
        Self::with(stage, |service, _| service).await
    }

    /// The same with something around the service, which may shut the way to it.
    async fn with(stage: &Stage, around: impl FnOnce(Router, Arc<Relay>) -> Router) -> Self {
        stage.bench().await;
        let relay = Arc::new(Relay::open().await);
        let way = relay.clone();
        let around = |service| around(service, way);
        let site = Site::behind_with(&relay, &stage.installation, around).await;
        let chromium = Chromium::start();
        let tab = site.phone(&chromium, Some(&stage.cast.member)).await;
        in_safelight(&tab).await;
        tab.run_first(CLOCK).await;
        Self {
            stage: stage.clone(),
            relay,
            site,
            tab,
            _chromium: chromium,
        }
    }

    /// It says why the notes wait.
    async fn says_why(&self, why: &str) {
        let says = format!("return !document.querySelector('[data-why={why}]').hidden");
        self.tab.until(why, &says).await;
    }

    /// Opens the form, which the phone then has without a network too.
    async fn takes_the_form(&self) {
        self.tab.open(&self.stage.at("/sheets/new")).await;
        self.tab.until("the form is kept", KEPT).await;
    }

    /// Down into the basement.
    async fn goes_down(&self) {
        self.relay.shut();
        self.tab.network(false).await;
    }

    /// Up again.
    async fn comes_up(&self) {
        self.relay.lead_to(&self.site);
        self.tab.network(true).await;
    }

    /// Notes so many sheets, as the form stands there.
    async fn notes(&self, sheets: &str) {
        self.tab.tap("RC").await;
        self.tab.tap("8×10 in").await;
        self.tab.write("How many sheets", sheets).await;
        self.tab.tap("Note them").await;
    }

    /// So many notes are shown as waiting.
    async fn shows(&self, count: usize) {
        let rows = "document.querySelectorAll('[data-waiting]:not([hidden]) li').length";
        let script = format!("return {rows} === {count}");
        self.tab.until("what waits is shown", &script).await;
    }

    /// The page in the place of one that cannot be had, which leads to what is kept.
    async fn is_without_network(&self) {
        assert_eq!(self.tab.text("h1").await, "No network");
        let leads = "return !document.querySelector('[data-kept-pages] [hidden]')";
        self.tab.until("it leads to what is kept", leads).await;
    }

    async fn logs_in(&self, person: &Person) {
        let name = person.name.replace(' ', ".");
        self.tab.write("Log-in name", &name).await;
        self.tab.write("Password", PASSWORD).await;
        self.tab.go("Log in").await;
    }

    /// Sets the phone's clock so far ahead of the true one.
    async fn sets_clock(&self, ahead: Duration) {
        let set = format!("window.ahead = {}", ahead.whole_milliseconds());
        self.tab.run_first(&set).await;
        self.tab.run(&set, vec![]).await;
    }

    /// The one note of the book, once nothing waits any more.
    async fn one_note(&self) -> Pass {
        self.tab.until("it leaves the phone", EMPTY).await;
        let notes = self.book().await;
        assert_eq!(notes.len(), 1, "{notes:?}");
        assert_eq!(notes[0].person_id, self.stage.cast.member.id);
        notes.into_iter().next().unwrap()
    }

    /// The notes of the book.
    async fn book(&self) -> Vec<Pass> {
        let scope = Scope {
            room: self.stage.room,
            person: None,
        };
        let database = self.stage.installation.app.database();
        let notes = database.reading(scope, |tx| Box::pin(sheets::passes(tx, None, 10)));
        notes.await.unwrap()
    }
}

#[test]
fn the_server_stops_between_tap_and_sending() {
    scenario(async |stage| {
        let mut phone = Phone::of(&stage).await;
        phone.takes_the_form().await;
        phone.relay.shut();
        phone.site.stop();
        phone.notes("6").await;
        phone.shows(1).await;
        let tab = &phone.tab;
        let said = tab.text("[data-waiting] [role=status]").await;
        assert!(said.starts_with("Kept on this phone."), "{said}");
        let row = tab.text("[data-waiting] li").await;
        assert!(row.starts_with("6 × 8×10 in, RC, "), "{row}");
        let why = tab.text("[data-why=away]").await;
        assert!(why.starts_with("No network here."), "{why}");
        hold_fit(tab, "a note that waits").await;

        // Whatever else is opened or sent says that there is no network, and leads on.
        tab.go("Board").await;
        phone.is_without_network().await;
        hold_fit(tab, "no network").await;
        tab.go("Note sheets").await;
        phone.shows(1).await;
        tab.go("Day").await;
        phone.is_without_network().await;
        tab.go("Emergency in this room").await;
        assert_eq!(tab.text("h1").await, "Emergency");
        tab.open(&stage.at("/sheets/new?line=any")).await;
        phone.shows(1).await;
        assert!(phone.book().await.is_empty());

        phone.site = Site::behind(&phone.relay, &stage.installation).await;
        let arrived = "return !document.querySelector('[data-arrived]').hidden";
        phone.tab.until("it is said that it arrived", arrived).await;
        assert_eq!(phone.tab.text("[data-arrived-number]").await, "1");
        assert_eq!(phone.one_note().await.sheets, 6);
    });
}

/// Writes the first note that is sent, and takes its answer away.
fn losing_an_answer(service: Router, relay: Arc<Relay>, sent: Arc<AtomicUsize>) -> Router {
    service.layer(from_fn(move |request: Request, next: Next| {
        let (relay, sent) = (relay.clone(), sent.clone());
        async move {
            let is_note =
                request.method() == Method::POST && request.uri().path().ends_with("/sheets");
            let response = next.run(request).await;
            if is_note && sent.fetch_add(1, Ordering::Relaxed) == 0 {
                relay.shut();
                std::future::pending::<()>().await;
            }
            response
        }
    }))
}

#[test]
fn the_answer_is_lost_after_the_note_was_written() {
    scenario(async |stage| {
        let sent = Arc::new(AtomicUsize::new(0));
        let count = sent.clone();
        let around = |service, relay| losing_an_answer(service, relay, count);
        let phone = Phone::with(&stage, around).await;
        phone.takes_the_form().await;
        phone.notes("6").await;
        // The phone cannot know what the book knows.
        phone.shows(1).await;
        assert_eq!(phone.book().await.len(), 1);
        phone.relay.lead_to(&phone.site);
        phone.tab.open(&stage.at("/board")).await;
        phone.one_note().await;
        assert_eq!(sent.load(Ordering::Relaxed), 2);
    });
}

#[test]
fn the_log_in_ends_while_a_note_waits() {
    scenario(async |stage| {
        let phone = Phone::of(&stage).await;
        phone.takes_the_form().await;
        phone.goes_down().await;
        phone.notes("6").await;
        phone.shows(1).await;
        let ended = sessions::end_all(&phone.site.app, stage.cast.member.id).await;
        assert_eq!(ended.unwrap(), 1);
        phone.comes_up().await;
        phone.says_why("log-in").await;
        hold_fit(&phone.tab, "logged out with a note that waits").await;
        assert!(phone.book().await.is_empty());
        phone.tab.go("Log in again").await;
        phone.logs_in(&stage.cast.member).await;
        assert_eq!(phone.tab.text("h1").await, "Note sheets");
        phone.one_note().await;
    });
}

/// Tells of notes that are refused as somebody else's.
fn telling_of_refusals(service: Router, refused: Arc<Notify>) -> Router {
    service.layer(from_fn(move |request: Request, next: Next| {
        let refused = refused.clone();
        async move {
            let response = next.run(request).await;
            if response.status() == StatusCode::CONFLICT {
                refused.notify_one();
            }
            response
        }
    }))
}

#[test]
fn somebody_else_logs_in_on_the_phone() {
    scenario(async |stage| {
        let refused = Arc::new(Notify::new());
        let teller = refused.clone();
        let around = |service, _| telling_of_refusals(service, teller);
        let phone = Phone::with(&stage, around).await;
        phone.takes_the_form().await;
        phone.goes_down().await;
        phone.notes("6").await;
        phone.shows(1).await;
        let ended = sessions::end_all(&phone.site.app, stage.cast.member.id).await;
        assert_eq!(ended.unwrap(), 1);
        phone.comes_up().await;
        let tab = &phone.tab;
        phone.says_why("log-in").await;
        tab.go("Log in again").await;
        phone.logs_in(&stage.cast.trained).await;
        phone.says_why("other").await;
        phone.shows(0).await;
        let told = tokio::time::timeout(PATIENCE, refused.notified());
        told.await.unwrap();
        assert!(phone.book().await.is_empty());

        tab.tap("Log out").await;
        let asks = "return document.querySelector('[data-leaving]').open";
        tab.until("it asks before the log-out", asks).await;
        hold_fit(tab, "logging out with a note that waits").await;
        tab.go("Log out all the same").await;
        phone.logs_in(&stage.cast.member).await;
        phone.one_note().await;
    });
}

#[test]
fn the_phones_clock_is_three_hours_wrong() {
    scenario(async |stage| {
        let phone = Phone::of(&stage).await;
        let wrong = Duration::hours(3);
        phone.sets_clock(wrong).await;
        stage.pass(Duration::hours(2));
        phone.takes_the_form().await;
        phone.goes_down().await;
        phone.notes("6").await;
        phone.shows(1).await;
        let waited = Duration::minutes(40);
        phone.sets_clock(wrong + waited).await;
        stage.pass(waited);
        phone.comes_up().await;
        let note = phone.one_note().await;
        // The phone's clock went on by itself as well, for as long as this took.
        let ago = stage.installation.clock.now() - note.happened_at;
        let most = waited + Duration::minutes(1);
        assert!((waited..most).contains(&ago), "{ago}");
    });
}

#[test]
fn ten_days_without_a_network() {
    scenario(async |stage| {
        let phone = Phone::of(&stage).await;
        phone.takes_the_form().await;
        phone.goes_down().await;
        for (count, sheets) in [(1, "6"), (2, "9")] {
            phone.notes(sheets).await;
            phone.shows(count).await;
        }
        phone.sets_clock(Duration::days(10)).await;
        stage.pass(Duration::days(10));
        phone.comes_up().await;
        let tab = &phone.tab;
        let is_wrong = "return document.querySelectorAll('.waiting-wrong').length === 2";
        tab.until("both are refused", is_wrong).await;
        let said = tab.text(".waiting-wrong").await;
        assert!(said.starts_with("Time: That is too long ago"), "{said}");
        assert!(said.contains("takes notes for 7 days."), "{said}");
        hold_fit(tab, "notes that came too late").await;
        assert!(phone.book().await.is_empty());

        tab.open(&stage.at("/board")).await;
        let bar = "return !document.querySelector('[data-kept-bar]').hidden";
        tab.until("other pages say that notes wait", bar).await;
        assert_eq!(tab.text("[data-kept-number]").await, "2");
        hold_fit(tab, "a board over notes that wait").await;
        tab.go("Noted on this phone").await;
        phone.shows(2).await;
        tab.tap("Throw it away").await;
        tab.tap("Throw it away for good").await;
        phone.shows(1).await;
        mends(&phone).await;
        assert_eq!(phone.one_note().await.sheets, 9);
    });
}

/// Says when it was, which nobody but its person can.
async fn mends(phone: &Phone) {
    let tab = &phone.tab;
    tab.go("Mend it").await;
    let asks = "return document.querySelector('input[name=when][value=earlier]').checked";
    tab.until("it asks when it was", asks).await;
    tab.tap("Sat 5 Dec 2026").await;
    tab.write("Time", "12:40").await;
    tab.go("Note them").await;
    assert_eq!(tab.text("h1").await, "Noted");
    let noted = tab.text(".noted-what").await;
    assert!(noted.starts_with("9 sheets, 8×10 in, RC"), "{noted}");
    assert!(noted.contains("12:40"), "{noted}");
}
