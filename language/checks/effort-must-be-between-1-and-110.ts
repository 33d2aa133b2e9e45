import { numberOf } from "../types/parameters.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { writeNumber } from "./numbers.ts";

const LEAST = 1;
const MOST = 110;

/** An effort that nobody can swing with. */
export const check = defineCheck({
  on: ["Shots"],
  reason:
    "Effort is a share of a full swing. A speed drill goes a little beyond it; more is a slip, and no advice to follow.",
  run(shots, { report }) {
    const effort = numberOf(shots.effort);
    if (shots.effort === undefined || effort === undefined || (effort >= LEAST && effort <= MOST)) return;
    const cst = cstOf(shots, "effort");
    if (cst === undefined) return;
    const better = effort > MOST ? "100" : "50";
    report({
      message: `Effort is a share of a full swing, between ${LEAST} % and ${MOST} %. Write for example ${better} %.`,
      node: shots,
      cst,
      fixes: [{ title: `Write ${better} %`, edits: [writeNumber(shots.effort, better)] }],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots with 7-iron at «700» % effort
    10 shots with 7-iron at «0» % effort
  }
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots with 7-iron at 100 % effort
    10 shots with 7-iron at 50 % effort
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots with 7-iron at 70 % effort
    10 shots with 7-iron at 105 % effort
  }
}`,
});
