/** So many of so many shots: what counts and shares of the shots hit have in common. */
import {
  type CountResult,
  countVerdict,
  type Tally as Standing,
  tally,
} from "../../shared/statistics/counting.ts";
import { doubtOfCount } from "./chances.ts";
import type { CountedShots, Outcome } from "./criterion.ts";
import { doubtfulShots, withDoubt } from "./doubt.ts";
import { briefHits, decidingShots, judged, observedHits, settlesUnmeasured, tallyOf } from "./hits.ts";
import { openShots } from "./open-shots.ts";
import {
  type Counted,
  countedTruths,
  FATES,
  hasRequirements,
  qualified,
  requirementCautions,
} from "./required.ts";
import { shots as shotsInWords } from "./wording.ts";

/** "At least (at most) `count` of the first `outOf` shots are …", about the shots hit. */
export interface CountClaim extends Counted {
  readonly count: number;
  readonly outOf: number;
}

/** A count that says something else of itself: what was asked for and seen, each as in an outcome. */
export type OwnWords = Partial<Pick<Outcome, "required" | "observed" | "brief" | "value">>;

/** The verdict on a count over the shots hit, as soon as no further shot can change it. */
export function judgeCount(claim: CountClaim, shots: CountedShots, words: OwnWords = {}): Outcome {
  const asRead = { ...judgeAsRead(claim, shots), ...words };
  const chances = shots.chances(claim);
  if (chances === null || asRead.verdict === "not-measured") return asRead;
  const toCome = Math.max(0, claim.outOf - shots.size);
  const doubt = doubtOfCount({ ...claim, toCome }, chances, shots.decisionLevel);
  const wanted = `${claim.count} or ${claim.bound === "least" ? "more" : "fewer"}`;
  const outcome = withDoubt(asRead, doubt, wanted, shots);
  const truths = countedTruths(claim, shots).slice(0, claim.outOf);
  return {
    ...outcome,
    deciding:
      doubt.decision === "undecided"
        ? doubtfulShots(chances, shots).filter((index) => index < claim.outOf)
        : decidingShots(doubt.decision, claim.bound, truths),
  };
}

/** The same with every reading taken as exact. */
function judgeAsRead(claim: CountClaim, shots: CountedShots): Outcome {
  const truths = countedTruths(claim, shots).slice(0, claim.outOf);
  const standing = tally(truths, claim.outOf);
  const result = countVerdict(standing, claim.count, `at ${claim.bound}`);
  const phrase = qualified(claim, hasRequirements(shots));
  const { verdict } = result;
  return {
    verdict,
    required: `at ${claim.bound} ${claim.count} of ${shotsInWords(claim.outOf)} ${phrase}`,
    observed: observedHits(standing, phrase),
    brief: briefHits(standing),
    value: judged(standing) === 0 ? null : standing.hits,
    shotsUsed: judged(standing),
    tally: tallyOf(standing),
    interval: null,
    settles:
      verdict === "not-measured"
        ? settlesUnmeasured(truths, standing, claim, shots)
        : verdict === "undecided"
          ? settlesCount(claim, standing, result)
          : null,
    ...(verdict === "undecided" && standing.unknown === 0 ? { needs: needed(claim, result) } : {}),
    deciding: decidingShots(verdict, claim.bound, truths),
    cautions: requirementCautions(shots, claim.outOf, FATES[claim.bound]),
  };
}

/** `needs 3 of the next 6`; of "at most": `allows 1 of the next 6`. */
function needed({ bound }: Counted, { stillNeeded, stillPossible }: CountResult): string {
  if (stillPossible === 1)
    return bound === "least" ? "needs the next shot" : "holds unless the next is one more";
  if (bound === "most") return `allows ${stillPossible - stillNeeded || "none"} of the next ${stillPossible}`;
  return `needs ${stillNeeded < stillPossible ? `${stillNeeded} of` : "each of"} the next ${stillPossible}`;
}

/** `needs 3 of the 6 shots not hit yet`; of "at most": `allows 1 of the 6 shots not hit yet`. */
function settlesCount(
  { bound }: Counted,
  standing: Standing,
  { stillNeeded, stillPossible }: CountResult,
): string {
  const open = openShots(standing);
  const among = standing.toCome > 0 && standing.unknown > 0 ? "among" : "of";
  if (bound === "most") {
    if (stillPossible === 1) return `holds unless ${open} is one more`;
    const allowed = stillPossible - stillNeeded;
    return `allows ${allowed === 0 ? "none" : allowed} ${among} ${open}`;
  }
  if (stillPossible === 1) return `needs ${open}`;
  if (stillNeeded < stillPossible) return `needs ${stillNeeded} ${among} ${open}`;
  return `needs ${standing.toCome === 1 && standing.unknown === 1 ? "both" : "each of"} ${open}`;
}
