/** Words that the kinds of criteria share. */
import type { Subject } from "../../shared/plan-model.ts";
import { allowedError } from "../../shared/statistics/confidence.ts";
import { MOST_SHOTS } from "../../shared/statistics/shots-to-decide.ts";
import { writeCondition } from "./condition.ts";

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

/** A share that was observed, to the nearest percent; only none and all are shown as 0 % and 100 %. */
export function roundedPercent(share: number): string {
  if (share > 0 && share < 0.01) return "under 1 %";
  if (share < 1 && share > 0.99) return "over 99 %";
  return percent(Math.round(share * 100) / 100);
}

/** After "shots": `on target`, `with carry at least 150 yd`. */
export function qualified(subject: Subject): string {
  return subject.kind === "on-target" ? "on target" : `with ${writeCondition(subject.condition)}`;
}

/** As what a number of shots do: `are on target`, `have carry at least 150 yd`. */
export function predicate(subject: Subject, count: number): string {
  if (subject.kind === "on-target") return count === 1 ? "is on target" : "are on target";
  return `${count === 1 ? "has" : "have"} ${writeCondition(subject.condition)}`;
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
  if (total !== undefined)
    return `about ${grouped(total - soFar)} more ${total - soFar === 1 ? "shot" : "shots"} ${asObserved}`;
  return `too close to call: not even ${shots(Math.max(soFar, MOST_SHOTS))} in all would decide it ${asObserved}`;
}

/** Why nothing is judged at this confidence, or null where something is. */
export function impossibleConfidence(confidence: number): string | null {
  return Number.isNaN(allowedError(confidence)) ? "a confidence of at least 50 % and less than 100 %" : null;
}
