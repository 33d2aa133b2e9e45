/** Changes in tests: shots now, and what they are held against. */
import { evaluate } from "../../language/criteria/criteria.ts";
import type { Comparison, CountedShots, Outcome } from "../../language/criteria/criterion.ts";
import { type MeasuredCircumstances, measured, otherShots, type Readings } from "./measured-shots.ts";
import { criterion } from "./words.ts";

/** The block that changes are held against, as a plan writes it. */
export const HERE = '"Where we are"';

export const YARD = 0.9144;

/** Shots now, and what they are held against; nothing is known of usual numbers besides. */
export function now(
  readings: Readings,
  comparison: Comparison | string,
  more: MeasuredCircumstances = {},
): CountedShots {
  const isUsual = typeof comparison === "string" || comparison.kind === "usual";
  return measured(readings, {
    ...more,
    against: ({ kind }) => (kind === "usual" && !isUsual ? "nothing is stated" : comparison),
  });
}

/** Earlier shots: of this session, unless it is said that they are not. */
export function earlier(
  readings: Readings,
  more: MeasuredCircumstances & { readonly isSameSession?: boolean } = {},
): Comparison {
  return otherShots(HERE, measured(readings, more), more.isSameSession ?? true);
}

/** The verdict on a change of carry, in yards. */
export function judge(
  text: string,
  carry: readonly (number | null)[],
  was: readonly (number | null)[],
): Outcome {
  return evaluate(criterion("change", text), now({ carry }, earlier({ carry: was })));
}
