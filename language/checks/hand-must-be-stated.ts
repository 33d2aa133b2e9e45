import { AstUtils } from "langium";
import {
  type HandedDirection,
  isHandedness,
  isSession,
  isSessionData,
  isSessionPlan,
  isSessionPlayer,
  type Player,
  type SessionPlayer,
} from "../generated/tree/ast.ts";
import { type CheckContext, defineCheck, type Fix } from "./check.ts";
import { insertStatement } from "./edits.ts";
import { reachedFrom } from "./reached.ts";
import { code, quoted } from "./wording.ts";

/** A player whose hand is not stated, where words that mirror with the hand are to be read. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "In-to-out, open or draw are to the other side for a left-hander. Guessing the hand would turn a plan into its opposite.",
  run(root, context) {
    for (const session of root.declarations.filter(isSession)) {
      const statement = session.statements.find(isSessionPlayer);
      const player = statement?.player?.ref;
      if (statement === undefined || player === undefined || context.isBroken(session)) continue;
      if (player.statements.some(isHandedness)) continue;
      const plan = session.statements.find(isSessionPlan)?.plan?.ref;
      const sources = session.statements.filter(isSessionData).map(({ source }) => source?.ref);
      const words = [plan, ...sources].flatMap(
        (part) => (part && reachedFrom(part, context).handedWord) ?? [],
      );
      const [word] = words;
      if (word !== undefined) reportMissingHand(statement, player, word, context);
    }
  },
  reporting: `
window "Path" is club-path within 2° of 1° in-to-out

drill "Line" {
  10 shots
  target inside "Path"
}

plan "Gate" {
  block "Start" from "Line"
}

player "P-1" {
  note "Plays on Tuesdays"
}

source "Bay" {
  column "Path" is club-path in °
}

session "First" {
  plan "Gate"
  player «"P-1"»
  data "first.csv" from "Bay"
}`,
  fixed: `
window "Path" is club-path within 2° of 1° in-to-out

drill "Line" {
  10 shots
  target inside "Path"
}

plan "Gate" {
  block "Start" from "Line"
}

player "P-1" {
  right-handed
  note "Plays on Tuesdays"
}

source "Bay" {
  column "Path" is club-path in °
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
    target club-path within 2° of 1° right
  }
}

player "P-1" {
  note "Plays on Tuesdays"
}

source "Bay" {
  column "Path" is club-path in ° positive right
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
}`,
});

function reportMissingHand(
  statement: SessionPlayer,
  player: Player,
  word: HandedDirection,
  { document, report }: CheckContext,
): void {
  const isHere = AstUtils.getDocument(player) === document;
  const fixes = ["right-handed", "left-handed"].flatMap((hand): Fix[] => {
    const edit = isHere ? insertStatement(document, player, hand) : undefined;
    return edit === undefined ? [] : [{ title: `${player.name} is ${hand}`, edits: [edit] }];
  });
  report({
    message: `${code(word.name)} is to the other side for a left-hander, and nothing says which hand ${quoted(player.name)} has. Write ${code("right-handed")} or ${code("left-handed")} in the player.`,
    node: statement,
    property: "player",
    fixes,
  });
}
