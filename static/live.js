// The live board: the open page is kept up to date by the parts that changed, and says
// plainly where it is not. Every page is complete without this.
//
// Hooks, all in templates/board and templates/place.html:
//   [data-live=URL]          the bar; data-live-at and data-live-drawn say what the page shows.
//                            The script sets data-live-state on it: connecting, connected,
//                            lost (the banner is out) or over (it has stopped for good)
//   [data-live-lost]         the banner: not connected; hidden while connected
//   [data-live-over]         the banner: logged out or no longer in the room; final
//   [data-live-since]        in both: when the board was last known to be true
//   [data-live-as-of]        beside the heading: as of when the board is shown
//   [data-live-hold]         the button Hold still / Go on
//   [data-live-held]         what is said while held, with [data-live-held-since] and the
//                            number of changes in [data-live-waiting]
//   [data-live-said]         the one polite live region
//   [data-live-unread]       the count of unread notices in the navigation, [data-live-count]
//   [data-live-mark]         what is marked after it changed; the mark is data-live-new
//   [data-live-verdict]      a verdict, with its sentence in data-live-sentence
"use strict";

{
  const SILENCE = 11_000; // ms without a byte, and the connection is dead
  const FAILED = 3; // tries in a row that failed, and nobody calls it connected
  const LONGEST = 8_000; // ms between two tries, at most, give or take
  const STEADY = 6_000; // ms connected, and the next pause is short again
  const HIDDEN = 30_000; // ms in the background, and the connection is let go
  const MARKED = 8_000; // ms a change stays marked
  const GATHER = 3_000; // ms in which changes of verdicts are gathered to be said
  const PARTS = ["board-off", "board-glance", "board-notices", "board-bottles", "board-bench", "present"];

  const bar = document.querySelector("[data-live]");
  const find = (name, root = document) => root.querySelector(`[data-live-${name}]`);
  const [lost, over, said] = ["lost", "over", "said"].map((name) => find(name));
  const [hold, held, waitingCount] = ["hold", "held", "waiting"].map((name) => find(name));
  const [asOf, unread] = ["as-of", "unread"].map((name) => find(name));
  const random = crypto.getRandomValues(new Uint32Array(2));
  const tab = Array.from(random, (part) => part.toString(16)).join("");

  // What the page shows, or will once it goes on.
  let place = { after: bar.dataset.liveAt, drawn: bar.dataset.liveDrawn };
  const first = asOf.querySelector("time");
  let good = { machine: first.dateTime, words: first.textContent };
  let count = null;

  // --- What is shown -------------------------------------------------------------------

  const parsed = (html) => {
    const frame = document.createElement("template");
    frame.innerHTML = html;
    return frame.content.firstElementChild;
  };

  // Our own marks and what a reader opened stay when the rest is brought into line.
  const KEPT = ["data-live-new", "open"];

  const alike = (old, next) => {
    if (!old.hasAttribute("data-live-new")) return old.isEqualNode(next);
    const copy = old.cloneNode(true);
    copy.removeAttribute("data-live-new");
    return copy.isEqualNode(next);
  };

  const bringAttributes = (old, next) => {
    for (const { name } of [...old.attributes]) {
      if (!next.hasAttribute(name) && !KEPT.includes(name)) old.removeAttribute(name);
    }
    for (const { name, value } of next.attributes) {
      if (old.getAttribute(name) !== value && !KEPT.includes(name)) old.setAttribute(name, value);
    }
  };

  const partner = (at, parent, next) => {
    if (next.id) return [...parent.children].find((child) => child.id === next.id) ?? null;
    return at && at.nodeName === next.nodeName && !at.id ? at : null;
  };

  // Elements stay the same elements, so that focus, selection and what is open stay too.
  const bring = (old, next) => {
    if (old.nodeType !== Node.ELEMENT_NODE) {
      if (old.data !== next.data) old.data = next.data;
      return;
    }
    if (alike(old, next)) return;
    bringAttributes(old, next);
    let at = old.firstChild;
    for (const child of [...next.childNodes]) {
      const same = partner(at, old, child);
      if (same === null) {
        old.insertBefore(child, at);
        continue;
      }
      if (same === at) at = at.nextSibling;
      else old.insertBefore(same, at);
      bring(same, child);
    }
    while (at) {
      const rest = at.nextSibling;
      at.remove();
      at = rest;
    }
  };

  const sentences = new Map();
  let saying = 0;

  const say = (key, sentence) => {
    sentences.set(key, sentence);
    saying ||= window.setTimeout(() => {
      said.textContent = [...sentences.values()].join(". ");
      sentences.clear();
      saying = 0;
    }, GATHER);
  };

  // The ids of what is otherwise in a part; verdicts that changed are said.
  const news = (next) => {
    const ids = [];
    for (const found of next.querySelectorAll("[data-live-mark]")) compare(found, ids);
    if (next.hasAttribute("data-live-mark")) compare(next, ids);
    return ids;
  };

  const compare = (next, ids) => {
    const old = document.getElementById(next.id);
    if (old && alike(old, next)) return;
    ids.push(next.id);
    const verdict = next.dataset.liveVerdict;
    if (old && verdict && old.dataset.liveVerdict !== verdict) {
      say(next.id, next.dataset.liveSentence);
    }
  };

  const mark = (id) => {
    const element = document.getElementById(id);
    const token = String(Date.now());
    element.setAttribute("data-live-new", token);
    window.setTimeout(() => {
      if (element.getAttribute("data-live-new") === token) element.removeAttribute("data-live-new");
    }, MARKED);
  };

  // Whoever was on something that moved is on it again, or on the nearest thing to it.
  const refocus = (focused, href, near) => {
    if (!focused || focused === document.body || document.activeElement === focused) return;
    const links = href ? [...document.querySelectorAll("#main a")] : [];
    const stands = focused.isConnected ? focused : null;
    const target = stands
      ?? links.find((link) => link.getAttribute("href") === href)
      ?? (document.getElementById(near)?.querySelector("a, button, summary") || null)
      ?? document.getElementById("main");
    target.focus({ preventScroll: true });
  };

  // Brings the page into line; false where it has no place for a part.
  const show = (parts) => {
    const focused = document.activeElement;
    const href = focused?.getAttribute("href");
    const near = focused?.closest("[id]")?.id;
    for (const { id, html } of parts) {
      const old = document.getElementById(id);
      const next = parsed(html);
      if (!old) return false;
      const ids = news(next);
      bring(old, next);
      ids.forEach(mark);
    }
    refocus(focused, href, near);
    return true;
  };

  const showTime = () => {
    const time = asOf.querySelector("time");
    time.dateTime = good.machine;
    time.textContent = good.words;
  };

  const showCount = () => {
    if (!unread || count === null) return;
    find("count", unread).textContent = String(count);
    unread.hidden = count === 0;
  };

  // --- Holding still -------------------------------------------------------------------

  let isHeld = false;
  let changes = 0;
  const waiting = new Map();

  const keep = (parts) => {
    for (const { id, html } of parts) {
      // The whole bench takes the place of all its parts.
      if (id === "board-bench") {
        for (const other of [...waiting.keys()]) if (!PARTS.includes(other)) waiting.delete(other);
      }
      waiting.delete(id);
      waiting.set(id, { id, html });
    }
    changes += 1;
    waitingCount.textContent = String(changes);
  };

  const receive = (parts) => {
    if (parts.length === 0) return;
    if (isHeld) keep(parts);
    else if (!show(parts)) lookAnew();
  };

  const receiveTime = (time) => {
    good = time;
    if (!isHeld) showTime();
  };

  hold.hidden = false;
  hold.addEventListener("click", () => {
    isHeld = !isHeld;
    find("hold-words").hidden = isHeld;
    find("go-on-words").hidden = !isHeld;
    held.hidden = !isHeld;
    if (isHeld) {
      changes = 0;
      waitingCount.textContent = "0";
      find("held-since").textContent = asOf.textContent;
      return;
    }
    const parts = [...waiting.values()];
    waiting.clear();
    receive(parts);
    showTime();
    showCount();
  });

  // --- What is said of the connection --------------------------------------------------

  let state = "connecting";

  const turn = (next) => {
    if (state === next || state === "over") return;
    state = next;
    bar.dataset.liveState = next;
    lost.hidden = next !== "lost";
    over.hidden = next !== "over";
    const banner = { lost, over }[next];
    if (banner) {
      find("since", banner).textContent = good.words;
      say("banner", banner.textContent);
    } else if (!sentences.delete("banner") && next === "connected") {
      // What was said of the connection is true no more.
      said.textContent = "";
    }
  };

  // --- The connection ------------------------------------------------------------------

  let source = null; // what the open connection is aborted by
  let heardAt = Date.now(); // when the last byte came
  let triedAt = 0; // when the connection was begun
  let openAt = 0; // when its first byte came
  let tries = 0;
  let retry = 0;
  let wantsPage = false;

  // Thrown by what lets somebody in no more.
  class Over extends Error {}

  const ask = async (address, own) => {
    const answer = await fetch(address, { signal: own.signal, cache: "no-store", redirect: "manual" });
    const isSentAway = answer.type === "opaqueredirect";
    if (isSentAway || [401, 403, 404].includes(answer.status)) throw new Over();
    if (!answer.ok) {
      const problem = new Error(String(answer.status));
      problem.pause = Number(answer.headers.get("retry-after")) * 1000 || 0;
      throw problem;
    }
    return answer;
  };

  // The page itself, where parts do not do.
  const takePage = async (own) => {
    const answer = await ask(window.location.pathname, own);
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const theirs = page.querySelector("[data-live]");
    const time = page.querySelector("[data-live-as-of] time");
    if (own !== source) return;
    wantsPage = false;
    place = { after: theirs.dataset.liveAt, drawn: theirs.dataset.liveDrawn };
    receive(PARTS.map((id) => ({ id, html: page.getElementById(id).outerHTML })));
    receiveTime({ machine: time.dateTime, words: time.textContent });
  };

  const take = (event, own) => {
    const fields = {};
    for (const line of event.split("\n")) {
      const at = line.indexOf(": ");
      if (at > 0) fields[line.slice(0, at)] = line.slice(at + 2);
    }
    if (!fields.data || own !== source) return;
    const data = JSON.parse(fields.data);
    if (fields.event === "change") {
      place = { after: fields.id ?? place.after, drawn: data.drawn };
      receiveTime(data.as_of);
      receive(data.parts);
    } else if (fields.event === "beat") {
      receiveTime(data.as_of);
      turn("connected");
    } else if (fields.event === "notices") {
      count = data.unread;
      if (!isHeld) showCount();
    } else if (fields.event === "resync") {
      lookAnew();
    }
  };

  const listen = async (answer, own) => {
    const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
    let rest = "";
    openAt = Date.now();
    for (;;) {
      const { done, value } = await reader.read();
      if (done || own !== source) return;
      heardAt = Date.now();
      if (heardAt - openAt > STEADY) tries = 0;
      const events = (rest + value).split("\n\n");
      rest = events.pop();
      for (const event of events) take(event, own);
    }
  };

  const connect = async () => {
    window.clearTimeout(retry);
    source?.abort();
    if (state === "over") return;
    const own = new AbortController();
    source = own;
    triedAt = Date.now();
    let pause = 0;
    try {
      if (wantsPage) await takePage(own);
      const query = new URLSearchParams({ ...place, tab });
      await listen(await ask(`${bar.dataset.live}?${query}`, own), own);
    } catch (problem) {
      if (own !== source) return;
      if (problem instanceof Over) return letGo("over");
      pause = problem.pause ?? 0;
    }
    if (own === source) later(pause);
  };

  // For ever, with pauses that grow to a few seconds and are never the same for all.
  const later = (atLeast) => {
    letGo(state === "connected" ? "connecting" : state);
    const pause = Math.min(500 * 2 ** tries, LONGEST) * (0.6 + 0.6 * Math.random());
    tries = Math.min(tries + 1, 10);
    retry = window.setTimeout(connect, Math.max(pause, atLeast));
  };

  const letGo = (next) => {
    window.clearTimeout(retry);
    const old = source;
    source = null;
    old?.abort();
    turn(next);
  };

  const lookAnew = () => {
    wantsPage = true;
    connect();
  };

  // Back from wherever the page or the network was.
  const wake = () => {
    if (state === "over" || document.hidden) return;
    const isAlive = source && Date.now() - Math.max(heardAt, triedAt) < SILENCE / 2;
    if (!isAlive) connect();
  };

  window.setInterval(() => {
    if (state === "over" || document.hidden) return;
    const now = Date.now();
    if (source && now - Math.max(heardAt, triedAt) > SILENCE) later(0);
    // Tries count until a connection proves steady: what is open meanwhile is connected.
    const hasFailed = state !== "connected" && tries >= FAILED;
    if (now - heardAt > SILENCE || hasFailed || !navigator.onLine) turn("lost");
  }, 500);

  let hiding = 0;
  const comeOrGo = () => {
    window.clearTimeout(hiding);
    if (document.hidden) hiding = window.setTimeout(() => letGo(state), HIDDEN);
    else wake();
  };
  document.addEventListener("visibilitychange", comeOrGo);
  window.addEventListener("online", wake);
  window.addEventListener("pageshow", wake);
  window.addEventListener("pagehide", () => letGo(state));

  connect();
  comeOrGo();
}
