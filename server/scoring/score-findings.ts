/** The patterns that a coach looks for in the shots of a baseline. What is shown is a suspicion, never a diagnosis. */
import { evaluate } from "../../language/criteria/criteria.ts";
import type { CountedShots } from "../../language/criteria/criterion.ts";
import { verdictOfAll } from "../../language/criteria/verdict.ts";
import type { Criterion, DrillUse, Finding } from "../../shared/plan-model.ts";
import type { FindingResult } from "../../shared/score-report.ts";
import { columnsOf, type Frame, type Surroundings } from "./counted-shots.ts";
import { criterionResult } from "./criterion-result.ts";
import { estimatesAmong } from "./estimates.ts";
import type { BlockShots } from "./set-aside.ts";
import { linesOf } from "./swings/lines.ts";

/** Those that are shown first, the strongest evidence first; else in the order of the plan. */
export function scoreFindings(
  findings: readonly Finding[],
  baseline: BlockShots,
  frame: Frame,
  surroundings: Surroundings,
): FindingResult[] {
  const rank = ({ verdict, strength }: FindingResult) => (verdict === "met" ? 1 + (strength ?? 0) : 0);
  return findings
    .map((finding) => scoreFinding(finding, baseline, frame, surroundings))
    .sort((one, other) => rank(other) - rank(one));
}

function scoreFinding(
  finding: Finding,
  baseline: BlockShots,
  frame: Frame,
  surroundings: Surroundings,
): FindingResult {
  const counted = baseline.counted.filter(({ club }) => isMeant(club, finding));
  // What the baseline requires makes a shot no success; it says nothing of a pattern.
  const block = { ...baseline.block, requirements: [] };
  const { forCriteria } = columnsOf(
    block,
    asked(finding, baseline, counted.length),
    counted,
    frame,
    surroundings,
  );
  const on = {
    counted,
    forCriteria,
    estimates: estimatesAmong(frame.vocabulary, counted),
    cautions: [],
  };
  const criteria = finding.when.map((criterion) =>
    criterionResult(criterion, evaluate(criterion, forCriteria), on),
  );
  const verdict = verdictOfAll(criteria.map(({ verdict }) => verdict)) ?? "not-measured";
  return {
    name: finding.name,
    location: finding.location,
    verdict,
    strength: verdict === "met" ? leastSure(finding.when, forCriteria) : null,
    criteria,
    suspects: finding.suspects,
    checks: finding.checks,
    tries: finding.tries.map((drill) => ({
      drill: drill.name,
      text: drillInWords(drill),
      location: drill.location,
    })),
  };
}

function isMeant(club: string | null, { clubs }: Finding): boolean {
  return clubs.length === 0 || (club !== null && clubs.includes(club));
}

/** How many shots with the clubs of the finding there are when the baseline has all it asks for. */
function asked({ clubs }: Finding, baseline: BlockShots, counted: number): number {
  const open = linesOf(baseline).filter(({ line }) => {
    const club = line?.club ?? null;
    return clubs.length === 0 || club === null || clubs.includes(club);
  });
  return open.reduce((total, { toCome }) => total + toCome, counted);
}

/** `"Start-line gate" with width = 4°` */
function drillInWords({ name, arguments: given }: DrillUse): string {
  const stated = Object.entries(given).map(([parameter, text]) => `${parameter} = ${text}`);
  return `"${name}"${stated.length === 0 ? "" : ` with ${stated.join(", ")}`}`;
}

/** Confidences are tried in steps of a thousandth, from one half on. */
const STEP = 1000;

/** The confidence that all criteria with a reading as ability still reach; null where none has one. */
function leastSure(criteria: readonly Criterion[], shots: CountedShots): number | null {
  const reached = criteria.map((criterion) => confidenceReached(criterion, shots));
  const known = reached.filter((confidence) => confidence !== null);
  return known.length === 0 ? null : Math.min(...known);
}

/**
 * The largest confidence at which a criterion would be met as one about ability, whatever confidence it states: 0 where not
 * even one half is reached, null where it has no such reading. Of a group, that of as many of its parts as are needed.
 */
function confidenceReached(criterion: Criterion, shots: CountedShots): number | null {
  if (criterion.kind === "group") {
    const { needed, criteria } = criterion;
    if (needed === "all") return leastSure(criteria, shots);
    const reached = criteria.map((part) => confidenceReached(part, shots)).filter((part) => part !== null);
    return reached.sort((one, other) => other - one)[needed === "any" ? 0 : needed - 1] ?? null;
  }
  if (!("confidence" in criterion) || isOfShotsHit(criterion)) return null;
  const isMet = (step: number) =>
    evaluate({ ...criterion, confidence: step / STEP }, shots).verdict === "met";
  let reached = STEP / 2 - 1;
  let missed = STEP;
  while (missed - reached > 1) {
    const middle = Math.floor((reached + missed) / 2);
    if (isMet(middle)) reached = middle;
    else missed = middle;
  }
  return reached < STEP / 2 ? 0 : reached / STEP;
}

/** Best and worst are numbers of the shots hit and of nothing else. */
function isOfShotsHit(criterion: Criterion): boolean {
  const kind = "statistic" in criterion ? criterion.statistic.kind : undefined;
  return kind === "best" || kind === "worst";
}
