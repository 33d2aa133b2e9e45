import { AstUtils } from "langium";
import { type Dimension, isDimension } from "../generated/tree/ast.ts";
import { circles } from "../types/cycles.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A dimension whose definition leads back to it. */
export const check = defineCheck({
  on: ["Document"],
  reason: "What a dimension is made of must be known before it.",
  run(root, { document, isBroken, report }) {
    for (const [dimension, circle] of circles(root.declarations.filter(isDimension), partsOf)) {
      if (AstUtils.getDocument(dimension) !== document || isBroken(dimension)) continue;
      const others = circle.slice(1).map(({ name }) => code(name));
      const way = others.length === 0 ? "directly" : `by way of ${others.join(", ")}`;
      report({
        message: `${code(dimension.name)} is made of itself, ${way}. Define it by others, or by nothing.`,
        node: dimension,
        property: "name",
      });
    }
  },
  reporting: `
dimension «stretch» = pull * length {
  unit N/m
}

dimension «pull» = stretch / length {
  unit N
}`,
  silent: `
dimension surface = length * length {
  unit sqm
}

dimension volume = surface * length {
  unit litre
}`,
});

function partsOf({ left, right }: Dimension): Dimension[] {
  return [left?.ref, right?.ref].filter((part) => part !== undefined);
}
