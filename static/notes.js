// Notes that reach the book even where there is no network. Each is put into this
// phone's own store first, then sent, and taken out when the book has it: sent once
// only, because its key stays the same.
//
// form[data-keep]          the form to note sheets; its hidden `person` says whose it is
// [data-waiting]           the section of notes that wait, its rows made of template[data-row]
// [data-why=…]             why they wait: away, log-in, other; one of them is shown
// [data-kept-bar]          on other pages, that notes wait; [data-kept-number] how many
// [data-arrived]           that waiting notes reached the book; [data-arrived-number] how many
// dialog[data-leaving]     asks before a log-out that leaves notes waiting
"use strict";

(() => {
  const root = document.documentElement;
  const base = root.dataset.base ?? "";
  const form = document.querySelector("form[data-keep]");
  const EVERY = 15000;
  const PATIENCE = 10000;
  const WHEN = { weekday: "short", hour: "2-digit", minute: "2-digit", hourCycle: "h23" };

  const opened = new Promise((done, fail) => {
    const asked = window.indexedDB.open("wetside", 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore("notes", { keyPath: "key" });
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => fail(asked.error);
  });
  const store = async (mode, work) => {
    const notes = (await opened).transaction("notes", mode).objectStore("notes");
    const asked = work(notes);
    return new Promise((done, fail) => {
      notes.transaction.oncomplete = () => done(asked.result);
      notes.transaction.onerror = () => fail(notes.transaction.error);
    });
  };
  const put = (note) => store("readwrite", (notes) => notes.put(note));
  const remove = (key) => store("readwrite", (notes) => notes.delete(key));
  const all = async () => (await store("readonly", (notes) => notes.getAll())).sort((a, b) => a.at - b.at);

  const newKey = () => {
    const bytes = window.crypto.getRandomValues(new Uint8Array(16));
    return window.btoa(String.fromCharCode(...bytes)).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
  };

  // What came of sending: `book` (with where), `away`, `log-in`, `other`, or a sentence.
  const send = async (note) => {
    const body = new URLSearchParams(note.fields);
    body.set("key", note.key);
    body.set("person", note.person);
    body.set("noted_at", String(note.at));
    body.set("sent_at", String(Date.now()));
    let answer;
    try {
      answer = await fetch(`${base}/rooms/${note.room}/sheets`, {
        method: "POST",
        body,
        signal: AbortSignal.timeout(PATIENCE),
      });
    } catch {
      return { came: "away" };
    }
    if (answer.ok) return { came: "book", at: answer.url };
    if (answer.status === 401) return { came: "log-in" };
    if (answer.status === 409) return { came: "other" };
    if (answer.status === 429 || answer.status >= 500) return { came: "away" };
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    // What is wrong with the note, or, on an error's page, what that says.
    const listed = [...page.querySelectorAll(".summary li")];
    const said = (listed.length > 0 ? listed : [...page.querySelectorAll("main .lead")]).map((each) => each.textContent.trim());
    return { came: "wrong", said: said.join(" ") || String(answer.status) };
  };

  let why = "away";
  let arrived = 0;

  // Sends what waits, oldest first; one page at a time does it.
  const sendAll = async () => {
    for (const note of await all()) {
      if (note.problem) continue;
      const { came, said } = await send(note);
      if (came === "book") {
        arrived += 1;
        await remove(note.key);
      } else if (came === "wrong") await put({ ...note, problem: said });
      else {
        why = came;
        break;
      }
    }
    await show();
  };
  const soon = async () => {
    if ((await all()).every((note) => note.problem)) return;
    const alone = navigator.locks ? (work) => navigator.locks.request("wetside-notes", { ifAvailable: true }, (lock) => lock && work()) : (work) => work();
    await alone(sendAll);
  };

  const words = (note) => {
    const chosen = ["sheet_size", "paper_class", "line"].map((name) => {
      const input = form?.querySelector(`input[name="${name}"][value="${note.fields[name]}"]`);
      return input?.closest("label")?.querySelector(".target-name")?.textContent.trim();
    });
    return chosen.filter(Boolean).join(", ");
  };
  const row = (note, mould) => {
    const made = document.importNode(mould.content, true);
    const part = (name) => made.querySelector(`[data-${name}]`);
    part("count").textContent = note.fields.uncounted === "yes" ? "?" : note.fields.sheets;
    part("what").textContent = words(note);
    const at = new Date(note.at);
    part("at").textContent = at.toLocaleString(root.lang, { ...WHEN, timeZone: form?.dataset.zone });
    if (note.problem) {
      part("problem").textContent = note.problem;
      part("mend").href = `?kept=${note.key}`;
      part("throw").addEventListener("click", () => remove(note.key).then(show));
    } else part("wrong").remove();
    return made;
  };

  // Says what waits: whose they are is asked before what they are is shown.
  const show = async () => {
    const notes = await all();
    const own = notes.filter((note) => !form || note.person === form.elements.person.value);
    const bar = document.querySelector("[data-kept-bar]");
    if (bar) {
      bar.hidden = notes.length === 0 || form !== null;
      bar.querySelector("[data-kept-number]").textContent = String(notes.length);
    }
    const done = document.querySelector("[data-arrived]");
    if (done && arrived > 0) {
      done.hidden = false;
      done.querySelector("[data-arrived-number]").textContent = String(arrived);
    }
    const part = document.querySelector("[data-waiting]");
    if (!part) return;
    part.hidden = notes.length === 0;
    const reason = own.length < notes.length && why !== "log-in" ? "other" : why;
    for (const each of part.querySelectorAll("[data-why]")) each.hidden = each.dataset.why !== reason || notes.every((note) => note.problem);
    const mould = part.querySelector("template[data-row]");
    part.querySelector("ul").replaceChildren(...own.map((note) => row(note, mould)));
  };

  if (form) {
    const button = form.querySelector("button[type=submit]");
    const mending = new URLSearchParams(window.location.search).get("kept");
    const fill = async () => {
      const note = mending && (await all()).find((each) => each.key === mending);
      if (!note) return;
      for (const [name, value] of Object.entries(note.fields)) {
        for (const input of form.querySelectorAll(`[name="${name}"]`)) {
          if (["radio", "checkbox"].includes(input.type)) input.checked = input.value === value;
          else if (input.type !== "hidden") input.value = value;
        }
      }
      // What is set right is not of just now: it is asked for when it was.
      form.querySelector("details.earlier").open = true;
    };
    const begin = () => {
      form.elements.key.value = newKey();
      button.disabled = false;
    };
    begin();
    fill();
    window.addEventListener("pageshow", (event) => event.persisted && begin());

    form.addEventListener("submit", async (event) => {
      event.preventDefault();
      button.disabled = true;
      const fields = Object.fromEntries(new FormData(form));
      const { key, person } = fields;
      for (const name of ["key", "person"]) delete fields[name];
      const note = { key, person, room: form.dataset.keep, fields, at: Date.now() };
      try {
        await put(note);
        if (mending) await remove(mending);
      } catch {
        // No store on this browser: the form goes the way it goes without a script.
        form.submit();
        return;
      }
      const { came, at } = await send(note);
      if (came === "book") {
        await remove(key);
        window.location.assign(at);
      } else if (came === "wrong") {
        // The page that comes back says it beside the field.
        await remove(key);
        form.submit();
      } else {
        why = came;
        await show();
        begin();
        const part = document.querySelector("[data-waiting]");
        part.querySelector("[data-said]").textContent = part.dataset.kept;
        part.focus();
      }
    });
  }

  // Without a network, links to what was kept.
  const links = document.querySelector("[data-kept-pages]");
  if (links && window.caches) {
    for (const link of links.querySelectorAll("a[data-kept]")) {
      window.caches.match(`${base}/kept`).then(async (found) => {
        const room = found && (await found.json()).room;
        if (!room) return;
        link.href = `${base}/rooms/${room}/${link.dataset.kept}`;
        link.hidden = false;
      });
    }
  }

  const leaving = document.querySelector("dialog[data-leaving]");
  for (const out of document.querySelectorAll("form[data-log-out]")) {
    out.addEventListener("submit", async (event) => {
      event.preventDefault();
      const waits = (await all().catch(() => [])).length > 0;
      if (waits && leaving && !leaving.open) {
        leaving.showModal();
        return;
      }
      out.submit();
    });
  }
  leaving?.querySelector("[data-stay]").addEventListener("click", () => leaving.close());

  const tell = async (what) => {
    const worker = (await navigator.serviceWorker?.ready)?.active;
    worker?.postMessage(what);
  };
  if (navigator.serviceWorker) {
    navigator.serviceWorker.register(`${base}/worker.js`, { scope: `${base}/` }).catch(() => {});
    // A log-out ends on the log-in page: there the worker forgets whose form it kept.
    if (document.querySelector("form[data-log-in]")) tell({ forget: true });
    else if (root.dataset.room) tell({ room: root.dataset.room, display: root.dataset.display, build: root.dataset.build, now: form !== null });
  }

  show().catch(() => {});
  soon().catch(() => {});
  window.addEventListener("online", () => soon().catch(() => {}));
  window.setInterval(() => soon().catch(() => {}), EVERY);
})();
