// What the declarations allow, and what they refuse: only looked at by TypeScript, never run.
import { readGauge, readLength, spacing } from "loopwright";
import { measureIn, spacing as inWords } from "loopwright/words";
import type { InWords } from "loopwright/words";
import type { Gauge, Problem, SpacingAnswer, SpacingQuestion, SpacingResult } from "loopwright";

const question: SpacingQuestion = {
  stitches: 132,
  ask: { Lose: 16 },
  decrease: "K2tog",
  increase: "M1",
  knitting: { Round: { end_on_change: false } },
  face: "Knit",
  fabric: "Stockinette",
};
const result: SpacingResult = spacing(question);
if (result.answer) {
  const answer: SpacingAnswer = result.answer;
  const text: string = answer.ways[answer.suggested].text;
  const below: number | undefined = answer.multiples?.below?.stitches;
  text.concat(String(below));
} else {
  const problems: Problem[] = result.problems;
  problems.map((problem) => problem.field);
}
spacing({ stitches: 90, ask: { Multiple: { of: 8, plus: 3 } }, knitting: { Flat: { edge: { AtLeast: 2 } } } });

const span = readLength("10 cm", "Cm");
if (span.value !== undefined) {
  const gauge: Gauge | undefined = readGauge("21", span.value).value;
  gauge?.span.toFixed();
}

const told: InWords<SpacingResult> = inWords(question);
if (told.answer) told.words.line.concat(told.words.notes.join());
else told.words.map(({ field, sentence }) => `${field}: ${sentence}`);
measureIn("inches");

// @ts-expect-error: there are no such units
measureIn("ells");
// @ts-expect-error: without looking, there may be no line
told.words.line;
// @ts-expect-error: the count has to be said
spacing({ ask: { Lose: 16 } });
// @ts-expect-error: there is no such decrease
spacing({ stitches: 90, ask: { Lose: 16 }, decrease: "K4tog" });
// @ts-expect-error: there is no such unit
readLength("7", "Ell");
// @ts-expect-error: without looking, there may be no answer
spacing(question).answer.after;
