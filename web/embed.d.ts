/**
 * The types of what embed.js defines: the element `<loopwright-tool>`, its methods and its event.
 *
 * ```ts
 * /// <reference path="./embed.d.ts" />
 * const tool = document.querySelector("loopwright-tool");
 * tool?.addEventListener("loopwright-answer", ({ detail }) => {
 *   if ("sentence" in detail) console.log(detail.sentence);
 * });
 * ```
 */

/** One number of an answer. */
interface LoopwrightFigure {
  /** What it is: the name that the answer's field has in the package for JavaScript. */
  readonly name: string;
  /** How much. */
  readonly value: number;
  /** Of what; where it is not there, stitches, rows, rounds or balls are counted. */
  readonly unit?: "mm" | "g" | "per_10_cm";
}

/** The values of a tool's fields as typed, by the names that a link has for them: `stitches`, `width`, `width.unit`. */
type LoopwrightValues = Readonly<Record<string, string>>;

/** An answer, as figures and as plain text. */
interface LoopwrightAnswered {
  /** The tool that was asked. */
  readonly tool: string;
  /** What was typed or preset. */
  readonly question: LoopwrightValues;
  /** The answer in one line of plain text. */
  readonly sentence: string;
  /** Its numbers. */
  readonly figures: readonly LoopwrightFigure[];
}

/** Something that keeps a question from being answered. */
interface LoopwrightProblem {
  /** The field it is about. */
  readonly field: string;
  /** What to type, as plain text. */
  readonly sentence: string;
}

/** A question without an answer. */
interface LoopwrightUnanswered {
  /** The tool that was asked. */
  readonly tool: string;
  /** What was typed or preset. */
  readonly question: LoopwrightValues;
  /** What is wrong; while nothing is typed yet, what is missing. */
  readonly problems: readonly LoopwrightProblem[];
}

/** What a tool says to what stands in its fields. */
type LoopwrightAnswer = LoopwrightAnswered | LoopwrightUnanswered;

/** The element. Its attributes are described in embed.js. */
interface LoopwrightToolElement extends HTMLElement {
  /** The last answer, or `null` as long as there was none. */
  readonly answer: LoopwrightAnswer | null;
  /**
   * The answer to other values than those that stand in the fields, which stay as they are. A value that is not named
   * counts as it stands there. Rejects if the tool does not answer within fifteen seconds.
   */
  ask(values: LoopwrightValues | string): Promise<LoopwrightAnswer>;
}

interface HTMLElementTagNameMap {
  "loopwright-tool": LoopwrightToolElement;
}

interface HTMLElementEventMap {
  "loopwright-answer": CustomEvent<LoopwrightAnswer>;
}
