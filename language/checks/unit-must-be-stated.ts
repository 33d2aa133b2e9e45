import { GrammarUtils } from "langium";
import { isShownIn } from "../generated/tree/ast.ts";
import { measureAt } from "../types/amounts.ts";
import { isPlainNumber } from "../types/dimensions.ts";
import { unitSymbols } from "../types/units.ts";
import { defineCheck, type Fix } from "./check.ts";
import { cstOf, replace } from "./edits.ts";
import { amount, code, withArticle } from "./wording.ts";

/** A number where an amount with a unit belongs. */
export const check = defineCheck({
  on: ["Quantity", "ShownIn"],
  reason: "A bare number means one thing in yards and another in metres.",
  run(node, { report }) {
    const measure = node.unit === undefined ? measureAt(node) : undefined;
    if (measure === undefined) return;
    const { metric, dimension } = measure;
    const own = metric?.dimension?.ref;
    const isNumber = own !== undefined && isPlainNumber(own);
    if (isShownIn(node)) {
      const one = GrammarUtils.findNodeForKeyword(node.$cstNode, "one");
      const first = own && unitSymbols(own)[0];
      if (isNumber || one === undefined || first === undefined) return;
      report({
        message: `${code("one")} is for plain numbers, and ${code(metric?.name ?? "")} is ${withArticle(dimension.name)}. Show it in ${code(first)}.`,
        node,
        cst: one,
        fixes: [{ title: `Show it in ${first}`, edits: [replace(one.range, first)] }],
      });
      return;
    }
    const value = cstOf(node, "value");
    if (measure.unit === "" || value === undefined || node.value === undefined) return;
    // A share of 0.7 is 70 %; whoever writes 70 where shares are shown in percent means that too.
    const isShare = isNumber && node.value <= 1;
    const written = amount(isShare ? Number((node.value * 100).toPrecision(12)) : node.value, measure.unit);
    const what = metric === undefined ? "This" : code(metric.name);
    const fix: Fix = { title: `Write ${written}`, edits: [replace(value.range, written)] };
    report({
      message: `${what} needs a unit here. Write ${code(written)}, or the amount in another unit.`,
      node,
      cst: value,
      fixes: [fix],
    });
  },
  reporting: `
plan "Gate" {
  time «40»
  block "Start" {
    10 shots
    target carry between «150» and 160 yd and club-path within ±«2»
    leave out shots where effort below «0.7»
  }
}

metric pace is speed {
  shown in «one» to 0.1
}`,
  fixed: `
plan "Gate" {
  time 40 min
  block "Start" {
    10 shots
    target carry between 150 yd and 160 yd and club-path within ±2°
    leave out shots where effort below 70 %
  }
}

metric pace is speed {
  shown in m/s to 0.1
}`,
  silent: `
plan "Gate" {
  time 40 min
  block "Start" {
    10 shots
    target carry between 150 yd and 160 yd and smash-factor at least 1.3
  }
}`,
});
