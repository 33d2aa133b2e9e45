/**
 * `any of { … }`, `2 of { … }`, `all of { … }`: so many of several criteria. It is met as soon as so many are, and missed
 * as soon as so many no longer can be; a part that is open leaves it open where that matters.
 *
 * Where not all parts are needed, each part about ability is one more chance to be met by luck, or missed. The error that
 * each allows is then divided, into as many shares as it takes for the group to keep what its parts promise
 * (`sharesOfError`). `all of` needs no such thing: it is met by luck no more often than its luckiest part (Berger 1982,
 * intersection–union).
 */
import type { Criterion, GroupCriterion } from "../../../shared/plan-model.ts";
import type { Verdict } from "../../../shared/score-report.ts";
import { confidenceEach, sharesOfError } from "../../../shared/statistics/several-criteria.ts";
import { inWords } from "../../../shared/verdict.ts";
import type { CountedShots, CriterionKind, Outcome } from "../criterion.ts";
import { verdictOfSome } from "../verdict.ts";
import { joined, listed, percent } from "../wording.ts";

/** What a group asks of its parts, whatever their kind. */
export interface OfAnyKind {
  readonly sentence: (criterion: Criterion, isRequiring: boolean) => string;
  readonly metrics: (criterion: Criterion) => readonly string[];
  readonly evaluate: (criterion: Criterion, shots: CountedShots) => Outcome;
}

export function groupKind(anyKind: OfAnyKind): CriterionKind<"group"> {
  return {
    sentence: (group, isRequiring) => {
      const parts = group.criteria.map((part) => withinSentence(anyKind.sentence(part, isRequiring)));
      return `${asked(group)}: ${parts.join("; ")}.`;
    },
    metrics: ({ criteria }) => [...new Set(criteria.flatMap(anyKind.metrics))],
    evaluate: (group, shots) => judge(group, shots, anyKind),
  };
}

function judge(group: GroupCriterion, shots: CountedShots, { evaluate }: OfAnyKind): Outcome {
  const judged = withSharedError(group);
  const parts = judged.criteria.map((criterion) => ({ criterion, outcome: evaluate(criterion, shots) }));
  const outcomes = parts.map(({ outcome }) => outcome);
  const verdict = verdictOfSome(
    outcomes.map((outcome) => outcome.verdict),
    needed(group),
  );
  const met = outcomes.filter((outcome) => outcome.verdict === "met").length;
  const isMeasured = outcomes.some((outcome) => outcome.verdict !== "not-measured");
  const isOpen = verdict === "undecided" || verdict === "not-measured";
  return {
    verdict,
    required: `${needed(group)} of ${parts.length} goals`,
    observed: joined(
      standing(met, needed(group)),
      ...parts.map(({ criterion, outcome }) => `${titleOf(criterion)}: ${inWords(outcome.verdict)}`),
    ),
    brief: isMeasured ? standing(met, needed(group)) : "",
    value: isMeasured ? met : null,
    shotsUsed: Math.max(0, ...outcomes.map(({ shotsUsed }) => shotsUsed)),
    tally: null,
    interval: null,
    settles: isOpen ? settles(group, parts) : null,
    deciding: decidingShots(verdict, outcomes),
    cautions: sharedCautions(group, judged),
    parts: outcomes,
  };
}

function needed({ needed, criteria }: GroupCriterion): number {
  return needed === "all" ? criteria.length : needed === "any" ? 1 : needed;
}

/** `1 of 2 needed`, `3 met, 2 needed`. */
function standing(met: number, needed: number): string {
  return met > needed ? `${met} met, ${needed} needed` : `${met} of ${needed} needed`;
}

/** A part as the coach wrote it; of a group what is needed of it. */
function titleOf(part: Criterion): string {
  return part.kind === "group" ? `${part.needed} of ${part.criteria.length}` : part.text;
}

/** `All of these`, `At least 2 of these 3`. */
function asked(group: GroupCriterion): string {
  const { needed: number, criteria } = group;
  if (number === "all") return "All of these";
  if (number === "any") return "At least one of these";
  return `At least ${number} of these ${criteria.length}`;
}

/** A sentence inside another: without its capital and its full stop. */
function withinSentence(sentence: string): string {
  return sentence.slice(0, 1).toLowerCase() + sentence.slice(1).replace(/\.$/, "");
}

/** What would settle the parts that are open, each named by its text. */
function settles(
  group: GroupCriterion,
  parts: readonly { readonly criterion: Criterion; readonly outcome: Outcome }[],
): string {
  const open = parts.flatMap(({ criterion, outcome }) =>
    outcome.settles === null ? [] : [`${titleOf(criterion)} (${outcome.settles})`],
  );
  const met = parts.filter(({ outcome }) => outcome.verdict === "met").length;
  const more = needed(group) - met;
  if (open.length === 0) return "goals to judge";
  return `${more} more of: ${open.join("; ")}`;
}

/** The shots that decided the parts that ended as the group did; of an open group those that keep parts open. */
function decidingShots(verdict: Verdict, outcomes: readonly Outcome[]): readonly number[] {
  const isOpen = (other: Verdict) => other === "undecided" || other === "not-measured";
  const deciding = outcomes
    .filter((outcome) => outcome.verdict === verdict || (isOpen(verdict) && isOpen(outcome.verdict)))
    .flatMap((outcome) => outcome.deciding);
  return [...new Set(deciding)].sort((one, other) => one - other);
}

/** The group with the error of its parts about ability divided among them, where a part can be met for another. */
export function withSharedError(group: GroupCriterion): GroupCriterion {
  const chances = group.criteria.filter((part) => confidencesOf(part).length > 0).length;
  const shares = sharesOfError(group.criteria.length, needed(group), chances);
  return shares === 1 ? group : { ...group, criteria: group.criteria.map((part) => surer(part, shares)) };
}

function surer(criterion: Criterion, shares: number): Criterion {
  if (criterion.kind === "group")
    return { ...criterion, criteria: criterion.criteria.map((part) => surer(part, shares)) };
  if (!("confidence" in criterion) || criterion.confidence === null) return criterion;
  return { ...criterion, confidence: toBeTold(confidenceEach(criterion.confidence, shares)) };
}

/** A confidence with an error of three digits, no larger: what is told is to be the level that decided. */
function toBeTold(confidence: number): number {
  const [digits, exponent] = (1 - confidence).toExponential(10).split("e");
  return 1 - Number(`${Math.floor(Number(digits) * 100 + 1e-6)}e${exponent}`) / 100;
}

/** The confidences that a criterion, or any of its parts, asks for. */
export function confidencesOf(criterion: Criterion): readonly number[] {
  if (criterion.kind === "group") return criterion.criteria.flatMap(confidencesOf);
  return "confidence" in criterion && criterion.confidence !== null ? [criterion.confidence] : [];
}

function sharedCautions(group: GroupCriterion, judged: GroupCriterion): string[] {
  if (judged === group) return [];
  const levels = (criterion: Criterion) => [...new Set(confidencesOf(criterion))].sort((a, b) => a - b);
  const inPercent = (criterion: Criterion) => listed(levels(criterion).map(percent));
  return [
    `Not all of these goals are needed, so each about ability is judged at ${inPercent(judged)} confidence instead of ${inPercent(group)}: several chances to be met by luck share the error that one may have.`,
  ];
}
