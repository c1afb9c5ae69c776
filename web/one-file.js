// The whole page as one HTML file, to be opened from a disk: assembled in the browser, from the files this page came from.
//
// Those are at hand without a network once the worker has kept them, so that no second copy of the page is shipped. What
// comes out is built like the page in one file that the build makes: styles and scripts stand in the page, the WebAssembly
// is packed with gzip and written in base64 in a block that is not run. The policy is as strict as the page's own: what
// stands in the file may run, by its hash, and nothing may be fetched.

// The block that holds the WebAssembly; boot.js knows by it that the page is one file.
const WASM = "loopwright-wasm";

export async function assemble() {
  const page = await parsed("./");
  const linked = (which) => page.querySelector(which).getAttribute("href");
  const glue = linked("link[rel=modulepreload]");
  const wasm = await packed(linked("link[rel=program]"));
  const boot = page.querySelector("script[src]").getAttribute("src");
  const program = startingFrom(inPlace(await text(glue)), withoutRequests(await text(boot), glue));

  for (const link of page.querySelectorAll("link")) await takeIn(page, link);
  for (const script of page.querySelectorAll("script")) script.remove();
  page.querySelector("body").append(
    element(page, "script", wasm, { type: "application/octet-stream", id: WASM }),
    element(page, "script", harmless(program), { type: "module" }),
  );
  await enforce(page);
  return `<!doctype html>${page.outerHTML}`;
}

// ---- Styles and pictures --------------------------------------------------------------------------------------

// A style and the sign in the tab stand in the page itself; the other links name what a file has no use for.
async function takeIn(page, link) {
  const address = link.getAttribute("href");
  if (link.rel === "stylesheet") {
    link.replaceWith(element(page, "style", await text(address), {}));
  } else if (link.rel === "icon") {
    link.setAttribute("href", `data:image/svg+xml;base64,${await base64(await (await file(address)).blob())}`);
  } else {
    link.remove();
  }
}

// ---- The program ----------------------------------------------------------------------------------------------

// The glue, a module, as the body of a function: what it exports as `default` is given back.
function inPlace(glue) {
  const exported = /export\s*\{([^}]*)\};?\s*$/;
  const start = glue.match(exported)?.[1].match(/([\w$]+)\s+as\s+default/)?.[1];
  const body = glue.replace(exported, "");
  if (!start || /^\s*(import[\s{"*]|export\b)/m.test(body)) throw new Error("the glue is not built as it was");
  return `${body}\nreturn ${start};`;
}

// Run in the copy: the WebAssembly's bytes, unpacked from their block.
async function unpack(block) {
  const letters = atob(document.getElementById(block).textContent);
  const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(stream).arrayBuffer();
}

// The one module: `boot` finds the glue in `loopwrightGlue` and starts it without an address.
function startingFrom(glue, boot) {
  const start = `module_or_path: await unpack(${JSON.stringify(WASM)})`;
  return [
    `const loopwrightStart = (() => {\n${glue}\n})();`,
    `const unpack = ${unpack};`,
    `const loopwrightGlue = async () => ({ default: async () => loopwrightStart({ ${start} }) });`,
    `{\n${boot}}\n`,
  ].join("\n");
}

// boot.js without its requests: the glue is there, and this module is not needed where the page is one file already.
function withoutRequests(boot, glue) {
  const made = boot.replace(/import\(["'`](.*?)["'`]\)/g, (_, asked) => (asked === glue ? "loopwrightGlue()" : "null"));
  if (!made.includes("loopwrightGlue()")) throw new Error("boot.js does not ask for the glue as it did");
  return made;
}

// With the letters broken up that would end its element or open a comment in it. To JavaScript, where they can only stand
// in texts and comments, it is the same.
function harmless(script) {
  return script.replaceAll("</script", "<\\/script").replaceAll("<!--", "<\\!--");
}

// ---- The policy -----------------------------------------------------------------------------------------------

// As the build's, for a page whose parts come from nowhere. It stands before everything that it governs.
async function enforce(page) {
  const rules = [
    "default-src 'none'",
    `script-src 'wasm-unsafe-eval' ${await hashes(page, "script[type=module]")}`,
    `style-src ${await hashes(page, "style")}`,
    "img-src data:",
    "base-uri 'none'",
    "form-action 'none'",
    "require-trusted-types-for 'script'",
    "trusted-types loopwright",
  ];
  const policy = page.querySelector("meta[http-equiv=Content-Security-Policy]");
  policy.setAttribute("content", rules.join("; "));
  page.querySelector("meta[charset]").after(policy);
}

async function hashes(page, which) {
  const hash = async ({ textContent }) => {
    const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(textContent));
    return `'sha256-${btoa(String.fromCharCode(...new Uint8Array(digest)))}'`;
  };
  return (await Promise.all([...page.querySelectorAll(which)].map(hash))).join(" ");
}

// ---- Files ----------------------------------------------------------------------------------------------------

async function file(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address} is not there (status ${answer.status})`);
  return answer;
}

async function text(address) {
  return (await (await file(address)).text()).replaceAll("\r\n", "\n");
}

async function packed(address) {
  const stream = (await file(address)).body.pipeThrough(new CompressionStream("gzip"));
  return base64(await new Response(stream).blob());
}

function base64(blob) {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result.slice(reader.result.indexOf(",") + 1));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(blob);
  });
}

// The page at an address, outside of any document: in one a style would be held to this page's policy, which does not know it.
// The browser parses what it fetched itself; of a text it would want to know who trusts it (Trusted Types).
function parsed(address) {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open("GET", address);
    request.responseType = "document";
    request.onload = () => {
      const page = request.status === 200 && request.responseXML?.documentElement;
      if (!page) return reject(new Error(`${address} is no page (status ${request.status})`));
      page.remove();
      resolve(page);
    };
    request.onerror = () => reject(new Error(`${address} does not come`));
    request.send();
  });
}

function element(page, name, content, attributes) {
  const made = page.ownerDocument.createElement(name);
  for (const [attribute, value] of Object.entries(attributes)) made.setAttribute(attribute, value);
  made.append(content);
  return made;
}
