// Runs the bundled page in node, where the one thing that a browser does otherwise is fetching a file beside the script.
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";

const files = readdirSync("dist/assets");
const only = (end) => {
  const found = files.filter((name) => name.endsWith(end));
  assert.equal(found.length, 1, `one file that ends in ${end}: ${files}`);
  return found[0];
};
const wasm = only(".wasm");
let fetched = [];
globalThis.fetch = async (address) => {
  fetched.push(String(address));
  return new Response(readFileSync(`dist/assets/${wasm}`), { headers: { "content-type": "application/wasm" } });
};
// The bundler's own first lines ask whether the browser knows links that load ahead; this one does.
globalThis.document = { createElement: () => ({ relList: { supports: () => true } }) };
await import(`${process.cwd()}/dist/assets/${only(".js")}`);
assert.equal(fetched.length, 1, String(fetched));
assert.ok(fetched[0].endsWith(wasm), `${fetched[0]} is ${wasm}`);
assert.ok(globalThis.asked, "the page did not come to its end");
