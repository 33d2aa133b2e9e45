import { isCategoryRule } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { code } from "./wording.ts";

/** What a metric that is one of several names cannot have. */
const OF_NUMBERS: Readonly<Record<string, string>> = {
  ShownIn: "unit",
  Positive: "sides",
  Negative: "sides",
  Plausible: "plausible range",
  Formula: "formula",
  Estimated: "estimate",
};

/** A statement about numbers in a metric that is a name, or about names in one that is a number. */
export const check = defineCheck({
  on: ["Metric"],
  reason: "A shape is one of several names and is measured in nothing; a carry is a number and has no names.",
  run(metric, { document, report }) {
    const isName = metric.categories.length > 0;
    for (const statement of metric.statements) {
      const what = OF_NUMBERS[statement.$type];
      if (isName ? what === undefined : !isCategoryRule(statement)) continue;
      const advice = isName
        ? `${code(metric.name)} is one of several names, so it has no ${what}. Say when it is which, as in ${code(`${metric.categories[0]?.name} where carry at least 100 m`)}, or take the line out.`
        : `${code(metric.name)} is a number and has no names. Declare it as ${code(`metric ${metric.name} is one of …`)}, or take the line out.`;
      report({
        message: advice,
        node: statement,
        fixes: [{ title: "Take the line out", edits: [remove(document, rangeOf(statement))] }],
      });
    }
  },
  reporting: `
metric strike is one of toe, centre, heel {
  «formula strike-side * 2»
  «shown in mm to 1»
  centre where strike-side within ±8 mm
}

metric pace is speed {
  «slow where carry below 100 m»
}`,
  fixed: `
metric strike is one of toe, centre, heel {
  centre where strike-side within ±8 mm
}

metric pace is speed {
}`,
  silent: `
metric strike is one of toe, centre, heel {
  centre where strike-side within ±8 mm
}

metric pace is speed {
  shown in mph to 1
}`,
});
