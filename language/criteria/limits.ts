/** Where the answers of conditions change: the numbers that readings are held against. */
import type { Condition, Metric, ShotTest } from "../../shared/plan-model.ts";
import { claimOf, type PlayerTraits } from "./condition.ts";

/** By metric, SI and target frame, in no order. */
export type Limits = Map<string, Set<number>>;

/**
 * The limits in a condition, those of windows for shots with this club among them. Of a metric that is a name, the limits
 * are those of the conditions that the names have, for a shot whose name was computed.
 */
export function limitsIn(
  condition: Condition,
  club: string | null,
  player: PlayerTraits,
  computed: (metric: string) => Metric | undefined,
): Limits {
  const limits: Limits = new Map();
  const collect = ({ anyOf }: Condition): void => {
    for (const { allOf } of anyOf) allOf.forEach(collectTest);
  };
  const collectTest = (test: ShotTest): void => {
    switch (test.kind) {
      case "number": {
        const { low, high } = claimOf(test.bounds, player.hand).interval;
        const known = limits.get(test.metric) ?? new Set();
        for (const limit of [low, high]) if (Number.isFinite(limit)) known.add(limit);
        limits.set(test.metric, known);
        break;
      }
      case "category":
        for (const { condition } of computed(test.metric)?.categories ?? [])
          if (condition !== null) collect(condition);
        break;
      case "window":
        for (const { clubs, level, condition } of test.variants) {
          const isForShot = clubs.length === 0 || clubs.includes(club ?? "");
          if (isForShot && (level === null || level === player.level)) collect(condition);
        }
    }
  };
  collect(condition);
  return limits;
}
