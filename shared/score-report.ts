/** The score report: the verdicts of one session against its plan, each with its evidence. */
import * as z from "zod/mini";
import { BlockKind, Hand, Location } from "./plan-model.ts";
import { Assignment, DataFile, DataFinding, Row } from "./session-data.ts";

export const SCORE_REPORT_FORMAT = "drillwright/score-report";
export const SCORE_REPORT_VERSION = 1;

/** Never more than the data supports. Order of severity for groups: see `language/criteria/verdict.ts`. */
export const Verdict = z.enum(["met", "missed", "undecided", "not-measured"]);
export type Verdict = z.infer<typeof Verdict>;

/**
 * How many shots did, did not, or cannot be said to meet a condition; of a criterion, how many it counts. Of "at most"
 * the hits are therefore the shots that it limits.
 */
export const Tally = z.object({ hits: z.number(), misses: z.number(), unknown: z.number() });
export type Tally = z.infer<typeof Tally>;

/** Confidence limits, in SI or as a share, each exceeded wrongly with probability at most 1 - confidence. */
export const Interval = z.object({
  low: z.nullable(z.number()),
  high: z.nullable(z.number()),
  confidence: z.number(),
  method: z.string(),
  /** For people, in the unit of the plan. */
  text: z.string(),
});
export type Interval = z.infer<typeof Interval>;

/** What a verdict rests on. */
export const Evidence = z.object({
  /** For people: what was asked for, and what was seen. */
  required: z.string(),
  observed: z.string(),
  /** The observed number alone, as the end of a line has room for: `9 of 18`; empty when nothing could be observed. */
  brief: z.string(),
  /** The observed number in SI, a share from 0 to 1, or a count; null when nothing could be observed. */
  value: z.nullable(z.number()),
  /** Shots that entered the number. */
  shotsUsed: z.number(),
  tally: z.nullable(Tally),
  interval: z.nullable(Interval),
  /** What would settle it, where the verdict is open. */
  settles: z.nullable(z.string()),
  /** The rows that decided: the misses of a missed count, the run of a met run, all shots of a statistic … */
  rows: z.array(Row),
  /** The metrics whose readings decided, by name. */
  metrics: z.array(z.string()),
  cautions: z.array(z.string()),
});
export type Evidence = z.infer<typeof Evidence>;

export const CriterionResult = z.object({
  id: z.string(),
  kind: z.string(),
  text: z.string(),
  location: Location,
  verdict: Verdict,
  evidence: Evidence,
});
export type CriterionResult = z.infer<typeof CriterionResult>;

/** How the shots of a block stood to one target, requirement, or to all targets together. */
export const ConditionResult = z.object({
  text: z.string(),
  location: Location,
  tally: Tally,
  /** Rows that did not meet it. */
  misses: z.array(Row),
  /** The metrics it looks at, by name. */
  metrics: z.array(z.string()),
});
export type ConditionResult = z.infer<typeof ConditionResult>;

export const BlockResult = z.object({
  name: z.string(),
  kind: BlockKind,
  location: Location,
  /** Null where the block sets no goals. */
  verdict: z.nullable(Verdict),
  /** Asked for; hit; counted (set-aside and surplus shots taken off). */
  shots: z.object({ asked: z.number(), hit: z.number(), counted: z.number() }),
  /**
   * How many shots met all targets, whatever the block requires: criteria count fewer where it requires more. Null where
   * the block has no targets.
   */
  onTarget: z.nullable(Tally),
  targets: z.array(ConditionResult),
  requirements: z.array(ConditionResult),
  criteria: z.array(CriterionResult),
});
export type BlockResult = z.infer<typeof BlockResult>;

/** A shot that did not enter the scoring, and why. */
export const SetAside = z.object({
  row: Row,
  block: z.nullable(z.string()),
  reason: z.string(),
  /** The line of the plan that set it aside, where one did. */
  location: z.nullable(Location),
});
export type SetAside = z.infer<typeof SetAside>;

export const ScoreReport = z.object({
  format: z.literal(SCORE_REPORT_FORMAT),
  version: z.literal(SCORE_REPORT_VERSION),
  /** The version of this tool. */
  tool: z.string(),
  plan: z.object({ name: z.string(), location: Location }),
  session: z.object({ name: z.string(), date: z.nullable(z.string()), location: Location }),
  player: z.object({ name: z.string(), hand: z.nullable(Hand) }),
  data: z.array(DataFile),
  assignment: Assignment,
  /** All blocks that set goals together; null where none does. */
  verdict: z.nullable(Verdict),
  blocks: z.array(BlockResult),
  setAside: z.array(SetAside),
  findings: z.array(DataFinding),
  notes: z.array(z.string()),
});
export type ScoreReport = z.infer<typeof ScoreReport>;
