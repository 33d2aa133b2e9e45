/** Words that the kinds of criteria share. */
import { allowedError } from "../../shared/statistics/confidence.ts";
import { MOST_SHOTS } from "../../shared/statistics/shots-to-decide.ts";

/** `1 shot`, `1,200 shots`. */
export function shots(count: number): string {
  return `${grouped(count)} ${count === 1 ? "shot" : "shots"}`;
}

/** A whole number with its thousands set apart: `1,200`. */
export function grouped(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ",");
}

/** A share as it was written: `70 %`, `87.5 %`. */
export function percent(share: number): string {
  return `${Number((share * 100).toPrecision(10))} %`;
}

/** Beyond so many decimals of a percent, no digit is meant. */
const MOST_DECIMALS = 2;

/**
 * A share that was observed, to the nearest percent, and finer where it could not be told from the share asked for
 * otherwise: against "at least 70 %" a share of 69.6 % is not shown as 70 %. Only none and all are shown as 0 % and 100 %.
 */
export function roundedPercent(share: number, asked = Number.NaN): string {
  for (let decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
    const text = percentWith(decimals, share);
    if (text !== percent(asked) || Math.abs(share - asked) < 1e-9) return text;
  }
  return `just ${share < asked ? "under" : "over"} ${percent(asked)}`;
}

function percentWith(decimals: number, share: number): string {
  if (share > 0 && share < 0.01) return "under 1 %";
  if (share < 1 && share > 0.99) return "over 99 %";
  return percent(Number(share.toFixed(decimals + 2)));
}

/** `carry`, `carry and offline`, `carry, offline and apex`. */
export function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}

/** Parts of an observation in one line; parts that say nothing are left out. */
export function joined(...parts: readonly (string | null)[]): string {
  return parts.filter((part) => part !== null).join("; ");
}

/** What is said of a number above zero, and null of zero. */
export function unlessZero(count: number, text: (count: number) => string): string | null {
  return count === 0 ? null : text(count);
}

/**
 * What would settle a statement about ability that is still open after `soFar` judged shots, when `total` would do in
 * all, or no number that is tried would.
 */
export function settlesAbility(total: number | undefined, soFar: number): string {
  const asObserved = "if the player goes on as observed (estimate)";
  if (total !== undefined) {
    const more = roughly(total - soFar);
    return `about ${grouped(more)} more ${more === 1 ? "shot" : "shots"} ${asObserved}`;
  }
  return `too close to call: not even ${shots(Math.max(soFar, MOST_SHOTS))} in all would decide it ${asObserved}`;
}

/** An estimated number of shots: from a hundred on to the next ten. */
function roughly(count: number): number {
  return count < 100 ? count : 10 * Math.ceil(count / 10);
}

/** Why nothing is judged at this confidence, or null where something is. */
export function impossibleConfidence(confidence: number): string | null {
  return Number.isNaN(allowedError(confidence)) ? "a confidence of at least 50 % and less than 100 %" : null;
}
