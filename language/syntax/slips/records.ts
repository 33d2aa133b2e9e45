/** What was recorded, of whom, and what is made of it: sources, sessions, gates, findings, metrics of one's own. */
import type { Recogniser } from "../slip.ts";
import { firstOfLine, rangeOf, touch } from "../tokens.ts";
import { insertBefore, isNumber, isText, isWord, nearby, rewrite, takeOut, wordsOf } from "./nearby.ts";

/** `"Carry" is carry in m` in a source. */
export const columnMissing: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [header, is] = line;
  if (before !== undefined || !isText(header) || is?.image !== "is") return undefined;
  if (misfit.slip.loop?.starters.has("column") !== true) return undefined;
  return insertBefore("What a column holds is said behind `column`.", header, "column");
};

/** `ball "range" 92 %`. */
export const carriesMissing: Recogniser = ({ slip, index, token }) => {
  const [ball, name] = [slip.tokens[index - 2], slip.tokens[index - 1]];
  if (ball?.image !== "ball" || !isText(name) || !isNumber(token)) return undefined;
  return insertBefore("How far a ball carries stands behind `carries`.", token, "carries");
};

/** `gate "Strike" is met`, `gate "Strike" met twice`, `gate block "Test" met`. */
export const gateInOtherWords: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const { slip, index, expected } = misfit;
  const [first, second] = line;
  if (first === undefined || slip.tokens[firstOfLine(slip.tokens, index)]?.image !== "gate") return undefined;
  if (expected.includes("met") && /^(?:is|was|has|must)$/.test(first.image)) {
    const place = line.findIndex(({ image }) => image === "met");
    const met = line[place];
    return met && takeOut("A gate says only what is `met`.", line.slice(0, place), met);
  }
  if (before?.image === "met") {
    const word = { once: "1", twice: "2" }[first.image];
    const number = second?.image === "times" && isNumber(first) ? first.image : word;
    const last = word === undefined ? second : first;
    if (number === undefined || last === undefined) return undefined;
    const text = `in ${number} session${number === "1" ? "" : "s"}`;
    return rewrite(`How often is said in sessions: \`${text}\`.`, first, last, text);
  }
  if (first.image !== "met" || !expected.includes("of") || !isText(before)) return undefined;
  return {
    message: `Say of which plan: \`gate block ${before.image} of "…" met\`.`,
    range: rangeOf(before),
  };
};

/** `when average club-path … and average face-to-path …` in a finding. */
export const patternsTogether: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [and, next] = line;
  const { slip, index } = misfit;
  if (before === undefined || and?.image !== "and" || next === undefined) return undefined;
  if (slip.loop?.openers.includes("finding") !== true) return undefined;
  const when = slip.tokens[firstOfLine(slip.tokens, index)];
  if (when?.image !== "when") return undefined;
  const indentation = " ".repeat((when.startColumn ?? 1) - 1);
  const range = { start: rangeOf(before).end, end: rangeOf(next).start };
  return {
    message: "Each thing that is seen has a `when` of its own; all must hold.",
    range: rangeOf(and),
    fixes: [{ title: "Begin a new line", edits: [{ range, newText: `\n${indentation}when ` }] }],
  };
};

/** `metric pace: speed`, `metric pace is ball-speed / club-speed`, `metric pace is speed in mph`, `formula = carry * 2`. */
export const metricInOtherWords: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const { slip, index } = misfit;
  const [first, second] = line;
  if (first === undefined || before === undefined) return undefined;
  if (before.image === "formula" && first.image === "=" && second !== undefined)
    return takeOut("A formula stands right behind its word: take `=` out.", [first], second);
  const [metric, name, is] = slip.tokens.slice(firstOfLine(slip.tokens, index), index);
  if (metric?.image !== "metric") return undefined;
  if (first.image === ":" && before === name && misfit.expected.includes("is"))
    return rewrite("What a metric is stands behind `is`.", first, first, touch(before, first) ? " is" : "is");
  if (is?.image !== "is" || slip.tokens[firstOfLine(slip.tokens, index) + 3] !== before) return undefined;
  if (/^[-+*/]$/.test(first.image))
    return {
      message: `How a metric follows from others stands between braces: \`metric ${name?.image} is … { formula ${wordsOf([before, ...line])} }\`.`,
      range: rangeOf(before, line.at(-1)),
    };
  if (first.image !== "in" || !isWord(second)) return undefined;
  const text = `{ shown in ${second.image} to 1 }`;
  return rewrite(
    `The unit in which a metric is shown stands between braces: \`${text}\`.`,
    first,
    second,
    text,
  );
};
