/** What all blocks of a session have in common. */
import type { ScoringInput } from "../../shared/plan-model.ts";
import type { Frame } from "./counted-shots.ts";
import { EXACT, readingErrors } from "./uncertainty/reading-errors.ts";

/** Where the player's hand is not stated, direction words are a right-hander's. */
export function frameOf({ plan, player, instrument, metrics }: ScoringInput): Frame {
  return {
    player: { hand: player.hand ?? "right", level: player.level },
    vocabulary: metrics,
    errorsOf: instrument === null ? EXACT : readingErrors(instrument, metrics),
    decisionLevel: plan.decisionLevel,
  };
}
