/** How many new shots would decide a change, against a baseline that stays as it is. */
import {
  firstThatDecides,
  MOST_SHOTS,
  newShotsThatDecide,
} from "../../../../shared/statistics/shots-to-decide.ts";
import type { LimitsAt } from "../../../../shared/statistics/verdict.ts";
import { isDecided, type Question } from "../../statistic/methods/method.ts";
import { shots as shotsInWords } from "../../wording.ts";

/** So many shots that one more changes nothing. */
const ENDLESS = 1e12;

/** Two blocks of so many shots that go on as observed. */
export interface Blocks {
  readonly before: number;
  readonly now: number;
  readonly limitsOf: (before: number, now: number) => LimitsAt;
  /** Whether limits only draw closer with every shot, so that halving finds the number. */
  readonly drawCloser: boolean;
  /** What would be needed where not even endless shots in both blocks decide; undefined where it is too close to call. */
  readonly otherwise?: string | undefined;
}

/** As `Method.shotsToDecide`: where no number of new shots does, the baseline is too short. */
export function newShots(
  { before, now, limitsOf, drawCloser, otherwise }: Blocks,
  question: Question,
): number | string | undefined {
  const decides = (n: number) => isDecided(limitsOf(before, n), question);
  const total = drawCloser
    ? (firstThatDecides(now, MOST_SHOTS, decides) ?? (decides(ENDLESS) ? undefined : "never"))
    : newShotsThatDecide(now, MOST_SHOTS, decides);
  if (total !== "never") return total;
  return isDecided(limitsOf(ENDLESS, ENDLESS), question) ? longerBaseline(before) : otherwise;
}

function longerBaseline(before: number): string {
  return `a longer baseline: with its ${shotsInWords(before)} no number of new shots can decide`;
}
