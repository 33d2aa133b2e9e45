/** What a plan makes a player do, for the checks of practice design. */
import { AstUtils } from "langium";
import {
  type Block,
  type BlockStatement,
  type Drill,
  isBlock,
  isClub,
  isForClubs,
  isShots,
  type Plan,
  type Shots,
} from "../generated/tree/ast.ts";
import { type Bindings, bindingsOf, NO_BINDINGS, numberOf } from "../types/parameters.ts";
import type { CheckContext } from "./check.ts";

/** From this share of a full swing on, in percent, a swing counts as one at full effort; so does one that states none. */
export const FULL = 90;

/** Whether all that a drill says could be read. */
export function isRead(
  drill: Drill,
  { document, isBroken }: Pick<CheckContext, "document" | "isBroken">,
): boolean {
  const its = AstUtils.getDocument(drill);
  return its === document ? !isBroken(drill) : its.parseResult.parserErrors.length === 0;
}

/** Whether a block says something of a type, or its drill does, or may: one that is not known yet, or cannot be read. */
export function mayState(
  { statements, use }: Block,
  is: (statement: unknown) => boolean,
  context: Pick<CheckContext, "document" | "isBroken">,
): boolean {
  if (statements.some(is) || use === undefined) return statements.some(is);
  const drill = use.drill?.ref;
  return drill === undefined || drill.statements.some(is) || !isRead(drill, context);
}

/** The statements of a block: its own of that type, else its drill's. A drill is a block by itself. */
export function statedIn<T extends BlockStatement>(
  block: Block | Drill,
  is: (statement: unknown) => statement is T,
): readonly T[] {
  const { statements } = block;
  const use = isBlock(block) ? block.use : undefined;
  const own = statements.filter((statement): statement is BlockStatement & T => is(statement));
  if (own.length > 0) return own;
  return (
    use?.drill?.ref?.statements.filter((statement): statement is BlockStatement & T => is(statement)) ?? []
  );
}

/** The clubs that a block is hit with, by name; none where one is not known. */
export function clubsOf(block: Block, plan: Plan): Set<string> {
  const first = plan.statements.find(isForClubs)?.clubs[0]?.ref?.name;
  const clubs = statedIn(block, isShots).map(({ club }) =>
    club === undefined ? first : isClub(club.ref) ? club.ref.name : undefined,
  );
  return clubs.includes(undefined) ? new Set() : new Set(clubs as string[]);
}

/** Whether a line asks for swings at full effort. */
export function isFullEffort({ effort }: Shots, bindings: Bindings = NO_BINDINGS): boolean {
  return effort === undefined || (numberOf(effort, bindings) ?? 0) >= FULL;
}

/** The swings of a block or a drill, all or those at full effort. */
export function swingsOf(
  block: Block | Drill,
  isCounted: (line: Shots, bindings: Bindings) => boolean = () => true,
): number {
  const bindings = bindingsOf(block);
  return statedIn(block, isShots)
    .filter((line) => isCounted(line, bindings))
    .reduce((sum, { count }) => sum + (numberOf(count, bindings) ?? 0), 0);
}

/** Whether a number stands for each effort that a block or a drill asks for. */
export function isEffortKnown(block: Block | Drill): boolean {
  const bindings = bindingsOf(block);
  return statedIn(block, isShots).every(
    ({ effort }) => effort === undefined || numberOf(effort, bindings) !== undefined,
  );
}
