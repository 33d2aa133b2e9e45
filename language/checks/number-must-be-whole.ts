import type { AstNode } from "langium";
import { type CheckContext, defineCheck } from "./check.ts";
import { cstOf, replace } from "./edits.ts";

/** Numbers of things that have no halves. */
const WHOLE: Readonly<Record<string, readonly string[]>> = {
  Shots: ["count"],
  CountCriterion: ["count", "outOf"],
  RunCriterion: ["length"],
  HeaderRow: ["row"],
  BlockStart: ["row"],
};

/** A number of shots, hits or rows with a fraction. */
export const check = defineCheck({
  on: ["Shots", "CountCriterion", "RunCriterion", "HeaderRow", "BlockStart"],
  reason: "Shots, hits and rows come whole.",
  run(node, context) {
    for (const property of WHOLE[node.$type] ?? []) checkNumber(node, property, context);
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    «9.5» shots
    target start-direction within ±2°
    success {
      at least «6.4» shots on target
      «2.5» in a row on target
    }
  }
}

source "Bay" {
  header row «1.2»
}`,
  fixed: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success {
      at least 6 shots on target
      3 in a row on target
    }
  }
}

source "Bay" {
  header row 1
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    target start-direction within ±2.5°
    success {
      at least 62.5 % of shots on target
      3 in a row on target
    }
  }
}`,
});

function checkNumber(node: AstNode, property: string, { report }: CheckContext): void {
  const value: unknown = node[property as keyof AstNode];
  if (typeof value !== "number" || Number.isInteger(value) || !Number.isFinite(value)) return;
  const cst = cstOf(node, property);
  if (cst === undefined) return;
  const whole = Math.max(1, Math.round(value));
  report({
    message: `${cst.text} is no whole number. Write ${whole}, or another number without a fraction.`,
    node,
    cst,
    fixes: [{ title: `Write ${whole}`, edits: [replace(cst.range, String(whole))] }],
  });
}
