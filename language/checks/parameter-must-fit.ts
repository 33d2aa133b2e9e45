import { isQuantity } from "../generated/tree/ast.ts";
import { mayBeShare, measureAt } from "../types/amounts.ts";
import { DIMENSIONLESS, describeVector, sameDimension, vectorOf } from "../types/dimensions.ts";
import { defineCheck } from "./check.ts";
import { code, withArticle } from "./wording.ts";

/** A parameter that stands for something else than what belongs at its place. */
export const check = defineCheck({
  on: ["Quantity", "Count"],
  reason: "A parameter is what its drill says it is. Elsewhere it cannot be compared with any reading.",
  run(node, { report }) {
    const parameter = node.parameter?.ref;
    if (parameter === undefined) return;
    if (parameter.isClub) {
      report({
        message: `${code(parameter.name)} stands for a club, and here a number is due.`,
        node,
        property: "parameter",
      });
      return;
    }
    const dimension = parameter.dimension?.ref;
    const measure = isQuantity(node)
      ? measureAt(node)
      : { dimension: { name: "ratio", vector: DIMENSIONLESS } };
    if (dimension === undefined || measure === undefined) return;
    const vector = vectorOf(dimension);
    if (sameDimension(vector, measure.dimension.vector)) return;
    if (isQuantity(node) && mayBeShare(node) && sameDimension(vector, DIMENSIONLESS)) return;
    const wanted =
      measure.dimension.vector.size === 0
        ? describeVector(DIMENSIONLESS)
        : withArticle(measure.dimension.name);
    report({
      message: `${code(parameter.name)} stands for ${withArticle(dimension.name)}, and here ${wanted} is due.`,
      node,
      property: "parameter",
    });
  },
  reporting: `
drill "Gate" (width: angle = 2°, far: length = 100 yd) {
  10 shots
  target start-direction within ±width and carry at least «width»
  success at least «far» of 10 shots on target
}

plan "Gate" {
  block "Start" from "Gate" with far = 90 yd
}`,
  silent: `
drill "Gate" (width: angle = 2°, far: length = 100 yd, hits: ratio = 7) {
  10 shots
  target start-direction within ±width and carry at least far
  success at least hits of 10 shots on target
}

plan "Gate" {
  block "Start" from "Gate" with far = 90 yd
}`,
});
