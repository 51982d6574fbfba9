// What axe-core says of the page: `found` as sentences, and of the reviewed kinds
// (rule, elements, why) in `arguments[0]` the places in the list that were met.
const [reviewed, done] = arguments;
const met = new Set();
const isReviewed = (rule, node) => {
  const element = document.querySelector(node.target[node.target.length - 1]);
  const at = reviewed.findIndex(([of, elements]) => of === rule && element !== null && element.matches(elements));
  if (at >= 0) met.add(at);
  return at >= 0;
};
const said = (kind, rule, node) => `${kind} ${rule}: ${node.target.join(" ")}: ${node.failureSummary}`.replace(/\s+/g, " ");
axe.run(document, { resultTypes: ["violations", "incomplete"] }).then((all) => {
  const wrong = all.violations.flatMap((one) => one.nodes.map((node) => said("wrong", one.id, node)));
  const open = all.incomplete.flatMap((one) =>
    one.nodes.filter((node) => !isReviewed(one.id, node)).map((node) => said("undecided", one.id, node)),
  );
  done({ found: [...wrong, ...open], reviewed: [...met] });
});
