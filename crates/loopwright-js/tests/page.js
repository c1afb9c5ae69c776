// A page that is bundled: it starts, and calls every function there is.
import init, * as loopwright from "loopwright";

await init();
const names = Object.keys(loopwright).filter((name) => name !== "default" && name !== "initSync");
const called = names.map((name) => {
  try {
    return [name, loopwright[name]({}, {})];
  } catch (error) {
    return [name, error.constructor.name];
  }
});
globalThis.answered({
  called,
  changes: loopwright.spacing({ stitches: 132, ask: { Lose: 16 } }).answer.changes,
});
