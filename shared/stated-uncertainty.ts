/** Which line of an instrument counts for a shot. */
import type { Uncertainty } from "./plan-model.ts";

/** What is stated of a metric with this club, else with any; `club` is null where it is not known. */
export function statedFor(club: string | null, ofMetric: readonly Uncertainty[]): Uncertainty | undefined {
  return (
    ofMetric.find(({ clubs }) => club !== null && clubs.includes(club)) ??
    ofMetric.find(({ clubs }) => clubs.length === 0)
  );
}
