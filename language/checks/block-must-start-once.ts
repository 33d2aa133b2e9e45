import { isBlockStart } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { quoted } from "./wording.ts";

/** A block that starts twice. */
export const check = defineCheck({
  on: ["Session"],
  reason: "Every shot from where a block starts belongs to it, until another starts.",
  run(session, { document, report }) {
    const first = new Map<string, string>();
    for (const start of session.statements.filter(isBlockStart)) {
      const block = start.block?.ref?.name;
      if (block === undefined) continue;
      const earlier = first.get(block);
      if (earlier === undefined) {
        first.set(block, start.time ?? `row ${start.row}`);
        continue;
      }
      report({
        message: `${quoted(block)} starts from ${earlier} already. Keep one of the two.`,
        node: start,
        fixes: [{ title: `Keep ${earlier}`, edits: [remove(document, rangeOf(start))] }],
      });
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  block "Start" from row 2
  «block "Start" from row 14»
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  block "Start" from row 2
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  block "Start" from row 2
}`,
});
