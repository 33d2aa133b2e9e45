/** Which lines of what comes next can be the one that is taken, whatever the verdicts. */
import { AstUtils } from "langium";
import type { Verdict } from "../../shared/score-report.ts";
import { VERDICTS } from "../../shared/verdict.ts";
import { verdictOfAll } from "../criteria/verdict.ts";
import { type Block, isBlock, isCriterion, isPlan, type Next, type NextStep } from "../generated/tree/ast.ts";
import { mayHaveGoals } from "./gate-must-have-goals.ts";

/** More cases than are looked at. */
const MOST_CASES = 5000;

export interface Standing {
  /** Whether some verdicts make it hold. */
  readonly mayHold: boolean;
  /** Whether some verdicts make it the first that holds. */
  readonly mayBeFirst: boolean;
}

export interface Standings {
  readonly of: ReadonlyMap<NextStep, Standing>;
  /** Whether some verdicts make no line hold. */
  readonly mayLeaveNone: boolean;
}

/** How the lines stand; undefined where something is not known, or there is too much to look at. */
export function standingsOf(next: Next): Standings | undefined {
  const plan = AstUtils.getContainerOfType(next, isPlan);
  const asked = next.steps.flatMap(({ when }) => when?.tests ?? []);
  const isKnown = asked.every(
    ({ every, any, block }) => every || any || (block?.ref !== undefined && mayHaveGoals(block.ref)),
  );
  const blocks = plan?.statements.filter(isBlock).filter(mayHaveGoals) ?? [];
  const cases = isKnown ? casesOf(blocks) : undefined;
  if (cases === undefined || cases.length === 0) return undefined;
  const standings = new Map(next.steps.map((step) => [step, { mayHold: false, mayBeFirst: false }]));
  let mayLeaveNone = false;
  for (const verdicts of cases) {
    let isFirst = true;
    for (const [step, standing] of standings) {
      if (!holds(step, verdicts)) continue;
      standing.mayHold = true;
      standing.mayBeFirst ||= isFirst;
      isFirst = false;
    }
    mayLeaveNone ||= isFirst;
  }
  return { of: standings, mayLeaveNone };
}

/** The verdicts on the goals of each block, however many there are of each. */
type Case = ReadonlyMap<Block, readonly Verdict[]>;

function casesOf(blocks: readonly Block[]): Case[] | undefined {
  let cases: Case[] = [new Map()];
  for (const block of blocks) {
    const most = goalsOf(block);
    const some = subsets(VERDICTS).filter(({ length }) => length > 0 && length <= most);
    if (cases.length * some.length > MOST_CASES) return undefined;
    cases = cases.flatMap((before) => some.map((verdicts) => new Map(before).set(block, verdicts)));
  }
  return cases;
}

/** How many there are at most; of a drill they are not counted. */
function goalsOf(block: Block): number {
  return block.use === undefined
    ? AstUtils.streamAst(block).filter(isCriterion).count()
    : Number.POSITIVE_INFINITY;
}

function subsets<T>(of: readonly T[]): T[][] {
  let found: T[][] = [[]];
  for (const one of of) found = found.flatMap((some) => [some, [...some, one]]);
  return found;
}

function holds({ when }: NextStep, verdicts: Case): boolean {
  const all = [...verdicts.values()].flat();
  return (when?.tests ?? []).every(({ every, any, block, verdicts: wanted }) => {
    const isWanted = (verdict: Verdict | null) => verdict !== null && wanted.includes(verdict);
    if (every) return all.every(isWanted);
    if (any) return all.some(isWanted);
    const its = block?.ref && verdicts.get(block.ref);
    return its !== undefined && isWanted(verdictOfAll(its));
  });
}
