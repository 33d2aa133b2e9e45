/**
 * Whether shots look normally distributed, which a verdict about a spread relies on: by the correlation of the ordered
 * shots with what normal shots would be (Shapiro & Francia 1972), on the scale of Royston (1993, Statistics and Computing).
 */
import logarithm from "@stdlib/math-base-special-ln"; // Math.log may differ between engines
import { normalQuantile } from "./distributions.ts";
import { ascending, mean } from "./summary.ts";

/** Below so many shots nothing can be seen. */
const FEWEST = 5;

/** Of ten normal samples one does not look it. Few shots that are not normal mostly do: with ten, one in five is seen. */
const LEVEL = 0.1;

/** Whether the values look normal; `undefined` below five, or when all are equal. O(n log n), for 5 to 5,000 shots. */
export function looksNormal(values: readonly number[]): boolean | undefined {
  const n = values.length;
  const centre = mean(values);
  if (n < FEWEST || centre === undefined) return undefined;
  let together = 0;
  let squares = 0;
  let scores = 0;
  for (const [index, value] of ascending(values).entries()) {
    const score = normalQuantile((index + 5 / 8) / (n + 1 / 4));
    together += (value - centre) * score;
    squares += (value - centre) * (value - centre);
    scores += score * score;
  }
  if (squares === 0) return undefined;
  const straightness = (together * together) / (squares * scores);
  const log = logarithm(n);
  const logOfLog = logarithm(log);
  const usual = -1.2725 + 1.0521 * (logOfLog - log);
  const scatter = 1.0308 - 0.26758 * (logOfLog + 2 / log);
  return (logarithm(1 - straightness) - usual) / scatter <= normalQuantile(1 - LEVEL);
}
