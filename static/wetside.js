// Small helps; every page is complete without them.
"use strict";

// The big keys beside a count.
for (const counter of document.querySelectorAll("[data-counter]")) {
  const field = counter.querySelector("input");
  for (const key of counter.querySelectorAll("[data-step]")) {
    key.hidden = false;
    key.addEventListener("click", () => {
      const now = Number.parseInt(field.value, 10);
      const next = (Number.isNaN(now) ? 0 : now) + Number(key.dataset.step);
      field.value = String(Math.min(Math.max(next, 1), 999));
    });
  }
}

// Opening "printed earlier" means earlier, closing it means just now.
for (const earlier of document.querySelectorAll("details.earlier")) {
  earlier.addEventListener("toggle", () => {
    const value = earlier.open ? "earlier" : "now";
    const choice = earlier.querySelector(`input[name="when"][value="${value}"]`);
    if (choice) choice.checked = true;
  });
}

// The further places close on Escape and on a tap elsewhere.
for (const more of document.querySelectorAll("details.more")) {
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && more.open) {
      more.open = false;
      more.querySelector("summary").focus();
    }
  });
  document.addEventListener("click", (event) => {
    if (!more.contains(event.target)) more.open = false;
  });
}

// The page on paper in one press.
for (const button of document.querySelectorAll("[data-print]")) {
  button.hidden = false;
  button.addEventListener("click", () => window.print());
}

// A summary of problems takes the focus when the page opens.
document.querySelector(".summary")?.focus();

// Reckoning while somebody types: the form goes to the same reckoning as without
// this script, and the worksheet of the answer takes the old one's place.
for (const form of document.querySelectorAll("form[data-reckon]")) {
  const sheet = form.querySelector("[data-live]");
  const said = form.querySelector("[data-live-said]");
  const offline = form.querySelector("[data-live-offline]");
  let waiting = 0;
  let asking = null;

  // A sheet of something else than what is typed now must not be acted on.
  const hold = (held) => {
    sheet.classList.toggle("is-old", held);
    sheet.setAttribute("aria-busy", String(held));
    for (const button of sheet.querySelectorAll("button")) button.disabled = held;
  };

  const show = (page) => {
    const found = page.querySelector("[data-live] > *");
    const wrong = page.querySelector(".summary ul");
    sheet.replaceChildren();
    if (found) {
      sheet.append(document.importNode(found, true));
      said.textContent = found.dataset.said ?? "";
    } else if (wrong) {
      const list = document.importNode(wrong, true);
      list.className = "live-wrong";
      sheet.append(list);
      said.textContent = "";
    }
  };

  const reckon = async () => {
    asking?.abort();
    asking = new AbortController();
    const fields = new URLSearchParams(new FormData(form));
    fields.set("step", "reckon");
    try {
      const answer = await fetch(form.action.split("#")[0], {
        method: "POST",
        body: fields,
        signal: asking.signal,
        redirect: "error",
      });
      if (answer.status !== 200 && answer.status !== 422) throw new Error(answer.statusText);
      show(new DOMParser().parseFromString(await answer.text(), "text/html"));
      offline.hidden = true;
      hold(false);
    } catch (problem) {
      if (problem.name !== "AbortError") offline.hidden = false;
    }
  };

  const soon = () => {
    hold(true);
    window.clearTimeout(waiting);
    waiting = window.setTimeout(reckon, 300);
  };

  form.addEventListener("input", soon);
  window.addEventListener("online", () => {
    if (!offline.hidden) soon();
  });
}
