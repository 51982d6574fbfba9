// What somebody needs at the bench when there is no network: the form to note
// sheets of whoever is logged in, Emergency, and a page that says so, in the place of
// the browser's own, which is white in Safelight too. Everything else is asked of the
// network and left alone.
"use strict";

const BASE = new URL("./", self.location.href).pathname;
const ASSETS = "wetside-assets";
// Pages that are the same for everyone, and what is known of how they were kept.
const PAGES = "wetside-pages";
// The form of one person; it goes when they log out.
const OWN = "wetside-own";
const KEPT = `${BASE}kept`;
const FRESH = 3600000;
const PATIENCE = 8000;

const noteForm = (room) => `${BASE}rooms/${room}/sheets/new`;
const isGone = (answer) => [502, 503, 504].includes(answer.status);

// Fetches a page and what it looks with; answers whether it is to be had.
async function take(cache, path) {
  const answer = await fetch(path, { credentials: "same-origin", redirect: "manual" });
  if (isGone(answer)) throw new Error(answer.statusText);
  if (answer.status !== 200) {
    await cache.delete(path);
    return;
  }
  await cache.put(path, answer.clone());
  const found = (await answer.text()).matchAll(/(?:href|src)="([^"]*\/assets\/[^"]+)"/g);
  const assets = await caches.open(ASSETS);
  for (const [, asset] of found) {
    if (!(await assets.match(asset))) await assets.add(asset);
  }
}

async function keep({ room, display, build, now }) {
  const pages = await caches.open(PAGES);
  const before = await (await pages.match(KEPT))?.json();
  const isSame = before && before.room === room && before.display === display && before.build === build;
  if (isSame && !now && Date.now() - before.at < FRESH) return;
  if (before && before.build !== build) await caches.delete(ASSETS);
  await take(pages, `${BASE}offline`);
  await take(pages, `${BASE}emergency`);
  if (room) {
    await take(pages, `${BASE}rooms/${room}/emergency`);
    await take(await caches.open(OWN), noteForm(room));
  }
  await pages.put(KEPT, new Response(JSON.stringify({ room, display, build, at: Date.now() })));
}

async function forget() {
  await caches.delete(OWN);
  await (await caches.open(PAGES)).delete(KEPT);
}

// The kept copy of a page, whatever was asked of it behind the question mark.
async function kept(url) {
  for (const name of [OWN, PAGES]) {
    const found = await (await caches.open(name)).match(url.pathname);
    if (found && url.pathname !== KEPT) return found;
  }
  return null;
}

async function page(request) {
  const url = new URL(request.url);
  const asked = fetch(request);
  asked.catch(() => {});
  const copy = request.method === "GET" ? await kept(url) : null;
  const late = copy && new Promise((done) => self.setTimeout(() => done(copy), PATIENCE));
  try {
    const answer = await (late ? Promise.race([asked, late]) : asked);
    return copy && isGone(answer) ? copy : answer;
  } catch (problem) {
    const instead = copy ?? (await kept(new URL(`${BASE}offline`, url)));
    if (instead) return instead;
    throw problem;
  }
}

async function asset(request) {
  return (await (await caches.open(ASSETS)).match(request)) ?? fetch(request);
}

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("message", (event) => {
  const { data } = event;
  // Without a network there is nothing to keep anew; what was kept stays.
  event.waitUntil((data.forget ? forget() : keep(data)).catch(() => {}));
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin) return;
  if (request.mode === "navigate") event.respondWith(page(request));
  else if (request.method === "GET" && url.pathname.startsWith(`${BASE}assets/`)) event.respondWith(asset(request));
});
