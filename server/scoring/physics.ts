/** What geometry and the flight model make of a session's readings. */

import { listed } from "../../language/criteria/wording.ts";
import type { Metric, ScoringInput } from "../../shared/plan-model.ts";
import { plural } from "../../shared/plural.ts";
import { formatAmount } from "../../shared/quantity.ts";
import type { SessionData, Shot } from "../../shared/session-data.ts";
import { derivedMetrics } from "../flight/derived-metrics.ts";
import type { Estimate } from "../flight/estimate.ts";
import { launchEfficiency } from "../flight/launch-efficiency.ts";
import { standardCarry } from "../flight/standard-carry.ts";
import { deriveCategories, type Naming, namings } from "../import/derive/categories.ts";
import { derive, type Formula, formulas } from "../import/derive/derive.ts";
import { metricsUsed } from "./metrics-used.ts";

/** The metrics of the flight model, by their names in the vocabulary. */
const MODELS: Readonly<Record<string, (shot: Shot, input: ScoringInput) => Estimate>> = {
  "standard-carry": (shot, { session }) => standardCarry(shot, session.conditions),
  "launch-efficiency": (shot) => launchEfficiency(shot),
};

export interface Completed {
  readonly data: SessionData;
  /** What is to be said of estimates, in sentences. */
  readonly notes: readonly string[];
}

/**
 * Adds to every shot what follows from its readings by geometry, such as the curve, and the estimates that the plan asks
 * for. What was read is never replaced. Cost: linear in the shots; a flight, about 20 µs, for each estimate.
 */
export function withPhysics(input: ScoringInput, data: SessionData): Completed {
  const asked = [...new Set([...input.plan.needs, ...metricsUsed(input.plan)])];
  const models = asked.filter((name) => input.metrics.get(name)?.model === "flight" && name in MODELS);
  const tallies = models.map((name) => new EstimateTally(name));
  const completion = {
    formulas: formulas(input.metrics.values()),
    namings: namings(input.metrics.values(), input.player),
  };
  const shots = data.shots.map((shot) => {
    const complete = withGeometry(shot, input, completion);
    return tallies.reduce((known, tally) => tally.add(known, MODELS[tally.name]?.(known, input)), complete);
  });
  return { data: { ...data, shots }, notes: tallies.flatMap((tally) => tally.notes(input.metrics)) };
}

/** The shot itself where nothing follows. */
function withGeometry(
  shot: Shot,
  { metrics }: ScoringInput,
  { formulas, namings }: { formulas: readonly Formula[]; namings: readonly Naming[] },
): Shot {
  // A strike through the middle of the face is a guess, not a reading.
  const found = derivedMetrics(shot.values).filter(
    ({ metric, by }) => by === "geometry" && metrics.has(metric),
  );
  if (found.length === 0) return shot;
  const values = { ...shot.values };
  const categories = { ...shot.categories };
  const derived = [...shot.derived, ...found.map(({ metric }) => metric)];
  for (const { metric, value } of found) values[metric] = value;
  derived.push(...derive(values, formulas));
  derived.push(...deriveCategories(categories, { values, club: shot.club }, namings));
  return { ...shot, values, categories, derived };
}

/** What came of one model over all shots. */
class EstimateTally {
  readonly name: string;
  private readonly uncertainties: number[] = [];
  private readonly assumptions = new Set<string>();
  private readonly warnings = new Map<string, number>();
  private readonly reasons = new Map<string, number>();

  constructor(name: string) {
    this.name = name;
  }

  /** The shot with the estimate among its values, unless the table tells the metric. */
  add(shot: Shot, estimate: Estimate | undefined): Shot {
    const { name } = this;
    if (estimate === undefined || Object.hasOwn(shot.values, name)) return shot;
    if (estimate.status === "not-measured") {
      this.reasons.set(estimate.reason, (this.reasons.get(estimate.reason) ?? 0) + 1);
      return shot;
    }
    this.uncertainties.push(estimate.uncertainty);
    for (const assumption of estimate.assumptions) this.assumptions.add(assumption);
    const { warning } = estimate;
    if (warning !== null) this.warnings.set(warning, (this.warnings.get(warning) ?? 0) + 1);
    return {
      ...shot,
      values: { ...shot.values, [name]: estimate.value },
      derived: [...shot.derived, name],
    };
  }

  notes(metrics: ReadonlyMap<string, Metric>): string[] {
    const { name } = this;
    const metric = metrics.get(name);
    const count = this.uncertainties.length;
    const mean = this.uncertainties.reduce((sum, value) => sum + value, 0) / count;
    const sized = metric === undefined ? "" : ` by ${atLeastAStep(mean, metric)}`;
    return [
      ...(count === 0
        ? []
        : [
            `${name} is an estimate of the flight model for ${plural(count, "shot")}; its two sets of coefficients differ${sized} on average.`,
          ]),
      ...(this.assumptions.size === 0 ? [] : [`${name} takes for granted ${listed([...this.assumptions])}.`]),
      ...[...this.warnings].map(([warning, shots]) => `${name}, ${plural(shots, "shot")}: ${warning}`),
      ...[...this.reasons].map(
        ([reason, shots]) => `${name} could not be estimated for ${plural(shots, "shot")}: ${reason}`,
      ),
    ];
  }
}

/** What is less than a step of the display is not nothing. */
function atLeastAStep(amount: number, metric: Metric): string {
  const step = metric.step * metric.unit.factor;
  return amount < step ? `less than ${formatAmount(step, metric)}` : formatAmount(amount, metric);
}
