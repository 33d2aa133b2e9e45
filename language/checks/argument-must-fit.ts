import { isAmountValue, isArgument, isClubValue, type Parameter } from "../generated/tree/ast.ts";
import { isPlainNumber } from "../types/dimensions.ts";
import { defineCheck } from "./check.ts";
import { cstOf, removeWords } from "./edits.ts";
import { rolesOf } from "./numbers.ts";
import { code } from "./wording.ts";

/** A club where an amount belongs, an amount where a club does, or a unit behind a number of shots or hits. */
export const check = defineCheck({
  on: ["Argument", "Parameter"],
  reason: "A parameter stands for a club or for an amount, wherever the drill uses it.",
  run(node, { document, report }) {
    const parameter: Parameter | undefined = isArgument(node) ? node.parameter?.ref : node;
    const { value } = node;
    if (parameter === undefined || value === undefined) return;
    const dimension = parameter.dimension?.ref;
    const isNumber = dimension !== undefined && isPlainNumber(dimension) && rolesOf(parameter).length > 0;
    const unit = isNumber && isAmountValue(value) ? cstOf(value.quantity, "unit") : undefined;
    if (unit !== undefined) {
      report({
        message: `${code(parameter.name)} stands for a plain number in the drill. Write the number alone.`,
        node: value,
        cst: unit,
        fixes: [{ title: `Take ${unit.text} out`, edits: [removeWords(document, unit.range)] }],
      });
      return;
    }
    if (isClubValue(value) === parameter.isClub) return;
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
drill "Gate" (width: angle = «driver», iron: club = «3», share: ratio = 60) {
  10 shots with iron
  target start-direction within ±width
  success at least share % of shots on target
}

plan "Gate" {
  block "Start" from "Gate" with width = «9-iron», iron = «2°», share = 70 «%»
}`,
  fixed: `
drill "Gate" (width: angle = driver, iron: club = 3, share: ratio = 60) {
  10 shots with iron
  target start-direction within ±width
  success at least share % of shots on target
}

plan "Gate" {
  block "Start" from "Gate" with width = 9-iron, iron = 2°, share = 70
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
