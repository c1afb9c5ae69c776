// Asks the package in node what a page would ask it, and checks every answer.
import assert from "node:assert/strict";
import {
  castOn, cords, flare, gauge as gaugeOf, needles, printLength, printMass, raglan, raise, readCount, readGauge,
  readLength, readMass, readNeedle, regauge, rows, shaping, sizesInText, sizing, spacing, stairs, swatch, tail, written,
  yarn, yoke,
} from "loopwright";

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
  [undefined, /^spacing: a question is an object$/],
  [null, /^spacing: a question is an object$/],
  [[], /^spacing: a question is an object$/],
  [{ ask: { Lose: 1 } }, /^spacing: stitches: missing$/],
  [{ stitches: null, ask: { Lose: 1 } }, /^spacing: stitches: a whole number .* is needed, not null$/],
  [{ stitches: 132.5, ask: { Lose: 1 } }, /^spacing: stitches: a whole number from 0 to 4294967295 is needed, not 132\.5$/],
  [{ stitches: -1, ask: { Lose: 1 } }, /^spacing: stitches: .* not -1$/],
  [{ stitches: NaN, ask: { Lose: 1 } }, /^spacing: stitches: .* not NaN$/],
  [{ stitches: 132n, ask: { Lose: 1 } }, /^spacing: stitches: .* not bigint$/],
  [{ stitches: "132", ask: { Lose: 1 } }, /^spacing: stitches: .* not "132"$/],
  [{ stitches: 132, ask: { Loose: 1 } }, /^spacing: ask: "Lose", .*"Multiple" is needed, not \{"Loose":1\}$/],
  [{ stitches: 132, ask: { Lose: "many" } }, /^spacing: ask\.Lose: a whole number .* not "many"$/],
  [{ stitches: 132, ask: { Multiple: { of: 8 } } }, /^spacing: ask\.Multiple: plus: missing$/],
  [{ stitches: 132, ask: { Lose: 1 }, knitting: { Flat: { edge: { Mirrored: 1 } } } }, /edge.*the name alone is needed, not 1$/],
  [{ stitches: 132, ask: { Lose: 1 }, decreese: "Ssk" }, /^spacing: decreese: there is no such field$/],
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

// 21 stitches where the pattern has 19: too many, so up; the mean is over the spots, and a swatch has room on both sides.
const nineteen = readGauge("19", centimetres(10)).value;
const own = gaugeOf({ stitches: [gauge], pattern: nineteen }).answer;
assert.deepEqual(own.next, { Up: { sizes: 2 } });
assert.equal(own.stitches.would_be, 904_761_905);
assert.equal(own.rows, null);
assert.deepEqual(gaugeOf({ stitches: [] }).problems, [{ field: "stitches", kind: "Missing" }]);
const plan = swatch({ gauge, rows: readGauge("28", centimetres(10)).value }).answer;
assert.equal(plan.needles, null);
const { needles: beside } = swatch({ gauge, needle: readNeedle("4 mm").value }).answer;
assert.equal(beside.thinner.across, readNeedle("3.75 mm").value);
assert.deepEqual([plan.cast_on, plan.measured, plan.rows.count], [43, 21, 42]);
// US 7 is 4.5 mm, and 12 is no needle; 90 to 230 stitches take two cords.
const seven = needles({ size: { Us: 28 } }).answer.needles;
assert.deepEqual([seven.length, seven[0].across, seven[0].hole], [1, 4_500_000, 4_500_000]);
assert.deepEqual(needles({ size: { Us: 48 } }).problems, [
  { field: "size", kind: { NoExact: { below: 11, above: 13 } } },
]);
const growing = { around: { Even: { from: 90, to: 230, rounds: 60 } } };
const along = cords({ ...growing, unwashed: readGauge("20", centimetres(10)).value }).answer;
assert.deepEqual(along.picks, [centimetres(40), centimetres(60)]);
assert.deepEqual(along.plan[1], { by: { Cord: centimetres(60) }, earliest: 14, latest: 31, last: 60 });
assert.deepEqual(cords(growing).problems, [{ field: "gauge", kind: "Missing" }]);

// 18 stitches in 66 rows: one pair at once, eight more behind 7 plain rows each; and a shoulder in steps.
const slope = shaping({ ask: { Lose: 18 }, rows: 66 }).answer;
assert.deepEqual(slope.schedule.blocks, [{ plain: 0, change: 2, times: 1 }, { plain: 7, change: 2, times: 8 }]);
assert.deepEqual([slope.used, slope.schedule.left, slope.pair.first], [65, 1, "Ssk"]);
assert.deepEqual(shaping({ ask: { Lose: 80 }, rows: 66 }).problems[0], { field: "rows", kind: { TooFew: { least: 80 } } });
const shoulder = stairs({ stitches: 27, ask: { Steps: 4 } }).answer;
assert.deepEqual(shoulder.stairs.map(({ row, stitches }) => [row, stitches]), [[1, 7], [3, 7], [5, 7], [7, 6]]);

// A back neck raised by 2.5 cm at 32 rows in 10 cm: 8 rows, so 4 turns at each side, each row as text beside its data.
const back = raise({
  across: { Stitches: 40 }, height: readLength("2.5 cm", "Cm").value,
  rows: readGauge("32", readLength("10 cm", "Cm").value).value,
}).answer;
assert.deepEqual(back.turns, [5, 10, 15, 20]);
assert.deepEqual(back.rows.map((row) => row.text).slice(0, 2), ["K6", "P11"]);
assert.deepEqual(back.rows[0].worked, { items: [{ Run: { stitch: "Knit", count: 6 } }] });
assert.equal(back.raised, readLength("2.5 cm", "Cm").value);
assert.throws(() => raise({ across: { Stitches: 40 }, height: back.raised }), /^TypeError: raise: rows: missing/);

// A flat circle of 21 by 28 gains 4.712 stitches a round; a yoke and a raglan are other sums.
const row_gauge = readGauge("28", centimetres(10)).value;
const cape = { neck: 96, depth: centimetres(30), gauge, row_gauge };
const circle = flare(cape).answer;
assert.deepEqual([circle.rounds, circle.flat_rate, circle.flat_gain, circle.hem, circle.hang], [84, 4712, 396, 488, "Flat"]);
assert.equal(flare({ ...cape, hem: { Girth: centimetres(300) } }).answer.hang, "Ruffle");
assert.deepEqual(flare({ ...cape, hem: { Stitches: 397 } }).problems, [
  { field: "stitches", kind: { NoExact: { below: 392, above: 400 } } },
]);
const yoked = yoke({ from: 320, to: 96, rounds: 60, multiple: 8 }).answer;
assert.deepEqual(yoked.rounds.map(({ round, percent, after }) => [round, percent, after]), [
  [21, 18, 264], [33, 21, 208], [46, 27, 152], [59, 37, 96],
]);
assert.equal(typeof yoked.rounds[0].text, "string");
assert.deepEqual([yoked.plain, yoked.division.back, yoked.division.body_round], [20, 96, 208]);
const seams = raglan({ body: 56, sleeve: 16, body_to: 200, sleeve_to: 68, underarm: 8, rounds: 64 }).answer;
assert.deepEqual([seams.full, seams.body_only, seams.needle, seams.aside], [22, 10, 304, 60]);
// Body and sleeves are two tracks; without a rhythm it is the easiest.
assert.deepEqual(seams.body.schedule.blocks, [{ plain: 0, change: 4, times: 1 }, { plain: 1, change: 4, times: 31 }]);
assert.equal(seams.sleeves.schedule.blocks.reduce((sum, block) => sum + block.times, 0), 22);

// 40 cm at 28 rows in 10 cm are 112, nearest to which nine repeats of 12 end; 60 rows of 20 cm are on course at 30.
const washed = readGauge("28", centimetres(10)).value;
const unwashed = readGauge("30", centimetres(10)).value;
const tape = { rows: 60, length: centimetres(20) };
const body = rows({ ask: { Length: centimetres(40) }, gauge: washed, unwashed, repeat: 12, tape }).answer;
assert.deepEqual([body.pick.rows, body.repeats, body.ends], [108, 9, true]);
assert.deepEqual([body.course.standing, body.course.to_go], ["OnCourse", 48]);
assert.deepEqual(rows({ ask: { Rows: 0 }, gauge: washed }).problems, [{ field: "rows", kind: { TooFew: { least: 1 } } }]);

// 180 stitches at 20 in 10 cm are 198 at 22, and 196 as they are come nearest to 91 cm.
const [theirs, ours] = ["20", "22"].map((count) => readGauge(count, centimetres(10)).value);
const converted = regauge({ pattern: theirs, own: ours, counts: [180, 196], wanted: centimetres(91) }).answer;
assert.deepEqual(converted.stitches.map((found) => found.count), [198, 216]);
assert.equal(converted.follow.size, 1);
assert.deepEqual(regauge({ pattern: theirs, own: ours }).problems, [{ field: "counts", kind: "Missing" }]);

// A pattern for three sizes: hers is the second, and of two numbers for three sizes nobody can say which is hers.
const pattern = "Sizes: S (M, L)\nCO 96 (108, 120) sts.\nWork 6 (7) rnds.";
const marked = sizesInText({ text: pattern, size: 1 }).answer;
assert.deepEqual([marked.names, marked.named_in], [["S", "M", "L"], 0]);
assert.deepEqual([marked.marked, marked.in_doubt], [2, 1]);
assert.deepEqual(sizesInText({ text: "" }).problems.map(({ field }) => field), ["pattern_text"]);

// 42 stitches leave two over behind ten times four, and the smaller size comes out.
const lines = written({ text: "Sizes: S (M)\nCO 40 (42) sts.\nRnd 1: *K2, p2; rep from * to end." }).answer;
assert.deepEqual([lines.worked, lines.failing, lines.failures[0].size], [2, 1, 1]);
assert.deepEqual(lines.failures[0].worked.outcome, { LeftOver: { stitches: 2, repeats: 10 } });
assert.equal(written({ text: "K10" }).answer, undefined);

// Quantities are exact, in and out.
assert.deepEqual(readLength("7 1/2 in", "Cm"), { value: 190_500_000, unit: { Length: "Inch" } });
assert.equal(readLength("19,5", "Cm").value, 195_000_000);
assert.equal(printLength(190_500_000, "Inch"), "7 1/2 in");
assert.equal(readMass("1 oz", "Gram").value, 28_349_523_125);
assert.equal(printMass(readMass("50", "Gram").value, "Ounce"), "1.76 oz");
assert.equal(readCount("1,000 sts").value, 1000);
assert.deepEqual(readCount("7 1/2"), { unreadable: { NotWhole: { below: 7, above: 8 } } });
assert.deepEqual(readNeedle("6 US"), { value: 4000000, unit: null });
assert.deepEqual(readNeedle("10½").unreadable.Ambiguous.first, { Length: { value: 10500000, unit: "Mm" } });
assert.deepEqual(readGauge("21 1/2", readLength("10 cm", "Cm").value), {
  value: { thousandths: 21_500, span: 100_000_000 }, unit: null,
});
assert.deepEqual(readLength("50 g", "Cm"), {
  unreadable: { WrongKind: { written: { Mass: "Gram" }, wanted: "Length" } },
});
const far = readLength("1" + "0".repeat(30) + " m", "Cm").unreadable.TooLarge.most.Length;
assert.equal(far, Number.MAX_SAFE_INTEGER);
assert.throws(() => readLength("7", "Ell"), /^TypeError: readLength: unit: .*not "Ell"$/);
for (const [wrong, message] of [
  [() => readLength(5, "Cm"), "readLength: text: a string is needed, not 5"],
  [() => readLength(null, "Cm"), "readLength: text: a string is needed, not null"],
  [() => readMass({}, "Gram"), "readMass: text: a string is needed, not {}"],
  [() => readCount(132), "readCount: text: a string is needed, not 132"],
  [() => readGauge(21, 1e8), "readGauge: text: a string is needed, not 21"],
  [() => readGauge("21", 0), "readGauge: over: a span is above zero"],
  [() => printLength(1.5, "Cm"), /^printLength: length: a whole number from .* is needed, not 1\.5$/],
]) {
  assert.throws(wrong, { name: "TypeError", message });
}

// A field counts wherever the object has it from, and a getter that throws has its own error.
class Hem {
  get width() { return centimetres(100); }
  get gauge() { return gauge; }
}
assert.equal(castOn(new Hem()).answer.pick.cast_on, 210);
assert.equal(castOn(Object.create({ width: centimetres(100), gauge })).answer.pick.cast_on, 210);
const broken = new RangeError("no hem yet");
assert.throws(() => castOn({ get width() { throw broken; }, gauge }), (error) => error === broken);
