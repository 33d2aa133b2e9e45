import type { AstNode } from "langium";
import { type CheckContext, defineCheck } from "./check.ts";
import { cstOf, replace } from "./edits.ts";

/** Numbers of which there must be some, what is said of none, and what to write where that is clear. */
const NOT_ZERO: Readonly<
  Record<string, readonly (readonly [property: string, advice: string, better?: string])[]>
> = {
  Shots: [["count", "A block of no shots is no practice. Say how many are hit"]],
  CountCriterion: [["outOf", "Of 0 shots none can be a hit. Say out of how many"]],
  RunCriterion: [["length", "A run has at least one shot. Say how many in a row"]],
  HeaderRow: [["row", "Rows are counted from 1", "1"]],
  BlockStart: [["row", "Rows are counted from 1, and the first holds the column names", "2"]],
  ShownIn: [["step", "Readings are shown to a step above 0, such as 0.1", "0.1"]],
  Unit: [["factor", "A unit is worth more than nothing. Say what one of it is worth"]],
};

/** Nothing of something that there must be some of. */
export const check = defineCheck({
  on: ["Shots", "CountCriterion", "RunCriterion", "HeaderRow", "BlockStart", "ShownIn", "Unit"],
  reason: "Nothing can be hit, counted, shown or read with none of it.",
  run(node, context) {
    for (const [property, advice, better] of NOT_ZERO[node.$type] ?? []) {
      checkNumber(node, property, advice, better, context);
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    «0» shots
  }
  block "Again" test {
    10 shots
    success {
      at most 0 of «0» shots with carry below 100 yd
      «0» in a row with carry at least 150 yd
    }
  }
}

source "Bay" {
  header row «0»
}

metric pace is speed {
  shown in mph to «0»
}

dimension weight {
  unit kg
  unit stone = «0» kg
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    0 shots
  }
  block "Again" test {
    10 shots
    success {
      at most 0 of 0 shots with carry below 100 yd
      0 in a row with carry at least 150 yd
    }
  }
}

source "Bay" {
  header row 1
}

metric pace is speed {
  shown in mph to 0.1
}

dimension weight {
  unit kg
  unit stone = 0 kg
}`,
  silent: `
plan "Gate" {
  block "Again" test {
    10 shots
    success at most 0 of 10 shots with carry below 100 yd
  }
}`,
});

function checkNumber(
  node: AstNode,
  property: string,
  advice: string,
  better: string | undefined,
  { report }: CheckContext,
): void {
  if (node[property as keyof AstNode] !== (0 as unknown)) return;
  const cst = cstOf(node, property);
  if (cst === undefined) return;
  report({
    message: `${advice}.`,
    node,
    cst,
    fixes: better === undefined ? [] : [{ title: `Write ${better}`, edits: [replace(cst.range, better)] }],
  });
}
