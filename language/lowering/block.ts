/** Blocks, with what their drills say: from the tree to the model. */
import type { AstNode } from "langium";
import type {
  Against,
  Block as BlockModel,
  Shots as ShotsModel,
  Statement,
} from "../../shared/plan-model.ts";
import { lowerCriterion } from "../criteria/lower.ts";
import {
  type Block,
  type BlockStatement,
  isCaution,
  isChange,
  isClubValue,
  isCue,
  isLeaveOut,
  isParameter,
  isPlanTime,
  isRequirement,
  isShots,
  isSuccess,
  isTarget,
  type LeaveOut,
  type Requirement,
  type Shots,
  type Target,
} from "../generated/tree/ast.ts";
import { kindOf } from "../types/kinds.ts";
import { argumentOf, type Bindings, NO_BINDINGS } from "../types/parameters.ts";
import { lowerCondition, lowerCount, lowerQuantity } from "./amounts.ts";
import { bindingsOf, lowerDrillUse } from "./drill-use.ts";
import { type FileName, placeOf, textOf } from "./place.ts";
import { IncompleteError, resolved } from "./unresolved.ts";

/** What a plan tells its blocks. */
export interface Surroundings {
  /** The club of lines that name none. */
  readonly firstClub: string | null;
  readonly baseline: Against | undefined;
  readonly fileName: FileName;
  /** Statements and goals that are passed over. */
  readonly without?: ReadonlySet<AstNode> | undefined;
}

/** A statement with what the parameters in it stand for. */
export interface Said<T extends BlockStatement = BlockStatement> {
  readonly statement: T;
  readonly bindings: Bindings;
}

export function lowerBlock(block: Block, surroundings: Surroundings): BlockModel {
  const { fileName, without } = surroundings;
  const said = statementsOf(block).filter(({ statement }) => !without?.has(statement));
  const shots = only(said, isShots).map((line) => lowerShots(line, surroundings.firstClub));
  const counted = shots.some(({ open }) => open) ? null : shots.reduce((sum, { count }) => sum + count, 0);
  const time = only(said, isPlanTime)[0];
  let place = 0;
  return {
    name: block.name,
    kind: kindOf(block),
    drill: block.use === undefined ? null : lowerDrillUse(block.use, fileName),
    shots,
    time: time === undefined ? null : lowerQuantity(time.statement.quantity, time.bindings).value,
    changes: only(said, isChange).map(({ statement }) => ({
      kind: statement.kind,
      text: statement.text,
      location: placeOf(statement, fileName),
    })),
    cues: only(said, isCue).map(({ statement }) => statement.text),
    cautions: only(said, isCaution).map(({ statement }) => statement.text),
    targets: conditions(only(said, isTarget), fileName),
    requirements: conditions(only(said, isRequirement), fileName),
    leaveOut: conditions(only(said, isLeaveOut), fileName),
    success: only(said, isSuccess).flatMap(({ statement, bindings }) =>
      statement.criteria
        .filter((criterion) => !without?.has(criterion))
        .map((criterion) =>
          lowerCriterion(criterion, `${block.name}/${++place}`, { ...surroundings, bindings, counted }),
        ),
    ),
    location: placeOf(block, fileName),
  };
}

/**
 * What a block says together with its drill. Shots, time, change and goals that the block states stand instead of the
 * drill's; so does a target or a requirement about a single metric instead of the drill's about the same one. All else is
 * added.
 */
export function statementsOf(block: Block): Said[] {
  const own = block.statements.map((statement) => ({ statement, bindings: NO_BINDINGS }));
  if (block.use === undefined) return own;
  const bindings = bindingsOf(block.use);
  const inherited = resolved(block.use.drill).statements.filter(
    (statement) => !block.statements.some((mine) => replaces(mine, statement)),
  );
  return [...inherited.map((statement) => ({ statement, bindings })), ...own];
}

function replaces(mine: BlockStatement, drills: BlockStatement): boolean {
  if (mine.$type !== drills.$type) return false;
  if (isShots(mine) || isPlanTime(mine) || isChange(mine) || isSuccess(mine)) return true;
  const metric = singleMetric(mine);
  return metric !== undefined && metric === singleMetric(drills);
}

/** The name of the one metric that a target or a requirement is about. */
function singleMetric(statement: BlockStatement): string | undefined {
  if (!isTarget(statement) && !isRequirement(statement)) return undefined;
  const tests = statement.condition.alternatives.flatMap((alternative) => alternative.tests);
  const names = new Set(tests.map((test) => ("metric" in test ? test.metric.$refText : undefined)));
  return names.size === 1 ? [...names][0] : undefined;
}

function only<T extends BlockStatement>(
  said: readonly Said[],
  is: (statement: unknown) => statement is T,
): Said<T>[] {
  return said.filter((line): line is Said<T> => is(line.statement));
}

function lowerShots({ statement, bindings }: Said<Shots>, firstClub: string | null): ShotsModel {
  return {
    count: lowerCount(statement.count, bindings),
    open: statement.open,
    club: clubOf(statement, bindings) ?? firstClub,
    effort: statement.effort === undefined ? null : lowerCount(statement.effort, bindings) / 100,
  };
}

/** @throws IncompleteError where a parameter stands for no club. */
function clubOf({ club: reference }: Shots, bindings: Bindings): string | undefined {
  if (reference === undefined) return undefined;
  const named = resolved(reference);
  if (!isParameter(named)) return named.name;
  const argument = argumentOf(named, bindings);
  if (!isClubValue(argument)) {
    throw new IncompleteError(`${JSON.stringify(named.name)} stands for no club.`);
  }
  return resolved(argument.club).name;
}

function conditions(
  lines: readonly Said<Target | Requirement | LeaveOut>[],
  fileName: FileName,
): Statement[] {
  return lines.map(({ statement, bindings }) => ({
    text: textOf(statement, bindings),
    condition: lowerCondition(statement.condition, bindings),
    location: placeOf(statement, fileName),
  }));
}
