/** Things one after the other: commas, arrows, and the first words of a list. */
import type { Explanation, Recogniser } from "../slip.ts";
import { firstOfLine, lastOfLine, nameOf, rangeOf, type Token, touch } from "../tokens.ts";
import { insertBefore, isNumber, isText, isWord, nearby } from "./nearby.ts";
import { wordsOfStatement } from "./other-words.ts";

/** `for 7-iron and driver`, `one of draw or fade`, `(width: angle; hits: ratio)`. */
export const comma: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const { slip, expected } = misfit;
  const [joint, next] = line;
  if (before === undefined || joint === undefined || !["and", "or", ";"].includes(joint.image))
    return undefined;
  if (!isText(next) && !isWord(next) && !isNumber(next)) return undefined;
  const own = slip.grammar.rules.get(slip.rules.at(-1) ?? "")?.own ?? [];
  const words = slip.loop === undefined ? own : wordsOfStatement(slip);
  const isList = expected.includes(",") || words.includes(",");
  if (!isList) return undefined;
  const range = { start: rangeOf(before).end, end: rangeOf(joint).end };
  return {
    message: `A comma stands between the members of a list: write \`,\` for \`${joint.image}\`.`,
    range: rangeOf(joint),
    fixes: [{ title: "Write ,", edits: [{ range, newText: "," }] }],
  };
};

/** `metric strike is toe, heel`. */
export const oneOf: Recogniser = ({ slip, token, index }) => {
  if (token?.image !== ",") return undefined;
  const first = firstOfLine(slip.tokens, index);
  const [opener, , is, name] = slip.tokens.slice(first, index);
  if (opener?.image !== "metric" || is?.image !== "is" || name === undefined || index !== first + 4)
    return undefined;
  return insertBefore("Say that it is one of several names: `is one of`.", name, "one of");
};

/** `step "Strike" -> "Windows"`. */
export const arrow: Recogniser = (misfit) => {
  const { slip, index } = misfit;
  const [mark, tip] = nearby(misfit).line;
  if (mark === undefined || !slip.rules.includes("Curriculum")) return undefined;
  const isDrawn = /^[-=]$/.test(mark.image) && tip?.image === ">" && touch(mark, tip);
  if (!isDrawn && !/^[→⇒➜]$/.test(mark.image)) return undefined;
  const { tokens } = slip;
  const line = tokens.slice(firstOfLine(tokens, index), lastOfLine(tokens, index) + 1);
  const names = line.filter(isText).map(({ image }) => image);
  const [first, second] = names;
  if (first === undefined || second === undefined) return undefined;
  const indentation = " ".repeat(Math.max(0, (line[0]?.startColumn ?? 1) - 1));
  const steps = names.map((name, place) => `step ${name}${place === 0 ? "" : ` after ${names[place - 1]}`}`);
  return {
    message: `A step has a line of its own and says what comes before it: \`step ${second} after ${first}\`.`,
    range: rangeOf(mark, isDrawn ? tip : mark),
    fixes: [
      {
        title: "Write a step a line",
        edits: [{ range: rangeOf(line[0] as Token, line.at(-1)), newText: steps.join(`\n${indentation}`) }],
      },
    ],
  } satisfies Explanation;
};

/** `then advance to "Windows" when every goal is met`. */
export const thenWithoutBraces: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const { slip, index, expected } = misfit;
  if (before?.image !== "then" || line[0] === undefined || !expected.includes("{")) return undefined;
  const last = slip.tokens[lastOfLine(slip.tokens, index)] as Token;
  const { start } = rangeOf(line[0]);
  const { end } = rangeOf(last);
  return {
    message: "What comes next stands between braces: `then { … }`, one recommendation a line.",
    range: rangeOf(before, last),
    fixes: [
      {
        title: "Write the braces",
        edits: [
          { range: { start, end: start }, newText: "{ " },
          { range: { start: end, end }, newText: " }" },
        ],
      },
    ],
  };
};

/** `average carry at least 140 yd` in a finding. */
export const whenMissing: Recogniser = ({ slip, token }) => {
  if (token === undefined || !slip.loop?.openers.includes("finding")) return undefined;
  const goals = [...slip.grammar.loops.values()].find(({ openers }) => openers.includes("success"));
  if (goals?.anchors.has(nameOf(token.tokenType)) !== true) return undefined;
  return insertBefore("What is seen when the pattern is there stands behind `when`.", token, "when");
};
