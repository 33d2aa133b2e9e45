import { isSessionPlayer, Player } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { offerStatements } from "./edits.ts";
import { code, quoted } from "./wording.ts";

/** A session that does not say who practised. */
export const check = defineCheck({
  on: ["Session"],
  reason: "Direction words are read with the player's hand, and results are kept player by player.",
  run(session, { document, names, report }) {
    if (session.statements.some(isSessionPlayer)) return;
    const players = [...names.visible(document, Player.$type)].map(({ name }) => name);
    report({
      message: `Who practised? Write ${code(`player ${quoted(players[0] ?? "…")}`)} in the session.`,
      node: session,
      property: "name",
      fixes: offerStatements(document, session, "player", players),
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
  plan "Gate"
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
  player "P-1"
  plan "Gate"
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
