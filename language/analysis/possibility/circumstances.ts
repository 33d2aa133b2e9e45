/** Who hits a block's shots, and with what: what a plan leaves open, and what direction words and windows hang on. */
import type { Block, Condition, Hand, ShotTest } from "../../../shared/plan-model.ts";
import { directionsIn } from "../../criteria/statistic/value.ts";

export interface Circumstances {
  readonly hand: Hand;
  /** Null where no club is stated. */
  readonly club: string | null;
  /** Null for a player of none of the levels that are named. */
  readonly level: string | null;
}

/**
 * All circumstances in which some of these conditions may ask for something else. Where no word mirrors with the hand, a
 * right-hander stands for both; where no window has levels, one player stands for all.
 *
 * @param shots those of the block, where the conditions are asked of one
 */
export function circumstancesOf(
  conditions: readonly Condition[],
  shots: Block["shots"] = [],
): Circumstances[] {
  const clubs = shots.map(({ club }) => club);
  const found = { handed: false, levels: new Set<string | null>([null]), clubs: false };
  for (const condition of conditions) look(condition, found);
  const hands: readonly Hand[] = found.handed ? ["right", "left"] : ["right"];
  const all = found.clubs ? (clubs.length === 0 ? [null] : [...new Set(clubs)]) : [null];
  return hands.flatMap((hand) =>
    all.flatMap((club) => [...found.levels].map((level) => ({ hand, club, level }))),
  );
}

interface Found {
  handed: boolean;
  readonly levels: Set<string | null>;
  clubs: boolean;
}

function look(condition: Condition, found: Found): void {
  for (const { allOf } of condition.anyOf) for (const test of allOf) lookAt(test, found);
}

function lookAt(test: ShotTest, found: Found): void {
  switch (test.kind) {
    case "number":
      found.handed ||= directionsIn(test.bounds).some(({ handed }) => handed);
      break;
    case "category":
      found.handed = true; // the rules for its names may be handed
      break;
    case "window":
      for (const { clubs, level, condition } of test.variants) {
        found.levels.add(level);
        found.clubs ||= clubs.length > 0;
        look(condition, found);
      }
  }
}
