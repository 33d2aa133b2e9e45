import { isBlockStart } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { repeated } from "./repeated.ts";
import { quoted } from "./wording.ts";

/** A block that starts twice. */
export const check = defineCheck({
  on: ["Session"],
  reason: "Every shot from where a block starts belongs to it, until another starts.",
  run(session, { document, report }) {
    const starts = session.statements.filter(isBlockStart);
    for (const { thing, first } of repeated(starts, ({ block }) => block?.ref?.name)) {
      const earlier = first.time ?? `row ${first.row}`;
      report({
        message: `${quoted(thing.block.$refText)} starts from ${earlier} already. Keep one of the two.`,
        node: thing,
        fixes: [{ title: `Keep ${earlier}`, edits: [remove(document, rangeOf(thing))] }],
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
