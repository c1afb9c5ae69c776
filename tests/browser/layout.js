// What is wrong with how a page is laid out, as a list of words: what is cut off, what stands out, what cannot be hit.
// The width is given, because a phone's browser zooms out of a page that is too wide, and innerWidth goes with it.
const width = arguments[0];
const found = [];
const root = document.documentElement;
const name = (element) =>
  `<${element.localName}${element.id && `#${element.id}`}${[...element.classList].map((word) => `.${word}`).join("")}>`;
// What stands at the foot of a phone is there for a glance, and ends where the window does.
const drawn = (element) => element.checkVisibility() && !element.closest(".unseen, .skip, .foot");

if (root.scrollWidth > width) found.push(`the page scrolls sideways: ${root.scrollWidth} in ${width}`);

for (const element of document.body.querySelectorAll("*")) {
  if (!drawn(element) || element.ownerSVGElement) continue;
  const style = getComputedStyle(element);
  const box = element.getBoundingClientRect();
  if (box.width && (box.left < -1 || box.right > width + 1)) {
    found.push(`${name(element)} stands out of the page: ${box.left} to ${box.right} of ${width}`);
  }
  // A choice whose words are shown once more in their place is not seen itself.
  if (style.opacity === "0") continue;
  // The name of a file is shortened by the browser itself.
  const isFile = element.localName === "input" && element.type === "file";
  const named = element.localName === "input" && !isFile;
  const hides = style.overflowX !== "visible" && element.localName !== "svg" && !isFile;
  const cut = element.scrollWidth > element.clientWidth + 1 && (hides || named);
  if (cut) found.push(`${name(element)} is cut off: ${element.scrollWidth} in ${element.clientWidth}`);
  const tall = style.overflowY !== "visible" && element.localName !== "svg" && element.localName !== "textarea";
  if (tall && element.scrollHeight > element.clientHeight + 1 && element.localName !== "select") {
    found.push(`${name(element)} is cut off below: ${element.scrollHeight} in ${element.clientHeight}`);
  }
}

// A choice does not tell how wide its words are; another with the same words and no limit does.
for (const select of document.querySelectorAll("select")) {
  // Where type is very large its words are shown once more, broken into lines, and its own are not seen.
  if (!drawn(select) || getComputedStyle(select).opacity === "0") continue;
  const twin = document.createElement("select");
  const words = select.selectedOptions[0]?.text ?? "";
  twin.add(new Option(words));
  twin.style.cssText = "position: absolute; inline-size: max-content; max-inline-size: none";
  select.after(twin);
  const needs = twin.offsetWidth;
  twin.remove();
  if (needs > select.offsetWidth + 1) {
    found.push(`${name(select)} is too narrow for "${words}": needs ${needs}, has ${select.offsetWidth}`);
  }
}

// Words in a drawing stay inside of it.
for (const text of document.querySelectorAll("svg text")) {
  const [inner, outer] = [text, text.ownerSVGElement].map((element) => element.getBoundingClientRect());
  if (drawn(text.ownerSVGElement) && (inner.left < outer.left - 1 || inner.right > outer.right + 1)) {
    found.push(`"${text.textContent}" stands out of its drawing`);
  }
}

// Something to press with a thumb.
for (const control of document.querySelectorAll("button, input, select, summary, nav a")) {
  const box = control.getBoundingClientRect();
  if (drawn(control) && box.height < 44) found.push(`${name(control)} is only ${box.height} high`);
}

// Whatever is in sight can be hit: nothing lies over it, at the top of the page or at its end.
for (const place of [0, root.scrollHeight]) {
  scrollTo({ top: place, behavior: "instant" });
  for (const control of document.querySelectorAll("a[href], button, input, select, summary")) {
    const box = control.getBoundingClientRect();
    const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
    if (!drawn(control) || y < 0 || y > document.documentElement.clientHeight) continue;
    const hit = document.elementFromPoint(x, y);
    if (hit && !control.contains(hit) && !hit.contains(control)) found.push(`${name(hit)} lies over ${name(control)}`);
  }
}
scrollTo({ top: 0, behavior: "instant" });

return found;
