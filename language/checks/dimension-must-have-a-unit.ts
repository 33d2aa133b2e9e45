import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A dimension without units. */
export const check = defineCheck({
  on: ["Dimension"],
  reason: "Amounts are written in units, so without one no amount of the dimension can be written.",
  run(dimension, { report }) {
    if (dimension.units.length > 0) return;
    report({
      message: `${code(dimension.name)} has no unit, so no amount of it can be written. Name its SI unit first, as in ${code("unit m")}, or write ${code("unit one")} for plain numbers.`,
      node: dimension,
      property: "name",
    });
  },
  reporting: `
dimension «weight» {
}`,
  silent: `
dimension weight {
  unit kg
}`,
});
