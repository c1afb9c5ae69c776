/**
 * Starts: everything else is called after this. In a page the WebAssembly is fetched from beside the module, or from
 * `source`. In node it has started by itself, and this does nothing.
 */
export default function init(source?: string | URL | Request | Response | BufferSource | WebAssembly.Module): Promise<void>;

/** Starts with the bytes of the WebAssembly (`loopwright/wasm`), without waiting. */
export function initSync(source: BufferSource | WebAssembly.Module): void;
