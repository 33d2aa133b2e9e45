import {
  type Block,
  type Drill,
  isBlock,
  isPlan,
  isPlanTime,
  isShots,
  type Plan,
} from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { secondsOf, statedIn, swingsOf } from "./practice.ts";

/** Seconds in which nobody has looked, aimed and swung. */
const HURRIED = 6;

/** More shots than can be hit in the time that a plan, a block or a drill has. */
export const check = defineCheck({
  on: ["Plan", "Block", "Drill"],
  isAboutPractice: true,
  reason:
    "Who hits one ball after the other learns little and tires fast: a shot takes a look, an aim and a breath.",
  run(node, { isBroken, report }) {
    if (isBroken(node)) return;
    const time = timeOf(node);
    const seconds = secondsOf(time);
    const shots = isPlan(node) ? swingsIn(node) : swingsOf(node);
    if (time === undefined || seconds === undefined || shots === 0 || seconds / shots >= HURRIED) return;
    const isOwn = time.$container === node;
    if (!isOwn && !node.statements.some(isShots)) return; // it is said of the drill
    const each = Math.round((10 * seconds) / shots) / 10;
    report({
      message: `${shots} shots in this time are ${each} s for each. Give them more time, or ask for fewer.`,
      ...(isOwn ? { node: time } : { node, property: "name" }),
    });
  },
  reporting: `
plan "Gate" {
  «time 10 min»
  block "Start" {
    60 shots
  }
  block "Again" {
    «time 1 min»
    60 shots
  }
  block «"Quick, and more of it"» from "Quick" {
    30 shots
  }
  block "Quick" from "Quick"
}

drill "Quick" {
  «time 30 s»
  10 shots
}`,
  silent: `
plan "Gate" {
  time 30 min
  block "Start" {
    60 shots
  }
  block "Again" {
    time 10 min
    60 shots
  }
}`,
});

function timeOf(node: Plan | Block | Drill) {
  return isPlan(node) ? node.statements.find(isPlanTime) : statedIn(node, isPlanTime)[0];
}

function swingsIn({ statements }: Plan): number {
  return statements.filter(isBlock).reduce((sum, block) => sum + swingsOf(block), 0);
}
