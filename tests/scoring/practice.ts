/** A practice in a few lines: a plan, the shots as a table, and their report. */
import { scoreSession } from "../../server/scoring/score-session.ts";
import type { Block, Hand, Plan, ScoringInput } from "../../shared/plan-model.ts";
import { ScoreReport, type Verdict } from "../../shared/score-report.ts";
import type { SessionData, Shot } from "../../shared/session-data.ts";
import { anyCriterion, condition, metricCalled, somewhere, vocabulary } from "../criteria/words.ts";
import { NO_CONDITIONS } from "../support/scoring-input.ts";

/** A block as the plan says it. `shots: "at least 12"` is open. */
export interface BlockWords {
  readonly name?: string;
  readonly shots?: number | `at least ${number}`;
  readonly target?: string | readonly string[];
  readonly require?: string | readonly string[];
  readonly leaveOut?: string | readonly string[];
  readonly success?: string | readonly string[];
}

export function block(words: BlockWords): Block {
  const { name = "Gate", shots } = words;
  const count = Number(String(shots).replace("at least ", ""));
  const open = String(shots).startsWith("at least");
  return {
    name,
    kind: "blocked",
    drill: null,
    shots: shots === undefined ? [] : [{ count, open, club: null, effort: null }],
    time: null,
    changes: [],
    cues: [],
    cautions: [],
    targets: statements(words.target),
    requirements: statements(words.require),
    leaveOut: statements(words.leaveOut),
    success: lines(words.success).map((text, index) => anyCriterion(text, `${name}/${index + 1}`)),
    location: somewhere,
  };
}

function statements(texts: string | readonly string[] | undefined): Block["targets"] {
  return lines(texts).map((text) => ({ text, condition: condition(text), location: somewhere }));
}

function lines(texts: string | readonly string[] = []): readonly string[] {
  return typeof texts === "string" ? [texts] : texts;
}

export function plan(...blocks: readonly BlockWords[]): Plan {
  return {
    name: "Start line",
    documentation: null,
    intent: null,
    clubs: [],
    time: null,
    needs: [],
    cautions: [],
    decisionLevel: 0.95,
    limits: [],
    findings: [],
    next: [],
    blocks: blocks.map(block),
    location: somewhere,
  };
}

/**
 * Shots as a table: a head with the names of metrics, one line a shot, numbers in the unit the metric is shown in,
 * target frame, `?` for unknown. Columns `block` and `excluded` (a reason in one word, or `-`) are optional.
 */
export function table(text: string, defaultBlock = "Gate"): Shot[] {
  const [head = [], ...rows] = text
    .trim()
    .split("\n")
    .map((line) => line.trim().split(/\s+/));
  return rows.map((cells, index) => {
    const cell = (header: string) => cells[head.indexOf(header)];
    const excluded = cell("excluded") ?? "-";
    return {
      row: { file: "shots.csv", line: index + 2 },
      values: Object.fromEntries(
        head
          .map((header, column) => [header, cells[column]] as const)
          .filter(([header, text]) => vocabulary.has(header) && text !== "?")
          .map(([header, text]) => [header, Number(text) * metricCalled(header).unit.factor]),
      ),
      categories: {},
      derived: [],
      club: null,
      time: null,
      block: cell("block") ?? defaultBlock,
      excluded: excluded === "-" ? null : excluded,
    };
  });
}

export function data(shots: readonly Shot[]): SessionData {
  return {
    files: [{ file: "shots.csv", sha256: "0".repeat(64), shots: shots.length }],
    shots: [...shots],
    assignment: { method: "column", explanation: "The table says which block a shot belongs to." },
    findings: [],
  };
}

export function input(plan: Plan, hand: Hand | null = "right"): ScoringInput {
  return {
    plan,
    session: {
      name: "Monday",
      date: "2026-10-12",
      plan: plan.name,
      player: "P-07",
      data: [],
      starts: [],
      instrument: null,
      conditions: NO_CONDITIONS,
      location: somewhere,
    },
    player: { name: "P-07", hand, level: null, usual: [], limits: [], location: somewhere },
    sources: new Map(),
    instrument: null,
    metrics: vocabulary,
    clubs: [],
  };
}

/** The report on these shots, checked against its schema. */
export function score(plan: Plan, shots: readonly Shot[], hand: Hand | null = "right"): ScoreReport {
  return ScoreReport.parse(scoreSession(input(plan, hand), data(shots), { version: "1.2.3" }));
}

/** The first block of the report on these shots. */
export function scoreBlock(words: BlockWords, shots: readonly Shot[], hand: Hand | null = "right") {
  const [first] = score(plan(words), shots, hand).blocks;
  if (first === undefined) throw new Error("The report has no block.");
  return first;
}

/** The verdict on the only criterion of a block. */
export function verdictOn(words: BlockWords, shots: readonly Shot[], hand: Hand | null = "right"): Verdict {
  const { criteria } = scoreBlock(words, shots, hand);
  const [only, another] = criteria;
  if (only === undefined || another !== undefined) throw new Error("The block must have one criterion.");
  return only.verdict;
}

/** Rows as line numbers of the table. */
export function linesOf(rows: readonly { readonly line: number }[]): number[] {
  return rows.map(({ line }) => line);
}
