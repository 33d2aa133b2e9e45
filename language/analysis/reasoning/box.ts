/** What is left for the readings of a shot, metric by metric. */
import type { Interval } from "../../../shared/statistics/interval.ts";
import { holds, isEmpty, meet } from "./range.ts";

export class Box {
  private readonly numbers: Map<string, Interval>;
  private readonly names: Map<string, readonly string[]>;
  private readonly domain: (metric: string) => Interval;
  /** Metrics that were narrowed since they were last asked for. */
  readonly narrowed: Set<string>;
  private isPossible = true;

  /** @param domain where readings of a metric lie to begin with. */
  constructor(domain: (metric: string) => Interval, from?: Box) {
    this.domain = domain;
    this.numbers = new Map(from?.numbers);
    this.names = new Map(from?.names);
    this.narrowed = new Set(from?.narrowed);
  }

  copy(): Box {
    return new Box(this.domain, this);
  }

  /** Whether some reading is left for every metric. */
  get possible(): boolean {
    return this.isPossible;
  }

  range(metric: string): Interval {
    return this.numbers.get(metric) ?? this.domain(metric);
  }

  /** Leaves what lies in `range`. Says whether anything is left. */
  narrow(metric: string, range: Interval): boolean {
    const before = this.range(metric);
    const after = meet(before, range);
    if (after.low === before.low && after.high === before.high) return this.noteIfEmpty(after);
    this.numbers.set(metric, after);
    this.narrowed.add(metric);
    return this.noteIfEmpty(after);
  }

  /** Leaves these names for a metric that is one of several. Says whether any is left. */
  narrowNames(metric: string, names: readonly string[]): boolean {
    const left = this.names.get(metric)?.filter((name) => names.includes(name)) ?? names;
    this.names.set(metric, left);
    return left.length === 0 ? this.fail() : this.isPossible;
  }

  /** Says that nothing is left for some metric. */
  fail(): false {
    this.isPossible = false;
    return false;
  }

  /** Whether nothing in `range` is left for a metric. */
  excludes(metric: string, range: Interval): boolean {
    return isEmpty(meet(this.range(metric), range));
  }

  /** Whether all that is left for a metric lies in `range`. */
  isWithin(metric: string, range: Interval): boolean {
    return holds(range, this.range(metric));
  }

  /** Whether none of these names is left for a metric. */
  excludesNames(metric: string, names: readonly string[]): boolean {
    const left = this.names.get(metric);
    return left !== undefined && !left.some((name) => names.includes(name));
  }

  private noteIfEmpty(range: Interval): boolean {
    return isEmpty(range) ? this.fail() : this.isPossible;
  }
}
