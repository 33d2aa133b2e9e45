/** The metrics that can be meant, and what is known of the readings of any shot. */
import type { Hand, Metric } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";
import { CENTRED, type Fact, GEOMETRY, UNREAD } from "../reasoning/geometry.ts";
import { WHOLE } from "../reasoning/range.ts";
import { type Relation, relationsAmong } from "../reasoning/relation.ts";

/** Blocks ask for few sets of metrics, again and again. */
const MOST_REMEMBERED = 500;

export class Vocabulary {
  readonly metrics: ReadonlyMap<string, Metric>;
  /** Relations by each metric in them. */
  private byMetric: ReadonlyMap<string, readonly Relation[]> | undefined;
  /** Relations by the metrics they were asked for. */
  private readonly around = new Map<string, readonly Relation[]>();

  private readonly facts: readonly Fact[];
  private centred: Vocabulary | undefined;

  constructor(metrics: ReadonlyMap<string, Metric>, facts: readonly Fact[] = GEOMETRY) {
    this.metrics = metrics;
    this.facts = facts;
  }

  /** The same metrics where strikes are in the middle of the face and the air is still. */
  get ofCentredStrikes(): Vocabulary {
    this.centred ??= new Vocabulary(this.metrics, [...GEOMETRY, ...CENTRED]);
    return this.centred;
  }

  /** The relations that link these metrics to each other or to any further metric. Linear in what is found, at first. */
  relationsAround(metrics: ReadonlySet<string>): readonly Relation[] {
    const key = [...metrics].sort().join(" ");
    let relations = this.around.get(key);
    if (relations === undefined) {
      if (this.around.size > MOST_REMEMBERED) this.around.clear();
      relations = this.findAround(metrics);
      this.around.set(key, relations);
    }
    return relations;
  }

  private findAround(metrics: ReadonlySet<string>): Relation[] {
    this.byMetric ??= indexed(relationsAmong(this.metrics, this.facts));
    const seen = new Set(metrics);
    const found = new Set<Relation>();
    for (const metric of seen) {
      for (const relation of this.byMetric.get(metric) ?? []) {
        found.add(relation);
        for (const other of relation.metrics) seen.add(other); // a set that grows is walked to its end
      }
    }
    return [...found];
  }

  /** Where readings of a metric are plausible, for a player of this hand: SI, target frame. */
  plausible(name: string, hand: Hand): Interval {
    const metric = this.metrics.get(name);
    if (metric?.plausible == null) return UNREAD.get(name) ?? WHOLE;
    const { low, high } = metric.plausible;
    const mirrors = hand === "left" && metric.directions.some(({ handed }) => handed);
    return mirrors ? { low: -high, high: -low } : { low, high };
  }
}

function indexed(relations: readonly Relation[]): Map<string, Relation[]> {
  const index = new Map<string, Relation[]>();
  for (const relation of relations) {
    for (const metric of relation.metrics) {
      const known = index.get(metric);
      if (known === undefined) index.set(metric, [relation]);
      else known.push(relation);
    }
  }
  return index;
}
