// As much of node's assert as ask.mjs uses, for a page in a browser, where node's is not to be had.

const text = (value) => (typeof value === "string" ? value : JSON.stringify(value) ?? String(value));

function ok(value, message) {
  if (!value) throw new Error(message ?? `${text(value)} is not true`);
}

function equal(found, expected, message) {
  ok(Object.is(found, expected), message ?? `${text(found)} is not ${text(expected)}`);
}

function match(found, expected) {
  ok(expected.test(found), `${found} does not match ${expected}`);
}

function isSame(a, b) {
  if (typeof a !== "object" || typeof b !== "object" || !a || !b) return Object.is(a, b);
  const [keys, others] = [Object.keys(a), Object.keys(b)];
  return Array.isArray(a) === Array.isArray(b) && keys.length === others.length && keys.every((key) => isSame(a[key], b[key]));
}

function deepEqual(found, expected) {
  ok(isSame(found, expected), `${text(found)} is not ${text(expected)}`);
}

// What is thrown has to match a text, a name with a message, or a function of one's own.
function throws(run, expected) {
  let thrown;
  try {
    run();
  } catch (error) {
    thrown = error;
  }
  ok(thrown, "nothing was thrown");
  if (typeof expected === "function") ok(expected(thrown), `another error: ${thrown}`);
  else if (expected instanceof RegExp) match(String(thrown), expected);
  else {
    equal(thrown.name, expected.name);
    if (expected.message instanceof RegExp) match(thrown.message, expected.message);
    else equal(thrown.message, expected.message);
  }
}

export default { deepEqual, equal, match, ok, throws };
