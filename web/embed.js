// A calculator of Loopwright inside a page of your own:
//
//   <script src="https://example.org/loopwright/embed.js"></script>       once, in the head
//   <loopwright-tool tool="spacing" values="stitches=132&amount=16">
//     <a href="https://example.org/loopwright/#/spacing?stitches=132&amount=16">Space 16 decreases evenly</a>
//   </loopwright-tool>
//
// The element is a frame, and no more: it is loaded when the reader comes near, it is as high as what stands in it, and
// its title is the text of the link. The link is for those who see no frame: mail, print, and browsers without scripts.
// In the head the script reserves the frame's height before anything is drawn; with `async` or `defer` the text may
// jump once. Your policy, if you have one, names the calculator's address in `script-src` and in `frame-src`.
//
// Attributes; all may be changed at any time:
//   tool        which one: the name in its address, such as spacing, cast_on or tail
//   values      what stands in its fields, as behind the question mark of a copied link
//   locked      names of fields that are shown and cannot be changed: stitches,amount
//   cursor      the name of the field that has the cursor
//   light       day, dusk, or host (as the reader's device is set, which is usual)
//   accent      a colour, as three or six hexadecimal digits: 8a3324
//   units       inches or centimetres, for fields in which nothing stands yet
//   language    of those the calculator is built in: en
//   buttons     which are wanted: print, afresh
//   sandbox     apart: the frame has an origin of its own, which not every host's headers allow
//
// From a script, with the types of embed.d.ts:
//   element.addEventListener("loopwright-answer", ({ detail }) => console.log(detail.sentence));
//   const { figures } = await element.ask({ stitches: "120" });      the fields stay as they are
//
// The two pages speak over a channel of which the frame takes one end, once. What comes from it is numbers and plain
// text; show it with `textContent`.
{
  // Written in by the build: of each tool, [width, height] at some widths.
  const HEIGHTS = {};
  // Where nothing is known of a tool.
  const USUAL_HEIGHT = 1600;
  const LEAST_HEIGHT = 100;
  const MOST_HEIGHT = 20_000;

  // How near the reader is when a frame is loaded, and how long anything here waits, in milliseconds.
  const NEAR = "1200px 0px";
  const PATIENCE = 15_000;

  const OPTIONS = ["locked", "cursor", "light", "accent", "units", "language"];
  const TOKENS = ["scripts", "forms", "popups", "popups-to-escape-sandbox"].map((token) => `allow-${token}`).join(" ");

  // A script that is loaded as a module has no `currentScript`.
  const script = document.currentScript ?? document.querySelector("script[src*='embed.js']");
  const SITE = new URL(".", script.src);

  const STYLE = new CSSStyleSheet();
  STYLE.replaceSync(":host { display: block } :host([hidden]) { display: none } iframe { display: block; inline-size: 100%; border: 0 }");

  // From this width on the answer stands beside the question, and a tool is much lower.
  const SIDE_BY_SIDE = 736;

  // The height of a tool at a width between two that were measured lies between theirs, if both are laid out as it is.
  function heightAt(tool, width) {
    const rows = Object.hasOwn(HEIGHTS, tool) ? HEIGHTS[tool] : [[0, USUAL_HEIGHT]];
    const above = rows.findIndex(([wide]) => wide >= width);
    if (above <= 0) return rows.at(above)[1];
    const [[left, from], [right, to]] = rows.slice(above - 1, above + 1);
    if (left < SIDE_BY_SIDE && right >= SIDE_BY_SIDE) return width < SIDE_BY_SIDE ? from : to;
    return Math.round(from + ((to - from) * (width - left)) / (right - left));
  }

  const isAnswer = (answer) =>
    typeof answer?.tool === "string" && (typeof answer.sentence === "string" || Array.isArray(answer.problems));

  const pairs = (values) =>
    typeof values === "string"
      ? values
      : Object.entries(values).map((pair) => pair.map(encodeURIComponent).join("=")).join("&");

  class LoopwrightTool extends HTMLElement {
    static observedAttributes = ["tool", "values", "buttons", "sandbox", ...OPTIONS];

    // One frame after the other: the first fetches the calculator, the next ones find it in the browser's cache.
    static #turn = Promise.resolve();
    static #near = new IntersectionObserver(
      (entries) => entries.forEach(({ target, isIntersecting }) => isIntersecting && target.#begin()),
      { rootMargin: NEAR },
    );

    #root = this.attachShadow({ mode: "open" });
    #frame = null;
    #port = null;
    #sent = "";
    #begun = false;
    #drawn = () => {};
    #asked = new Map();
    #asks = 0;
    #answer = null;

    // The last answer, or null.
    get answer() {
      return this.#answer;
    }

    // The answer to other values than those that stand in the fields; what is not named counts as it stands there.
    ask(values) {
      this.#begin();
      return new Promise((resolve, reject) => {
        const number = ++this.#asks;
        const message = { ask: number, values: pairs(values) };
        this.#asked.set(number, { resolve, message });
        this.#port?.postMessage(message);
        setTimeout(() => this.#asked.delete(number) && reject(new Error("The calculator has not answered.")), PATIENCE);
      });
    }

    connectedCallback() {
      this.#root.adoptedStyleSheets = [STYLE];
      this.#lay();
    }

    disconnectedCallback() {
      LoopwrightTool.#near.unobserve(this);
      this.#leave();
    }

    attributeChangedCallback(name) {
      if (!this.#frame) return;
      if (name === "tool" || name === "sandbox") this.#lay();
      else this.#set();
    }

    // A new frame, as high as it is expected to become, with nothing in it yet.
    #lay() {
      this.#leave();
      this.#frame = document.createElement("iframe");
      this.#root.replaceChildren(this.#frame);
      this.#frame.style.blockSize = `${heightAt(this.#tool(), this.#frame.clientWidth)}px`;
      LoopwrightTool.#near.observe(this);
    }

    #begin() {
      if (this.#begun || !this.#frame) return;
      this.#begun = true;
      LoopwrightTool.#near.unobserve(this);
      const frame = this.#frame;
      LoopwrightTool.#turn = LoopwrightTool.#turn.then(() => (frame === this.#frame ? this.#load() : undefined));
    }

    // Ends when the page in the frame has said how high it is.
    #load() {
      const frame = this.#frame;
      this.#sent = this.#query();
      frame.title = this.title || this.textContent.trim() || this.#tool();
      frame.sandbox = this.#isApart() ? TOKENS : `${TOKENS} allow-same-origin`;
      frame.addEventListener("load", () => frame === this.#frame && this.#greet());
      frame.src = new URL(`#/embed/${encodeURIComponent(this.#tool())}?${this.#sent}`, SITE).href;
      return new Promise((resolve) => {
        this.#drawn = resolve;
        setTimeout(resolve, PATIENCE);
      });
    }

    // Hands one end of a new channel to the page in the frame, if it is the calculator's.
    #greet() {
      const frame = this.#frame;
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = ({ data }) => {
        if (frame !== this.#frame) return;
        if (port1 !== this.#port) this.#adopt(port1);
        this.#hear(data);
      };
      // What is kept apart has no origin to be named, and so has a page that is opened from a disk.
      const origin = this.#isApart() || SITE.origin === "null" ? "*" : SITE.origin;
      frame.contentWindow.postMessage({ loopwright: 1 }, origin, [port2]);
    }

    // A channel holds once the frame has spoken through it. Some browsers say that a frame is loaded when only the end of its
    // address has changed; the page in it has a channel then, and does not take the new one.
    #adopt(port) {
      this.#port?.close();
      this.#port = port;
      this.#set();
      for (const { message } of this.#asked.values()) port.postMessage(message);
    }

    #hear(data) {
      const { height, answer, reply } = Object(data);
      if (Number.isFinite(height)) {
        this.#frame.style.blockSize = `${Math.min(Math.max(Math.ceil(height), LEAST_HEIGHT), MOST_HEIGHT)}px`;
        this.#drawn();
      }
      if (!isAnswer(answer)) return;
      if (reply !== undefined) {
        this.#asked.get(reply)?.resolve(answer);
        this.#asked.delete(reply);
        return;
      }
      this.#answer = answer;
      this.dispatchEvent(new CustomEvent("loopwright-answer", { detail: answer, bubbles: true, composed: true }));
    }

    // Tells the page in the frame what the attributes say now.
    #set() {
      const query = this.#query();
      if (!this.#port || query === this.#sent) return;
      this.#sent = query;
      this.#port.postMessage({ set: query });
    }

    #leave() {
      this.#port?.close();
      this.#port = null;
      this.#frame = null;
      this.#begun = false;
      this.#drawn();
    }

    #query() {
      const chosen = OPTIONS.filter((name) => this.getAttribute(name));
      const buttons = (this.getAttribute("buttons") ?? "").split(/[\s,]+/).filter(Boolean);
      return [
        this.getAttribute("values"),
        ...chosen.map((name) => `frame.${name}=${encodeURIComponent(this.getAttribute(name))}`),
        ...buttons.map((name) => `frame.${encodeURIComponent(name)}=yes`),
      ].filter(Boolean).join("&");
    }

    #tool() {
      return this.getAttribute("tool") ?? "";
    }

    #isApart() {
      return this.getAttribute("sandbox") === "apart";
    }
  }

  // Loaded twice it is there already.
  if (!customElements.get("loopwright-tool")) customElements.define("loopwright-tool", LoopwrightTool);
}
