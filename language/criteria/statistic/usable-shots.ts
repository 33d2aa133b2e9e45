/** Which shots enter a number that sums up shots, and what is to be said of those it has to do without. */
import { once, onceFor } from "../../../shared/once.ts";
import type { CountedShots, Outcome } from "../criterion.ts";
import { plannedShots } from "../hits.ts";
import { notHitYet, readingsOf } from "../open-shots.ts";
import type { Truth } from "../verdict.ts";
import { listed, shots as shotsInWords, unlessZero } from "../wording.ts";

/** Below this share of known values a number over them decides nothing. */
const LEAST_KNOWN = 0.8;

export interface UsableShots {
  /** The shots that meet every requirement of the block (`required.ts`) and have a reading of every metric. */
  readonly indices: readonly number[];
  /** The shots that may be among them: those that lack a reading, and those that may not be as required. */
  readonly unknown: readonly number[];
  /** How many lack a reading. */
  readonly missing: number;
  /** How many have their readings but cannot be told to meet the requirements. */
  readonly doubtful: number;
  /** How many failed a requirement. */
  readonly refused: number;
}

/** Worked out once for the same metrics and shots: several goals ask about them. */
export function usableShots(metrics: readonly string[], shots: CountedShots): UsableShots {
  return usableOf(shots)(metrics.join(" "), () => findUsable(metrics, shots));
}

const usableOf = once((_: CountedShots) => onceFor<UsableShots>());

function findUsable(metrics: readonly string[], shots: CountedShots): UsableShots {
  const columns = metrics.map((metric) => shots.values(metric));
  const indices: number[] = [];
  const unknown: number[] = [];
  let missing = 0;
  let doubtful = 0;
  let refused = 0;
  for (let index = 0; index < shots.size; index++) {
    const admitted = shots.admitted[index];
    const isMissing = columns.some((values) => values[index] === undefined);
    if (admitted === false) refused++;
    else if (admitted && !isMissing) indices.push(index);
    else {
      unknown.push(index);
      if (isMissing) missing++;
      else doubtful++;
    }
  }
  return { indices, unknown, missing, doubtful, refused };
}

/** The readings of these shots: the same list for the same metric and shots. */
export function valuesAt(metric: string, usable: UsableShots, shots: CountedShots): readonly number[] {
  return valuesOf(usable)(metric, () => {
    const column = shots.values(metric);
    const values: number[] = [];
    for (const index of usable.indices) {
      const value = column[index];
      if (value !== undefined) values.push(value);
    }
    return values;
  });
}

const valuesOf = once((_: UsableShots) => onceFor<readonly number[]>());

/** Which readings would make more shots usable: `readings of carry`. */
export function readingsWanted(metrics: readonly string[], shots: CountedShots): string {
  const columns = metrics.map((metric) => shots.values(metric));
  const usable = shots.admitted.map((admitted, index): Truth => {
    if (admitted === false) return false;
    return admitted === undefined || columns.some((values) => values[index] === undefined) ? undefined : true;
  });
  return readingsOf(usable, [...metrics, ...shots.requiredMetrics], shots);
}

/** Not measured, and what would settle it: where no shot can be used. Null where one can. */
export function notMeasured(
  metrics: readonly string[],
  usable: UsableShots,
  shots: CountedShots,
): Pick<Outcome, "verdict" | "settles"> | null {
  if (usable.indices.length > 0) return null;
  return { verdict: "not-measured", settles: settlesUnmeasured(metrics, usable, shots) };
}

function settlesUnmeasured(metrics: readonly string[], usable: UsableShots, shots: CountedShots): string {
  if (usable.unknown.length > 0) return readingsWanted(metrics, shots);
  const toCome = plannedShots(shots) - shots.size;
  if (toCome > 0) return notHitYet(toCome);
  return usable.refused > 0 ? "shots that meet what the block requires" : "shots to judge";
}

/**
 * What would settle it where too few shots can be used to speak for all of them; null where enough can.
 *
 * @param share how many of those that belong to it must be known
 */
export function tooFewKnown(
  metrics: readonly string[],
  usable: UsableShots,
  shots: CountedShots,
  share = LEAST_KNOWN,
): string | null {
  const known = usable.indices.length;
  const belonging = known + usable.unknown.length;
  const more = Math.ceil(share * belonging - 1e-9) - known;
  if (more <= 0) return null;
  return `${readingsWanted(metrics, shots)} for ${more} more of the ${belonging} shots: ${known} ${known === 1 ? "is" : "are"} too few`;
}

/** What would settle it while shots that the block asks for are not hit; null where all are. */
export function shotsToCome(confidence: number | null, shots: CountedShots): string | null {
  const planned = plannedShots(shots);
  if (planned <= shots.size) return null;
  const when = confidence === null ? "" : `: ability is judged on all ${planned}`;
  return `${notHitYet(planned - shots.size)}${when}`;
}

/** Says which shots are not in the number. `number` is what it is called: `average`. */
export function leftOutCautions(
  number: string,
  metrics: readonly string[],
  { missing, doubtful, refused }: UsableShots,
): string[] {
  const reading = metrics.length === 1 ? `a reading of ${listed(metrics)}` : `readings of ${listed(metrics)}`;
  return [
    unlessZero(
      missing,
      (count) => `${shotsInWords(count)} without ${reading} ${isOrAre(count)} not in the ${number}.`,
    ),
    unlessZero(
      doubtful,
      (count) =>
        `${shotsInWords(count)} ${isOrAre(count)} not in the ${number}: whether the block's requirements were met cannot be told.`,
    ),
    unlessZero(
      refused,
      (count) =>
        `${shotsInWords(count)} did not meet what the block requires and ${isOrAre(count)} not in the ${number}.`,
    ),
  ].filter((caution) => caution !== null);
}

function isOrAre(count: number): string {
  return count === 1 ? "is" : "are";
}
