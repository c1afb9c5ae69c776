// The bundle may lie in any folder, and asks with our own assert: node's is not to be had in a browser.
import { fileURLToPath } from "node:url";

export default {
  base: "./",
  resolve: { alias: { "node:assert/strict": fileURLToPath(new URL("./assert.js", import.meta.url)) } },
};
