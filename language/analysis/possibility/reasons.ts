/** Words for what a conclusion follows from, and for whom it holds. */
import type { Condition, Criterion } from "../../../shared/plan-model.ts";
import { listed } from "../../criteria/wording.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { code, placeInWords, quoted, rangeInWords } from "../words.ts";
import type { Circumstances } from "./circumstances.ts";
import type { Because } from "./conflict.ts";

type Line = Pick<Criterion, "text" | "location">;

/** `line 9 (`target carry at least 150 yd`)` */
export function named({ text, location }: Line, { block }: BlockInPlan): string {
  return `${placeInWords(location, block.location)} (${code(text)})`;
}

/** The goal that is spoken of: `this goal`, or which one of the drill. */
export function calledGoal(goal: Line, subject: BlockInPlan): string {
  const { isOwn, called = "goal" } = subject;
  if (isOwn(goal.location)) return `this ${called}`;
  return called === "line" ? named(goal, subject) : `the goal in ${named(goal, subject)}`;
}

/** Whether lines of the block itself are to blame for what is said of a drill's goal: that is no mistake of the drill. */
export function isByOwnLines(goal: Line, lines: readonly Line[], { isOwn }: BlockInPlan): boolean {
  return !isOwn(goal.location) && lines.some(({ location }) => isOwn(location));
}

/** What it follows from, besides the lines of the plan: relations between metrics and plausible ranges. */
function reasons(
  { relations, plausible }: Because,
  { hand }: Circumstances,
  { vocabulary }: Pick<BlockInPlan, "vocabulary">,
): string {
  const parts = new Set(relations.map(({ says }) => says));
  for (const { metric, range } of plausible) {
    const known = vocabulary.metrics.get(metric);
    if (known === undefined) continue;
    const manner = { hand, unit: known.unit, isPlain: false };
    parts.add(`a plausible ${metric} is ${rangeInWords(range, known, manner)}`);
  }
  return listed([...parts]);
}

/** The same as the end of a sentence: `, since face-to-path is face-angle − club-path`; empty where nothing else has a part. */
export function since(
  because: Because,
  at: Circumstances | undefined,
  subject: Pick<BlockInPlan, "vocabulary">,
): string {
  const why = at === undefined ? "" : reasons(because, at, subject);
  return why === "" ? "" : `, since ${why}`;
}

/** `, by the rules for shape`, where conditions ask for names that shots have by rules; empty elsewhere. */
export function byRules(
  conditions: readonly Condition[],
  { vocabulary: { metrics } }: Pick<BlockInPlan, "vocabulary">,
): string {
  const tests = conditions.flatMap(({ anyOf }) => anyOf.flatMap(({ allOf }) => allOf));
  const asked = new Set(tests.flatMap((test) => (test.kind === "category" ? [test.metric] : [])));
  const ruled = [...asked].filter((name) =>
    metrics.get(name)?.categories.some(({ condition }) => condition !== null),
  );
  return ruled.length === 0 ? "" : `, by the rules for ${listed(ruled)}`;
}

/** Lines that have a part in what is said of another. */
export function relatedLines(lines: readonly Line[]): Remark["related"] {
  return lines.map(({ text, location }) => ({ message: text, location }));
}

export interface Concerned {
  readonly circumstances: readonly Circumstances[];
  /** All circumstances that were looked at. */
  readonly among: readonly Circumstances[];
  /** Whether it concerns players of either hand and of every level. */
  readonly concernsAll: boolean;
}

/** Which players and clubs it concerns, where it does not concern all: `with 7-iron, `. */
export function forWhom({ circumstances, among, concernsAll }: Concerned): string {
  const only = <T>(of: (at: Circumstances) => T): readonly T[] | null => {
    const concerned = new Set(circumstances.map(of));
    return concerned.size < new Set(among.map(of)).size ? [...concerned] : null;
  };
  const clubs = only(({ club }) => club);
  const hands = concernsAll ? null : only(({ hand }) => hand);
  const levels = concernsAll ? null : only(({ level }) => level);
  const parts = [
    clubs && `with ${listed(clubs.map(String))}`,
    hands && `for a ${hands[0]}-hander`,
    levels && `for a player of ${listed(levels.map(levelInWords))}`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? "" : `${parts.join(" ")}, `;
}

function levelInWords(level: string | null): string {
  return level === null ? "no such level" : `level ${quoted(level)}`;
}
