/**
 * The plan model: what a `.drill` text means, with nothing of the text's syntax left.
 *
 * Plain data, references resolved, numbers in SI units and in the target frame (right, up and forward positive).
 * Every part says which file and range it came from. It is printed by `drillwright compile` and is enough for
 * another engine to score with.
 */
import * as z from "zod/mini";

export const PLAN_MODEL_FORMAT = "drillwright/plan-model";
export const PLAN_MODEL_VERSION = 1;

/** A place in a text, zero-based, characters counted in UTF-16 code units as in the language server protocol. */
export const Position = z.object({ line: z.number(), character: z.number() });
export type Position = z.infer<typeof Position>;

export const Range = z.object({ start: Position, end: Position });
export type Range = z.infer<typeof Range>;

/** A range in a file. `file` is a URI in the editor and a path relative to the working folder on the command line. */
export const Location = z.object({ file: z.string(), range: Range });
export type Location = z.infer<typeof Location>;

export const Hand = z.enum(["right", "left"]);
export type Hand = z.infer<typeof Hand>;

/** A unit of measurement: a value in it, times `factor`, is the value in SI. The unit one has the empty symbol. */
export const Unit = z.object({ symbol: z.string(), factor: z.number() });
export type Unit = z.infer<typeof Unit>;

/**
 * A direction word of a metric. `sign` is +1 or -1 in the target frame. Where `handed` is true the word is given as a
 * right-hander says it, and the sign is the opposite for a left-hander.
 */
export const Direction = z.object({
  word: z.string(),
  sign: z.union([z.literal(1), z.literal(-1)]),
  handed: z.boolean(),
});
export type Direction = z.infer<typeof Direction>;

/** An amount: `value` in SI, never negative; the sign is in the direction. `unit` is the one the coach wrote. */
export const Amount = z.object({ value: z.number(), unit: Unit, direction: z.nullable(Direction) });
export type Amount = z.infer<typeof Amount>;

/**
 * Which values meet a test, as it was said. A limit with a direction word is a limit on the amount in that direction:
 * `at most 10 yd left` leaves 10 yd to the left free and everything to the right. See `interval.ts`.
 * `plusMinus` says whether a tolerance was written with ±, which changes nothing.
 */
export const Bounds = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("within"), plusMinus: z.boolean(), tolerance: Amount, centre: Amount }),
  z.object({ kind: z.literal("between"), one: Amount, other: Amount }),
  z.object({ kind: z.enum(["at least", "at most", "below", "above"]), limit: Amount }),
]);
export type Bounds = z.infer<typeof Bounds>;

export const Expression = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("metric"), name: z.string() }),
  z.object({ kind: z.literal("number"), value: z.number() }),
  z.object({
    kind: z.literal("operation"),
    operator: z.enum(["+", "-", "*", "/"]),
    get left(): z.ZodMiniType<Expression> {
      return Expression;
    },
    get right(): z.ZodMiniType<Expression> {
      return Expression;
    },
  }),
]);
export type Expression =
  | { kind: "metric"; name: string }
  | { kind: "number"; value: number }
  | { kind: "operation"; operator: "+" | "-" | "*" | "/"; left: Expression; right: Expression };

/** Something measured on every shot. `unit` and `step` (in that unit) are how readings are shown. */
export const Metric = z.object({
  name: z.string(),
  dimension: z.string(),
  unit: Unit,
  step: z.number(),
  /** Every direction word the metric has; empty for an amount without a side. */
  directions: z.array(Direction),
  /** Readings outside are implausible. SI, in the frame of a right-hander. */
  plausible: z.nullable(z.object({ low: z.number(), high: z.number() })),
  formula: z.nullable(Expression),
});
export type Metric = z.infer<typeof Metric>;

export const Club = z.object({ name: z.string(), spellings: z.array(z.string()) });
export type Club = z.infer<typeof Club>;

export const ShotTest = z.object({ metric: z.string(), bounds: Bounds });
export type ShotTest = z.infer<typeof ShotTest>;

/** True when all tests of one of the alternatives are true. Each of the lists has at least one member. */
export const Condition = z.object({ anyOf: z.array(z.object({ allOf: z.array(ShotTest) })) });
export type Condition = z.infer<typeof Condition>;

/** A condition on a line of the plan. `text` is what the coach wrote, white space folded. */
export const Statement = z.object({ text: z.string(), condition: Condition, location: Location });
export type Statement = z.infer<typeof Statement>;

export const Subject = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("on-target") }),
  z.object({ kind: z.literal("meeting"), condition: Condition }),
]);
export type Subject = z.infer<typeof Subject>;

const criterion = {
  /** Stable within the plan: block name, then the criterion's place in the block, from 1. */
  id: z.string(),
  text: z.string(),
  location: Location,
};

/** At least or at most so many of the first `outOf` shots. */
export const CountCriterion = z.object({
  kind: z.literal("count"),
  ...criterion,
  bound: z.enum(["least", "most"]),
  count: z.number(),
  outOf: z.number(),
  subject: Subject,
});
export type CountCriterion = z.infer<typeof CountCriterion>;

/** At least or at most a share (0 to 1) of the shots; with a confidence (0 to 1) it is about the player's ability. */
export const ShareCriterion = z.object({
  kind: z.literal("share"),
  ...criterion,
  bound: z.enum(["least", "most"]),
  share: z.number(),
  subject: Subject,
  confidence: z.nullable(z.number()),
});
export type ShareCriterion = z.infer<typeof ShareCriterion>;

/** So many shots in a row, somewhere in the block. */
export const RunCriterion = z.object({
  kind: z.literal("run"),
  ...criterion,
  length: z.number(),
  subject: Subject,
});
export type RunCriterion = z.infer<typeof RunCriterion>;

/** A statistic of one metric over the block; with a confidence (0 to 1) it is about the player's ability. */
export const StatisticCriterion = z.object({
  kind: z.literal("statistic"),
  ...criterion,
  statistic: z.enum(["average", "median", "spread"]),
  metric: z.string(),
  bounds: Bounds,
  confidence: z.nullable(z.number()),
});
export type StatisticCriterion = z.infer<typeof StatisticCriterion>;

export const Criterion = z.discriminatedUnion("kind", [
  CountCriterion,
  ShareCriterion,
  RunCriterion,
  StatisticCriterion,
]);
export type Criterion = z.infer<typeof Criterion>;

export const BlockKind = z.enum([
  "warm-up",
  "baseline",
  "blocked",
  "serial",
  "random",
  "test",
  "retention",
  "transfer",
  "free-play",
]);
export type BlockKind = z.infer<typeof BlockKind>;

/** A number of shots with one club. `effort` is a share of a full swing, 0 to 1. `open`: at least so many. */
export const Shots = z.object({
  count: z.number(),
  open: z.boolean(),
  club: z.nullable(z.string()),
  effort: z.nullable(z.number()),
});
export type Shots = z.infer<typeof Shots>;

export const Block = z.object({
  name: z.string(),
  kind: BlockKind,
  shots: z.array(Shots),
  changes: z.array(z.object({ kind: z.string(), text: z.string() })),
  cues: z.array(z.string()),
  targets: z.array(Statement),
  requirements: z.array(Statement),
  leaveOut: z.array(Statement),
  success: z.array(Criterion),
  /** The line that opens the block. */
  location: Location,
});
export type Block = z.infer<typeof Block>;

export const Plan = z.object({
  name: z.string(),
  documentation: z.nullable(z.string()),
  intent: z.nullable(z.string()),
  clubs: z.array(z.string()),
  /** Seconds. */
  time: z.nullable(z.number()),
  needs: z.array(z.string()),
  cautions: z.array(z.string()),
  blocks: z.array(Block),
  location: Location,
});
export type Plan = z.infer<typeof Plan>;

export const Player = z.object({ name: z.string(), hand: z.nullable(Hand), location: Location });
export type Player = z.infer<typeof Player>;

/** What a column holds. `positive` is the direction that a reading without a sign word means. */
export const ColumnContent = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("metric"), metric: z.string(), unit: Unit, positive: z.nullable(Direction) }),
  z.object({
    kind: z.literal("club"),
    spellings: z.array(z.object({ text: z.string(), club: z.string() })),
  }),
  z.object({ kind: z.literal("block") }),
  z.object({ kind: z.literal("exclusion"), texts: z.array(z.string()) }),
]);
export type ColumnContent = z.infer<typeof ColumnContent>;

export const Column = z.object({ header: z.string(), content: ColumnContent, location: Location });
export type Column = z.infer<typeof Column>;

export const Source = z.object({
  name: z.string(),
  /** Null: found from the header. */
  separator: z.nullable(z.enum(["comma", "semicolon", "tab"])),
  decimal: z.enum(["comma", "point"]),
  /** Line of the file that holds the column names, from 1. */
  headerRow: z.number(),
  columns: z.array(Column),
  /** Header of the column that gives the order of the shots, or null for the order of the rows. */
  orderedBy: z.nullable(z.string()),
  location: Location,
});
export type Source = z.infer<typeof Source>;

export const Session = z.object({
  name: z.string(),
  /** Year-month-day, or null where it is not stated. */
  date: z.nullable(z.string()),
  plan: z.string(),
  player: z.string(),
  /** The tables, with paths as written, relative to the session's file. `source` is the name of a source. */
  data: z.array(z.object({ path: z.string(), source: z.string(), location: Location })),
  /** Explicit starts of blocks: line of the table, from 1. */
  starts: z.array(z.object({ block: z.string(), row: z.number(), location: Location })),
  location: Location,
});
export type Session = z.infer<typeof Session>;

/** All that was declared, and the vocabulary it uses. */
export const PlanModel = z.object({
  format: z.literal(PLAN_MODEL_FORMAT),
  version: z.literal(PLAN_MODEL_VERSION),
  metrics: z.array(Metric),
  clubs: z.array(Club),
  plans: z.array(Plan),
  players: z.array(Player),
  sources: z.array(Source),
  sessions: z.array(Session),
});
export type PlanModel = z.infer<typeof PlanModel>;

/** One session with everything its scoring needs. */
export interface ScoringInput {
  readonly session: Session;
  readonly plan: Plan;
  readonly player: Player;
  /** The sources the session's tables are read by, by name. */
  readonly sources: ReadonlyMap<string, Source>;
  /** The vocabulary, by name. */
  readonly metrics: ReadonlyMap<string, Metric>;
  readonly clubs: readonly Club[];
}
