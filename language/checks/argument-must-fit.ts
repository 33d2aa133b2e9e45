import { isArgument, isClubValue, type Parameter } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A club where an amount belongs, or an amount where a club does. */
export const check = defineCheck({
  on: ["Argument", "Parameter"],
  reason: "A parameter stands for a club or for an amount, wherever the drill uses it.",
  run(node, { report }) {
    const parameter: Parameter | undefined = isArgument(node) ? node.parameter?.ref : node;
    const { value } = node;
    if (parameter === undefined || value === undefined || isClubValue(value) === parameter.isClub) return;
    // A name that is no club is told by itself.
    if (isClubValue(value) && value.club?.ref === undefined) return;
    const wanted = parameter.isClub
      ? `a club, such as ${code("7-iron")}`
      : `an amount of ${parameter.dimension?.$refText ?? "something"}`;
    report({
      message: `${code(parameter.name)} stands for ${wanted}. Write one here, or change what the drill says of it.`,
      node: value,
    });
  },
  reporting: `
drill "Gate" (width: angle = «driver», iron: club = «3») {
  10 shots with iron
  target start-direction within ±width
}

plan "Gate" {
  block "Start" from "Gate" with width = «9-iron», iron = «2°»
}`,
  silent: `
drill "Gate" (width: angle = 2°, iron: club = 7-iron) {
  10 shots with iron
  target start-direction within ±width
}

plan "Gate" {
  block "Start" from "Gate" with width = 3°, iron = 9-iron
}`,
});
