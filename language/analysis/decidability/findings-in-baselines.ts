/** Findings that the shots of a baseline cannot show, whatever they are like. */
import type { Block, Criterion, Finding } from "../../../shared/plan-model.ts";
import { listed, percent, shots as shotsInWords } from "../../criteria/wording.ts";
import { linesOfFinding } from "../finding-lines.ts";
import { goalConflictsIn } from "../possibility/goal-conflicts.ts";
import { goalsThatMustBeMet, isOpen, shotsAsked } from "../possibility/goals.ts";
import { needsOf } from "../possibility/need.ts";
import { named, relatedLines } from "../possibility/reasons.ts";
import type { Vocabulary } from "../possibility/vocabulary.ts";
import type { BlockInPlan, Remark } from "../subject.ts";
import { quoted } from "../words.ts";
import { outOfReach } from "./out-of-reach.ts";

type NeverFound = Pick<Remark, "message" | "related">;

/** Why a finding is looked for in this baseline and never found; undefined where it may be. */
export function neverFoundIn(
  baseline: Block,
  finding: Finding,
  vocabulary: Vocabulary,
): NeverFound | undefined {
  if (baseline.shots.length === 0) return undefined;
  const subject = linesOfFinding(finding, vocabulary, baseline);
  const called = quoted(finding.name);
  if (subject.block.shots.length === 0) {
    const clubs = listed(finding.clubs);
    return {
      message: `${called} is about shots with ${clubs}, and ${quoted(baseline.name)} has none, so it is never found. Ask for some there, or take it out here.`,
      related: [{ message: finding.name, location: finding.location }],
    };
  }
  const tooFew = lineWithTooFew(subject);
  if (tooFew !== undefined) {
    const { line, takes } = tooFew;
    const clubs = finding.clubs.length === 0 ? "" : ` with ${listed(finding.clubs)}`;
    return {
      message: `${called} is never found in ${quoted(baseline.name)}: ${named(line, subject)} takes ${takes}, and there are ${shotsAsked(subject)}${clubs}. Ask for more shots there, or for less in the finding.`,
      related: relatedLines([line]),
    };
  }
  const [conflict] = conflictsWithBaseline(subject);
  if (conflict === undefined) return undefined;
  const { remark, against, goal } = conflict;
  return {
    message: `${called} is never found in ${quoted(baseline.name)}. ${remark.message}`,
    related: relatedLines([goal, ...against]),
  };
}

/** A line that takes more shots than there are, and how many. */
function lineWithTooFew(subject: BlockInPlan): { line: Criterion; takes: string } | undefined {
  if (isOpen(subject)) return undefined;
  const lines = goalsThatMustBeMet(subject.block.success);
  for (const line of lines) {
    const counts = needsOf(line, subject).map(({ count }) => count);
    const most = Math.max(0, ...counts);
    if (most > shotsAsked(subject)) return { line, takes: shotsInWords(most) };
  }
  const unshown = outOfReach(subject).find(
    ({ goal, verdict, shots }) => verdict === "met" && shots !== undefined && lines.includes(goal),
  );
  if (unshown?.shots === undefined) return undefined;
  const { goal, shots } = unshown;
  return { line: goal, takes: `${shotsInWords(shots)} at ${percent(goal.confidence ?? 0)} confidence` };
}

/** What the shots that the baseline leaves out would have to be like. */
function conflictsWithBaseline(subject: BlockInPlan) {
  const lines = goalsThatMustBeMet(subject.block.success);
  return goalConflictsIn(subject).filter(
    ({ goal, against, concernsAll }) => concernsAll && against.length > 0 && lines.includes(goal),
  );
}
