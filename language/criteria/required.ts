/**
 * What the requirements of a block do to its criteria: a shot that fails one is never a success.
 *
 * - "At least" and "in a row": a shot counts when it meets the subject *and* every requirement.
 * - "At most" limits the bad shots: one counts when it meets the subject *or* fails a requirement. So "at most 2 of 18
 *   shots that …" says the same as "at least 16 of 18 shots that do not …", whatever the block requires.
 * - Statistics are made of the shots that meet every requirement.
 *
 * In three-valued logic throughout: a shot whose requirement cannot be judged is unknown, unless the subject settles it.
 */
import type { Condition, Subject } from "../../shared/plan-model.ts";
import { writeCondition } from "./condition.ts";
import type { CountedShots } from "./criterion.ts";
import { both, not, type Truth } from "./verdict.ts";
import { shots as shotsInWords } from "./wording.ts";

/** Which shots are counted, and whether as those wanted ("at least") or as those limited ("at most"). */
export interface Counted {
  readonly subject: Subject;
  readonly bound: "least" | "most";
}

/** For each shot whether it counts. Worked out once for the same subject and shots. */
export function countedTruths({ subject, bound }: Counted, shots: CountedShots): readonly Truth[] {
  const known = REMEMBERED[bound].get(shots) ?? new Map<"on-target" | Subject, readonly Truth[]>();
  REMEMBERED[bound].set(shots, known);
  const key = subject.kind === "on-target" ? "on-target" : subject;
  const before = known.get(key);
  if (before !== undefined) return before;
  const meeting = shots.meeting(subject);
  const truths =
    bound === "least"
      ? shots.admitted.map((admitted, index) => both(meeting[index], admitted))
      : shots.admitted.map((admitted, index) => not(both(not(meeting[index]), admitted)));
  known.set(key, truths);
  return truths;
}

type Remembered = WeakMap<CountedShots, Map<"on-target" | Subject, readonly Truth[]>>;
const REMEMBERED: Readonly<Record<Counted["bound"], Remembered>> = {
  least: new WeakMap(),
  most: new WeakMap(),
};

/** Whether the block requires anything. */
export function hasRequirements({ requiredMetrics }: CountedShots): boolean {
  return requiredMetrics.length > 0;
}

/**
 * The shots counted, after "shots": `on target`, `with carry at least 150 yd`; where the block has requirements
 * `on target and as required`, and of "at most" `with carry below 120 yd, or not as required`.
 */
export function qualified({ subject, bound }: Counted, isRequiring: boolean): string {
  const requirement = bound === "least" ? "and as required" : "or not as required";
  if (subject.kind === "on-target") return `on target${isRequiring ? ` ${requirement}` : ""}`;
  const phrase = writeCondition(subject.condition);
  return `${isOneWindow(subject.condition) ? "" : "with "}${phrase}${isRequiring ? `, ${requirement}` : ""}`;
}

/** `inside "Neutral path"` follows "shots" by itself. */
function isOneWindow({ anyOf }: Condition): boolean {
  return anyOf.length === 1 && anyOf[0]?.allOf.length === 1 && anyOf[0].allOf[0]?.kind === "window";
}

function isOfNumbers({ anyOf }: Condition): boolean {
  return anyOf.every(({ allOf }) => allOf.every(({ kind }) => kind === "number"));
}

/** The same as what a number of shots do: `are on target`, `have carry below 120 yd, or are not as required`. */
export function predicate({ subject, bound }: Counted, isRequiring: boolean, count: number): string {
  const are = count === 1 ? "is" : "are";
  if (subject.kind === "on-target") return `${are} ${qualified({ subject, bound }, isRequiring)}`;
  const requirement = bound === "least" ? `, and ${are} as required` : `, or ${are} not as required`;
  const phrase = `${writeCondition(subject.condition)}${isRequiring ? requirement : ""}`;
  if (isOneWindow(subject.condition)) return `${are} ${phrase}`;
  if (isOfNumbers(subject.condition)) return `${count === 1 ? "has" : "have"} ${phrase}`;
  return `${are} such that ${phrase}`;
}

/** What becomes of one shot, or several, that failed a requirement. */
export type Fate = readonly [one: string, several: string];

/** Of shots that are counted. */
export const FATES: Readonly<Record<Counted["bound"], Fate>> = {
  least: ["it uses up its place but cannot count", "they use up their places but cannot count"],
  most: ["it counts against this goal", "they count against this goal"],
};

/** Says how many of the first shots failed a requirement, and what becomes of them. */
export function requirementCautions(shots: CountedShots, outOf: number, [one, several]: Fate): string[] {
  const refused = shots.admitted.slice(0, outOf).filter((truth) => truth === false).length;
  if (refused === 0) return [];
  const fate = refused === 1 ? one : several;
  return [`${shotsInWords(refused)} did not meet what the block requires: ${fate}.`];
}
