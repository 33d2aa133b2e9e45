/** What is asked of a metric, in another order or by another name: `carry average at least 140 yd`. */
import type { Explanation, Recogniser } from "../slip.ts";
import type { Token } from "../tokens.ts";
import { goalAround, isWord, rewrite } from "./nearby.ts";
import { wordFor } from "./other-words.ts";

/** `carry average`, `carry spread of`, `range of carry`. */
export const statisticBehind: Recogniser = (misfit) => {
  const goal = goalAround(misfit);
  const [first, second, third] = goal;
  if (!isWord(first) || second === undefined) return undefined;
  if (/^(?:range|span)$/.test(first.image)) {
    const metric = second.image === "of" ? third : second;
    return isWord(metric) ? range(first, metric, metric) : undefined;
  }
  const last = third?.image === "of" ? third : second;
  if (/^(?:range|span)$/.test(second.image)) return range(first, first, last);
  const said = STATISTICS[wordFor(second.image)];
  return said === undefined
    ? undefined
    : rewrite(
        `What is asked of a metric stands before it: \`${said} ${first.image}\`.`,
        first,
        last,
        `${said} ${first.image}`,
      );
};

/** What is written before a metric, by the word for it. */
const STATISTICS: Readonly<Record<string, string>> = {
  average: "average",
  median: "median",
  spread: "spread of",
};

function range(first: Token, metric: Token, last: Token): Explanation {
  const text = `middle 100 % of ${metric.image} spans`;
  return rewrite(
    `How far apart shots lie is said with how many of them: \`${text}\`, or of fewer, such as 80 %.`,
    first,
    last,
    text,
  );
}
