/**
 * Whether a shot can be that makes several propositions true. Where one leaves a choice, the choices are tried one after the
 * other; what they leave for the readings is narrowed by the relations between metrics (`propagate.ts`).
 *
 * It never calls a shot impossible that is possible. It may overlook that one is impossible: where relations narrow too
 * slowly, or where there are too many choices.
 */
import type { Interval } from "../../../shared/statistics/interval.ts";
import { Box } from "./box.ts";
import { propagate } from "./propagate.ts";
import { isExcluded, isSettled, type Proposition } from "./proposition.ts";
import { join } from "./range.ts";
import type { Relation } from "./relation.ts";

/** What holds of every shot. */
export interface World {
  readonly relations: readonly Relation[];
  /** Where readings of a metric lie: SI, target frame. */
  readonly domain: (metric: string) => Interval;
}

/** Choices that are tried before a shot is called possible without having been found. */
const MOST_CHOICES = 64;

const NOTHING: Interval = { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };

/** Whether some shot makes all of them true. Stops at the first. */
export function isPossible(propositions: readonly Proposition[], world: World): boolean {
  const search = new Search(world, false);
  search.from(new Box(world.domain), propositions, () => true);
  return search.found > 0;
}

/** Where the readings of a metric lie in all shots that make them true; an empty range where there are none. */
export function rangeLeft(
  metric: string,
  propositions: readonly Proposition[],
  world: World,
  isExact = false,
): Interval {
  let left = NOTHING;
  new Search(world, isExact).from(new Box(world.domain), propositions, (box) => {
    left = join(left, box.range(metric));
    return false;
  });
  return left;
}

class Search {
  found = 0;
  private readonly world: World;
  private readonly isExact: boolean;
  private choices = MOST_CHOICES;

  constructor(world: World, isExact: boolean) {
    this.world = world;
    this.isExact = isExact;
  }

  /** Hands what is left in each case to `use`, until that says that it has seen enough. */
  from(box: Box, propositions: readonly Proposition[], use: (box: Box) => boolean): boolean {
    let open = propositions;
    for (;;) {
      open = settle(open, box);
      if (!propagate(box, this.world.relations, this.isExact)) return false;
      const before = open.length;
      open = stillOpen(open, box);
      if (!box.possible) return false;
      if (open.length === before && !open.some((proposition) => proposition.kind !== "any")) break;
    }
    const [first, ...others] = [...open].sort((one, other) => partsOf(one) - partsOf(other));
    if (first?.kind !== "any" || this.choices < first.of.length) {
      this.found++;
      return use(box);
    }
    this.choices -= first.of.length;
    return first.of.some((choice) => this.from(box.copy(), [choice, ...others], use));
  }
}

/** Puts into the box what leaves no choice, and returns the rest. */
function settle(propositions: readonly Proposition[], box: Box): Proposition[] {
  const open: Proposition[] = [];
  for (const proposition of propositions) {
    switch (proposition.kind) {
      case "number":
        box.narrow(proposition.metric, proposition.range);
        break;
      case "names":
        box.narrowNames(proposition.metric, proposition.names);
        break;
      case "all":
        open.push(...settle(proposition.of, box));
        break;
      case "any":
        open.push(proposition);
    }
  }
  return open;
}

/** Choices without those that cannot be any more; one that is left alone stands for itself, and what is true is done with. */
function stillOpen(propositions: readonly Proposition[], box: Box): Proposition[] {
  const open: Proposition[] = [];
  for (const proposition of propositions) {
    if (proposition.kind !== "any" || isSettled(proposition, box)) continue;
    const left = proposition.of.filter((choice) => !isExcluded(choice, box));
    const [only] = left;
    if (only === undefined) box.fail();
    else open.push(left.length === 1 ? only : { kind: "any", of: left });
  }
  return open;
}

function partsOf(proposition: Proposition): number {
  return proposition.kind === "any" ? proposition.of.length : 0;
}
