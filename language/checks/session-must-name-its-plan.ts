import { isSessionPlan, Plan } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { offerStatements } from "./edits.ts";
import { code, quoted } from "./wording.ts";

/** A session that does not say what was practised. */
export const check = defineCheck({
  on: ["Session"],
  reason: "Shots are scored against the goals of a plan.",
  run(session, { document, names, report }) {
    if (session.statements.some(isSessionPlan)) return;
    const plans = [...names.visible(document, Plan.$type)].map(({ name }) => name);
    report({
      message: `Which plan was practised? Write ${code(`plan ${quoted(plans[0] ?? "…")}`)} in the session.`,
      node: session,
      property: "name",
      fixes: offerStatements(document, session, "plan", plans),
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

source "Bay" {
  column "Carry" is carry in m
}

session «"First"» {
  player "P-1"
  data "first.csv" from "Bay"
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
