import { type AstNode, AstUtils } from "langium";
import {
  type HandedDirection,
  isHandedDirection,
  isHandedness,
  isMetricColumn,
  isQuantity,
  isSession,
  isSessionData,
  isSessionPlan,
  isSessionPlayer,
  type Player,
  type SessionPlayer,
} from "../generated/tree/ast.ts";
import { type CheckContext, defineCheck, type Fix } from "./check.ts";
import { insertStatement } from "./edits.ts";
import { code, quoted } from "./wording.ts";

/** A player whose hand is not stated, where words that mirror with the hand are to be read. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "In-to-out, open or draw are to the other side for a left-hander. Guessing the hand would turn a plan into its opposite.",
  run(root, context) {
    const words = new Map<AstNode, HandedDirection | undefined>();
    for (const session of root.declarations.filter(isSession)) {
      const statement = session.statements.find(isSessionPlayer);
      const player = statement?.player?.ref;
      if (statement === undefined || player === undefined || context.isBroken(session)) continue;
      if (player.statements.some(isHandedness)) continue;
      const plan = session.statements.find(isSessionPlan)?.plan?.ref;
      const sources = session.statements.filter(isSessionData).map(({ source }) => source?.ref);
      for (const part of [plan, ...sources]) {
        if (part === undefined) continue;
        if (!words.has(part)) words.set(part, handedWordIn(part));
        const word = words.get(part);
        if (word === undefined) continue;
        reportMissingHand(statement, player, word, context);
        break;
      }
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
    target club-path within 2° of 1° in-to-out
  }
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
plan "Gate" {
  block "Start" {
    10 shots
    target club-path within 2° of 1° in-to-out
  }
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

/** The first word in a plan or source that mirrors with the hand. */
function handedWordIn(part: AstNode): HandedDirection | undefined {
  for (const node of AstUtils.streamAst(part)) {
    const word = isQuantity(node)
      ? node.direction?.ref
      : isMetricColumn(node)
        ? node.positive?.ref
        : undefined;
    if (isHandedDirection(word)) return word;
  }
  return undefined;
}

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
