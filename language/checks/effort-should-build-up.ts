import { hasEffort } from "../../shared/full-effort.ts";
import { type Block, isShots, type Shots } from "../generated/tree/ast.ts";
import { kindOf } from "../types/kinds.ts";
import { numberOf } from "../types/parameters.ts";
import { type CheckContext, defineCheck, type TextEdit } from "./check.ts";
import { cstOf, insertAfter, rangeOf, replace } from "./edits.ts";
import { clubOf, statedIn } from "./practice.ts";

/** The most that a first swing should be, in percent of a full one. */
const EASY = 80;

/** The most that effort should rise from one line to the next, in percent of a full swing. */
const STEP = 40;

/** A warm-up that begins with full swings, or jumps to them. */
export const check = defineCheck({
  on: ["Block"],
  isAboutPractice: true,
  reason: "A warm-up builds up: easy swings first, and full ones when the body is ready for them.",
  run(block, { report }) {
    if (kindOf(block) !== "warm-up") return;
    const lines = statedIn(block, isShots);
    reportJumps(lines, block, report);
    const [first] = lines;
    if (first === undefined || first.$container !== block) return;
    const effort = effortOf(first, block);
    if (effort === undefined || effort <= EASY) return;
    report({
      message: "This warm-up begins with full swings. Begin with little effort, such as 50 %.",
      node: first,
      fixes: [
        {
          title: "Begin at 50 % effort",
          edits: [writeEffort(first, 50)],
        },
      ],
    });
  },
  reporting: `
plan "Gate" {
  block "Wake up" warm-up {
    «8 shots»
  }
  block "Wake up again" warm-up {
    4 shots at 30 % effort
    «4 shots with driver at 90 % effort»
  }
}`,
  fixed: `
plan "Gate" {
  block "Wake up" warm-up {
    8 shots at 50 % effort
  }
  block "Wake up again" warm-up {
    4 shots at 30 % effort
    4 shots with driver at 60 % effort
  }
}`,
  silent: `
plan "Gate" {
  block "Wake up" warm-up {
    8 shots at 60 % effort
    4 shots
  }
  block "Roll" warm-up {
    6 shots with putter
  }
}`,
});

function reportJumps(lines: readonly Shots[], block: Block, report: CheckContext["report"]): void {
  for (const [index, line] of lines.entries()) {
    const before = lines[index - 1];
    const effort = effortOf(line, block);
    const earlier = before && effortOf(before, block);
    if (effort === undefined || earlier === undefined || effort - earlier <= STEP) continue;
    if (line.$container !== block) continue;
    const between = Math.round((earlier + effort) / 2 / 5) * 5;
    report({
      message: `From ${earlier} % to ${effort} % is a leap. Build up in smaller steps, such as ${between} % here.`,
      node: line,
      fixes: [
        {
          title: `Make it ${between} % effort`,
          edits: [writeEffort(line, between)],
        },
      ],
    });
  }
}

/** In percent of a full swing: a full one where it is not stated, except of a putt. */
function effortOf(line: Shots, block: Block): number | undefined {
  if (line.effort !== undefined) return numberOf(line.effort);
  return hasEffort(clubOf(line, block)) ? 100 : undefined;
}

/** Writes how much of a full swing a line of shots is hit at, in percent. */
function writeEffort(line: Shots, effort: number): TextEdit {
  const stated = cstOf(line, "effort");
  return stated === undefined
    ? insertAfter(rangeOf(line), ` at ${effort} % effort`)
    : replace(stated.range, String(effort));
}
