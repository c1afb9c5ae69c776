// Asks every tool in the entry with sentences: the data is the same, and what the app would say stands beside it.
import assert from "node:assert/strict";
import * as data from "loopwright";
import * as said from "loopwright/words";

const { measureIn, readGauge, readLength, readMass } = said;
const cm = (count) => readLength(`${count} cm`, "Cm").value;
const gauge = readGauge("21", cm(10)).value;
const row_gauge = readGauge("28", cm(10)).value;
const size = (label, girth) => ({ label, girth: { from: cm(girth), to: cm(girth) }, stitches: null });
const ball = { length: readLength("125 m", "M").value, mass: readMass("50 g", "Gram").value };

const questions = {
  swatch: { gauge },
  gauge: { stitches: [gauge] },
  sizing: { bust: cm(91), sizes: [size("S", 91), size("M", 97)], listed: "Garment" },
  regauge: { pattern: gauge, own: readGauge("22", cm(10)).value, counts: [180] },
  needles: { size: { Us: 28 } },
  cords: { around: { Even: { from: 90, to: 230, rounds: 60 } }, unwashed: gauge },
  yarn: { ask: { Balls: { balls: 7, ball } }, ball, reserve: 0 },
  castOn: { width: cm(100), gauge },
  tail: { stitches: 120, method: "Cable" },
  spacing: { stitches: 132, ask: { Lose: 16 } },
  rows: { ask: { Length: cm(40) }, gauge: row_gauge },
  shaping: { ask: { Lose: 18 }, rows: 66 },
  stairs: { stitches: 27, ask: { Steps: 4 } },
  raise: { across: { Stitches: 40 }, height: cm(2.5), rows: row_gauge },
  flare: { neck: 96, depth: cm(30), gauge, row_gauge },
  yoke: { from: 320, to: 96, rounds: 60, multiple: 8 },
  raglan: { body: 56, sleeve: 16, body_to: 200, sleeve_to: 68, underarm: 8, rounds: 64 },
  sizesInText: { text: "Sizes: S (M, L)\nCO 96 (108, 120) sts.\nWork 6 (7) rnds.", size: 1 },
  written: { text: "Sizes: S (M)\nCO 40 (42) sts.\nRnd 1: *K2, p2; rep from * to end." },
};

const others = ["default", "initSync", "measureIn", "printLength", "printMass"];
const tools = Object.keys(said).filter((name) => !others.includes(name) && !name.startsWith("read"));
assert.deepEqual(new Set(Object.keys(questions)), new Set(tools));
const everything = [];
for (const measures of ["centimetres", "inches"]) {
  measureIn(measures);
  for (const tool of tools) {
    const { words, ...outcome } = said[tool](questions[tool]);
    assert.deepEqual(outcome, data[tool](questions[tool]), tool);
    assert.ok(words.line, `${tool} says ${JSON.stringify(words ?? outcome)}`);
    everything.push(words.title, words.line, words.outcome, ...words.notes, ...words.working, words.source);
  }
}
for (const sentence of everything) assert.ok(sentence && !/[<>#@]|NaN|undefined/.test(sentence), sentence);

measureIn("centimetres");
const plain = (text) => text.replaceAll("\u00a0", " ");
assert.equal(plain(said.castOn(questions.castOn).words.outcome), "Washed, it is 100 cm round.");
measureIn("inches");
assert.equal(plain(said.castOn(questions.castOn).words.outcome), "Washed, it is 39 3/8 in round.");
assert.throws(() => measureIn("ells"), /^TypeError: measureIn: "centimetres" or "inches" is needed, not "ells"$/);

// Without an answer there is a sentence for each problem, of the same field.
const { problems, words } = said.spacing({ stitches: 132, ask: { Lose: 100 } });
assert.deepEqual(problems.map(({ field }) => field), words.map(({ field }) => field));
assert.match(words[0].sentence, /66/);
