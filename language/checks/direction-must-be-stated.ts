import { isAbove, isAtMost, isBelow, isBetween, type Metric, type Quantity } from "../generated/tree/ast.ts";
import { hasSides, knownMetricAt, measureOf, roleOf } from "../types/amounts.ts";
import { sideWords } from "../types/directions.ts";
import { defineCheck, type Fix } from "./check.ts";
import { rangeOf, replace } from "./edits.ts";
import { amount, code, listed } from "./wording.ts";

/** An amount of a metric with two sides that does not say which side is meant. */
export const check = defineCheck({
  on: ["Quantity"],
  reason: "A club path of 2° can be in-to-out or out-to-in, and one is the cure of the other.",
  run(quantity, { report }) {
    if (quantity.value === 0 || quantity.direction !== undefined || roleOf(quantity) !== "place") return;
    const metric = knownMetricAt(quantity);
    if (metric === undefined || !hasSides(metric)) return;
    const text = withUnit(quantity, metric);
    if (text === undefined) return;
    const words = wordsFor(quantity, metric);
    const range = quantity.$container;
    const isUpper = isAtMost(range) || isBelow(range);
    const both = `within ±${text}`;
    const fixes = words.map((word) => withWord(quantity, metric, `${text} ${word}`, word));
    if (isUpper) fixes.push({ title: `Write ${both}`, edits: [replace(rangeOf(range), both)] });
    const choices = [...words.map((word) => code(`${text} ${word}`)), ...(isUpper ? [code(both)] : [])];
    report({
      message: `${code(metric.name)} goes two ways. Say which is meant: ${listed(choices, "or")}.`,
      node: quantity,
      fixes,
    });
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    target club-path between «1°» and 3° in-to-out
    require face-to-path at most «2°»
    success average start-direction within 1° of «0.5°»
    leave out shots where bias above «0.5»
  }
}

metric bias is ratio {
  positive heavy
  negative light
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
    target club-path between 1° in-to-out and 3° in-to-out
    require face-to-path at most 2° open
    success average start-direction within 1° of 0.5° right
    leave out shots where bias above 50 % heavy
  }
}

metric bias is ratio {
  positive heavy
  negative light
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
    target club-path between 0° and 3° in-to-out
    require face-to-path within ±2°
    success spread of start-direction at most 2.5°
  }
}`,
});

/** A direction word stands behind a unit. Plain numbers have none, but can be written in percent. */
function withUnit(quantity: Quantity, metric: Metric): string | undefined {
  if (quantity.unit !== undefined) return quantity.unit.ref && quantity.$cstNode?.text;
  const isNumber = measureOf(metric)?.unit === "";
  return isNumber && quantity.value !== undefined
    ? amount(Number((quantity.value * 100).toPrecision(12)), "%")
    : undefined;
}

/** Above and below read two ways on the negative side, so a limit there is given as `at least` or `at most`. */
function withWord(quantity: Quantity, metric: Metric, text: string, word: string): Fix {
  const range = quantity.$container;
  const isNegativeSide = sideWords(metric)[0] !== word;
  if (isNegativeSide && (isAbove(range) || isBelow(range))) {
    const limit = `${isAbove(range) ? "at least" : "at most"} ${text}`;
    return { title: `Write ${limit}`, edits: [replace(rangeOf(range), limit)] };
  }
  return { title: `Write ${text}`, edits: [replace(rangeOf(quantity), text)] };
}

/** The words for the two sides; the one that stands at the other end of the range first. */
function wordsFor(quantity: Quantity, metric: Metric): string[] {
  const words = sideWords(metric);
  const range = quantity.$container;
  if (!isBetween(range)) return words;
  const other = (range.low === quantity ? range.high : range.low).direction?.ref?.name;
  return other === undefined ? words : [other, ...words.filter((word) => word !== other).slice(0, 1)];
}
