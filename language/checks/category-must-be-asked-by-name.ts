import { isCategoryTest, isEllipseCriterion, type Metric } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code, listed } from "./wording.ts";

/** Places where nothing is asked. */
const ELSEWHERE: ReadonlySet<string> = new Set(["MetricOperand", "Usual", "Uncertainty"]);

/** A name asked like a number, or a number like a name. */
export const check = defineCheck({
  on: [
    "NumberTest",
    "CategoryTest",
    "StatisticCriterion",
    "ChangeCriterion",
    "EllipseCriterion",
    "MetricOperand",
    "Usual",
    "Uncertainty",
  ],
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
          ? ELSEWHERE.has(node.$type)
            ? `${code(metric.name)} is one of several names, and no amount of anything. Take it out, or name a metric that is a number.`
            : `${code(metric.name)} is one of several names. Ask for them: ${code(`shots with ${metric.name} is ${listed(names, "or")}`)}.`
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
    target «carry» is draw
    success spread of «shape» at most 3
  }
}

player "P-1" {
  right-handed
  usual «shape» 3
}

metric odd is length {
  formula carry + «shape»
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    success at least 6 of 10 shots with shape is draw or straight
  }
}`,
});
