/** What a plan itself says about how much shots scatter. */
import { claimOf } from "../../../shared/condition.ts";
import type { Block, Location, Player } from "../../../shared/plan-model.ts";
import { everyGoal } from "../possibility/goals.ts";
import type { BlockInPlan } from "../subject.ts";

/** A standard deviation from shot to shot, SI, and where it was said. */
export interface AssumedSpread {
  readonly spread: number;
  readonly location: Location;
}

/**
 * The spread of a metric that a goal of the block allows, else one of another block of the plan: whoever asks for no more
 * expects about that.
 */
export function spreadInPlan(metric: string, { block, others }: BlockInPlan): AssumedSpread | undefined {
  const own = spreadAllowed(metric, block);
  if (own !== undefined) return own; // without a look at the others, on which the answer then does not hang
  for (const candidate of others().values()) {
    const found = spreadAllowed(metric, candidate);
    if (found !== undefined) return found;
  }
  return undefined;
}

function spreadAllowed(metric: string, { success }: Block): AssumedSpread | undefined {
  for (const goal of everyGoal(success)) {
    if (goal.kind !== "statistic" || goal.statistic.kind !== "spread" || goal.metric !== metric) continue;
    const { high } = claimOf(goal.bounds, "right").interval;
    if (high > 0 && Number.isFinite(high)) return { spread: high, location: goal.location };
  }
  return undefined;
}

/** What is usual of a player, and the shots it was taken from; null where the plan does not say how many. */
export interface UsualSpread extends AssumedSpread {
  readonly shots: number | null;
}

/** What is usual of a player with the club of a block; undefined where a block has several, or it is not known. */
export function usualSpread(metric: string, { shots }: Block, { usual }: Player): UsualSpread | undefined {
  const clubs = new Set(shots.map(({ club }) => club));
  const [club = null] = clubs;
  if (clubs.size > 1) return undefined;
  const known = usual.filter((line) => line.metric === metric && line.spread !== null && line.spread > 0);
  const line = known.find((one) => one.club === club) ?? known.find((one) => one.club === null);
  if (line?.spread == null) return undefined;
  return { spread: line.spread, shots: line.shots, location: line.location };
}
