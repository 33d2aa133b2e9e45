import { once } from "../../shared/once.ts";
import { goalsWithoutUsual } from "../analysis/decidability/usual-numbers.ts";
import { placeInWords } from "../analysis/words.ts";
import { defineCheck } from "./check.ts";
import { linesOf, meaningOf, type SessionMeaning } from "./session-meaning.ts";
import { code } from "./wording.ts";

/** A change against what is usual of a player of whom that is not stated, or stated as what leaves no such change. */
export const check = defineCheck({
  on: ["Session"],
  looksAtMeaning: true,
  reason: "A change is measured from a number. Where nobody states what is usual of a player, it never is.",
  run(session, context) {
    const { player: node } = linesOf(session);
    const meaning = node === undefined ? undefined : meaningOf(session, context);
    if (node === undefined || meaning === undefined) return;
    for (const { goal, remark } of withoutUsualIn(meaning)) {
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
    12 shots
    success carry gains at least 4 yd against usual
  }
}

player "P-1" {
  right-handed
  usual carry 210 yd with driver
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
    12 shots
    success carry gains at least 4 yd against usual
  }
}

player "P-1" {
  right-handed
  usual carry 150 yd spread 7 yd with 7-iron
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

const withoutUsualIn = once(({ blocks, player }: SessionMeaning) =>
  blocks.flatMap((block) => goalsWithoutUsual(player, block)),
);
