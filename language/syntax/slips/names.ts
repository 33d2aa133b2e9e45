/** A metric that is one of several names, and an `or` behind it: `shape is push or carry at least 150 yd`. */
import type { Explanation, Recogniser } from "../slip.ts";
import { firstOfLine, lastOfLine, rangeOf, type Token } from "../tokens.ts";
import { asWritten, isNumber, isWord, LIMITS, nearby, rewrite, takeOut } from "./nearby.ts";

/** Behind `or` further names are read, so that the metric behind it was taken for one. */
export const metricBehindNames: Recogniser = ({ slip: { tokens }, index }) => {
  const last = tokens[index - 1];
  if (last === undefined) return undefined;
  const line = tokens.slice(firstOfLine(tokens, index - 1), lastOfLine(tokens, index - 1) + 1);
  const or = line.findIndex(
    (token, place) =>
      token.image === "or" && isWord(line[place + 1]) && isLimit(line[place + 2], line[place + 3]),
  );
  const is = startOfNames(line, or);
  const [named, metric, limit] = [line[is - 1], line[or + 1], line[or + 2]];
  if (or < 0 || !isWord(named) || metric === undefined || limit === undefined) return undefined;
  const why = `Behind \`or\` further names of \`${named.image}\` are read`;
  if (limit.image !== "is") return limitFirst(why, line, is, or);
  const name = line[or + 3];
  if (metric.image === named.image && name !== undefined)
    return takeOut(
      `${why}: leave \`${metric.image} is\` out before \`${name.image}\`.`,
      [metric, limit],
      name,
    );
  return {
    message: `${why}. Declare a \`window\` for what stands there, and write \`or inside "…"\`.`,
    range: rangeOf(metric),
  };
};

/** `shape is not hook`, where `not` was read as a name. */
export const notNamed: Recogniser = (misfit) => {
  const { before: not, line } = nearby(misfit);
  const [name] = line;
  const { tokens } = misfit.slip;
  const [metric, is] = tokens.slice(Math.max(0, misfit.index - 3), misfit.index - 1);
  if (not?.image !== "not" || is?.image !== "is" || metric === undefined || name === undefined)
    return undefined;
  return {
    message: `What must not be is said with the names that may be: \`${metric.image} is … or …\`.`,
    range: rangeOf(not, name),
  };
};

/** A limit, and not the confidence that a goal ends with: `at 80 % confidence`. */
function isLimit(token: Token | undefined, next: Token | undefined): boolean {
  return LIMITS.has(token?.image ?? "") && !(token?.image === "at" && isNumber(next));
}

/** Where the `is` stands before the names that end with this `or`; -1 where there is none. */
function startOfNames(line: readonly Token[], or: number): number {
  let place = or - 2;
  while (place > 1 && line[place]?.image === "or") place -= 2;
  return line[place]?.image === "is" ? place : -1;
}

/** Writes the names behind the other alternatives, where it is clear where they begin. */
function limitFirst(why: string, line: readonly Token[], is: number, or: number): Explanation {
  const [named, limited] = [line[is - 1] as Token, line[or + 1] as Token];
  const end = line.findIndex(
    (token, place) =>
      place > or && (token.image === "}" || (token.image === "at" && isNumber(line[place + 1]))),
  );
  const names = line.slice(is - 1, or);
  const other = line.slice(or + 1, end < 0 ? undefined : end);
  const text = `${asWritten(other)} or ${asWritten(names)}`;
  const message = `${why}. Put \`${limited.image}\` first: \`${text}\`.`;
  const isAlone = line[is - 2]?.image !== "and";
  return isAlone
    ? rewrite(message, named, other.at(-1) ?? limited, text)
    : {
        message: `${why}. Put what is said of \`${limited.image}\` before them.`,
        range: rangeOf(named, limited),
      };
}
