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
