/** An answer in the words of the app. */
export interface AnswerInWords {
  /** What stands above the line: "Work this round once". */
  title: string;
  /** What is knitted, bought or done. */
  line: string;
  /** What it comes to: "132 stitches become 116." */
  outcome: string;
  /** What else is good to know. */
  notes: string[];
  /** The sum, line by line. */
  working: string[];
  /** Where the rule comes from, and how sure it is. */
  source: string;
}

/** What to type instead, for a problem of the same field. */
export interface ProblemInWords {
  field: string;
  sentence: string;
}

/** What a tool says, and beside it the words of the app. */
export type InWords<R> = R extends { answer: object } ? R & { words: AnswerInWords } : R & { words: ProblemInWords[] };
