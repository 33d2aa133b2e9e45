/** Scoring inputs for tests, with everything that a test does not care about filled in. */
import type {
  Block,
  Club,
  Column,
  Conditions,
  Direction,
  Hand,
  Instrument,
  Location,
  Metric,
  Plan,
  Player,
  ScoringInput,
  Session,
  Source,
  Unit,
} from "../../shared/plan-model.ts";

export const NOWHERE: Location = {
  file: "test.drill",
  range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
};

export const UNITS = {
  one: { symbol: "", factor: 1 },
  "%": { symbol: "%", factor: 0.01 },
  "°": { symbol: "°", factor: Math.PI / 180 },
  m: { symbol: "m", factor: 1 },
  yd: { symbol: "yd", factor: 0.9144 },
  "m/s": { symbol: "m/s", factor: 1 },
  mph: { symbol: "mph", factor: 0.44704 },
} as const satisfies Record<string, Unit>;

export const DIRECTIONS = {
  right: { word: "right", sign: 1, handed: false },
  left: { word: "left", sign: -1, handed: false },
  up: { word: "up", sign: 1, handed: false },
  down: { word: "down", sign: -1, handed: false },
  "in-to-out": { word: "in-to-out", sign: 1, handed: true },
  "out-to-in": { word: "out-to-in", sign: -1, handed: true },
  open: { word: "open", sign: 1, handed: true },
  closed: { word: "closed", sign: -1, handed: true },
} as const satisfies Record<string, Direction>;

/** A metric without directions, limits or formula, but for what is stated. */
export function metric(name: string, stated: Partial<Metric> = {}): Metric {
  return {
    name,
    dimension: "length",
    unit: UNITS.m,
    step: 0.1,
    directions: [],
    plausible: null,
    formula: null,
    categories: [],
    model: null,
    ...stated,
  };
}

const { right, left, up, down, open, closed } = DIRECTIONS;
const DEGREE = UNITS["°"].factor;
const angle = { dimension: "angle", unit: UNITS["°"] } as const;

/** A few metrics as the built-in vocabulary has them. The plausible club path is made lopsided, so that mirroring shows. */
export const METRICS: readonly Metric[] = [
  metric("club-path", {
    ...angle,
    directions: [right, DIRECTIONS["in-to-out"], left, DIRECTIONS["out-to-in"]],
    plausible: { low: -20 * DEGREE, high: 30 * DEGREE },
  }),
  metric("face-angle", { ...angle, directions: [right, open, left, closed] }),
  metric("face-to-path", {
    ...angle,
    directions: [right, open, left, closed],
    formula: {
      kind: "operation",
      operator: "-",
      left: { kind: "metric", name: "face-angle" },
      right: { kind: "metric", name: "club-path" },
    },
  }),
  metric("attack-angle", { ...angle, directions: [up, down] }),
  metric("carry", { unit: UNITS.yd, step: 1, plausible: { low: 0, high: 350 } }),
  metric("offline", { unit: UNITS.yd, step: 1, directions: [right, left] }),
  metric("club-speed", { dimension: "speed", unit: UNITS.mph }),
  metric("ball-speed", { dimension: "speed", unit: UNITS.mph }),
  metric("smash-factor", {
    dimension: "ratio",
    unit: UNITS.one,
    step: 0.01,
    formula: {
      kind: "operation",
      operator: "/",
      left: { kind: "metric", name: "ball-speed" },
      right: { kind: "metric", name: "club-speed" },
    },
  }),
];

export const CLUBS: readonly Club[] = [
  { name: "driver", spellings: ["d", "dr"] },
  { name: "7-iron", spellings: ["7i", "iron 7"] },
  { name: "gap-wedge", spellings: ["gw", "approach wedge"] },
];

/** A column of a source: `column("Path", metricColumn("club-path", "°", "right"))`. */
export function column(header: string, content: Column["content"]): Column {
  return { header, content, location: NOWHERE };
}

export function metricColumn(
  name: string,
  unit: keyof typeof UNITS,
  positive?: keyof typeof DIRECTIONS,
): Column["content"] {
  return {
    kind: "metric",
    metric: name,
    unit: UNITS[unit],
    positive: positive === undefined ? null : DIRECTIONS[positive],
    sides: [],
    sidesIn: null,
  };
}

export function source(columns: readonly Column[], stated: Partial<Source> = {}): Source {
  return {
    name: "Bay table",
    separator: null,
    decimal: "point",
    thousands: null,
    blanks: [],
    headerRow: 1,
    columns: [...columns],
    orderedBy: null,
    location: NOWHERE,
    ...stated,
  };
}

/** A block that asks for so many shots, with a club or with any. */
export function block(
  name: string,
  count: number,
  club: string | null = null,
  stated: Partial<Block> = {},
): Block {
  return {
    name,
    kind: "blocked",
    drill: null,
    shots: count === 0 ? [] : [{ count, open: false, club, effort: null }],
    time: null,
    changes: [],
    cues: [],
    cautions: [],
    targets: [],
    requirements: [],
    leaveOut: [],
    success: [],
    location: NOWHERE,
    ...stated,
  };
}

/** Nothing is known of the air, nor of the ball. */
export const NO_CONDITIONS: Conditions = {
  wind: null,
  temperature: null,
  pressure: null,
  altitude: null,
  humidity: null,
  ball: null,
};

export interface Stated {
  readonly hand?: Hand | null;
  readonly blocks?: readonly Block[];
  readonly sources?: readonly Source[];
  readonly metrics?: readonly Metric[];
  readonly clubs?: readonly Club[];
  readonly plan?: Partial<Plan>;
  readonly player?: Partial<Player>;
  readonly instrument?: Instrument;
  readonly session?: Partial<Session>;
}

/** A right-hander's session of a plan with one block of ten shots, unless stated otherwise. */
export function scoringInput(stated: Stated = {}): ScoringInput {
  const plan: Plan = {
    name: "Test plan",
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
    blocks: [...(stated.blocks ?? [block("Gate", 10)])],
    location: NOWHERE,
    ...stated.plan,
  };
  const player: Player = {
    name: "P-01",
    hand: stated.hand === undefined ? "right" : stated.hand,
    level: null,
    usual: [],
    limits: [],
    location: NOWHERE,
    ...stated.player,
  };
  const sources = stated.sources ?? [];
  const session: Session = {
    name: "Test session",
    date: null,
    plan: plan.name,
    player: player.name,
    data: sources.map(({ name }) => ({ path: "shots.csv", source: name, location: NOWHERE })),
    starts: [],
    instrument: null,
    conditions: NO_CONDITIONS,
    location: NOWHERE,
    ...stated.session,
  };
  const metrics = stated.metrics ?? METRICS;
  return {
    session,
    plan,
    player,
    sources: new Map(sources.map((each) => [each.name, each])),
    instrument: stated.instrument ?? null,
    metrics: new Map(metrics.map((each) => [each.name, each])),
    clubs: stated.clubs ?? CLUBS,
  };
}
