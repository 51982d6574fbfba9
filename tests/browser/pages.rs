//! Every page there is, and who it is shown to.

use axum::http::Method;
use wetside::identity::links;
use wetside::router;

use super::site::Site;
use super::tab::Tab;
use crate::access::house::House;
use crate::harness::{Page, new_key};
use crate::pages::checks;

/// Who looks.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub(super) enum Who {
    Nobody,
    Member,
    Trained,
    Steward,
    /// A screen that shows the board.
    Wall,
    /// A screen at the door.
    Door,
}

/// A page and how it comes about.
#[derive(Clone, Debug)]
pub(super) struct Shown {
    pub(super) who: Who,
    pub(super) path: String,
    /// A form that is sent with nothing in it leads there.
    pub(super) is_sent: bool,
}

impl Shown {
    pub(super) fn to(who: Who, path: impl Into<String>) -> Self {
        Self {
            who,
            path: path.into(),
            is_sent: false,
        }
    }

    /// Brings it up in a tab.
    pub(super) async fn open(&self, tab: &Tab) {
        if !self.is_sent {
            tab.open(&self.path).await;
            if self.path == "/screen" && self.who == Who::Nobody {
                tab.until("a code", "return !!document.querySelector('.code')")
                    .await;
            }
            return;
        }
        let key = data_encoding::BASE64URL_NOPAD.encode(&new_key());
        let fields = serde_json::json!([self.path, key]);
        tab.open("/live").await;
        tab.run(SEND, fields.as_array().unwrap().clone()).await;
        let arrived =
            "return document.readyState === 'complete' && !!document.querySelector('main')";
        tab.until("a form that wants input", arrived).await;
        assert!(tab.has(".error, .summary, .secret").await, "{self:?}");
    }
}

const SEND: &str = "
    const form = document.createElement('form');
    const key = document.createElement('input');
    key.name = 'key';
    key.value = arguments[1];
    form.method = 'post';
    form.action = arguments[0];
    form.append(key);
    document.body.append(form);
    form.submit();";

/// Forms that say what is missing, one of each kind.
const WANT_INPUT: &[&str] = &[
    "/log-in",
    "/account/name",
    "/account/password",
    "/rooms/{room}/tokens",
    "/rooms/{room}/settings",
    "/rooms/{room}/members/invitations",
    // This one wants nothing, and shows the link.
    "/rooms/{room}/members/{person}/reset-link",
    "/rooms/{room}/trays/{tray}/open",
    "/rooms/{room}/mixes/{mix}/check",
    "/rooms/{room}/mixes/{mix}/discard",
    "/rooms/{room}/sheets",
    "/rooms/{room}/bench-sheet/enter",
    "/rooms/{room}/bench/lines/{line}/trays",
    "/rooms/{room}/lines/{line}/finishing/{class}",
    "/rooms/{room}/papers/sizes",
    "/rooms/{room}/products",
    "/rooms/{room}/products/{product}/dilutions",
    "/rooms/{room}/outages",
    "/rooms/{room}/checks",
    "/rooms/{room}/checks/{check}/record",
    "/rooms/{room}/air/{space}/measure",
    "/rooms/{room}/incidents",
    "/rooms/{room}/avoid",
    "/rooms/{room}/workshops",
    "/rooms/{room}/workshops/{workshop}/guests",
];

/// Every page: of the steward's first, then what others see otherwise.
pub(super) async fn all(house: &House, site: &Site) -> Vec<Shown> {
    let mut all = of_steward(house).await;
    for pattern in WANT_INPUT {
        all.push(Shown {
            is_sent: true,
            ..Shown::to(Who::Steward, house.page_path(pattern))
        });
    }
    let at = |path: &str| house.stage.at(path);
    all.push(Shown::to(Who::Steward, at("/board?nothing")));
    all.push(Shown::to(Who::Steward, "/nowhere"));
    all.push(Shown::to(Who::Trained, at("/board")));
    all.push(Shown::to(Who::Member, at("/board")));
    all.push(Shown::to(Who::Member, at("/members")));
    all.push(Shown::to(
        Who::Member,
        house.page_path("/rooms/{room}/sheets/{seq}/undo"),
    ));
    all.push(Shown::to(
        Who::Member,
        house.page_path("/rooms/{room}/incidents/{incident}"),
    ));
    all.extend(of_nobody(house, site).await);
    all.extend(of_screens(house));
    all
}

/// What a screen shows, paired or not.
fn of_screens(house: &House) -> Vec<Shown> {
    let flag = format!("/screen/flag/{}", house.bench.tray);
    let mut all = vec![Shown::to(Who::Nobody, "/screen")];
    for who in [Who::Wall, Who::Door] {
        all.push(Shown::to(who, "/screen"));
        all.push(Shown::to(who, house.stage.at("/emergency")));
    }
    for path in [
        "/screen/arrive",
        "/screen/leave",
        "/screen/note",
        "/screen/flag",
        &flag,
        "/screen/done?what=arrived",
    ] {
        all.push(Shown::to(Who::Door, path));
    }
    for path in ["/screen/arrive", "/screen/note", &flag] {
        all.push(Shown {
            is_sent: true,
            ..Shown::to(Who::Door, path)
        });
    }
    all
}

/// The pages of the steward, one a route; files are none.
async fn of_steward(house: &House) -> Vec<Shown> {
    let mut browser = house.stage.browser(&house.stage.cast.steward).await;
    let mut shown = Vec::new();
    for route in router::pages().listed() {
        let is_open = route.path.contains("{secret}")
            || route.path == "/"
            || route.path.starts_with("/screen");
        if route.method != Method::GET || is_open {
            continue;
        }
        let path = house.page_path(&route.path);
        if checks::is_page(&browser.get(&path).await) {
            shown.push(Shown::to(Who::Steward, path));
        }
    }
    shown
}

async fn of_nobody(house: &House, site: &Site) -> Vec<Shown> {
    let mut steward = house.stage.browser(&house.stage.cast.steward).await;
    let members = steward.get(&house.stage.at("/members")).await.page();
    let form = members.form("Make the link").unwrap().choose("Member");
    let invitation = link(&steward.submit(&form).await.expect(200).page());
    let spare = house.page_path("/rooms/{room}/members/{person}");
    let page = steward.get(&spare).await.page();
    let form = page.form("Make a reset link").unwrap();
    let reset = link(&steward.submit(&form).await.expect(200).page());
    let set_up = links::new_set_up(&site.app).await.unwrap();
    assert_eq!(set_up, None, "there is a room");
    let room = house.stage.at("/emergency");
    let open = [invitation, reset, room].into_iter();
    let named = ["/log-in", "/emergency", "/safelight", "/join/nothing"].map(str::to_owned);
    open.chain(named)
        .map(|path| Shown::to(Who::Nobody, path))
        .collect()
}

/// The path of the link that a page shows once.
fn link(page: &Page) -> String {
    let link = page.first("code").unwrap();
    let at = link.find("/join/").or_else(|| link.find("/reset/"));
    link[at.unwrap_or_else(|| panic!("{link}"))..].to_owned()
}
