// Asks the package in node what a page would ask it, and checks every answer.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import {
  initSync, printLength, printMass, readCount, readGauge, readLength, readMass, spacing,
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
