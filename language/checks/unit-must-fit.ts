import { isQuantity, isShownIn } from "../generated/tree/ast.ts";
import { mayBeShare, measureAt, unitFits } from "../types/amounts.ts";
import { isPlainNumber } from "../types/dimensions.ts";
import { dimensionOfUnit, unitSymbols } from "../types/units.ts";
import { defineCheck, type Fix } from "./check.ts";
import { cstOf, removeWords, replace } from "./edits.ts";
import { code, withArticle } from "./wording.ts";

/** A unit of something else than what is measured. */
export const check = defineCheck({
  on: ["Quantity", "MetricColumn", "ShownIn"],
  reason: "An amount in a unit of something else cannot be compared with any reading.",
  run(node, { document, report }) {
    const unit = node.unit?.ref;
    const measure = measureAt(node);
    if (unit === undefined || measure === undefined) return;
    const { metric, dimension } = measure;
    if (unitFits(unit, dimension)) return;
    if (isQuantity(node) && mayBeShare(node) && unit.name === "%") return;
    const cst = cstOf(node, "unit");
    if (cst === undefined) return;
    const what = metric === undefined ? "this amount" : code(metric.name);
    const own = metric?.dimension?.ref;
    const isNumber = own !== undefined && isPlainNumber(own);
    // The unit that the metric is shown in is the one in question where that is what is stated.
    const better = isShownIn(node) ? (isNumber ? "one" : ((own && unitSymbols(own)[0]) ?? "")) : measure.unit;
    const is = isNumber ? "a plain number" : withArticle(dimension.name);
    const of = dimensionOfUnit(unit);
    const given = isPlainNumber(of)
      ? `${code(unit.name)} gives a share`
      : `${code(unit.name)} is a unit of ${of.name}`;
    const fix: Fix =
      better === ""
        ? { title: `Take ${unit.name} out`, edits: [removeWords(document, cst.range)] }
        : { title: `Write ${better}`, edits: [replace(cst.range, better)] };
    report({
      message: `${given}, but ${what} is ${is}. ${better === "" ? "Write the number alone." : `Write it in ${code(better)}.`}`,
      node,
      cst,
      fixes: [fix],
    });
  },
  reporting: `
plan "Gate" {
  time 1 «yd»
  block "Start" {
    10 shots
    target carry at least 70 «%» and tempo at least 3 «s»
    target club-path within ±2 «mph»
    success average carry at least 150 «rpm»
  }
}

source "Bay" {
  column "Carry" is carry in «°»
}

metric pace is speed {
  shown in «yd» to 1
}`,
  fixed: `
plan "Gate" {
  time 1 min
  block "Start" {
    10 shots
    target carry at least 70 yd and tempo at least 3
    target club-path within ±2 °
    success average carry at least 150 yd
  }
}

source "Bay" {
  column "Carry" is carry in yd
}

metric pace is speed {
  shown in m/s to 1
}`,
  silent: `
plan "Gate" {
  time 1 h
  block "Start" {
    10 shots
    target carry at least 140 m and tempo at least 3
    success average carry at least 14000 cm
  }
}`,
});
