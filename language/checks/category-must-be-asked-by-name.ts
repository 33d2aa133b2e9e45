import { isCategoryTest, isEllipseCriterion, type Metric } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code, listed } from "./wording.ts";

/** A name asked like a number, or a number like a name. */
export const check = defineCheck({
  on: ["NumberTest", "CategoryTest", "StatisticCriterion", "ChangeCriterion", "EllipseCriterion"],
  reason: "A shape is one of several names and has no average; a carry is a number and no name.",
  run(node, { report }) {
    const places: readonly (readonly [property: string, metric: Metric | undefined])[] = isEllipseCriterion(
      node,
    )
      ? [
          ["first", node.first?.ref],
          ["second", node.second?.ref],
        ]
      : [["metric", node.metric?.ref]];
    for (const [property, metric] of places) {
      if (metric === undefined) continue;
      const isName = metric.categories.length > 0;
      if (isName === isCategoryTest(node) || (!isName && metric.dimension?.ref === undefined)) continue;
      const names = metric.categories.slice(0, 2).map(({ name }) => name);
      report({
        message: isName
          ? `${code(metric.name)} is one of several names. Ask for them: ${code(`shots with ${metric.name} is ${listed(names, "or")}`)}.`
          : `${code(metric.name)} is a number. Hold it against an amount, such as ${code("at least …")}.`,
        node,
        property,
      });
    }
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    success spread of «shape» at most 3
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    success at least 6 of 10 shots with shape is draw or straight
  }
}`,
});
