import { sameDimension, vectorOf } from "../types/dimensions.ts";
import { dimensionOfUnit, primarySymbol } from "../types/units.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A unit that does not say, in a unit of its own dimension, what it is worth. */
export const check = defineCheck({
  on: ["Unit"],
  reason:
    "Amounts in different units are compared by what the units are worth in the first of their dimension.",
  run(unit, { report }) {
    const dimension = unit.$container;
    const [first] = dimension.units;
    const symbol = primarySymbol(unit) || "one";
    const firstSymbol = first && primarySymbol(first);
    const si = code(firstSymbol || "one");
    const example = `unit ${symbol} = 0.5${firstSymbol ? ` ${firstSymbol}` : ""}`;
    const base = unit.base?.ref;
    if (unit !== first && unit.factor === undefined) {
      report({
        message: `What is one ${code(symbol)} in ${si}? Write the number behind it, as in ${code(example)}; only the first unit of a dimension needs none.`,
        node: unit,
      });
    } else if (base !== undefined && !sameDimension(vectorOf(dimensionOfUnit(base)), vectorOf(dimension))) {
      report({
        message: `${code(base.name)} is a unit of ${dimensionOfUnit(base).name}, so no unit of ${dimension.name} can be worth an amount of it. Give the worth in ${si}.`,
        node: unit,
        property: "base",
      });
    }
  },
  reporting: `
dimension weight {
  unit kg
  «unit lb»
  unit stone = 14 «yd»
}`,
  silent: `
dimension weight {
  unit kg
  unit lb = 0.45359237 kg
  unit stone = 14 lb
}`,
});
