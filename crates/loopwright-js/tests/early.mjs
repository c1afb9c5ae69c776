// Calls every function before the start, by the entry that does not start itself.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";

const beside = new URL("index.js", import.meta.resolve("loopwright"));
const { default: init, initSync, ...functions } = await import(beside);
assert.ok(Object.keys(functions).length >= 22);
for (const [name, call] of Object.entries(functions)) {
  assert.throws(() => call({}, {}), new RegExp(`^Error: loopwright: call init first.*${name}$`));
}
initSync(readFileSync(new URL(import.meta.resolve("loopwright/wasm"))));
assert.equal(functions.readCount("132").value, 132);
await init();
assert.equal(functions.readCount("132").value, 132);
