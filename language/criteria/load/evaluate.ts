/**
 * `at most 40 full-effort swings in the session`: the swings made, those of shots that were set aside among them. What a
 * body has swung cannot be taken back, so "at most" is missed for good with one swing too many, and is met only when no
 * planned swing is left to make; "at least" is met as soon as there are enough.
 */
import type { LoadCriterion } from "../../../shared/plan-model.ts";
import type { CountedShots, CriterionKind, Effort, Outcome, Swings } from "../criterion.ts";
import { grouped, joined, unlessZero } from "../wording.ts";

export const load: CriterionKind<"load"> = {
  sentence: (criterion) => {
    const { bound, count, over } = criterion;
    const where = over === "session" ? "In the whole session" : "In the block";
    return `${where}, at ${bound} ${swings(count, criterion)}, those of shots that are set aside included.`;
  },
  metrics: () => [],
  evaluate,
};

function evaluate(criterion: LoadCriterion, shots: CountedShots): Outcome {
  const { bound, count, over } = criterion;
  const made = shots.swings[over];
  const number = counted(made, criterion);
  const toCome = counted(made.toCome, criterion);
  const unknown = criterion.fullEffort ? made.unknownEffort : 0;
  const verdict = judge(bound, count, number, toCome, made);
  const isMeasured = verdict !== "not-measured";
  return {
    verdict,
    required: `at ${bound} ${swings(count, criterion)} in the ${over}`,
    observed: isMeasured
      ? joined(
          swings(number, criterion),
          unlessZero(toCome, (planned) => `${grouped(planned)} more planned`),
        )
      : "no swings made",
    brief: isMeasured ? swings(number, criterion) : "",
    value: isMeasured ? number : null,
    shotsUsed: shots.swings[over].all,
    tally: null,
    interval: null,
    settles: settles(verdict, bound, count - number, toCome),
    deciding: [],
    cautions: unknown === 0 ? [] : [unknownEffort(unknown)],
  };
}

function counted(effort: Effort, { fullEffort }: LoadCriterion): number {
  return fullEffort ? effort.fullEffort : effort.all;
}

function judge(
  bound: LoadCriterion["bound"],
  count: number,
  number: number,
  toCome: number,
  { all, toCome: planned }: Swings,
): Outcome["verdict"] {
  if (bound === "most" && number > count) return "missed";
  if (bound === "least" && number >= count) return "met";
  if (all === 0 && planned.all > 0) return "not-measured";
  if (toCome > 0) return "undecided";
  return bound === "most" ? "met" : "missed";
}

function settles(
  verdict: Outcome["verdict"],
  bound: LoadCriterion["bound"],
  left: number,
  toCome: number,
): string | null {
  if (verdict === "not-measured") return "swings to count";
  if (verdict !== "undecided") return null;
  const planned = toCome === 1 ? "the planned swing" : `the ${grouped(toCome)} planned swings`;
  if (bound === "least" && left > toCome)
    return `needs ${grouped(left)} more, and the plan asks for ${grouped(toCome)}`;
  if (bound === "least")
    return `needs ${left === toCome ? "" : `${grouped(left)} of `}${planned} not made yet`;
  if (left >= toCome)
    return `holds if no more than ${planned} not made yet ${toCome === 1 ? "is" : "are"} made`;
  return `allows ${left === 0 ? "none" : grouped(left)} of ${planned} not made yet`;
}

function swings(count: number, { fullEffort }: LoadCriterion): string {
  return `${grouped(count)} ${fullEffort ? "full-effort " : ""}${count === 1 ? "swing" : "swings"}`;
}

function unknownEffort(count: number): string {
  const [swing, is] = count === 1 ? ["swing", "is"] : ["swings", "are"];
  return `The effort of ${grouped(count)} ${swing} is neither measured nor stated: ${count === 1 ? "it" : "they"} ${is} counted as full.`;
}
