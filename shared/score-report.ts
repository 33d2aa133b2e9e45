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
  /** Of an open count that only shots to come can settle: the same in few words: `needs 3 of the next 6`. */
  needs: z.optional(z.string()),
  /** The rows that decided: the misses of a missed count, the run of a met run, all shots of a statistic … */
  rows: z.array(Row),
  /** The metrics whose readings decided, by name. */
  metrics: z.array(z.string()),
  /** Of a change: what was compared, in SI, and the smallest change that these shots could have shown at this confidence. */
  comparison: z.nullable(
    z.object({
      against: z.string(),
      before: z.nullable(z.number()),
      after: z.nullable(z.number()),
      smallestShown: z.nullable(z.number()),
    }),
  ),
  /** Whether a model had a part in the numbers: they are estimates then. */
  isEstimate: z.boolean(),
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
  /** Of a group: its criteria. */
  get parts(): z.ZodMiniArray<typeof CriterionResult> {
    return z.array(CriterionResult);
  },
});
export type CriterionResult = {
  id: string;
  kind: string;
  text: string;
  location: Location;
  verdict: Verdict;
  evidence: Evidence;
  parts: CriterionResult[];
};

/**
 * How the shots of a baseline stood to a finding: met means that the pattern is shown. `strength` is the confidence (0 to 1)
 * at which it would still be shown; null where it is not shown or no such number can be given.
 */
export const FindingResult = z.object({
  name: z.string(),
  location: Location,
  verdict: Verdict,
  strength: z.nullable(z.number()),
  criteria: z.array(CriterionResult),
  suspects: z.array(z.string()),
  checks: z.array(z.string()),
  /** Drills to try, as the finding calls them: `"Start-line gate" with width = 4°`. */
  tries: z.array(z.object({ drill: z.string(), text: z.string(), location: Location })),
});
export type FindingResult = z.infer<typeof FindingResult>;

/** Swings made, and the limits that they are held against. */
export const Load = z.object({
  swings: z.number(),
  /** Swings at 90 % effort or more, those of unknown effort included, putts not. */
  fullEffort: z.number(),
  limits: z.array(
    z.object({
      /** For people: `82 of at most 60 full-effort swings in a session`. */
      text: z.string(),
      count: z.number(),
      limit: z.number(),
      period: z.enum(["session", "day", "week"]),
      isExceeded: z.boolean(),
      location: Location,
    }),
  ),
});
export type Load = z.infer<typeof Load>;

/** What the plan says comes next, and why. `plan` is null for a repeat. */
export const Recommendation = z.object({
  move: z.enum(["advance", "repeat", "step-back"]),
  plan: z.nullable(z.string()),
  text: z.string(),
  reason: z.string(),
  location: Location,
});
export type Recommendation = z.infer<typeof Recommendation>;

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
  /** Of a baseline: the findings looked for, those that are shown first, the strongest evidence first. */
  findings: z.array(FindingResult),
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
  /** `sha256` is that of the plan's model without its places; `revision` the git revision of its file, where there is one. */
  plan: z.object({
    name: z.string(),
    location: Location,
    sha256: z.nullable(z.string()),
    revision: z.nullable(z.string()),
  }),
  session: z.object({ name: z.string(), date: z.nullable(z.string()), location: Location }),
  player: z.object({ name: z.string(), hand: z.nullable(Hand) }),
  data: z.array(DataFile),
  assignment: Assignment,
  /** Whose accuracy was taken into account; null where readings were taken as exact. */
  instrument: z.nullable(z.string()),
  /** All blocks that set goals together; null where none does. */
  verdict: z.nullable(Verdict),
  blocks: z.array(BlockResult),
  load: Load,
  next: z.nullable(Recommendation),
  /** What to bear in mind about all verdicts together. */
  cautions: z.array(z.string()),
  setAside: z.array(SetAside),
  findings: z.array(DataFinding),
  notes: z.array(z.string()),
});
export type ScoreReport = z.infer<typeof ScoreReport>;
