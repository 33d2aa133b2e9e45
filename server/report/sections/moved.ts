/** What moved with every change that was tried. */
import { formatReading } from "../../../shared/quantity.ts";
import { differenceInWords, differencesInWords } from "../differences.ts";
import { type ChangeTried, CONFIDENCE, changesTried, type Move } from "../moved.ts";
import type { ReportedSession } from "../reported-session.ts";
import { type Entry, remark, type Section } from "../section.ts";

/** Null where nothing was changed. */
export function movedSection(session: ReportedSession): Section | null {
  const changes = changesTried(session);
  if (changes.length === 0) return null;
  return {
    title: "What moved",
    remark: MOVED_REMARK,
    mark: null,
    entries: changes.map((change) => changeEntry(change, session)),
  };
}

/** How to read the numbers. */
export const MOVED_REMARK = `Averages before and after; each interval holds the true difference with ${100 * CONFIDENCE} % confidence by itself, so about one in ten errs. What is marked as exploration answers no goal: it is an idea for one, and no evidence.`;

function changeEntry(tried: ChangeTried, { input }: ReportedSession): Entry {
  const { block, change, baseline, moves } = tried;
  const hand = input.player.hand ?? "right";
  const nothing = nothingToCompare(tried);
  if (nothing !== null) return remark(`${block} (${change}): ${nothing}`);
  return remark(
    `${change}: from ${baseline} to ${block}`,
    null,
    moves.map((move) => ({ label: move.metric.name, text: moveInWords(move, hand) })),
  );
}

/** In a sentence why there is nothing; null where there is something. */
export function nothingToCompare({ baseline, moves }: ChangeTried): string | null {
  if (baseline === null) return "no baseline was hit before it, so there is nothing to compare with";
  return moves.length === 0 ? "no metric was measured in both blocks" : null;
}

function moveInWords(
  { metric, before, after, limits, isAsked, isEstimate }: Move,
  hand: "right" | "left",
): string {
  const number = (value: number) => formatReading(value, metric, hand);
  const difference = differenceInWords(after.mean - before.mean, metric, hand);
  const range = limits === null ? "too few shots for an interval" : differencesInWords(limits, metric, hand);
  const marks = [isAsked ? "a goal asks" : "exploration", ...(isEstimate ? ["estimate"] : [])].join(", ");
  return `${number(before.mean)}, then ${number(after.mean)}: ${difference} (${range}; ${before.n} and ${after.n} shots; ${marks})`;
}
