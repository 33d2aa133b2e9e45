import { isBlockStart, isSessionData } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";

/** Starts of blocks that do not go down the table. */
export const check = defineCheck({
  on: ["Session"],
  reason:
    "Starts are read down the table. A row that is not below the one before is one of the next table, and there must be one.",
  run(session, { report }) {
    const tables = session.statements.filter(isSessionData).length;
    let used = 1;
    let before = 0;
    for (const start of session.statements.filter(isBlockStart)) {
      if (start.row === undefined || start.file !== undefined) continue;
      if (start.row <= before) used++;
      if (start.row <= before && used > tables && tables > 0) {
        const which = tables === 1 ? "the table" : `the last of the ${tables} tables`;
        report({
          message: `Row ${start.row} is not below row ${before}, where the block before it starts in ${which}. Put the starts in the order of the rows.`,
          node: start,
          property: "row",
        });
      }
      before = start.row;
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
  }
  block "Again" {
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
  block "Start" from row 12
  block "Again" from row «2»
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
  }
  block "Again" {
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
  data "morning.csv" from "Bay"
  data "evening.csv" from "Bay"
  block "Start" from row 2
  block "Again" from row 2
}`,
});
