/** What a reader of the whole report should know, in sentences. */
import { writeCondition } from "../../language/criteria/condition.ts";
import { listed, shots as shotsInWords } from "../../language/criteria/wording.ts";
import type { Plan, ScoringInput } from "../../shared/plan-model.ts";
import type { SessionData } from "../../shared/session-data.ts";
import { estimatesAmong, operands } from "./estimates.ts";
import { metricsUsed } from "./metrics-used.ts";
import type { SortedShots } from "./set-aside.ts";

/** @param areClubsPlanned whether shots were given the clubs that the plan states */
export function notesOn(
  input: ScoringInput,
  data: SessionData,
  sorted: SortedShots,
  areClubsPlanned: boolean,
): string[] {
  return [
    ...instrumentNotes(input),
    ...handNotes(input),
    ...(areClubsPlanned ? [CLUBS_PLANNED] : []),
    ...(data.shots.length === 0 ? ["The data holds no shots."] : metricNotes(input, data)),
    ...goalNotes(input.plan),
    ...doubtNotes(sorted),
  ];
}

const CLUBS_PLANNED = "No table tells the club: shots of a block with one club are taken to be hit with it.";

/** That readings are taken as exact: all of them, or those that nothing is stated of. */
function instrumentNotes({ plan, instrument, metrics }: ScoringInput): string[] {
  if (instrument === null) return ["Readings taken as exact: no instrument is stated."];
  const isStated = (metric: string, above: readonly string[] = []): boolean => {
    if (instrument.uncertainties.some((line) => line.metric === metric)) return true;
    const formula = metrics.get(metric)?.formula ?? null;
    if (formula === null || above.includes(metric)) return false;
    return operands(formula).some((operand) => isStated(operand, [...above, metric]));
  };
  const isNumber = (metric: string) => metrics.get(metric)?.categories.length === 0;
  const exact = [...new Set(metricsUsed(plan))].filter((metric) => isNumber(metric) && !isStated(metric));
  if (exact.length === 0) return [];
  return [
    `Readings of ${listed(exact)} taken as exact: instrument "${instrument.name}" says nothing of them.`,
  ];
}

function handNotes({ player }: ScoringInput): string[] {
  if (player.hand !== null) return [];
  return [`Player "${player.name}" has no hand stated: direction words are those of a right-hander.`];
}

/** Metrics that nobody declared, that no shot has, or that were computed. */
function metricNotes({ plan, metrics }: ScoringInput, data: SessionData): string[] {
  const known = new Map<string, number>();
  const derived = new Map<string, number>();
  for (const shot of data.shots) {
    for (const metric of [...Object.keys(shot.values), ...Object.keys(shot.categories)])
      known.set(metric, (known.get(metric) ?? 0) + 1);
    for (const metric of shot.derived) derived.set(metric, (derived.get(metric) ?? 0) + 1);
  }
  const estimates = estimatesAmong(metrics, data.shots);
  const notes: string[] = [];
  const needed = new Set(plan.needs);
  const computed = new Map<string, string[]>();
  for (const metric of new Set([...plan.needs, ...metricsUsed(plan)])) {
    const declared = metrics.get(metric);
    if (declared === undefined)
      notes.push(`The plan speaks of ${metric}, but no metric of this name is declared.`);
    else if (!known.has(metric))
      notes.push(
        `No shot has a reading of ${metric}, which the plan ${needed.has(metric) ? "needs" : "uses"}.`,
      );
    const shots = derived.get(metric) ?? 0;
    // What the flight model says of its own estimates is more than their number: see physics.ts.
    if (shots === 0 || declared?.model === "flight") continue;
    const from = `computed from ${estimates.has(metric) ? "estimates" : "other readings"} for ${shotsInWords(shots)}`;
    computed.set(from, [...(computed.get(from) ?? []), metric]);
  }
  for (const [from, names] of computed)
    notes.push(`${listed(names)} ${names.length === 1 ? "was" : "were"} ${from}.`);
  return notes;
}

function goalNotes(plan: Plan): string[] {
  return plan.blocks
    .filter(({ targets, success }) => targets.length === 0 && success.some(isAboutTarget))
    .map(({ name }) => `Block "${name}" has no target, so no shot of it can be said to be on target.`);
}

function isAboutTarget(criterion: Plan["blocks"][number]["success"][number]): boolean {
  return "subject" in criterion && criterion.subject.kind === "on-target";
}

function doubtNotes({ blocks }: SortedShots): string[] {
  return blocks.flatMap(({ block, doubts }) =>
    doubts.map(({ statement, shots }) => {
      const kept = `${shotsInWords(shots)} ${shots === 1 ? "was" : "were"} kept`;
      return `Block "${block.name}": ${kept} because readings are missing to tell whether to leave out "${writeCondition(statement.condition)}".`;
    }),
  );
}
