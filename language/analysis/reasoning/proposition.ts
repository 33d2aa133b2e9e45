/** What is said of the readings of one shot. */
import type { Interval } from "../../../shared/statistics/interval.ts";
import type { Box } from "./box.ts";

export type Proposition =
  /** The reading of a metric lies in a range: SI, target frame. */
  | { readonly kind: "number"; readonly metric: string; readonly range: Interval }
  /** A metric that is one of several names is one of these. */
  | { readonly kind: "names"; readonly metric: string; readonly names: readonly string[] }
  | { readonly kind: "all"; readonly of: readonly Proposition[] }
  | { readonly kind: "any"; readonly of: readonly Proposition[] };

/** Says nothing. */
export const ANYTHING: Proposition = { kind: "all", of: [] };

/** One of several; the one itself where there is no other. */
export function any(of: readonly Proposition[]): Proposition {
  const [only] = of;
  return of.length === 1 && only !== undefined ? only : { kind: "any", of };
}

/** Several at once; the one itself where there is no other. */
export function all(of: readonly Proposition[]): Proposition {
  const [only] = of;
  return of.length === 1 && only !== undefined ? only : { kind: "all", of };
}

/** Whether a glance at what is left shows that it cannot be true. */
export function isExcluded(proposition: Proposition, box: Box): boolean {
  switch (proposition.kind) {
    case "number":
      return box.excludes(proposition.metric, proposition.range);
    case "names":
      return box.excludesNames(proposition.metric, proposition.names);
    case "all":
      return proposition.of.some((part) => isExcluded(part, box));
    case "any":
      return proposition.of.every((part) => isExcluded(part, box));
  }
}

/** Whether a glance at what is left shows that it is true. */
export function isSettled(proposition: Proposition, box: Box): boolean {
  switch (proposition.kind) {
    case "number":
      return box.isWithin(proposition.metric, proposition.range);
    case "names":
      return false;
    case "all":
      return proposition.of.every((part) => isSettled(part, box));
    case "any":
      return proposition.of.some((part) => isSettled(part, box));
  }
}

/** The metrics whose readings it is about. */
export function metricsIn(proposition: Proposition, into: Set<string> = new Set()): Set<string> {
  if (proposition.kind === "number" || proposition.kind === "names") into.add(proposition.metric);
  else for (const part of proposition.of) metricsIn(part, into);
  return into;
}
