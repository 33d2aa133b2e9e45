import { defineCheck } from "./check.ts";
import { cstOf, replace } from "./edits.ts";
import { numbersOf, type Role } from "./numbers.ts";

/** Numbers of things that have no halves. */
const WHOLE: ReadonlySet<Role> = new Set<Role>([
  "Shots.count",
  "CountCriterion.count",
  "CountCriterion.outOf",
  "RunCriterion.length",
  "GroupCriterion.needed",
  "LoadCriterion.count",
  "LoadLimit.count",
  "Usual.shots",
  "Gate.times",
  "HeaderRow.row",
  "BlockStart.row",
]);

/** A number of shots, hits or rows with a fraction. */
export const check = defineCheck({
  on: ["Count", "Quantity", "LoadLimit", "Usual", "Gate", "HeaderRow", "BlockStart"],
  reason: "Shots, swings, hits, goals and rows come whole.",
  run(node, { report }) {
    for (const { value, property, roles } of numbersOf(node)) {
      if (Number.isInteger(value) || !Number.isFinite(value) || !roles().some((role) => WHOLE.has(role)))
        continue;
      const cst = cstOf(node, property);
      if (cst === undefined) continue;
      const whole = Math.max(1, Math.round(value));
      report({
        message: `${cst.text} is no whole number. Write ${whole}, or another number without a fraction.`,
        node,
        cst,
        fixes: [{ title: `Write ${whole}`, edits: [replace(cst.range, String(whole))] }],
      });
    }
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    «9.5» shots
    target start-direction within ±2°
    success {
      at least «6.4» shots on target
      «2.5» in a row on target
      at most «30.5» swings
    }
  }
  block "Again" from "Line" with hits = «5.5»
}

drill "Line" (hits: ratio = «7.2») test {
  10 shots
  target start-direction within ±2°
  success at least hits of 10 shots on target
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
      at most 31 swings
    }
  }
  block "Again" from "Line" with hits = 6
}

drill "Line" (hits: ratio = 7) test {
  10 shots
  target start-direction within ±2°
  success at least hits of 10 shots on target
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
