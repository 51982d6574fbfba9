// The states of controls. Without arguments: the kinds of control of the page, each
// with the place of its first one. With a place and a state: puts that control in
// it and answers where to look; nothing where it has no such state.
const controls = [...document.querySelectorAll("a[href], button, input:not([type=hidden]), select, textarea, summary")];
if (arguments.length === 0) {
  const kinds = new Map();
  controls.forEach((control, at) => {
    if (!control.checkVisibility()) return;
    const around = control.closest(".target, .places, .display, .more-sheet, .actions, .links")?.className ?? "";
    const kind = `${control.tagName} ${control.type ?? ""} ${control.className} in ${around} of ${document.body.className}`;
    if (!kinds.has(kind)) kinds.set(kind, at);
  });
  return [...kinds];
}
const [at, state] = arguments;
const control = controls[at];
document.activeElement.blur();
for (const one of document.querySelectorAll("[data-was-able]")) {
  one.disabled = false;
  delete one.dataset.wasAble;
}
if (state === "focus") control.focus();
if (state === "disabled") {
  if (!("disabled" in control)) return null;
  control.disabled = true;
  control.dataset.wasAble = "";
}
if (state === "chosen") {
  if (control.type !== "radio" && control.type !== "checkbox") return null;
  control.checked = true;
}
const box = (control.closest(".target") ?? control).getBoundingClientRect();
const edge = 16;
return {
  x: Math.max(0, box.left + scrollX - edge),
  y: Math.max(0, box.top + scrollY - edge),
  width: box.width + 2 * edge,
  height: box.height + 2 * edge,
  scale: 1,
};
