// How a page is laid out: sideways scrolling, what covers what, and the size of
// targets. Answers sentences; none is well. `arguments[0]`: are targets measured?
const found = [];
const name = (element) => {
  const said = (element.getAttribute("aria-label") || element.textContent || element.name || "").trim();
  const kind = element.tagName.toLowerCase() + (element.classList.length ? "." + element.classList[0] : "");
  return `${kind} "${said.replace(/\s+/g, " ").slice(0, 40)}"`;
};
const isShown = (element) =>
  element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !element.closest(".unseen, .skip");

// What is left of a box inside everything that cuts it off.
const clips = new Map();
const clipOf = (element) => {
  if (element === null || element === document.documentElement) {
    return { left: -Infinity, top: -Infinity, right: Infinity, bottom: Infinity };
  }
  if (!clips.has(element)) {
    let clip = clipOf(element.parentElement);
    if (getComputedStyle(element).overflowX !== "visible" && element !== document.body) clip = cut(element.getBoundingClientRect(), clip);
    clips.set(element, clip);
  }
  return clips.get(element);
};
const cut = (box, clip) => ({
  left: Math.max(box.left, clip.left),
  top: Math.max(box.top, clip.top),
  right: Math.min(box.right, clip.right),
  bottom: Math.min(box.bottom, clip.bottom),
});
const boxes = [];
const add = (element, rects, isText) => {
  for (const rect of rects) {
    const box = cut(rect, clipOf(isText ? element : element.parentElement));
    // The line of a text is higher than its letters.
    const spare = isText ? (box.bottom - box.top) * 0.2 : 0;
    const [top, bottom] = [box.top + spare, box.bottom - spare];
    if (box.right - box.left > 2 && bottom - top > 2) boxes.push({ element, isText, left: box.left, right: box.right, top, bottom });
  }
};

const room = document.documentElement.clientWidth;
if (document.documentElement.scrollWidth > room) {
  const wide = [...document.body.querySelectorAll("*")].filter(
    (element) => isShown(element) && cut(element.getBoundingClientRect(), clipOf(element.parentElement)).right > room + 0.5,
  );
  found.push(`is ${document.documentElement.scrollWidth} px wide, by ${wide.length ? name(wide[wide.length - 1]) : "nothing seen"}`);
}

const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
while (texts.nextNode()) {
  const text = texts.currentNode;
  if (text.data.trim() === "" || !isShown(text.parentElement)) continue;
  const range = document.createRange();
  range.selectNodeContents(text);
  add(text.parentElement, range.getClientRects(), true);
}
const controls = [...document.querySelectorAll("a[href], button, input:not([type=hidden]), select, textarea, summary, label.target")].filter(isShown);
for (const control of controls) add(control, control.getClientRects(), false);

const ofOne = (one, other) => one.element !== other.element && (one.element.contains(other.element) || other.element.contains(one.element));
boxes.sort((one, other) => one.top - other.top);
for (let at = 0; at < boxes.length; at += 1) {
  const one = boxes[at];
  for (let next = at + 1; next < boxes.length && boxes[next].top < one.bottom - 1; next += 1) {
    const other = boxes[next];
    if (one.element === other.element || (ofOne(one, other) && one.isText !== other.isText)) continue;
    if (ofOne(one, other) && !one.isText) continue;
    const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
    const high = Math.min(one.bottom, other.bottom) - other.top;
    if (wide > 1 && high > 1) found.push(`${name(one.element)} and ${name(other.element)} overlap by ${wide.toFixed(0)} × ${high.toFixed(0)} px`);
  }
}

if (arguments[0]) {
  const inSentence = (control) => control.tagName === "A" && getComputedStyle(control).display === "inline";
  const targets = controls.filter((control) => control.closest("main") && !inSentence(control) && !control.closest("label.target label.target"));
  const measured = targets.map((control) => [control, control.getBoundingClientRect()]);
  for (const [control, box] of measured) {
    if (box.width < 55.5 || box.height < 55.5) found.push(`${name(control)} is ${box.width.toFixed(0)} × ${box.height.toFixed(0)} px`);
  }
  measured.forEach(([one, a], at) => {
    for (const [other, b] of measured.slice(at + 1)) {
      if (one.contains(other) || other.contains(one)) continue;
      const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
      const down = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
      const gap = Math.max(across, down);
      if (gap < 11.5) found.push(`${name(one)} and ${name(other)} are ${gap.toFixed(0)} px apart`);
    }
  });
}
return [...new Set(found)];
