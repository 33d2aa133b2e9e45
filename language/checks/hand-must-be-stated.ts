import { type AstNode, AstUtils } from "langium";
import {
  type HandedDirection,
  isDrillUse,
  isHandedDirection,
  isHandedness,
  isLooksFor,
  isMetricColumn,
  isQuantity,
  isSession,
  isSessionData,
  isSessionPlan,
  isSessionPlayer,
  isSpelling,
  isWindowTest,
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
        if (!words.has(part)) words.set(part, handedWordIn(part, new Set()));
        const word = words.get(part);
        if (word === undefined) continue;
        reportMissingHand(statement, player, word, context);
        break;
      }
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

/** The first word that mirrors with the hand in a plan or source, and in the drills, windows and findings it names. */
function handedWordIn(part: AstNode, seen: Set<AstNode>): HandedDirection | undefined {
  if (seen.has(part)) return undefined;
  seen.add(part);
  for (const node of AstUtils.streamAst(part)) {
    const word = isQuantity(node)
      ? node.direction?.ref
      : isMetricColumn(node)
        ? node.positive?.ref
        : isSpelling(node)
          ? node.meaning?.ref
          : undefined;
    if (isHandedDirection(word)) return word;
    for (const named of namedIn(node)) {
      const found = named && handedWordIn(named, seen);
      if (found !== undefined) return found;
    }
  }
  return undefined;
}

function namedIn(node: AstNode): readonly (AstNode | undefined)[] {
  if (isDrillUse(node)) return [node.drill?.ref];
  if (isWindowTest(node)) return [node.window?.ref];
  return isLooksFor(node) ? node.findings.map(({ ref }) => ref) : [];
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
