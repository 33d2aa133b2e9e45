/** Goals, windows and usual numbers that leave out a word: `7 of 10 shots`, `carry at least 150 yd`, `carry ± 6 yd`. */
import { ordinalEnding } from "../../../shared/plural.ts";
import type { Recogniser } from "../slip.ts";
import { excerpt, nameOf, rangeOf, type Token, touch } from "../tokens.ts";
import { phraseBefore } from "./limits.ts";
import {
  goalAround,
  insertBefore,
  isNumber,
  isWord,
  LIMITS,
  nearby,
  rewrite,
  takeOut,
  typeOf,
  wordsOf,
} from "./nearby.ts";

/** `7 of 10 shots` and `70 % of shots`, which begin like `7 in a row` and `2 of { … }`; and `7 at least of 10 shots`. */
export const boundMissing: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const { slip, index, expected } = misfit;
  const [token, bound] = line;
  const isGroup = before?.image === "of" && expected.includes("{");
  const number = isGroup ? slip.tokens[index - 2] : before;
  if (!isNumber(number) || token === undefined || (!isGroup && !expected.includes("in"))) return undefined;
  if (token.image === "at" && (bound?.image === "least" || bound?.image === "most")) {
    const text = `at ${bound.image} ${number.image}`;
    return rewrite(`The number stands behind these words: \`${text}\`.`, number, bound, text);
  }
  if (isGroup ? !isNumber(token) : !["%", "shots", "shot"].includes(token.image)) return undefined;
  const text = `at least ${number.image}`;
  return rewrite(`Say whether this is the least or the most, as in \`${text}\`.`, number, number, text);
};

/** `at least share of shots`, `at least 70 of the shots`: a share, or of how many? */
export const shareOrTotal: Recogniser = (misfit) => {
  const { line } = nearby(misfit);
  const { tokens } = misfit.slip;
  const [at, bound, number, of] = tokens.slice(Math.max(0, misfit.index - 4), misfit.index);
  const shots = line[0]?.image === "the" ? line[1] : line[0];
  if (of?.image !== "of" || number === undefined || at?.image !== "at" || bound === undefined)
    return undefined;
  if (shots === undefined || !/^shots?$/.test(shots.image)) return undefined;
  const text = `at ${bound.image} ${number.image} % of shots`;
  if (!isNumber(number)) {
    const message = "A share of the shots is written with `%`, also where a parameter stands for it";
    return rewrite(`${message}: \`${text}\`.`, at, shots, text);
  }
  return {
    message: `Say of how many, \`at ${bound.image} ${number.image} of … shots\`, or that it is a share: \`${text}\`.`,
    range: rangeOf(at, shots),
  };
};

/** `at least 5 in a row`. */
export const leastInARow: Recogniser = (misfit) => {
  const { before: number, line } = nearby(misfit);
  const { tokens } = misfit.slip;
  const [at, least] = tokens.slice(misfit.index - 3, misfit.index - 1);
  if (line[0]?.image !== "in" || !isNumber(number) || at?.image !== "at" || least?.image !== "least")
    return undefined;
  const text = `${number.image} in a row`;
  return takeOut(`More of them do no harm as it is: \`${text}\`.`, [at, least], number);
};

/** `90 percentile of carry`, `90. percentile`. */
export const ordinal: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const word = /^[%.]$/.test(line[0]?.image ?? "") ? line[1] : line[0];
  if (word?.image !== "percentile" || !isNumber(before) || !misfit.expected.includes("th")) return undefined;
  const text = `${before.image}${ordinalEnding(Number(before.image))} percentile`;
  return rewrite(`Percentiles are counted: \`${text}\`.`, before, word, text);
};

/** `p90 of carry`, `variance of carry`, which begin like the number of a group. */
export const statisticUnknown: Recogniser = (misfit) => {
  const { before: of, line } = nearby(misfit);
  const [metric] = line;
  const said = misfit.slip.tokens[misfit.index - 2];
  if (of?.image !== "of" || said === undefined || !isWord(said) || !isWord(metric)) return undefined;
  if (!misfit.expected.includes("{")) return undefined;
  const percent = /^p(?<percent>\d{1,2})$/i.exec(said.image)?.groups?.percent;
  if (percent !== undefined) {
    const text = `${Number(percent)}${ordinalEnding(Number(percent))} percentile`;
    return rewrite(`Percentiles are counted: \`${text}\`.`, said, said, text);
  }
  return {
    message: `\`${excerpt(said.image)}\` cannot be asked of a metric. What can be are \`average\`, \`median\`, \`spread\`, \`best\`, \`worst\`, and percentiles such as \`90th percentile\`.`,
    range: rangeOf(said),
  };
};

/** `carry at least 150 yd` as a goal: which shots, or what of them? */
export const statisticMissing: Recogniser = (misfit) => {
  const { before: metric, line } = nearby(misfit);
  const { slip, index, expected } = misfit;
  const [limit] = line;
  if (limit === undefined || metric === undefined || !slip.grammar.names.has(nameOf(metric.tokenType)))
    return undefined;
  if (goalAround(misfit)[0] !== metric) return undefined;
  const words = LIMITS.has(limit.image) ? limit.image : phraseBefore(line)?.bound;
  if (words === undefined) return undefined;
  if (!expected.includes("gains") || slip.start > index - 1) return undefined;
  const isName = limit.image === "is";
  const goal = `at least 70 % of shots with ${metric.image} ${words} …`;
  const average = isName ? [] : [{ title: "Write average", edits: [insertionAt(metric, "average ")] }];
  return {
    message: isName
      ? `Say how many shots: \`${goal}\`.`
      : `Say what of \`${metric.image}\`, as in \`average ${metric.image} ${words} …\`, or how many shots: \`${goal}\`.`,
    range: rangeOf(metric, limit),
    fixes: [
      ...average,
      { title: "Ask for a share of the shots", edits: [insertionAt(metric, "at least 70 % of shots with ")] },
    ],
  };
};

/** `at least 7 of 10 on target`. */
export const shotsMissing: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [word] = line;
  if (word === undefined || !misfit.expected.includes("shots")) return undefined;
  if (before?.image !== "of" && !isNumber(before)) return undefined;
  if (!["on", "with", "inside", "outside"].includes(word.image)) return undefined;
  return insertBefore("Say what is counted: `shots`.", word, "shots");
};

/** `at least 70 % on target`, `at least 70 % shots`, `at least 70 % of 10 shots`. */
export const shareOfShots: Recogniser = (misfit) => {
  const { before, line } = nearby(misfit);
  const [word, next] = line;
  const isBehindOf = before?.image === "of";
  const percent = isBehindOf ? misfit.slip.tokens[misfit.index - 2] : before;
  if (word === undefined || percent?.image !== "%") return undefined;
  if (isBehindOf) {
    if (!isNumber(word) || next === undefined || !/^shots?$/.test(next.image)) return undefined;
    return takeOut(`A share is one of all shots of the block: take \`${word.image}\` out.`, [word], next);
  }
  const missing = word.image === "shots" ? "of" : "of shots";
  const isShare = ["shots", "on", "with", "inside", "outside"].includes(word.image);
  return isShare && misfit.expected.includes("of")
    ? insertBefore("A share is one `of shots`.", word, missing)
    : undefined;
};

/** `middle 80 % of carry within 20 yd`, `middle 80 % of carry at most 20 yd`. */
export const spansMissing: Recogniser = (misfit) => {
  const goal = goalAround(misfit);
  const [middle, , percent, of, , limit] = goal;
  if (middle?.image !== "middle" || percent?.image !== "%" || of?.image !== "of" || limit === undefined)
    return undefined;
  if (!LIMITS.has(limit.image) || limit.image === "is") return undefined;
  const message = "How far apart shots lie is said with `spans`";
  return limit.image === "within"
    ? rewrite(`${message}: \`spans at most …\`.`, limit, limit, "spans at most")
    : insertBefore(`${message}.`, limit, "spans");
};

/** `area of the ellipse of carry and offline`, `80 % ellipse of carry and offline`. */
export const ellipseShare: Recogniser = (misfit) => {
  const goal = goalAround(misfit);
  const place = goal.findIndex(({ image }) => image === "ellipse");
  const said = wordsOf(goal.slice(0, place + 1));
  const match =
    /^(?<measure>(?:area|major axis|minor axis) )?(?:of )?(?:the )?(?:(?<share>\d+) % )?ellipse$/.exec(said);
  const [first, last] = [goal[0], goal[place]];
  if (match === null || first === undefined || last === undefined) return undefined;
  const { measure = "area ", share } = match.groups ?? {};
  const text = `${measure}of the ${share ?? 80} % ellipse`;
  if (said === text) return undefined;
  return rewrite(`The ellipse of how many of the shots, and what of it: \`${text}\`.`, first, last, text);
};

/** `window "Path" club-path within ±2°`, `for driver club-path within ±3°`. */
export const isMissing: Recogniser = (misfit) => {
  const [metric, limit] = nearby(misfit).line;
  const { slip, expected } = misfit;
  if (metric === undefined || limit === undefined || !expected.includes("is")) return undefined;
  const isInWindow = slip.rules.some((rule) => rule === "Window" || rule === "WindowVariant");
  if (!isInWindow || typeOf(metric) !== "WORD" || !LIMITS.has(limit.image)) return undefined;
  return insertBefore(
    `What a window asks for stands behind \`is\`: \`is ${metric.image} ${limit.image} …\`.`,
    metric,
    "is",
  );
};

/** `usual carry 150 yd ± 6 yd`, `reads carry ± 2 m`, `reads carry within ±2 m`. */
export const plusMinusInWords: Recogniser = (misfit) => {
  const [sign, number] = nearby(misfit).line;
  if (sign === undefined || number === undefined || (sign.image !== "±" && sign.image !== "+/-"))
    return undefined;
  const { slip, expected } = misfit;
  const rule = slip.tokens[slip.start]?.image;
  if (rule === "usual")
    return rewrite(
      "How much it varies is said in a word: `spread`.",
      sign,
      sign,
      touch(sign, number) ? "spread " : "spread",
    );
  if (rule !== "reads") return undefined;
  if (expected.includes("within")) {
    return rewrite(
      "How far readings may be off is said in a word: `within`.",
      sign,
      sign,
      touch(sign, number) ? "within " : "within",
    );
  }
  return {
    message: "Readings may be off either way as it is: take the sign out.",
    range: rangeOf(sign),
    fixes: [
      {
        title: `Take ${sign.image} out`,
        edits: [{ range: { start: rangeOf(sign).start, end: rangeOf(number).start }, newText: "" }],
      },
    ],
  };
};

function insertionAt(token: Token, newText: string) {
  const { start } = rangeOf(token);
  return { range: { start, end: start }, newText };
}
