/** What statistics are called. */

import type { Bounds, Statistic } from "../../../shared/plan-model.ts";
import { ordinalEnding } from "../../../shared/plural.ts";
import { writeBounds } from "../../../shared/quantity.ts";
import { percent } from "../wording.ts";

/** `average`, `90th percentile`, `middle 80 %`. */
export function nameOf(statistic: Statistic): string {
  switch (statistic.kind) {
    case "percentile":
      return `${ordinal(Number((statistic.share * 100).toPrecision(10)))} percentile`;
    case "span":
      return `middle ${percent(statistic.share)}`;
    default:
      return statistic.kind;
  }
}

/** `average carry`, `spread of carry`, `90th percentile of carry`. */
export function titleOf(statistic: Statistic, metric: string): string {
  const isShort = ["average", "median", "best", "worst"].includes(statistic.kind);
  return `${nameOf(statistic)} ${isShort ? "" : "of "}${metric}`;
}

/** `average carry at least 150 yd`, `middle 80 % of carry spans at most 12 yd`. */
export function claimInWords(statistic: Statistic, metric: string, bounds: Bounds): string {
  const spans = statistic.kind === "span" ? "spans " : "";
  return `${titleOf(statistic, metric)} ${spans}${writeBounds(bounds)}`;
}

/** Whether a statistic is an amount without a side, whatever sides its metric has. */
export function isWidth({ kind }: Statistic): boolean {
  return kind === "spread" || kind === "span";
}

/** Best or worst. */
export type Extreme = Statistic & { readonly kind: "best" | "worst" };

/** Whether one shot decides a statistic. */
export function isExtreme(statistic: Statistic): statistic is Extreme {
  return statistic.kind === "best" || statistic.kind === "worst";
}

/** `1st`, `2nd`, `11th`, `90th`. */
export function ordinal(number: number): string {
  return `${number}${ordinalEnding(number)}`;
}
