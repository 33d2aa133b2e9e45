import { isEstimated, isMetric } from "../generated/tree/ast.ts";
import { isLibraryUri } from "../library/library.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { code, listed } from "./wording.ts";

/** A metric that the flight model is said to compute, and that it does not know. */
export const check = defineCheck({
  on: ["Estimated"],
  reason:
    "The flight model computes the metrics of the built-in vocabulary that say so. Of others it knows no way.",
  run(statement, { document, names, report }) {
    const metric = statement.$container;
    const known = names
      .library()
      .flatMap(({ parseResult }) => parseResult.value.declarations)
      .filter((node) => isMetric(node) && node.statements.some(isEstimated))
      .map(({ name }) => name);
    if (isLibraryUri(document.uri) || known.includes(metric.name)) return;
    report({
      message: `The flight model computes ${listed(known.map(code), "and")}, and does not know ${code(metric.name)}. Give it a formula, or take the line out.`,
      node: statement,
      fixes: [{ title: "Take the line out", edits: [remove(document, rangeOf(statement))] }],
    });
  },
  reporting: `
metric hang-time is duration {
  shown in s to 0.1
  «estimated by the flight model»
}`,
  fixed: `
metric hang-time is duration {
  shown in s to 0.1
}`,
  silent: `
metric hang-time is duration {
  shown in s to 0.1
  formula flight-time
}`,
});
