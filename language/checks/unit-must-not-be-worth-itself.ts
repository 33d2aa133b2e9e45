import { AstUtils } from "langium";
import { isDimension, type Unit } from "../generated/tree/ast.ts";
import { circles } from "../types/cycles.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A unit whose worth leads back to it. */
export const check = defineCheck({
  on: ["Document"],
  reason: "What a unit is worth must end at the first unit of its dimension.",
  run(root, { document, isBroken, report }) {
    const units = root.declarations.filter(isDimension).flatMap((dimension) => dimension.units);
    for (const [unit, circle] of circles(units, baseOf)) {
      if (AstUtils.getDocument(unit) !== document || isBroken(unit)) continue;
      const others = circle.slice(1).map((other) => code(symbolOf(other)));
      const way = others.length === 0 ? "directly" : `by way of ${others.join(", ")}`;
      report({
        message: `The worth of ${code(symbolOf(unit))} is given by itself, ${way}. Give it in another unit.`,
        node: unit,
        property: "base",
      });
    }
  },
  reporting: `
dimension weight {
  unit kg
  unit lb = 16 «oz»
  unit oz = 0.0625 «lb»
}`,
  silent: `
dimension weight {
  unit kg
  unit lb = 0.45359237 kg
  unit oz = 0.0625 lb
}`,
});

function baseOf({ base }: Unit): Unit[] {
  const unit = base?.ref?.$container;
  return unit === undefined ? [] : [unit];
}

function symbolOf({ names }: Unit): string {
  return names[0]?.name ?? "one";
}
