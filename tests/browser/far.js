// What a person three metres from the wall misses; answers sentences, none is well.
// `arguments`: how many trays stand on it, and a font for the verdicts, or nothing.
const [trays, font] = arguments;
const LEAST = 63; // px: 17.5 mm on a screen of 24 in, 20 minutes of arc at three metres
const found = [];
const words = [...document.querySelectorAll(".verdict-word")];
if (words.length !== trays) found.push(`shows ${words.length} verdicts`);
const pen = document.createElement("canvas").getContext("2d");
for (const word of words) {
  word.style.fontFamily = font;
  const { fontWeight, fontSize, fontFamily } = getComputedStyle(word);
  pen.font = `${fontWeight} ${fontSize} ${fontFamily}`;
  const high = pen.measureText("H").actualBoundingBoxAscent;
  if (high < LEAST) found.push(`${word.textContent.trim()} is ${high.toFixed(1)} px high`);
}

// Everything in which a part of the page is cut off, the window last.
const frames = (element) => {
  const all = [];
  for (let at = element; at !== document.documentElement; at = at.parentElement) {
    if (getComputedStyle(at).overflow !== "visible" && at !== document.body) all.push(at.getBoundingClientRect());
  }
  return [...all, { left: 0, top: 0, right: innerWidth, bottom: innerHeight }];
};
const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
while (texts.nextNode()) {
  const around = texts.currentNode.parentElement;
  if (texts.currentNode.data.trim() === "" || !around.checkVisibility() || around.closest(".unseen")) continue;
  const range = document.createRange();
  range.selectNodeContents(texts.currentNode);
  for (const line of range.getClientRects()) {
    // A line is higher than its letters.
    const spare = line.height * 0.2;
    const isWhole = frames(around).every(
      (frame) => line.left >= frame.left - 1 && line.right <= frame.right + 1 && line.top + spare >= frame.top && line.bottom - spare <= frame.bottom,
    );
    if (!isWhole) found.push(`“${texts.currentNode.data.trim().slice(0, 40)}” is cut off`);
  }
}
return [...new Set(found)];
