/** Lines that ask for another effort than the block's shots are to be hit at. */
import { listed, percent } from "../../criteria/wording.ts";
import { isEmpty, WHOLE } from "../reasoning/range.ts";
import { rangeLeft } from "../reasoning/solve.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { sentence } from "../words.ts";
import { circumstancesOf } from "./circumstances.ts";
import { worldOf } from "./conflict.ts";
import { type Demand, demandsOf, proposeDemand } from "./demand.ts";
import { named } from "./reasons.ts";

const EFFORT = "effort";

/** Efforts are stated in whole percents, and computed with. */
const ROUNDING = 1e-6;

/** Only of lines that none of the block's shots keep to. One question for each line. */
export function otherEffort(subject: BlockInPlan): Remark[] {
  const { shots } = subject.block;
  const stated = [...new Set(shots.flatMap(({ effort }) => effort ?? []))];
  if (stated.length === 0 || shots.some(({ effort }) => effort === null)) return [];
  return demandsOf(subject).flatMap((demand) => {
    const asked = rangesOf(demand, subject);
    const isAsked = (effort: number) =>
      asked.some(({ low, high }) => effort >= low - ROUNDING && effort <= high + ROUNDING);
    if (asked.every(isEmpty) || stated.some(isAsked)) return [];
    const line = subject.isOwn(demand.location) ? "this line" : named(demand, subject);
    const what = demand.role === "leave out" ? "leaves all of them out" : "asks for another effort";
    return [
      {
        message: sentence(
          `the block's shots are to be hit at ${listed(stated.map(percent))} effort, and ${line} ${what}. Change one of the two.`,
        ),
        location: demand.location,
        related: [],
      },
    ];
  });
}

/** Where the effort lies of shots that do what a line asks for, in all circumstances. */
function rangesOf(demand: Demand, subject: BlockInPlan) {
  const { block, vocabulary } = subject;
  return circumstancesOf([demand.condition], block.shots).map((at) => {
    const asked = proposeDemand(demand, at, subject);
    const world = worldOf([asked, { kind: "number", metric: EFFORT, range: WHOLE }], at, vocabulary);
    return rangeLeft(EFFORT, [asked], world);
  });
}
