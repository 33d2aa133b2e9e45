import { isSessionData } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A session without a table. */
export const check = defineCheck({
  on: ["Session"],
  reason: "Without the shots there is nothing to score.",
  run(session, { report }) {
    if (session.statements.some(isSessionData)) return;
    report({
      message: `Which table was recorded? Write its path and the source that reads it: ${code('data "first.csv" from "…"')}.`,
      node: session,
      property: "name",
    });
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

session «"First"» {
  plan "Gate"
  player "P-1"
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
}`,
});
