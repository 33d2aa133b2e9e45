/** A practice in a few lines: a plan, the shots as a table, and their report. */
import { type Known, scoreSession } from "../../server/scoring/score-session.ts";
import type {
  Block,
  Finding,
  Hand,
  Instrument,
  Plan,
  Player,
  ScoringInput,
  Session,
  Usual,
} from "../../shared/plan-model.ts";
import { type CriterionResult, ScoreReport, type Verdict } from "../../shared/score-report.ts";
import type { SessionData, Shot } from "../../shared/session-data.ts";
import { anyCriterion, condition, metricCalled, somewhere, vocabulary } from "../criteria/words.ts";
import { NO_CONDITIONS } from "../support/scoring-input.ts";

/** A block as the plan says it. `shots: "at least 12"` is open. */
export interface BlockWords {
  readonly name?: string;
  readonly kind?: Block["kind"];
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
    kind: words.kind ?? "blocked",
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
 * target frame, `?` for unknown. Columns `block`, `club` and `excluded` (a reason in one word, or `-`) are optional.
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
      club: cell("club") ?? null,
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

/** What is stated around a plan; all that is not is unknown. */
export interface Stated {
  readonly hand?: Hand | null;
  readonly instrument?: Instrument;
  readonly session?: Partial<Session>;
  readonly player?: Partial<Player>;
}

export function input(plan: Plan, stated: Stated = {}): ScoringInput {
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
      ...stated.session,
    },
    player: {
      name: "P-07",
      hand: stated.hand === undefined ? "right" : stated.hand,
      level: null,
      usual: [],
      limits: [],
      location: somewhere,
      ...stated.player,
    },
    sources: new Map(),
    instrument: stated.instrument ?? null,
    metrics: vocabulary,
    clubs: [],
  };
}

/** The report on these shots, checked against its schema. */
export function score(
  plan: Plan,
  shots: readonly Shot[],
  stated: Stated = {},
  known: Omit<Known, "version"> = {},
): ScoreReport {
  const report = scoreSession(input(plan, stated), data(shots), { version: "1.2.3", ...known });
  return ScoreReport.parse(report);
}

/** The first block of the report on these shots. */
export function scoreBlock(words: BlockWords, shots: readonly Shot[], stated: Stated = {}) {
  const [first] = score(plan(words), shots, stated).blocks;
  if (first === undefined) throw new Error("The report has no block.");
  return first;
}

/** The verdict on the only criterion of a block. */
export function verdictOn(words: BlockWords, shots: readonly Shot[], stated: Stated = {}): Verdict {
  return criterionOn(words, shots, stated).verdict;
}

/** The result of the only criterion of a block. */
export function criterionOn(words: BlockWords, shots: readonly Shot[], stated: Stated = {}): CriterionResult {
  const { criteria } = scoreBlock(words, shots, stated);
  const [only, another] = criteria;
  if (only === undefined || another !== undefined) throw new Error("The block must have one criterion.");
  return only;
}

/**
 * An instrument from lines such as `club-path 0.8 random 0.4 systematic`, `carry 2 random for 7-iron`: standard
 * uncertainties in the unit that the metric is shown in.
 */
export function instrument(...lines: readonly string[]): Instrument {
  return {
    name: "Bay unit",
    location: somewhere,
    uncertainties: lines.map((line) => {
      const parts = /^(\S+)(?: ([\d.]+) random)?(?: ([\d.]+) systematic)?(?: for (\S+))?$/.exec(line);
      if (parts === null) throw new Error(`"${line}" says nothing of an instrument.`);
      const [, metric = "", random = "0", systematic = "0", club] = parts;
      const { factor } = metricCalled(metric).unit;
      return {
        metric,
        random: Number(random) * factor,
        systematic: Number(systematic) * factor,
        clubs: club === undefined ? [] : [club],
        location: somewhere,
      };
    }),
  };
}

/** A usual number, in the unit that the metric is shown in. */
export function usual(metric: string, value: number, club: string | null = null): Usual {
  const { factor } = metricCalled(metric).unit;
  return { metric, value: value * factor, spread: null, shots: null, club, location: somewhere };
}

/** A finding that is shown when all of these criteria are met. */
export function finding(name: string, when: readonly string[], clubs: readonly string[] = []): Finding {
  return {
    name,
    documentation: null,
    clubs: [...clubs],
    when: when.map((text, index) => anyCriterion(text, `${name}/${index + 1}`)),
    suspects: ["the grip"],
    checks: ["Where the thumb sits"],
    tries: [{ name: "Gate drill", arguments: { width: "4°" }, location: somewhere }],
    location: somewhere,
  };
}

/** Rows as line numbers of the table. */
export function linesOf(rows: readonly { readonly line: number }[]): number[] {
  return rows.map(({ line }) => line);
}
