// A page that uses the element, for TypeScript to read: what is right compiles, and each line below `@ts-expect-error`
// does not.
/// <reference path="./embed.d.ts" />

const tool = document.querySelector("loopwright-tool")!;
tool.setAttribute("values", "stitches=132&amount=16");

tool.addEventListener("loopwright-answer", ({ detail }) => {
  if ("sentence" in detail) document.title = detail.sentence;
  else document.title = detail.problems.map(({ field, sentence }) => `${field}: ${sentence}`).join(" ");
});

export async function after(stitches: string): Promise<number | undefined> {
  const answer = await tool.ask({ stitches });
  return "figures" in answer ? answer.figures.find(({ name }) => name === "after")?.value : undefined;
}

// @ts-expect-error: values are texts, as typed.
tool.ask({ stitches: 132 });
// @ts-expect-error: what was answered is not written to.
tool.answer = null;
// @ts-expect-error: an answer may be problems.
tool.answer?.sentence;
