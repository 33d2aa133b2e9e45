/** A score report as lines to read, for comparing with what is expected. */
import type {
  BlockResult,
  ConditionResult,
  CriterionResult,
  FindingResult,
  Load,
  ScoreReport,
  SetAside,
  Tally,
} from "../../shared/score-report.ts";

export function writeReport(report: ScoreReport): string {
  const { session, plan, player, data, assignment } = report;
  const lines = [
    `${session.name}, ${session.date ?? "no date"}: ${report.verdict ?? "no goals"}`,
    `plan: ${plan.name}`,
    `player: ${player.name}, ${player.hand ?? "no hand stated"}`,
    ...data.map(({ file, shots }) => `data: ${file}, ${shots} shots`),
    `blocks by ${assignment.method}: ${assignment.explanation}`,
    ...report.blocks.flatMap((block) => ["", ...blockLines(block)]),
    ...section("swings", loadLines(report.load)),
    ...section("next", nextLines(report)),
    ...section("cautions", report.cautions),
    ...section("set aside", report.setAside.map(setAsideLine)),
    ...section(
      "findings",
      report.findings.map(({ code, line, message }) => `line ${line ?? "-"}, ${code}: ${message}`),
    ),
    ...section("notes", report.notes),
  ];
  return `${lines.join("\n")}\n`;
}

function blockLines({
  name,
  kind,
  verdict,
  shots,
  onTarget,
  targets,
  requirements,
  criteria,
  findings,
}: BlockResult): string[] {
  const counts = `asked ${shots.asked}, hit ${shots.hit}, counted ${shots.counted}`;
  return [
    `${name} (${kind}): ${verdict ?? "no goals"}; ${counts}${onTarget ? `; all targets met ${tallyText(onTarget)}` : ""}`,
    ...[...targets, ...requirements].map(conditionLine),
    ...criteria.flatMap(criterionLines),
    ...findings.flatMap(findingLines),
  ];
}

function findingLines({
  name,
  verdict,
  strength,
  criteria,
  suspects,
  checks,
  tries,
}: FindingResult): string[] {
  return [
    `  looked for: ${name}: ${verdict}${strength === null ? "" : `, strength ${strength}`}`,
    ...criteria.flatMap(criterionLines).map((line) => `  ${line}`),
    ...suspects.map((text) => `    suspect: ${text}`),
    ...checks.map((text) => `    check: ${text}`),
    ...tries.map(({ text }) => `    try: ${text}`),
  ];
}

function loadLines({ swings, fullEffort, limits }: Load): string[] {
  return [
    `${swings}, ${fullEffort} of them at full effort`,
    ...limits.map(({ text, isExceeded }) => `${text}${isExceeded ? ", exceeded" : ""}`),
  ];
}

function nextLines({ next }: ScoreReport): string[] {
  if (next === null) return [];
  return [`${next.move}${next.plan === null ? "" : ` to ${next.plan}`}: ${next.reason}`];
}

function conditionLine({ text, tally, misses }: ConditionResult): string {
  return `  ${text}: ${tallyText(tally)}${misses.length > 0 ? `; missed in lines ${linesOf(misses)}` : ""}`;
}

function criterionLines({ text, verdict, evidence, parts }: CriterionResult): string[] {
  const { required, observed, interval, settles, rows, cautions } = evidence;
  return [
    `  [${verdict}] ${text}`,
    ...(required === text ? [] : [`    required: ${required}`]),
    `    observed: ${observed}`,
    ...(interval === null
      ? []
      : [`    at ${interval.confidence * 100} % confidence: ${interval.text}, by ${interval.method}`]),
    ...(settles === null ? [] : [`    settles: ${settles}`]),
    ...cautions.map((caution) => `    caution: ${caution}`),
    ...(evidence.isEstimate ? ["    an estimate"] : []),
    ...(rows.length > 0 ? [`    lines: ${linesOf(rows)}`] : []),
    ...parts.flatMap(criterionLines).map((line) => `  ${line}`),
  ];
}

function setAsideLine({ row, block, reason, location }: SetAside): string {
  const plan = location === null ? "" : `, by line ${location.range.start.line + 1} of the plan`;
  return `line ${row.line}, ${block ?? "no block"}: ${reason}${plan}`;
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ["", `${title}:`, ...lines.map((line) => `  ${line}`)];
}

function tallyText({ hits, misses, unknown }: Tally): string {
  return `${hits} yes, ${misses} no, ${unknown} unknown`;
}

function linesOf(rows: readonly { readonly line: number }[]): string {
  return rows.map(({ line }) => line).join(" ");
}
