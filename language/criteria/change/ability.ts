/** A change as ability: how the player's true number moved, judged at the planned number of shots. */
import { type AbilityOutcome, judgeByMethod, undecided } from "../statistic/methods/judge.ts";
import { impossibleConfidence } from "../wording.ts";
import { valueBefore } from "./before.ts";
import { changeMethod } from "./methods/methods.ts";
import { claimOfMovement } from "./movement.ts";
import type { Compared } from "./sides.ts";
import { effectWriter } from "./words.ts";

/** With the smallest change, SI, that these shots could have shown; null where the method has none. */
export function judgeAbility(
  compared: Compared,
  confidence: number,
  effect: number,
): AbilityOutcome & { readonly smallestShown: number | null } {
  const method = impossibleConfidence(confidence) ?? changeMethod(compared);
  if (typeof method === "string") return { ...undecided(method), smallestShown: null };
  const { criterion, measure, now } = compared;
  const { interval: claim, slack } = claimOfMovement(criterion.movement, measure, now.shots.hand);
  const { range } = effectWriter(criterion, measure, now.shots);
  const judged = judgeByMethod(method, { claim, confidence, slack }, now.values.length, range);
  const limits = method.limitsAt(confidence);
  const margin = Math.max(
    Number.isFinite(claim.low) ? effect - (limits?.low ?? Number.NaN) : 0,
    Number.isFinite(claim.high) ? (limits?.high ?? Number.NaN) - effect : 0,
  );
  const smallest = measure === "share" ? margin * (valueBefore(compared) ?? Number.NaN) : margin;
  return { ...judged, smallestShown: Number.isFinite(smallest) ? smallest : null };
}
