// What can be read below an element, line by line, whatever boxes it stands in: words, fields with what stands in them,
// and drawings with their names and words. With it every choice that is offered there, with its keys.
const root = document.querySelector(arguments[0]);
const INLINE = "a abbr b bdi br button code em i kbd mark q s small span strong sub sup td th time u var".split(" ");
const FIELDS = "input select textarea".split(" ");
const lines = [];
const choices = [];
let line = "";

const plain = (text) => text.replace(/\s+/g, " ").trim();
const end = () => {
  if (plain(line)) lines.push(plain(line));
  line = "";
};
const own = (text) => {
  end();
  line = text;
  end();
};
const label = (field) => plain(field.getAttribute("aria-label") ?? field.labels?.[0]?.textContent ?? "") || field.id;
const wrong = (field) => (field.getAttribute("aria-invalid") === "true" ? " (wrong)" : "");

const choice = (select) => {
  const offered = [...select.options].map((option) => `${option.value}=${plain(option.text)}`);
  choices.push(`${label(select)}: ${offered.join(" | ")}`);
  return plain(select.selectedOptions[0]?.text ?? "");
};
const field = (element) => {
  if (element.type === "file") return own(`[${label(element)}]`);
  const value = element.localName === "select" ? choice(element) : element.value.replaceAll("\n", " ⏎ ");
  end();
  // What was typed is shown as it was typed, spaces and all.
  return lines.push(`[${label(element)}: ${value}]${wrong(element)}`);
};
const drawing = (svg) => {
  const name = svg.getAttribute("aria-label") ?? "";
  const words = [...svg.querySelectorAll("title, desc, text")].map((element) => plain(element.textContent));
  if (name || words.length) own(`{${[name, ...words].join(" · ")}}`);
};

const walk = (element) => {
  if (element.localName === "svg") return drawing(element);
  if (!element.checkVisibility()) return undefined;
  // What puts a tool into another page is no part of the tool.
  if (element.matches(".panel")) return undefined;
  if (FIELDS.includes(element.localName)) return field(element);
  // The label of a field is said with the field.
  if (element.localName === "label" && element.control) return undefined;
  const inline = INLINE.includes(element.localName);
  if (!inline) end();
  if (element.localName === "button") line += " <";
  if (["td", "th"].includes(element.localName)) line += " | ";
  for (const child of element.childNodes) {
    if (child.nodeType === Node.TEXT_NODE) line += child.textContent;
    if (child.nodeType === Node.ELEMENT_NODE) walk(child);
  }
  if (element.localName === "button") line += "> ";
  if (element.localName === "br" || !inline) end();
  return undefined;
};

if (root) {
  root.querySelectorAll("details:not(.panel, .panel *)").forEach((details) => {
    details.open = true;
  });
  walk(root);
}
return { lines, choices: [...new Set(choices)].sort() };
