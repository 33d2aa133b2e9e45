/** The area of the ellipse that holds a share of the player's true shots, by the exact chi-square limits. */
import { ellipseAreaLimits } from "../../../shared/statistics/ellipse.ts";
import { looksNormal } from "../../../shared/statistics/looks-normal.ts";
import { firstThatDecides, MOST_SHOTS } from "../../../shared/statistics/shots-to-decide.ts";
import { isDecided, type Method } from "../statistic/methods/method.ts";
import { FEWEST_SHOTS } from "./measures.ts";

/** The columns are the readings of both metrics, equally many. */
export function areaMethod(area: number, columns: readonly (readonly number[])[]): Method {
  const n = columns[0]?.length ?? 0;
  const limitsOf = (shots: number) => (level: number) => ellipseAreaLimits(area, shots, level);
  return {
    limitsAt: limitsOf(n),
    words: () => "exact chi-square limits, for shots that are normally distributed in both metrics",
    fewest: () => FEWEST_SHOTS,
    // The limits only draw closer with every shot, so what decides once decides ever after.
    shotsToDecide: (question) =>
      firstThatDecides(n, MOST_SHOTS, (shots) => isDecided(limitsOf(shots), question)),
    cautions: () => (columns.some((values) => looksNormal(values) === false) ? [NOT_NORMAL] : []),
  };
}

const NOT_NORMAL =
  "The shots do not look normally distributed: these limits then promise too much, and more shots do not help.";
