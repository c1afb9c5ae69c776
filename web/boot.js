// Boot: starts the app, keeps it for offline use, and shows what is stored should the app stop.
//
// It speaks with the app by attributes of <html> and events on window only:
//   data-offline="ready"    everything is kept; the page works without a network
//   data-update="waiting"   a newer version waits for the reader's word
//   data-touched="yes"      (set by the app) something was changed in this visit
//   loopwright:offline, loopwright:update    the two first attributes have been set
//   loopwright:accept       (fired by the app, its storage flushed) take the newer version now
//   loopwright:copy         (fired by the app) make one file of the page
//   data-copy="blob:..."    the address of that file; empty where it could not be made
//   loopwright:copied       the attribute has been set
// and of a tool that is framed by another page:
//   loopwright:tell         (fired by the app) its detail goes to that page: an answer, or the reply to a question
//   loopwright:drawn        the first page, or the recover screen, is drawn
//   loopwright:ask          its detail is a question of that page

const page = document.documentElement.dataset;
const tell = (what, detail) => window.dispatchEvent(new CustomEvent(`loopwright:${what}`, { detail }));

// A page that is one file is copied from how it stood before the app drew anything.
const wholePage = document.getElementById("loopwright-wasm") && document.documentElement.cloneNode(true);

// ---- Trusted Types --------------------------------------------------------------------------------------------

// Where a browser knows them, the page's policy (CSP) lets no text become a script, the address of one or a piece of page, and
// lets one policy of Trusted Types be made, by this name. It is made here, so that nobody else makes it, and whatever it is
// asked for it lets through the worker's address alone.
const WORKER = "./sw.js";
const worker = trusted()?.createScriptURL("") ?? WORKER;

function trusted() {
  try {
    return window.trustedTypes?.createPolicy("loopwright", { createScriptURL: () => WORKER });
  } catch (reason) {
    // A host's header may forbid it. Then the page is not kept for offline use, and works.
    console.warn("No Trusted Types:", reason);
  }
}

// ---- Start ----------------------------------------------------------------------------------------------------

// A Rust panic ends in a trap, a RuntimeError. What a function of the browser throws into the app, or the glue itself, goes
// through the app's functions, and none of them comes to its end. From then on the app's memory cannot be trusted.
const isTrap = (reason) => typeof WebAssembly === "object" && reason instanceof WebAssembly.RuntimeError;
// All engines call the functions of a WebAssembly so where an error says whence it came.
const wentThroughTheApp = (reason) => /wasm-function/.test(reason?.stack);
const hasStopped = (reason) => isTrap(reason) || wentThroughTheApp(reason);
// Of a page that was opened from a file some browsers tell this and no more. There all scripts are the page's own.
const isUntold = (event) => wholePage && !event.error && event.message === "Script error.";
window.addEventListener("error", (event) => (isUntold(event) || hasStopped(event.error)) && recover());
window.addEventListener("unhandledrejection", (event) => hasStopped(event.reason) && recover());

import("./loopwright-app.js")
  // The page has asked for the program already (index.html).
  .then((glue) => glue.default({ module_or_path: window.loopwrightProgram }))
  .catch((reason) => {
    console.error(reason);
    recover();
  })
  // Even after a failed start: a broken version must be able to learn that there is a better one.
  .finally(firstPage)
  .finally(() => tell("drawn"))
  .finally(keepForOffline);

if (window.parent !== window) speakWithHost();

// How long anything here waits for something else, in milliseconds.
const PATIENCE = 10_000;

// Waits until the first page or the recover screen is drawn. The worker fetches all files once more, and on a slow
// connection they would hold up the first answer. It does not wait for ever: a version that neither draws one nor stops
// must be able to learn of a better one as well.
function firstPage() {
  return new Promise((resolve) => {
    const app = document.getElementById("app");
    const look = () => {
      if (!recovering && !app.querySelector(":scope > :not(.waiting)")) return;
      watch.disconnect();
      // A frame is drawn after its callbacks, so what follows them comes after the drawing.
      requestAnimationFrame(() => setTimeout(resolve));
    };
    const watch = new MutationObserver(look);
    // The app hides with the recover screen.
    watch.observe(app, { childList: true, attributes: true });
    setTimeout(resolve, PATIENCE);
    look();
  });
}

// ---- The page around a framed tool ----------------------------------------------------------------------------

// The page around this one sends one end of a channel (embed.js), and all that is said goes through it: nothing is ever
// posted to a window, so that a stranger hears nothing. The first end that comes is taken, and no other.
function speakWithHost() {
  // A question or values longer than this are nobody's knitting.
  const LONGEST = 8_000;
  let port = null;
  let answer = null;
  let isListening = false;
  const waiting = [];

  const take = (event) => {
    const { data, ports, source } = event;
    // By its own properties: what a message inherits was not said.
    const [[name, value] = [], ...more] = Object.entries(Object(data));
    const isGreeting = name === "loopwright" && value === 1 && more.length === 0 && ports.length === 1;
    if (source !== window.parent || !isGreeting) return;
    window.removeEventListener("message", take);
    port = ports[0];
    port.onmessage = ({ data }) => hear(Object(data));
    sendHeight();
    if (answer) port.postMessage(answer);
  };
  window.addEventListener("message", take);

  const isText = (value) => typeof value === "string" && value.length <= LONGEST;

  const hear = ({ set, ask, values }) => {
    const [tool] = location.hash.split("?");
    if (isText(set) && tool.startsWith("#/embed/")) location.replace(`${tool}?${set}`);
    if (Number.isSafeInteger(ask) && isText(values)) {
      waiting.push({ ask, values });
      passOn();
    }
  };

  // Before its first answer the app does not listen yet. It answers while it is asked, and is asked one thing at a time.
  let isAsking = false;
  const passOn = () => {
    if (isAsking) return;
    isAsking = true;
    while (isListening && waiting.length) tell("ask", waiting.shift());
    isAsking = false;
  };

  window.addEventListener("loopwright:tell", ({ detail }) => {
    if (!("reply" in detail)) answer = detail;
    port?.postMessage(detail);
    isListening = true;
    sendHeight();
    passOn();
  });

  // The words that stand there while the app is loaded are not what the frame's height is for, and nor is the moment
  // between them and the first page, in which there is nothing.
  const sendHeight = () => {
    const isDrawn = recovering || document.querySelector("#app > :not(.waiting)");
    const { height } = document.documentElement.getBoundingClientRect();
    if (isDrawn) port?.postMessage({ height: Math.ceil(height) });
  };
  window.addEventListener("loopwright:drawn", sendHeight);
  new ResizeObserver(sendHeight).observe(document.documentElement);
}

// ---- Recover --------------------------------------------------------------------------------------------------

let recovering = false;

// The version of the database that the app knows (store/idb.rs).
const DATABASE_VERSION = 1;

function recover() {
  if (recovering) return;
  recovering = true;
  document.getElementById("app").hidden = true;
  document.getElementById("recover").hidden = false;
  // A page that is one file has nothing to fetch, and not the script that fetches it.
  const openAgain = window.loopwrightOpenAgain ?? (() => location.reload());
  document.getElementById("recover-reload").addEventListener("click", openAgain);
  const text = document.getElementById("recover-text");
  document.getElementById("recover-copy").addEventListener("click", () => copy(text));
  tellWhatIsStored();
}

// What was found decides what is said of it, and what was not found is not claimed.
async function tellWhatIsStored() {
  const silence = setTimeout(say, PATIENCE, "silent", []);
  try {
    const { version, records } = await stored();
    if (version <= DATABASE_VERSION) say(records.length ? "something" : "nothing", records);
    else say(records.length ? "newer" : "newer-only", records);
  } catch (reason) {
    document.getElementById("recover-why").textContent = reason;
    say("unread", []);
  }
  clearTimeout(silence);
}

// The sentences stand in the page.
function say(found, records) {
  for (const sentence of document.querySelectorAll("[data-found]")) sentence.hidden = sentence.dataset.found !== found;
  document.getElementById("recover-stored").hidden = records.length === 0;
  document.getElementById("recover-text").value = records.map(asText).join("\n");
}

// A record is text, as the app writes it; whatever else stands there is shown as well as it goes.
function asText(record) {
  try {
    return typeof record === "string" ? record : JSON.stringify(record) ?? String(record);
  } catch {
    return String(record);
  }
}

// The version of the database, and the records of the app's log, oldest first, read without the app.
function stored() {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open("loopwright");
    // Only called when there is no database. It must not be made here, or the app would find an empty one.
    opening.onupgradeneeded = () => opening.transaction.abort();
    const nothing = { version: 0, records: [] };
    opening.onerror = () => (opening.error?.name === "AbortError" ? resolve(nothing) : reject(opening.error));
    opening.onsuccess = () => {
      const database = opening.result;
      // A newer version in another window must be able to rebuild it while this screen is shown.
      database.onversionchange = () => database.close();
      const { version } = database;
      if (!database.objectStoreNames.contains("log")) return resolve({ version, records: [] });
      const reading = database.transaction("log").objectStore("log").getAll();
      reading.onsuccess = () => resolve({ version, records: reading.result });
      reading.onerror = () => reject(reading.error);
    };
  });
}

// Selected as well: where the clipboard is not to be had, the reader's own "copy" works on the selection.
function copy(text) {
  text.focus();
  text.select();
  navigator.clipboard?.writeText(text.value).catch(() => {});
}

// ---- The page as one file -------------------------------------------------------------------------------------

window.addEventListener("loopwright:copy", async () => {
  try {
    const html = wholePage ? `<!doctype html>${wholePage.outerHTML}` : await (await import("./one-file.js")).assemble();
    page.copy = URL.createObjectURL(new Blob([html], { type: "text/html" }));
  } catch (reason) {
    console.warn("The page could not be made one file:", reason);
    page.copy = "";
  }
  tell("copied");
});

// ---- Offline and update ---------------------------------------------------------------------------------------

// A framed page is a guest and keeps nothing; a page that is one file has no worker beside it, wherever it lies.
function mayKeep() {
  const isGuest = window.top !== window;
  const isFile = wholePage || location.protocol === "file:";
  return "serviceWorker" in navigator && window.isSecureContext && !isGuest && !isFile;
}

async function keepForOffline() {
  if (!mayKeep()) return;
  try {
    // Asked for past the HTTP cache, so that no host's settings can hold back a new version.
    const registration = await navigator.serviceWorker.register(worker, { updateViaCache: "none" });
    watchForUpdates(registration);
    await navigator.serviceWorker.ready;
    page.offline = "ready";
    tell("offline");
  } catch (reason) {
    // The page works all the same, only not without a network.
    console.warn("Not kept for offline use:", reason);
  }
}

function watchForUpdates(registration) {
  const update = { accepted: false, reloaded: false };

  const reload = () => {
    if (update.reloaded) return;
    update.reloaded = true;
    location.reload();
  };

  // The word goes to the worker; the page reloads once it is in charge.
  const takeOver = () => registration.waiting?.postMessage("skip-waiting");

  const ask = () => {
    page.update = "waiting";
    tell("update");
  };

  const arrived = () => {
    // The very first version replaces nothing.
    if (!registration.active || !registration.waiting) return;
    if (page.touched === "yes") ask();
    else takeOver();
  };

  window.addEventListener("loopwright:accept", () => {
    update.accepted = true;
    // Nothing waits any more when another window has let it in; then the new version is a reload away.
    if (registration.waiting) takeOver();
    else reload();
  });

  // On a first visit a worker takes charge as well; that replaces nothing.
  let first = !registration.active;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (first) {
      first = false;
      return;
    }
    // Touched while the versions changed, or changed by another window: this page finishes what it is at, and asks.
    if (update.accepted || page.touched !== "yes") reload();
    else ask();
  });

  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => worker.state === "installed" && arrived());
  });
  arrived();
}
