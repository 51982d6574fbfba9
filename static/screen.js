// A paired screen stays alive: it asks for its own page every few seconds, takes
// what is new, and says so when nobody answers. Each page is complete without this.
"use strict";

const HOME = document.body.dataset.screen;
const EVERY = 5000;
const AGAIN = 1500;
const PATIENCE = 4500;
const LOST_AFTER = 11000;

let tag = null;
let answeredAt = performance.now();
let answeredClock = new Date();
let returning = 0;
// What to do first, and what the screen shows at its start, at hand without a connection.
let emergency = null;
let start = null;

const parse = (text) => new DOMParser().parseFromString(text, "text/html");
const isWaiting = (page) => page.body.classList.contains("screen-code");
const isOurs = (page) => page.body.dataset.screen === HOME;

// Answers that came from the server, whatever they say, keep the screen alive.
const ask = async (address, options = {}) => {
  const answer = await fetch(address, {
    cache: "no-store",
    signal: AbortSignal.timeout(PATIENCE),
    ...options,
  });
  if (answer.status >= 500) throw new Error(answer.statusText);
  answeredAt = performance.now();
  const date = answer.headers.get("date");
  answeredClock = date ? new Date(date) : new Date();
  return answer;
};

const isLost = () => performance.now() - answeredAt > LOST_AFTER;

// The time of the last answer, by the clock on the room's wall.
const clock = () => {
  const zone = document.body.dataset.zone || undefined;
  const parts = { hour: "2-digit", minute: "2-digit", hourCycle: "h23", timeZone: zone };
  return new Intl.DateTimeFormat("en-GB", parts).format(answeredClock);
};

const showLost = () => {
  const banner = document.getElementById("lost");
  if (isLost() && banner.hidden) document.getElementById("lost-since").textContent = clock();
  banner.hidden = !isLost();
};

// Another build, another kind or another display: the whole page is taken anew.
const looks = (page) => {
  const sheets = [...page.querySelectorAll("link[rel=stylesheet], script[src]")];
  const links = sheets.map((one) => one.getAttribute("href") ?? one.getAttribute("src"));
  return [page.body.className, page.documentElement.dataset.display, ...links].join(" ");
};

const parts = (page) => [...page.querySelectorAll("main [data-part]")];

// What a page says outside its parts, such as that the fan is off.
const around = (page) => {
  const main = page.getElementById("main").cloneNode(true);
  for (const part of main.querySelectorAll("[data-part]")) part.remove();
  return main.textContent.replace(/\s+/g, " ");
};

const isAtStart = () => !document.querySelector("[data-return]");

const swap = (main) => {
  const old = document.getElementById("main");
  if (isAtStart()) start = old;
  old.replaceWith(document.importNode(main, true));
  dress();
};

const toTop = () => {
  window.scrollTo(0, 0);
  const first = document.querySelector(".summary, h1");
  if (first) {
    first.tabIndex = -1;
    first.focus();
  }
};

// Parts of the same names take each other's place; where there are others, or they stand
// in other rows, all does.
const take = (page) => {
  if (looks(page) !== looks(document)) {
    location.reload();
    return;
  }
  document.title = page.title;
  document.body.dataset.zone = page.body.dataset.zone;
  const places = (root) => {
    const rows = [...root.querySelectorAll(".wall-row")];
    return parts(root).map((part) => `${part.id} ${rows.indexOf(part.parentElement)}`).join();
  };
  if (parts(page).length > 0 && places(page) === places(document) && around(page) === around(document)) {
    for (const fresh of parts(page)) {
      const old = document.getElementById(fresh.id);
      if (!old.isEqualNode(fresh)) old.replaceWith(document.importNode(fresh, true));
    }
  } else {
    swap(page.getElementById("main"));
  }
  for (const one of page.querySelectorAll("header .as-of")) {
    const old = document.querySelector("header .as-of");
    if (old) old.replaceWith(document.importNode(one, true));
  }
};

// Whole pages in the place of one another, so that a lost connection never leaves
// the screen on a page of the browser's own.
const show = (page) => {
  if (!isOurs(page) || looks(page) !== looks(document)) {
    location.assign(HOME);
    return;
  }
  document.title = page.title;
  const top = page.getElementById("screen-top");
  document.getElementById("screen-top").replaceWith(document.importNode(top, true));
  swap(page.getElementById("main"));
  toTop();
};

const notSent = (is) => {
  document.getElementById("not-sent").hidden = !is;
};

const go = async (address, options) => {
  try {
    const answer = await ask(address, options);
    const page = parse(await answer.text());
    if (!isOurs(page)) throw new Error(answer.statusText);
    tag = null;
    notSent(false);
    show(page);
    return true;
  } catch {
    notSent(true);
    return false;
  }
};

// Back to the start, also without a connection: then to what stood there.
const goHome = async () => {
  if ((await go(HOME)) || isAtStart()) return;
  if (start === null) {
    rest();
    return;
  }
  notSent(false);
  swap(start);
};

// It stays while somebody reads it, whatever the connection does.
const showEmergency = () => {
  emergency.dataset.return = "600";
  emergency.classList.add("alarm");
  swap(emergency);
  toTop();
};

const look = async () => {
  try {
    const headers = tag && isAtStart() ? { "If-None-Match": tag } : {};
    const answer = await ask(HOME, { headers });
    if (isAtStart()) notSent(false);
    if (answer.status === 200) {
      const page = parse(await answer.text());
      if (isOurs(page) && isAtStart()) {
        tag = answer.headers.get("etag");
        // A code is shown anew by asking for one, and stays until it is old.
        if (!isWaiting(page) || !isWaiting(document)) take(page);
      } else if (isOurs(page) && page.body.className !== document.body.className) {
        location.assign(HOME);
      }
    }
  } catch {
    // The banner says so.
  }
  showLost();
  window.setTimeout(look, isLost() ? AGAIN : EVERY);
};

// Back to the start: nothing of a person stays on the screen.
const rest = () => {
  window.clearTimeout(returning);
  const act = document.querySelector("[data-return]");
  if (!act) return;
  const after = Number(act.dataset.return) * 1000;
  returning = window.setTimeout(async () => {
    for (const form of act.querySelectorAll("form")) form.reset();
    for (const field of act.querySelectorAll(".who input")) field.value = "";
    await goHome();
  }, after);
};

// A code renews itself before it is too old to be typed.
const renewal = () => {
  const form = document.querySelector("form.renew");
  if (!form) return;
  const code = document.querySelector("[data-seconds]");
  const wait = code ? Math.max(Number(code.dataset.seconds), 1) * 1000 : 0;
  window.setTimeout(async () => {
    if (!form.isConnected) return;
    if (await go(form.action, { method: "POST" })) keepEmergency();
    else window.setTimeout(renewal, 15000);
  }, wait);
};

// What only works with this script comes out.
const dress = () => {
  for (const key of document.querySelectorAll("[data-step], .keypad")) key.hidden = false;
  for (const field of document.querySelectorAll(".who input")) field.inputMode = "none";
  rest();
  renewal();
};

const press = (key) => {
  const who = key.closest("[data-keypad]");
  const [number, pin] = who.querySelectorAll("input");
  const field = who.dataset.at === "pin" ? pin : number;
  switch (key.dataset.digit) {
    case "back":
      field.value = field.value.slice(0, -1);
      break;
    case "next":
      who.dataset.at = field === number ? "pin" : "number";
      (field === number ? pin : number).focus();
      break;
    default:
      field.value += key.dataset.digit;
  }
};

const step = (key) => {
  const field = key.closest("[data-counter]").querySelector("input");
  const now = Number.parseInt(field.value, 10);
  const next = (Number.isNaN(now) ? 0 : now) + Number(key.dataset.step);
  field.value = String(Math.min(Math.max(next, 1), 999));
};

document.addEventListener("click", (event) => {
  const digit = event.target.closest("[data-digit]");
  const count = event.target.closest("[data-step]");
  const link = event.target.closest("main a[href]");
  const alarm = event.target.closest("a.emergency, a[href$='/emergency']");
  if (digit) press(digit);
  else if (count) step(count);
  else if (alarm && emergency) {
    event.preventDefault();
    showEmergency();
  } else if (link && link.getAttribute("href") === HOME) {
    event.preventDefault();
    goHome();
  } else if (link && link.getAttribute("href").startsWith(HOME)) {
    event.preventDefault();
    go(link.href);
  }
});

document.addEventListener("focusin", (event) => {
  const who = event.target.closest("[data-keypad]");
  if (who && event.target.matches("input")) who.dataset.at = event.target.name;
});

for (const sign of ["input", "pointerdown", "keydown"]) document.addEventListener(sign, rest);

document.addEventListener("submit", (event) => {
  const form = event.target;
  if (!form.closest("main")) return;
  event.preventDefault();
  const body = new URLSearchParams(new FormData(form));
  go(form.action, { method: "POST", body });
});

const keepEmergency = async () => {
  try {
    const answer = await ask(document.querySelector("a.emergency").href);
    if (answer.ok) emergency = parse(await answer.text()).getElementById("main");
  } catch {
    // It is asked for again.
  }
};

dress();
look();
keepEmergency();
window.setInterval(showLost, 500);
window.setInterval(keepEmergency, 600000);
