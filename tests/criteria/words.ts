/** Parts of plan models from short phrases, so that tests read like plans. What is not understood throws. */
import type {
  Amount,
  Bounds,
  Condition,
  Criterion,
  Direction,
  Location,
  Metric,
  Subject,
  Unit,
} from "../../shared/plan-model.ts";
import { measuredCriterion } from "./measured-words.ts";

export const units: Record<string, Unit> = {
  "": { symbol: "", factor: 1 },
  "°": { symbol: "°", factor: Math.PI / 180 },
  yd: { symbol: "yd", factor: 0.9144 },
  "yd²": { symbol: "yd²", factor: 0.9144 * 0.9144 },
  "%": { symbol: "%", factor: 0.01 },
};

const right: Direction = { word: "right", sign: 1, handed: false };
const left: Direction = { word: "left", sign: -1, handed: false };
const sides = (plus: string, minus: string): Direction[] => [
  right,
  { word: plus, sign: 1, handed: true },
  left,
  { word: minus, sign: -1, handed: true },
];
const upAndDown: Direction[] = [
  { word: "up", sign: 1, handed: false },
  { word: "down", sign: -1, handed: false },
];

/** A small vocabulary, with the numbers and words of the built-in one. */
export const vocabulary: ReadonlyMap<string, Metric> = new Map(
  [
    metric("club-path", "°", 0.1, sides("in-to-out", "out-to-in")),
    metric("face-to-path", "°", 0.1, sides("open", "closed")),
    metric("attack-angle", "°", 0.1, upAndDown),
    metric("smash-factor", "", 0.01, [], "ratio"),
    metric("effort", "%", 1, [], "ratio"),
    metric("carry", "yd", 1, [], "length"),
    metric("offline", "yd", 1, [right, left], "length"),
  ].map((entry) => [entry.name, entry]),
);

function metric(
  name: string,
  unit: string,
  step: number,
  directions: Direction[],
  dimension = "angle",
): Metric {
  return {
    name,
    dimension,
    unit: unitCalled(unit),
    step,
    directions,
    plausible: null,
    formula: null,
    categories: [],
    model: null,
  };
}

export function metricCalled(name: string): Metric {
  return found(vocabulary.get(name), `metric "${name}"`);
}

/** `2°`, `10 yd left`, `1.15`. */
export function amount(phrase: string): Amount {
  const parts = /^([\d.]+) ?(°|yd²|yd|%)?(?: (\S+))?$/.exec(phrase.trim());
  const [, number, unit = "", word] = found(parts, `amount "${phrase}"`);
  const directions = [...vocabulary.values()].flatMap((entry) => entry.directions);
  return {
    value: Number(number) * unitCalled(unit).factor,
    unit: unitCalled(unit),
    direction:
      word === undefined
        ? null
        : found(
            directions.find((direction) => direction.word === word),
            word,
          ),
  };
}

/** `within ±2°`, `within 2° of 1° in-to-out`, `between 6° down and 2° down`, `at most 2.5°`, `above 140 yd`. */
export function bounds(phrase: string): Bounds {
  const within = /^within (±?)(.+?)(?: of (.+))?$/.exec(phrase);
  if (within?.[2] !== undefined) {
    const tolerance = amount(within[2]);
    const centre = within[3] === undefined ? { ...tolerance, value: 0 } : amount(within[3]);
    return { kind: "within", plusMinus: within[1] === "±", tolerance, centre };
  }
  const between = /^between (.+) and (.+)$/.exec(phrase);
  if (between?.[1] !== undefined && between[2] !== undefined)
    return { kind: "between", one: amount(between[1]), other: amount(between[2]) };
  const limit = /^(at least|at most|below|above) (.+)$/.exec(phrase);
  const [, kind, written] = found(limit, `bounds "${phrase}"`);
  return { kind: kind as "at least", limit: amount(found(written, phrase)) };
}

/** Tests joined by `;` for "and" and `|` for "or": `club-path within ±2°; carry at least 150 yd | …`. */
export function condition(phrase: string): Condition {
  const test = (text: string) => {
    const [name = "", ...rest] = text.trim().split(" ");
    return { kind: "number" as const, metric: name, bounds: bounds(rest.join(" ")) };
  };
  return { anyOf: phrase.split("|").map((part) => ({ allOf: part.split(";").map(test) })) };
}

/** `on target`, or `with` and a condition. */
export function subject(phrase: string): Subject {
  return phrase === "on target"
    ? { kind: "on-target" }
    : { kind: "meeting", condition: condition(phrase.replace(/^with /, "")) };
}

export const somewhere: Location = {
  file: "plan.drill",
  range: { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } },
};

/**
 * A criterion as the plan says it:
 * `at least 7 of 10 shots on target`, `at most 20 % of shots with offline above 20 yd left at 80 % confidence`,
 * `3 in a row on target`, `average club-path within ±2° at 90 % confidence`, `spread of carry at most 8 yd`,
 * `area of the 80 % ellipse of offline and carry at most 250 yd²`, `carry loses no more than 4 yd against "Where we are"`,
 * `at most 40 full-effort swings in the session`, `2 of { 3 in a row on target / median carry at least 140 yd }`.
 */
export function criterion<Kind extends Criterion["kind"]>(
  kind: Kind,
  text: string,
): Extract<Criterion, { kind: Kind }> {
  const made = anyCriterion(text);
  if (made.kind !== kind) throw new Error(`"${text}" is a ${made.kind}, not a ${kind}.`);
  return made as Extract<Criterion, { kind: Kind }>;
}

export function anyCriterion(text: string, id = text): Criterion {
  const common = { id, text, location: somewhere };
  const group = /^(all|any|\d+) of \{ (.+) \}$/.exec(text);
  if (group?.[2] !== undefined) {
    const [, needed] = group;
    const criteria = group[2].split(" / ").map((part, index) => anyCriterion(part, `${id}.${index + 1}`));
    const number = needed === "all" || needed === "any" ? needed : Number(needed);
    return { kind: "group", ...common, needed: number, criteria };
  }
  const [, claim = "", percent] = found(/^(.*?)(?: at ([\d.]+) % confidence)?$/.exec(text), text);
  const confidence = percent === undefined ? null : Number(percent) / 100;

  const count = /^at (least|most) (\d+) of (\d+) shots? (.+)$/.exec(claim);
  if (count?.[4] !== undefined) {
    const bound = count[1] as "least" | "most";
    return {
      kind: "count",
      ...common,
      bound,
      count: Number(count[2]),
      outOf: Number(count[3]),
      subject: subject(count[4]),
    };
  }
  const share = /^at (least|most) ([\d.]+) % of shots (.+)$/.exec(claim);
  if (share?.[3] !== undefined) {
    const bound = share[1] as "least" | "most";
    return {
      kind: "share",
      ...common,
      bound,
      share: Number(share[2]) / 100,
      subject: subject(share[3]),
      confidence,
    };
  }
  const load = /^at (least|most) (\d+) (full-effort )?swings?( in the session)?$/.exec(claim);
  if (load !== null) {
    const bound = load[1] as "least" | "most";
    const over = load[4] === undefined ? "block" : "session";
    return {
      kind: "load",
      ...common,
      bound,
      count: Number(load[2]),
      fullEffort: load[3] !== undefined,
      over,
    };
  }
  const run = /^(\d+) in a row (.+)$/.exec(claim);
  if (run?.[2] !== undefined)
    return { kind: "run", ...common, length: Number(run[1]), subject: subject(run[2]) };
  return found(measuredCriterion(claim, { ...common, confidence }), text);
}

function unitCalled(symbol: string): Unit {
  return found(units[symbol], `unit "${symbol}"`);
}

function found<Value>(value: Value | null | undefined, what: string): Value {
  if (value === null || value === undefined)
    throw new Error(`The test vocabulary does not understand ${what}.`);
  return value;
}
