/** The parameters of a drill, and what a block says of them, with marks of other notations. */
import type { Explanation, Recogniser } from "../slip.ts";
import { lastOfLine, rangeOf, type Token } from "../tokens.ts";
import { EVERYDAY_UNITS, insertBefore, isNumber, isWord, nearby, rewrite, typeOf } from "./nearby.ts";

/** `(width = 3°)`, `(width angle = 3°)`, `(width: 3°)`, `(width: angle 3°)`. */
export const parameter: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [token, second, third] = line;
  const { expected, slip } = misfit;
  if (token === undefined || before === undefined) return undefined;
  if (expected.includes(":") && isWord(before)) {
    if (token.image === "=") {
      const text = `${before.image}: ${kindOf(second, third)} =`;
      return rewrite(
        `A parameter says what it stands for before its default, as in \`${text} …\`.`,
        before,
        token,
        text,
      );
    }
    const message = `A colon stands behind the name of a parameter: \`${before.image}: …\`.`;
    return typeOf(token) === "WORD" ? replaceGap(message, before, token, ": ") : undefined;
  }
  if (!isNumber(token)) return undefined;
  if (expected.includes("club")) {
    const text = `${kindOf(token, second)} =`;
    return insertBefore(
      `A parameter says what it stands for before its default, as in \`${text} …\`.`,
      token,
      text,
    );
  }
  const isDefault = slip.rules.includes("Drill") && expected.includes(")");
  return isDefault ? insertBefore("A default stands behind `=`.", token, "=") : undefined;
};

function kindOf(value: Token | undefined, unit: Token | undefined): string {
  if (isWord(value)) return "club";
  return EVERYDAY_UNITS.get(unit?.image ?? "") ?? "ratio";
}

/** `drill "Gate" [width: angle]` and `drill "Gate" width: angle = 3° {`. */
export const parameterBrackets: Recogniser = (misfit) => {
  const { slip, token, index } = misfit;
  if (token === undefined || slip.rules.at(-1) !== "Drill" || !misfit.expected.includes("{"))
    return undefined;
  const line = slip.tokens.slice(index, lastOfLine(slip.tokens, index) + 1);
  const closing = line.findIndex(({ image }) => image === (token.image === "[" ? "]" : "{"));
  const last = line[closing];
  const message = "The parameters of a drill stand in round brackets: `(width: angle = 3°)`.";
  if (token.image === "[") {
    const edits =
      last === undefined
        ? []
        : [
            { range: rangeOf(token), newText: "(" },
            { range: rangeOf(last), newText: ")" },
          ];
    return {
      message,
      range: rangeOf(token),
      fixes: edits.length === 0 ? [] : [{ title: "Write ( )", edits }],
    };
  }
  const inner = closing > 0 ? line[closing - 1] : undefined;
  if (!isWord(token) || line[1]?.image !== ":" || inner === undefined) return undefined;
  const { start } = rangeOf(token);
  const { end } = rangeOf(inner);
  const edits = [
    { range: { start, end: start }, newText: "(" },
    { range: { start: end, end }, newText: ")" },
  ];
  return { message, range: rangeOf(token, inner), fixes: [{ title: "Write ( )", edits }] };
};

/** `with width: 3°`, `with width 3°`. */
export const argument: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [token] = line;
  if (token === undefined || before === undefined || !misfit.expected.includes("=")) return undefined;
  if (!misfit.slip.rules.includes("Argument")) return undefined;
  const message = `What a parameter stands for is written with \`=\`, as in \`${before.image} = …\`.`;
  if (token.image === ":") return replaceGap(message, before, token, " =", rangeOf(token).end);
  return insertBefore(message, token, "=");
};

/** `from "Gate" (width = 3°)` and `from "Gate", width = 3°`. */
export const argumentBrackets: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [mark, name, equals] = line;
  if (before === undefined || mark === undefined || misfit.slip.loop === undefined) return undefined;
  if ((mark.image !== "(" && mark.image !== ",") || !isWord(name) || !/^[=:]$/.test(equals?.image ?? ""))
    return undefined;
  const rest = misfit.slip.tokens.slice(misfit.index, lastOfLine(misfit.slip.tokens, misfit.index) + 1);
  const closing = mark.image === "(" ? rest.find(({ image }) => image === ")") : undefined;
  return {
    message: "What the parameters of a drill stand for is written behind `with`.",
    range: rangeOf(mark),
    fixes: [
      {
        title: "Write with",
        edits: [
          { range: { start: rangeOf(before).end, end: rangeOf(name).start }, newText: " with " },
          ...(closing === undefined ? [] : [{ range: rangeOf(closing), newText: "" }]),
        ],
      },
    ],
  };
};

/** Writes something between two tokens in place of what is there. */
function replaceGap(
  message: string,
  before: Token,
  token: Token,
  text: string,
  end = rangeOf(token).start,
): Explanation {
  const range = { start: rangeOf(before).end, end };
  return {
    message,
    range: rangeOf(before, token),
    fixes: [{ title: `Write ${text.trim()}`, edits: [{ range, newText: text }] }],
  };
}
