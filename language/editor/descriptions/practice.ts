/** What plans, blocks, players, sources and sessions hold, in a few lines, for hovers. */
import { pluralUnlessNone } from "../../../shared/plural.ts";
import { textLiteral } from "../../../shared/text-literal.ts";
import {
  type Block,
  isBlock,
  isBlockColumn,
  isCaution,
  isClubColumn,
  isColumn,
  isCue,
  isForClubs,
  isHandedness,
  isIntent,
  isMetricColumn,
  isNeeds,
  isNote,
  isPlanTime,
  isRequirement,
  isSessionData,
  isSessionDate,
  isSessionPlan,
  isSessionPlayer,
  isSuccess,
  isTarget,
  type Plan,
  type Player,
  type Session,
  type Source,
} from "../../generated/tree/ast.ts";
import { shotsOf as askedShots } from "../../types/shots.ts";
import { code, declared, inWords, list, paragraphs, plain, written } from "./markdown.ts";

export function describePlan(plan: Plan, documentation: string | undefined): string {
  const { statements } = plan;
  const blocks = statements.filter(isBlock);
  const clubs = statements.filter(isForClubs).flatMap((line) => line.clubs.map((club) => club.$refText));
  const needs = statements.filter(isNeeds).flatMap((line) => line.metrics.map((metric) => metric.$refText));
  const time = statements.find(isPlanTime)?.quantity;
  return paragraphs(
    declared(`plan ${textLiteral(plan.name)}`),
    documentation,
    ...statements.filter(isIntent).map(({ text }) => plain(text)),
    list([
      clubs.length > 0 ? `for ${inWords(clubs.map(code))}` : undefined,
      joined(
        pluralUnlessNone(blocks.length, "block"),
        pluralUnlessNone(sum(blocks.map(shotsOf)), "shot"),
        pluralUnlessNone(sum(blocks.map(goalsOf)), "goal"),
        time && written(time),
      ),
      needs.length > 0 ? `needs ${inWords(needs.map(code))}` : undefined,
    ]),
    ...statements.filter(isCaution).map(({ text }) => `**Caution:** ${plain(text)}`),
  );
}

export function describeBlock(block: Block, documentation: string | undefined): string {
  const { statements } = block;
  return paragraphs(
    declared(`block ${textLiteral(block.name)}${block.kind === undefined ? "" : ` ${block.kind}`}`),
    documentation,
    list([
      joined(pluralUnlessNone(shotsOf(block), "shot"), pluralUnlessNone(goalsOf(block), "goal")),
      ...statements.filter(isCue).map(({ text }) => `cue: ${plain(text)}`),
      ...statements.filter(isTarget).map((line) => code(written(line))),
      ...statements.filter(isRequirement).map((line) => code(written(line))),
    ]),
  );
}

export function describePlayer(player: Player, documentation: string | undefined): string {
  return paragraphs(
    declared(`player ${textLiteral(player.name)}`),
    documentation,
    list([
      player.statements.find(isHandedness)?.hand ?? "hand not stated",
      ...player.statements.filter(isNote).map(({ text }) => plain(text)),
    ]),
  );
}

export function describeSource(source: Source, documentation: string | undefined): string {
  const contents = source.statements.filter(isColumn).map(({ content }) => content);
  const metrics = contents.filter(isMetricColumn).map(({ metric }) => code(metric?.$refText ?? "?"));
  return paragraphs(
    declared(`source ${textLiteral(source.name)}`),
    documentation,
    list([
      metrics.length > 0 ? `reads ${inWords(metrics)}` : "reads no metric",
      contents.some(isClubColumn) ? "knows the club" : undefined,
      contents.some(isBlockColumn) ? "knows the block" : undefined,
    ]),
  );
}

export function describeSession(session: Session, documentation: string | undefined): string {
  const { statements } = session;
  const plan = statements.find(isSessionPlan)?.plan?.$refText;
  const player = statements.find(isSessionPlayer)?.player?.$refText;
  return paragraphs(
    declared(`session ${textLiteral(session.name)}`),
    documentation,
    list([
      joined(player, statements.find(isSessionDate)?.date),
      plan && `plan ${code(plan)}`,
      ...statements.filter(isSessionData).map(({ path }) => `data ${code(path ?? "?")}`),
    ]),
  );
}

function shotsOf(block: Block): number {
  return askedShots(block)?.asked ?? 0;
}

function goalsOf(block: Block): number {
  return sum(block.statements.filter(isSuccess).map(({ criteria }) => criteria.length));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}

function joined(...parts: readonly (string | undefined)[]): string | undefined {
  return parts.filter(Boolean).join(" · ") || undefined;
}
