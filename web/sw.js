// The offline worker: keeps one version of the page, whole and checked, and answers from it.
//
// It stands at this address for ever; a worker that moved would leave behind every page that knows the old address.
// The two lines below are filled in by the build: a version that changes when any byte does, and each file's address
// with the SHA-256 of its bytes. A new version is fetched beside the old one and waits until the page lets it in.

const VERSION = "";
const FILES = [];

// The scope is part of the name: another copy on the same host, in another folder, has caches of its own.
const PREFIX = `loopwright:${new URL(self.registration.scope).pathname}:`;
const NAME = PREFIX + VERSION;

// A fetch that hangs would keep the new version from ever arriving.
const PATIENCE = 120_000;

self.addEventListener("install", (event) => event.waitUntil(fill()));
self.addEventListener("activate", (event) => event.waitUntil(takeOver()));
self.addEventListener("message", (event) => event.data === "skip-waiting" && self.skipWaiting());
self.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  if (method === "GET" && url.startsWith(self.registration.scope)) event.respondWith(answer(event.request));
});

// All files or none: nothing is stored before everything has arrived and is what was built.
async function fill() {
  const files = await Promise.all(FILES.map(fetched));
  const cache = await caches.open(NAME);
  try {
    await Promise.all(files.map(([address, response]) => cache.put(address, response)));
  } catch (reason) {
    await caches.delete(NAME);
    throw reason;
  }
}

// A missing file, half a file, another version's file or a host's error page in its place: each fails here, the
// version is not installed, and the one before it stays.
async function fetched([address, hash]) {
  // "reload" goes past the HTTP cache, which may still hold another version's bytes.
  const response = await fetch(address, { cache: "reload", signal: AbortSignal.timeout(PATIENCE) });
  const bytes = await response.arrayBuffer();
  if (!response.ok || (await sha256(bytes)) !== hash) {
    throw new Error(`${address} did not arrive as it was built (status ${response.status})`);
  }
  // Made anew, because a response that was redirected may not answer for a page. The bytes are unpacked by now.
  const headers = new Headers(response.headers);
  headers.delete("content-encoding");
  headers.delete("content-length");
  return [address, new Response(bytes, { headers })];
}

async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return btoa(String.fromCharCode(...digest));
}

async function takeOver() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== NAME);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
}

// From our one cache; what is not in it comes from the network. In place of a page that cannot be had the app opens, at its
// own address: it names its files from there, and from deeper down would find none. The browser keeps what stands behind
// the `#`.
async function answer(request) {
  const cache = await caches.open(NAME);
  const kept = await cache.match(entry(request), { ignoreSearch: true, ignoreVary: true });
  if (kept) return kept;
  try {
    return await fetch(request);
  } catch (reason) {
    const isPage = request.mode === "navigate" && (await cache.match("./"));
    if (isPage) return Response.redirect(self.registration.scope);
    throw reason;
  }
}

// "index.html" by name is kept as the folder itself.
function entry(request) {
  const index = new URL("./index.html", self.registration.scope).href;
  const [address] = request.url.split(/[?#]/);
  return address === index ? self.registration.scope : request.url;
}
