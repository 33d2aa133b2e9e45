import { once } from "../../shared/once.ts";
import { seldomDecidedFor } from "../analysis/decidability/seldom-decided.ts";
import { placeInWords } from "../analysis/words.ts";
import { isUsual } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { linesOf, meaningOf, type SessionMeaning } from "./session-meaning.ts";
import { code } from "./wording.ts";

/** A sentence about ability that stays open most of the time, given how much a player's shots usually scatter. */
export const check = defineCheck({
  on: ["Session"],
  looksAtMeaning: true,
  reason:
    "The wilder a player's shots, the more of them it takes to show an average or a change. With too few the goal stays open, whatever the player learns.",
  run(session, context) {
    const { player: node } = linesOf(session);
    const statesSpread = node?.player?.ref?.statements.some(
      (line) => isUsual(line) && line.spread !== undefined,
    );
    const meaning = statesSpread ? meaningOf(session, context) : undefined;
    if (node === undefined || meaning === undefined) return;
    for (const { goal, remark } of seldomDecidedIn(meaning)) {
      const here = { file: context.document.uri.toString(), range: goal.location.range };
      context.report({
        message: `${code(goal.text)} (${placeInWords(goal.location, here)}): ${remark.message}`,
        node,
        related: [{ message: goal.text, location: goal.location }, ...remark.related],
      });
    }
  },
  reporting: `
plan "Gate" {
  for 7-iron
  block "Start" test {
    6 shots
    success average carry within 5 yd of 150 yd at 90 % confidence
  }
}

player "P-1" {
  right-handed
  usual carry 148 yd spread 9 yd with 7-iron over 40 shots
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  «player "P-1"»
  data "first.csv" from "Bay"
}`,
  silent: `
plan "Gate" {
  for 7-iron
  block "Start" test {
    20 shots
    success average carry within 5 yd of 150 yd at 90 % confidence
  }
}

player "P-1" {
  right-handed
  usual carry 148 yd spread 9 yd with 7-iron over 40 shots
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

const seldomDecidedIn = once(({ blocks, player }: SessionMeaning) =>
  blocks.flatMap((block) => seldomDecidedFor(player, block)),
);
