import { isBlock, isPlanTime } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { secondsOf, statedIn } from "./practice.ts";

/** Blocks that take longer than their plan. */
export const check = defineCheck({
  on: ["Plan"],
  reason: "What does not fit is left out on the range, and mostly it is the test at the end.",
  run({ statements }, { report }) {
    const time = statements.find(isPlanTime);
    const whole = secondsOf(time);
    if (time === undefined || whole === undefined) return;
    const parts = statements
      .filter(isBlock)
      .flatMap((block) => secondsOf(statedIn(block, isPlanTime)[0]) ?? []);
    const sum = parts.reduce((total, seconds) => total + seconds, 0);
    if (sum <= whole) return;
    report({
      message: `The blocks take ${Math.ceil(sum / 60)} min together, and the plan has ${Math.floor(whole / 60)} min. Give it more time, or the blocks less.`,
      node: time,
    });
  },
  reporting: `
plan "Gate" {
  «time 30 min»
  block "Start" {
    time 20 min
    10 shots
  }
  block "Again" {
    time 15 min
    10 shots
  }
}`,
  silent: `
plan "Gate" {
  time 40 min
  block "Start" {
    time 20 min
    10 shots
  }
  block "Again" {
    time 15 min
    10 shots
  }
}`,
});
