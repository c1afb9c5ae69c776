// Stands before ask.mjs in a page that is bundled: what a browser does not start by itself.
import init from "loopwright";

await init();
