// Asks the package in node what a page would ask it, and checks every answer.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import {
  castOn, initSync, printLength, printMass, readCount, readGauge, readLength, readMass, sizing, spacing, tail, yarn,
} from "loopwright";

initSync({ module: readFileSync(new URL(import.meta.resolve("loopwright/wasm"))) });

// An answer, with the row as text beside its data, all of it plain.
const { answer, problems } = spacing({ stitches: 132, ask: { Lose: 16 } });
assert.equal(problems, undefined);
assert.equal(answer.after, 116);
const way = answer.ways[answer.suggested];
assert.equal(way.text, "K3, k2tog, (K7, k2tog) 3 times, (K6, k2tog) 12 times, K4");
assert.deepEqual(way.row.items[0], { Run: { stitch: "Knit", count: 3 } });
assert.equal(answer.multiples, null);
assert.deepEqual(answer, JSON.parse(JSON.stringify(answer)));

// What is left out is usual; what is said counts.
const flat = spacing({ stitches: 20, ask: { Gain: 3 }, knitting: { Flat: { edge: "Mirrored" } }, increase: "Yo" });
assert.equal(flat.answer.change, "Yo");

// No answer is data with the nearest that can be had, never an exception.
assert.deepEqual(spacing({ stitches: 132, ask: { Lose: 100 } }), {
  problems: [{ field: "amount", kind: { TooMany: { most: 66 } } }],
});
assert.deepEqual(spacing({ stitches: 100, ask: { Reach: 95 }, decrease: "Cdd" }), {
  problems: [{ field: "amount", kind: { NoExact: { below: 94, above: 96 } } }],
});
assert.deepEqual(spacing({ stitches: 0, ask: { Lose: 1 } }).problems[0].field, "stitches");

// What is no question is a TypeError that names the field, and the next question is answered all the same.
for (const [wrong, says] of [
  [undefined, /^spacing: a question is an object/],
  [[], /^spacing: a question is an object/],
  [{ ask: { Lose: 1 } }, /^spacing: stitches: missing/],
  [{ stitches: 132.5, ask: { Lose: 1 } }, /^spacing: stitches: .*132\.5/],
  [{ stitches: -1, ask: { Lose: 1 } }, /^spacing: stitches: .*-1/],
  [{ stitches: NaN, ask: { Lose: 1 } }, /^spacing: stitches: /],
  [{ stitches: "132", ask: { Lose: 1 } }, /^spacing: stitches: .*132/],
  [{ stitches: 132, ask: { Loose: 1 } }, /^spacing: ask.*Loose/],
  [{ stitches: 132, ask: { Lose: "many" } }, /^spacing: ask\.Lose: .*many/],
  [{ stitches: 132, ask: { Lose: 1 }, decreese: "Ssk" }, /^spacing: decreese: there is no such field/],
]) {
  assert.throws(() => spacing(wrong), (error) => {
    assert.ok(error instanceof TypeError, String(error));
    assert.match(error.message, says);
    return true;
  });
}
assert.equal(spacing({ stitches: 132, ask: { Lose: 16 } }).answer.after, 116);

// A pattern's seven balls of 125 m are anything from 751 to 875 m, and five balls of 210 m.
const metres = (count) => readLength(`${count} m`, "M").value;
const ball = (count) => ({ length: metres(count), mass: readMass("50 g", "Gram").value });
const bought = yarn({ ask: { Balls: { balls: 7, ball: ball(125) } }, ball: ball(210), reserve: 0 }).answer;
assert.equal(bought.balls, 5);
assert.equal(bought.likely, 5);
assert.deepEqual(bought.length, { least: metres(751), expected: metres(875), most: metres(875) });
assert.equal(bought.notes[1], "OneDyeLot");
assert.throws(() => yarn({ ask: { Length: metres(750) } }), /^TypeError: yarn: reserve: missing/);

// A garment is the body and the ease that is wanted; a list of bodies is met with the body alone.
const centimetres = (count) => readLength(`${count} cm`, "Cm").value;
const size = (label, from, to = from) => ({
  label, girth: { from: centimetres(from), to: centimetres(to) }, stitches: null,
});
const sizes = [size("S", 86, 91), size("M", 91, 97), size("L", 97, 103)];
const fits = sizing({ bust: centimetres(94), sizes, listed: "Body" }).answer;
assert.equal(sizes[fits.pick].label, "M");
const finished = [size("S", 91), size("M", 97), size("L", 103)];
const garment = sizing({ bust: centimetres(91), sizes: finished, listed: "Garment" }).answer;
assert.equal(garment.pick, 1);
assert.equal(garment.ranked[0].ease, centimetres(6));
assert.deepEqual(sizing({ bust: centimetres(94), sizes, listed: null }).problems, [{ field: "listed", kind: "Missing" }]);

// 100 cm at 21 stitches in 10 cm are 210; a tail of an inch a stitch, 10 % on top, and 20 cm.
const gauge = readGauge("21", centimetres(10)).value;
const hem = castOn({ width: centimetres(100), gauge }).answer;
assert.equal(hem.pick.cast_on, 210);
assert.equal(hem.as_near, false);
const long = tail({ stitches: hem.pick.cast_on, yarn: { Class: "Medium" } }).answer;
assert.equal(long.tail, (210 * 25_400_000 * 11) / 10 + centimetres(20));
assert.deepEqual(tail({ stitches: 210 }).problems, [{ field: "yarn", kind: "Missing" }]);

// Quantities are exact, in and out.
assert.deepEqual(readLength("7 1/2 in", "Cm"), { value: 190_500_000, unit: { Length: "Inch" } });
assert.equal(readLength("19,5", "Cm").value, 195_000_000);
assert.equal(printLength(190_500_000, "Inch"), "7 1/2 in");
assert.equal(readMass("1 oz", "Gram").value, 28_349_523_125);
assert.equal(printMass(readMass("50", "Gram").value, "Ounce"), "1.76 oz");
assert.equal(readCount("1,000 sts").value, 1000);
assert.deepEqual(readCount("7 1/2"), { unreadable: { NotWhole: { below: 7, above: 8 } } });
assert.deepEqual(readGauge("21 1/2", readLength("10 cm", "Cm").value), {
  value: { thousandths: 21_500, span: 100_000_000 }, unit: null,
});
assert.deepEqual(readLength("50 g", "Cm"), {
  unreadable: { WrongKind: { written: { Mass: "Gram" }, wanted: "Length" } },
});
const far = readLength("1" + "0".repeat(30) + " m", "Cm").unreadable.TooLarge.most.Length;
assert.equal(far, Number.MAX_SAFE_INTEGER);
assert.throws(() => readLength("7", "Ell"), /^TypeError: readLength: unit: .*Ell/);
