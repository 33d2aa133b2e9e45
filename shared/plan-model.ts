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

/**
 * A unit of measurement: a value in it, times `factor`, plus `offset`, is the value in SI. The unit one has the empty
 * symbol. Only units of a scale with a zero of its own, such as °C, have an `offset`.
 */
export const Unit = z.object({ symbol: z.string(), factor: z.number(), offset: z.optional(z.number()) });
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
  /**
   * Of a metric that is one of several names, such as the shape of a shot: the names in order. A name with a condition is
   * computed where the data does not hold the metric: the first whose condition is met. Empty for a metric that is a number.
   */
  get categories(): z.ZodMiniArray<typeof Category> {
    return z.array(Category);
  },
  /** The model of the tool that computes the metric, by its name, where a formula cannot. Its values are estimates. */
  model: z.nullable(z.literal("flight")),
});
export type Metric = z.infer<typeof Metric>;

export const Club = z.object({ name: z.string(), spellings: z.array(z.string()) });
export type Club = z.infer<typeof Club>;

/**
 * One question asked of one shot: a number held against bounds, a name among names, or a window, whose variant is chosen
 * by the club of the shot and the level of the player: the first that fits.
 */
export const ShotTest = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("number"), metric: z.string(), bounds: Bounds }),
  z.object({ kind: z.literal("category"), metric: z.string(), categories: z.array(z.string()) }),
  z.object({
    kind: z.literal("window"),
    window: z.string(),
    /** False where the shot must be outside. */
    inside: z.boolean(),
    get variants(): z.ZodMiniArray<typeof WindowVariant> {
      return z.array(WindowVariant);
    },
  }),
]);
export type ShotTest =
  | { kind: "number"; metric: string; bounds: Bounds }
  | { kind: "category"; metric: string; categories: string[] }
  | { kind: "window"; window: string; inside: boolean; variants: WindowVariant[] };

/** True when all tests of one of the alternatives are true. Each of the lists has at least one member. */
export const Condition = z.object({
  get anyOf(): z.ZodMiniArray<z.ZodMiniObject<{ allOf: z.ZodMiniArray<typeof ShotTest> }>> {
    return z.array(z.object({ allOf: z.array(ShotTest) }));
  },
});
export type Condition = { anyOf: { allOf: ShotTest[] }[] };

/** What a window asks of shots with one of `clubs` (any club, where empty) by a player of `level` (any, where null). */
export const WindowVariant = z.object({
  clubs: z.array(z.string()),
  level: z.nullable(z.string()),
  condition: Condition,
});
export type WindowVariant = { clubs: string[]; level: string | null; condition: Condition };

/** One of the names that a metric can be, and when it is. */
export const Category = z.object({ name: z.string(), condition: z.nullable(Condition) });
export type Category = z.infer<typeof Category>;

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

/** At least or at most so many of the first `outOf` shots; of all there are where that is null: where more may be hit. */
export const CountCriterion = z.object({
  kind: z.literal("count"),
  ...criterion,
  bound: z.enum(["least", "most"]),
  count: z.number(),
  outOf: z.nullable(z.number()),
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

/**
 * A number that sums up one metric over shots. `percentile` has its share (0 to 1) in `share`; `span` is the width of the
 * middle `share` of the shots. Best and worst are the largest and the smallest value of a metric without sides, and of one
 * with sides the nearest to and the farthest from zero.
 */
export const Statistic = z.discriminatedUnion("kind", [
  z.object({ kind: z.enum(["average", "median", "spread", "best", "worst"]) }),
  z.object({ kind: z.enum(["percentile", "span"]), share: z.number() }),
]);
export type Statistic = z.infer<typeof Statistic>;

/** A statistic of one metric over the block; with a confidence (0 to 1) it is about the player's ability. */
export const StatisticCriterion = z.object({
  kind: z.literal("statistic"),
  ...criterion,
  statistic: Statistic,
  metric: z.string(),
  bounds: Bounds,
  confidence: z.nullable(z.number()),
});
export type StatisticCriterion = z.infer<typeof StatisticCriterion>;

/**
 * The ellipse that is expected to hold `share` (0 to 1) of the shots of two metrics, and what is asked of its area or of
 * one of its whole axes; with a confidence (0 to 1) it is about the player's ability.
 */
export const EllipseCriterion = z.object({
  kind: z.literal("ellipse"),
  ...criterion,
  measure: z.enum(["area", "major axis", "minor axis"]),
  share: z.number(),
  metrics: z.tuple([z.string(), z.string()]),
  bounds: Bounds,
  confidence: z.nullable(z.number()),
});
export type EllipseCriterion = z.infer<typeof EllipseCriterion>;

/** What a change is measured against. `session` and `last session` mean the block of the same name there. */
export const Against = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("block"), block: z.string() }),
  z.object({ kind: z.literal("session"), session: z.string() }),
  z.object({ kind: z.literal("last session") }),
  z.object({ kind: z.literal("usual") }),
]);
export type Against = z.infer<typeof Against>;

/**
 * How a statistic moved from what it is held against to this block. An `amount` in % is a share of what it was.
 * - `rises`, `falls`: by at least or at most `amount`; `falls at most 4 yd` is "loses no more than 4 yd"
 * - `moves`: at least or at most `amount` in its direction
 * - `stays`: no further than `amount` either way
 */
export const Movement = z.discriminatedUnion("kind", [
  z.object({ kind: z.enum(["rises", "falls", "moves"]), bound: z.enum(["least", "most"]), amount: Amount }),
  z.object({ kind: z.literal("stays"), amount: Amount }),
]);
export type Movement = z.infer<typeof Movement>;

export const ChangeCriterion = z.object({
  kind: z.literal("change"),
  ...criterion,
  statistic: Statistic,
  metric: z.string(),
  movement: Movement,
  against: Against,
  confidence: z.nullable(z.number()),
});
export type ChangeCriterion = z.infer<typeof ChangeCriterion>;

/** At least or at most so many swings in the block or in the whole session, set-aside shots included. */
export const LoadCriterion = z.object({
  kind: z.literal("load"),
  ...criterion,
  bound: z.enum(["least", "most"]),
  count: z.number(),
  /** Only swings at full effort: 90 % or more, or where no effort is stated or measured; not putts. */
  fullEffort: z.boolean(),
  over: z.enum(["block", "session"]),
});
export type LoadCriterion = z.infer<typeof LoadCriterion>;

/** All, any or so many of several criteria. */
export const GroupCriterion = z.object({
  kind: z.literal("group"),
  ...criterion,
  needed: z.union([z.literal("all"), z.literal("any"), z.number()]),
  get criteria(): z.ZodMiniArray<z.ZodMiniType<Criterion>> {
    return z.array(Criterion);
  },
});
export type GroupCriterion = {
  kind: "group";
  id: string;
  text: string;
  location: Location;
  needed: "all" | "any" | number;
  criteria: Criterion[];
};

export const Criterion = z.discriminatedUnion("kind", [
  CountCriterion,
  ShareCriterion,
  RunCriterion,
  StatisticCriterion,
  EllipseCriterion,
  ChangeCriterion,
  LoadCriterion,
  GroupCriterion,
]);
export type Criterion =
  | CountCriterion
  | ShareCriterion
  | RunCriterion
  | StatisticCriterion
  | EllipseCriterion
  | ChangeCriterion
  | LoadCriterion
  | GroupCriterion;

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

/** A drill, and what its parameters stand for in one block: texts as the coach wrote them, by parameter. */
export const DrillUse = z.object({
  name: z.string(),
  arguments: z.record(z.string(), z.string()),
  location: Location,
});
export type DrillUse = z.infer<typeof DrillUse>;

/** A block with what its drill says already in it. Parts that come from a drill have their place in the drill's file. */
export const Block = z.object({
  name: z.string(),
  kind: BlockKind,
  drill: z.nullable(DrillUse),
  shots: z.array(Shots),
  /** Seconds. */
  time: z.nullable(z.number()),
  changes: z.array(z.object({ kind: z.string(), text: z.string(), location: Location })),
  cues: z.array(z.string()),
  cautions: z.array(z.string()),
  targets: z.array(Statement),
  requirements: z.array(Statement),
  leaveOut: z.array(Statement),
  success: z.array(Criterion),
  /** The line that opens the block. */
  location: Location,
});
export type Block = z.infer<typeof Block>;

/** When a step is taken: the first of a plan's steps whose tests all hold. No tests: always. */
export const NextTest = z.object({
  /** Every goal of the plan, any goal of it, or the goals of one block. */
  goals: z.union([
    z.object({ kind: z.enum(["every", "any"]) }),
    z.object({ kind: z.literal("block"), block: z.string() }),
  ]),
  verdicts: z.array(z.enum(["met", "missed", "undecided", "not-measured"])),
});
export type NextTest = z.infer<typeof NextTest>;

/** What to do next, and when. `plan` is the plan to go to, null for a repeat. */
export const NextStep = z.object({
  move: z.enum(["advance", "repeat", "step-back"]),
  plan: z.nullable(z.string()),
  when: z.array(NextTest),
  text: z.string(),
  location: Location,
});
export type NextStep = z.infer<typeof NextStep>;

/**
 * A pattern over the shots of a baseline, and where a coach who sees it would look. It is shown where all its criteria are
 * met. It is a suspicion, never a diagnosis.
 */
export const Finding = z.object({
  name: z.string(),
  documentation: z.nullable(z.string()),
  /** Looked for only in shots with these clubs; in all, where empty. */
  clubs: z.array(z.string()),
  when: z.array(Criterion),
  suspects: z.array(z.string()),
  checks: z.array(z.string()),
  /** Drills to try, with their arguments. */
  tries: z.array(DrillUse),
  location: Location,
});
export type Finding = z.infer<typeof Finding>;

export const Plan = z.object({
  name: z.string(),
  documentation: z.nullable(z.string()),
  intent: z.nullable(z.string()),
  clubs: z.array(z.string()),
  /** Seconds. */
  time: z.nullable(z.number()),
  needs: z.array(z.string()),
  cautions: z.array(z.string()),
  /** Probability (0 to 1) with which a reading of limited accuracy must meet or miss for a verdict. */
  decisionLevel: z.number(),
  /** Swings that a session of this plan should not exceed. */
  limits: z.array(z.object({ count: z.number(), fullEffort: z.boolean(), location: Location })),
  findings: z.array(Finding),
  blocks: z.array(Block),
  next: z.array(NextStep),
  location: Location,
});
export type Plan = z.infer<typeof Plan>;

/** What a player usually does with a club (any, where null). SI, target frame of this player's hand. */
export const Usual = z.object({
  metric: z.string(),
  value: z.number(),
  /** Standard deviation from shot to shot, where known. */
  spread: z.nullable(z.number()),
  /** How many shots it was taken from, where known. */
  shots: z.nullable(z.number()),
  club: z.nullable(z.string()),
  location: Location,
});
export type Usual = z.infer<typeof Usual>;

/** Swings a player should not exceed in a session, a day or a week. */
export const LoadLimit = z.object({
  count: z.number(),
  fullEffort: z.boolean(),
  period: z.enum(["session", "day", "week"]),
  location: Location,
});
export type LoadLimit = z.infer<typeof LoadLimit>;

export const Player = z.object({
  name: z.string(),
  hand: z.nullable(Hand),
  /** The level windows have variants for, in the team's own words. */
  level: z.nullable(z.string()),
  usual: z.array(Usual),
  limits: z.array(LoadLimit),
  location: Location,
});
export type Player = z.infer<typeof Player>;

/** How far readings of a metric may be off: standard uncertainties, SI. With `clubs`, only of shots with one of them. */
export const Uncertainty = z.object({
  metric: z.string(),
  /** From shot to shot. */
  random: z.number(),
  /** The same for all shots of a session. */
  systematic: z.number(),
  clubs: z.array(z.string()),
  location: Location,
});
export type Uncertainty = z.infer<typeof Uncertainty>;

export const Instrument = z.object({
  name: z.string(),
  uncertainties: z.array(Uncertainty),
  location: Location,
});
export type Instrument = z.infer<typeof Instrument>;

/** A plan's place in a curriculum. */
export const CurriculumStep = z.object({
  plan: z.string(),
  /** Plans that come before. */
  after: z.array(z.string()),
  /** What must have been met before this step is open. Empty: every goal of the plans before it, once. */
  gates: z.array(
    z.object({
      plan: z.string(),
      /** Null: every goal of the plan. */
      block: z.nullable(z.string()),
      /** In how many sessions. */
      times: z.number(),
      location: Location,
    }),
  ),
  /** When it is looked at again after it was met, in seconds after that day, in order. */
  reviews: z.array(z.number()),
  location: Location,
});
export type CurriculumStep = z.infer<typeof CurriculumStep>;

export const Curriculum = z.object({
  name: z.string(),
  documentation: z.nullable(z.string()),
  intent: z.nullable(z.string()),
  steps: z.array(CurriculumStep),
  location: Location,
});
export type Curriculum = z.infer<typeof Curriculum>;

/** What a column holds. `positive` is the direction that a reading without a sign word means. */
export const ColumnContent = z.discriminatedUnion("kind", [
  z.object({
    kind: z.literal("metric"),
    metric: z.string(),
    unit: Unit,
    positive: z.nullable(Direction),
    /** Texts that stand for a side, as `"R"` may stand for right. */
    sides: z.array(z.object({ text: z.string(), direction: Direction })),
    /** Header of the column that names the side of each reading, or null where the cells themselves tell. */
    sidesIn: z.nullable(z.string()),
  }),
  z.object({
    kind: z.literal("category"),
    metric: z.string(),
    spellings: z.array(z.object({ text: z.string(), category: z.string() })),
  }),
  z.object({
    kind: z.literal("club"),
    spellings: z.array(z.object({ text: z.string(), club: z.string() })),
  }),
  z.object({ kind: z.literal("block") }),
  /** Who hit the shot, the day, the session it belongs to, the time of day: what a table of several sessions is split by. */
  z.object({
    kind: z.literal("player"),
    spellings: z.array(z.object({ text: z.string(), player: z.string() })),
  }),
  z.object({ kind: z.literal("date"), order: z.nullable(z.enum(["day-month-year", "month-day-year"])) }),
  z.object({ kind: z.literal("session") }),
  z.object({ kind: z.literal("time") }),
  z.object({ kind: z.literal("exclusion"), texts: z.array(z.string()) }),
]);
export type ColumnContent = z.infer<typeof ColumnContent>;

export const Column = z.object({ header: z.string(), content: ColumnContent, location: Location });
export type Column = z.infer<typeof Column>;

export const Source = z.object({
  name: z.string(),
  /** Null: found from the header. */
  separator: z.nullable(z.enum(["comma", "semicolon", "tab", "pipe", "spaces"])),
  decimal: z.enum(["comma", "point"]),
  /** The mark between thousands, or null where there is none. */
  thousands: z.nullable(z.enum(["comma", "point", "space", "apostrophe"])),
  /** Texts that mean that there is no reading, besides empty cells and dashes. */
  blanks: z.array(z.string()),
  /** Line of the file that holds the column names, from 1. */
  headerRow: z.number(),
  columns: z.array(Column),
  /** Header of the column that gives the order of the shots, or null for the order of the rows. */
  orderedBy: z.nullable(z.string()),
  location: Location,
});
export type Source = z.infer<typeof Source>;

/** The air the shots were hit in. SI; null where it is not stated. */
export const Conditions = z.object({
  /** Metres a second, where the air goes: positive towards the target and to the right. */
  wind: z.nullable(z.object({ along: z.number(), across: z.number() })),
  /** Kelvin. */
  temperature: z.nullable(z.number()),
  /** Pascal, at the place itself, not reduced to sea level. */
  pressure: z.nullable(z.number()),
  /** Metres above the sea. */
  altitude: z.nullable(z.number()),
  /** Relative, 0 to 1. */
  humidity: z.nullable(z.number()),
  /** What was hit, in the coach's words, and how far it carries as a share of a new ball, where that is known. */
  ball: z.nullable(z.object({ name: z.string(), carryFactor: z.nullable(z.number()) })),
});
export type Conditions = z.infer<typeof Conditions>;

export const Session = z.object({
  name: z.string(),
  /** Year-month-day, or null where it is not stated. */
  date: z.nullable(z.string()),
  plan: z.string(),
  player: z.string(),
  /** The tables, with paths as written, relative to the session's file. `source` is the name of a source. */
  data: z.array(z.object({ path: z.string(), source: z.string(), location: Location })),
  /**
   * Explicit starts of blocks: a line of the table, from 1, or a time of day in seconds after midnight. `file` is the path of
   * the table as written under `data`, or null where the session has one table.
   */
  starts: z.array(
    z.object({
      block: z.string(),
      row: z.nullable(z.number()),
      time: z.nullable(z.number()),
      file: z.nullable(z.string()),
      location: Location,
    }),
  ),
  instrument: z.nullable(z.string()),
  conditions: Conditions,
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
  instruments: z.array(Instrument),
  findings: z.array(Finding),
  curricula: z.array(Curriculum),
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
  /** What is known of the accuracy of the readings; null where they are taken as exact. */
  readonly instrument: Instrument | null;
  /** The vocabulary, by name. */
  readonly metrics: ReadonlyMap<string, Metric>;
  readonly clubs: readonly Club[];
}
