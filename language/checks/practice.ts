/** What a plan makes a player do, for the checks of practice design. */
import { AstUtils } from "langium";
import { isFullEffort } from "../../shared/full-effort.ts";
import {
  type Block,
  type BlockStatement,
  type Drill,
  isBlock,
  isClub,
  isClubValue,
  isForClubs,
  isParameter,
  isShots,
  type PlanTime,
  type Quantity,
  type Shots,
} from "../generated/tree/ast.ts";
import { argumentOf, bindingsOf, numberOf } from "../types/parameters.ts";
import { dimensionOfUnit, TIME, worthOf } from "../types/units.ts";
import type { CheckContext } from "./check.ts";

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
export function clubsOf(block: Block): Set<string> {
  const clubs = statedIn(block, isShots).map((line) => clubOf(line, block));
  return clubs.includes(undefined) ? new Set() : new Set(clubs as string[]);
}

/** The club of a line, by name: the plan's first where it states none. Undefined where it is not known. */
export function clubOf({ club }: Shots, block: Block | Drill): string | undefined {
  const named = club?.ref;
  if (isClub(named)) return named.name;
  if (isParameter(named)) {
    const argument = argumentOf(named, bindingsOf(block));
    return isClubValue(argument) ? argument.club.ref?.name : undefined;
  }
  if (club !== undefined || !isBlock(block)) return undefined;
  return block.$container.statements.find(isForClubs)?.clubs[0]?.ref?.name;
}

/** Whether a line of a block asks for swings at full effort. */
export function asksForFullEffort(line: Shots, block: Block | Drill): boolean {
  const { effort } = line;
  return isFullEffort(
    effort === undefined ? undefined : (numberOf(effort, bindingsOf(block)) ?? 0),
    clubOf(line, block),
  );
}

/** The swings of a block or a drill, all or those at full effort. */
export function swingsOf(
  block: Block | Drill,
  isCounted: (line: Shots, block: Block | Drill) => boolean = () => true,
): number {
  const bindings = bindingsOf(block);
  return statedIn(block, isShots)
    .filter((line) => isCounted(line, block))
    .reduce((sum, { count }) => sum + (numberOf(count, bindings) ?? 0), 0);
}

/** How long it takes, in seconds; undefined where that is not known. */
export function secondsOf(time: PlanTime | undefined): number | undefined {
  const quantity = time?.quantity;
  const unit = quantity?.unit?.ref;
  return unit !== undefined && dimensionOfUnit(unit).name === TIME
    ? worthOf(quantity as Quantity)
    : undefined;
}

/** Whether a number stands for each effort that a block or a drill asks for. */
export function isEffortKnown(block: Block | Drill): boolean {
  const bindings = bindingsOf(block);
  return statedIn(block, isShots).every(
    ({ effort }) => effort === undefined || numberOf(effort, bindings) !== undefined,
  );
}
