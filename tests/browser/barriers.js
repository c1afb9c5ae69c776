// What axe-core finds, by all its rules, as a list of words. One rule is left out: the contrast of level AAA, which
// asks more than a page of quiet side notes means to give.
const done = arguments[arguments.length - 1];
const rules = Object.fromEntries(axe.getRules().map(({ ruleId }) => [ruleId, { enabled: ruleId !== "color-contrast-enhanced" }]));
const told = (node) => `${node.target.join(" ")}: ${node.failureSummary.replace(/\s+/g, " ")}`;
axe.run(document, { rules, resultTypes: ["violations"] }).then(
  ({ violations }) => done(violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${told(node)}`))),
  (reason) => done([`axe-core stopped: ${reason}`]),
);
