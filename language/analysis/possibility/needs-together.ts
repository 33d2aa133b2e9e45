/** Goals that take more shots together than there are. */
import type { Criterion } from "../../../shared/plan-model.ts";
import { listed, percent } from "../../criteria/wording.ts";
import type { BlockInPlan } from "../subject.ts";
import { type Circumstances, circumstancesOf } from "./circumstances.ts";
import { areCompatible } from "./conflict.ts";
import { demandsOf, proposeDemand } from "./demand.ts";
import type { GoalsAtOdds } from "./goals-together.ts";
import { type Need, needsOf } from "./need.ts";
import { named } from "./reasons.ts";

/** More goals of one block are not held against each other. */
const MOST_NEEDS = 16;

/**
 * Goals that need different shots, and more of them together than there are: at least 8 of 10 on one side and at least 3 on
 * the other.
 */
export function tooManyShots(goals: readonly Criterion[], subject: BlockInPlan): GoalsAtOdds | undefined {
  const { block, vocabulary } = subject;
  const needs = goals.flatMap((goal) => needsOf(goal, subject)).filter(({ count }) => count > 0);
  if (needs.length > MOST_NEEDS) return undefined;
  const demands = demandsOf(subject).filter(({ role }) => role !== "target");
  const among = circumstancesOf(
    [...needs.flatMap(({ conditions }) => conditions), ...demands.map(({ condition }) => condition)],
    block.shots,
  );
  const players = new Set(among.map(playerOf));
  let found: readonly Need[] | undefined;
  for (const player of players) {
    const those = among.filter((at) => playerOf(at) === player);
    const excludeEachOther = (one: Need, other: Need) =>
      one.goal !== other.goal &&
      those.every((at) => {
        const asked = demands.map((demand) => proposeDemand(demand, at, subject));
        return !areCompatible([one.propose(at), other.propose(at), ...asked], at, vocabulary);
      });
    found = largestExcluding(needs, excludeEachOther);
    if (found === undefined) return undefined;
  }
  const [at] = among;
  if (found === undefined || at === undefined) return undefined;
  const ofShares = !isMore(found);
  const parts = found.map(({ goal, count, share, says }) => {
    const needed = ofShares ? `${percent(share)} of shots` : count;
    return `${named(goal, subject)} needs ${needed} ${says(at)}`;
  });
  const both = found.length === 2 ? "both" : "two of these";
  const most = ofShares ? "" : `, and only ${mostOf(found)} count`;
  const areCounts = found.every(({ goal }) => goal.kind !== "statistic");
  return {
    goals: [...new Set(found.map(({ goal }) => goal))],
    why: `${listed(parts)}; no shot can be ${both}${most}. ${areCounts ? "Ask for fewer of one of them" : "Change one of them"}.`,
  };
}

function playerOf({ hand, level }: Circumstances): string {
  return JSON.stringify([hand, level]);
}

/** Whether needs that exclude each other take more shots than there are. */
function isMore(needs: readonly Need[]): boolean {
  return needs.reduce((sum, { count }) => sum + count, 0) > mostOf(needs);
}

function mostOf(needs: readonly Need[]): number {
  return Math.max(...needs.map(({ outOf }) => outOf));
}

/** Whether their shares are more than all shots, however many are hit. */
function isMoreThanAll(needs: readonly Need[]): boolean {
  return needs.reduce((sum, { share }) => sum + share, 0) > 1 + SLACK;
}

const SLACK = 1e-9;

/** Needs of which each two exclude each other and which take more shots than there are. */
function largestExcluding(
  needs: readonly Need[],
  excludeEachOther: (one: Need, other: Need) => boolean,
): readonly Need[] | undefined {
  for (const first of needs) {
    const chosen = [first];
    for (const need of needs) {
      if (need !== first && chosen.every((one) => excludeEachOther(one, need))) chosen.push(need);
      if (chosen.length > 1 && (isMore(chosen) || isMoreThanAll(chosen))) return chosen;
    }
  }
  return undefined;
}
