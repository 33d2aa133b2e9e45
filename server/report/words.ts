/** Parts of plans in words that several pages use. */
import type { Hand, Shots } from "../../shared/plan-model.ts";
import { plural } from "../../shared/plural.ts";

/** `at least 12 shots with 7-iron at 50 % effort` */
export function shotsInWords({ count, open, club, effort }: Shots): string {
  return [
    `${open ? "at least " : ""}${plural(count, "shot")}`,
    ...(club === null ? [] : [`with ${club}`]),
    ...(effort === null ? [] : [`at ${Math.round(100 * effort)} % effort`]),
  ].join(" ");
}

export function handInWords(hand: Hand | null): string {
  return hand === null ? "hand not stated" : `${hand}-handed`;
}
