/** What columns say about each other: whether they are what they seem, and which way they are signed. */
import type { Metric } from "../../../shared/plan-model.ts";

/** A column taken for a metric. `values` are SI as written, by row; `sign` is +1 or -1 where the frame is known, else 0. */
export interface Reading {
  readonly metric: Metric;
  readonly values: readonly (number | undefined)[];
  sign: 1 | -1 | 0;
  /** Why the sign is known. */
  why: string;
}

export type Readings = ReadonlyMap<string, Reading>;

/** How many rows must speak for a relation, and what share of those that speak must agree. */
const LEAST_ROWS = 8;
const AGREEING = 0.95;
const DEGREE = Math.PI / 180;

/** What fits, and what does not: sentences about a metric. */
export interface Evidence {
  readonly metric: string;
  readonly supports: boolean;
  readonly text: string;
}

/** Whether the columns fit each other. Ratios and differences hold whatever the units of lengths and the signs. */
export function evidenceOf(readings: Readings): Evidence[] {
  return [...smash(readings), ...rollAndTotal(readings)];
}

function smash(readings: Readings): Evidence[] {
  const rows = together(readings, ["ball-speed", "club-speed"]);
  if (rows.length < LEAST_ROWS) return [];
  const ratios = rows.map(([ball = 0, club = 1]) => ball / club).sort((one, other) => one - other);
  const middle = ratios[Math.floor(ratios.length / 2)] ?? 0;
  const isLikely = middle >= 0.9 && middle <= 1.56;
  const both = ["ball-speed", "club-speed"];
  const ratio = both.map((metric) => ({
    metric,
    supports: isLikely,
    text: `ball speed is ${middle.toFixed(2)} times club speed`,
  }));
  const measured = together(readings, ["smash-factor", "ball-speed", "club-speed"]);
  if (measured.length < LEAST_ROWS) return ratio;
  const agree = shareOf(
    measured,
    ([factor = 0, ball = 0, club = 1]) => Math.abs(factor - ball / club) < 0.03,
  );
  const fits = agree >= AGREEING;
  return [
    ...ratio,
    ...["smash-factor", ...both].map((metric) => ({
      metric,
      supports: fits,
      text: fits
        ? "smash factor is ball speed divided by club speed"
        : "smash factor is not ball speed divided by club speed",
    })),
  ];
}

function rollAndTotal(readings: Readings): Evidence[] {
  const rows = together(readings, ["total", "carry"]);
  if (rows.length < LEAST_ROWS) return [];
  const supports = shareOf(rows, ([total = 0, carry = 0]) => total >= carry - 0.5) >= AGREEING;
  const text = supports ? "the total is never shorter than the carry" : "the total is shorter than the carry";
  return ["total", "carry"].map((metric) => ({ metric, supports, text }));
}

/** A sum of signed columns that must come out: each term is a column, or the product of one with something unsigned. */
interface Identity {
  readonly metrics: readonly [string, string, string];
  /** How far the first is from the second plus or minus the third; SI. The signs are those of the three columns. */
  readonly error: (values: readonly number[], signs: readonly number[]) => number;
  /** What counts as fitting. SI. */
  readonly within: number;
  readonly more?: readonly string[];
  readonly text: string;
}

const IDENTITIES: readonly Identity[] = [
  {
    metrics: ["face-to-path", "face-angle", "club-path"],
    error: ([difference = 0, face = 0, path = 0], [a = 0, b = 0, c = 0]) =>
      a * difference - (b * face - c * path),
    within: 0.16 * DEGREE,
    text: "face to path is face minus path only so",
  },
  {
    metrics: ["offline", "start-direction", "curve"],
    more: ["carry"],
    error: ([offline = 0, start = 0, curve = 0, carry = 0], [a = 0, b = 0, c = 0]) =>
      a * offline - (b * carry * Math.sin(start) + c * curve),
    within: 1.2,
    text: "where the ball lands is where it starts plus what it curves only so",
  },
];

/**
 * Settles signs that the data proves, from those that are known: by sums that come out one way only, and by laws of flight
 * that no table breaks. A sign that only one of several ways of reading could prove stays open. Each round uses what the
 * one before has settled.
 */
export function settleSigns(readings: Readings): void {
  settleLaunch(readings);
  settleAttack(readings);
  for (let before = -1, open = openCount(readings); open !== before; open = openCount(readings)) {
    before = open;
    for (const identity of IDENTITIES) settleBySum(identity, readings);
    settleTogether(readings, "curve", "spin-axis", 0, "a ball curves to the side its axis is tilted to");
    settleTogether(
      readings,
      "start-direction",
      "face-angle",
      0.9,
      "a ball starts nearly where the face looks",
    );
    settleTogether(readings, "start-side", "start-direction", 0.99, "both are the start direction");
  }
}

/** That an open sign follows from another open one: the same, or the opposite one in the frame. */
export interface Link {
  readonly leader: string;
  readonly sign: 1 | -1;
  readonly why: string;
}

/**
 * Which open signs follow from which, by what settles signs: whoever knows one of them knows the others. By metric; the
 * leader itself, the first of its like, is not in it.
 */
export function linkedSigns(readings: Readings): Map<string, Link> {
  const links = new Map<string, Link>();
  for (const [leader, { sign }] of readings) {
    if (sign !== 0 || links.has(leader)) continue;
    const mirrored = settledWith(leader, -1, readings);
    for (const [metric, { sign, why }] of settledWith(leader, 1, readings)) {
      const isOpen = readings.get(metric)?.sign === 0 && metric !== leader && !links.has(metric);
      if (isOpen && sign !== 0 && mirrored.get(metric)?.sign === -sign)
        links.set(metric, { leader, sign, why });
    }
  }
  return links;
}

/** The readings as they would be settled if one of them were signed so. */
function settledWith(metric: string, sign: 1 | -1, readings: Readings): Map<string, Reading> {
  const tried = new Map([...readings].map(([name, reading]) => [name, { ...reading }]));
  const reading = tried.get(metric);
  if (reading !== undefined) settle(reading, sign, "");
  settleSigns(tried);
  return tried;
}

function openCount(readings: Readings): number {
  return [...readings.values()].filter(({ sign }) => sign === 0).length;
}

/** A ball that flies leaves upwards. */
function settleLaunch(readings: Readings): void {
  const launch = readings.get("launch-angle");
  const values = launch?.values.filter((value) => value !== undefined).filter((value) => value !== 0) ?? [];
  if (launch === undefined || launch.sign !== 0 || values.length < 3) return;
  const up = shareOf(values, (value) => value > 0);
  if (up >= AGREEING) settle(launch, 1, "balls that fly leave upwards");
  else if (up <= 1 - AGREEING) settle(launch, -1, "balls that fly leave upwards");
}

/** Spin loft is about dynamic loft minus attack angle, and both lofts are amounts. It may be more where the face is not square. */
function settleAttack(readings: Readings): void {
  const attack = readings.get("attack-angle");
  if (attack === undefined || attack.sign !== 0) return;
  const rows = together(readings, ["attack-angle", "dynamic-loft", "spin-loft"]).filter(
    ([value = 0]) => Math.abs(value) > 1.5 * DEGREE,
  );
  if (rows.length < LEAST_ROWS) return;
  const fits = (sign: 1 | -1) =>
    shareOf(rows, ([value = 0, loft = 0, spin = 0]) => Math.abs(spin - (loft - sign * value)) < 1.2 * DEGREE);
  const [up, down] = [fits(1), fits(-1)];
  if (up >= AGREEING && down < 0.2) settle(attack, 1, "spin loft is dynamic loft minus attack angle only so");
  if (down >= AGREEING && up < 0.2)
    settle(attack, -1, "spin loft is dynamic loft minus attack angle only so");
}

/** Tries all signs that are open. Those that are the same in every way that fits are settled. */
function settleBySum({ metrics, more = [], error, within, text }: Identity, readings: Readings): void {
  const columns = metrics.map((metric) => readings.get(metric));
  const known = columns.filter((column) => column !== undefined && column.sign !== 0);
  if (columns.includes(undefined) || known.length === 0 || known.length === columns.length) return;
  const rows = together(readings, [...metrics, ...more]);
  if (rows.length < LEAST_ROWS) return;
  const ways = everySign(columns.map((column) => column?.sign ?? 0));
  const shares = ways.map((signs) => shareOf(rows, (values) => Math.abs(error(values, signs)) <= within));
  const fitting = ways.filter((_, at) => (shares[at] ?? 0) >= AGREEING);
  const nearly = ways.filter((_, at) => (shares[at] ?? 0) >= 0.7);
  const [signs] = fitting;
  if (fitting.length !== 1 || nearly.length !== 1 || signs === undefined) return;
  for (const [at, column] of columns.entries()) {
    if (column !== undefined && column.sign === 0) settle(column, signs[at] === 1 ? 1 : -1, text);
  }
}

function everySign(known: readonly (1 | -1 | 0)[]): number[][] {
  return known.reduce<number[][]>(
    (ways, sign) => ways.flatMap((way) => (sign === 0 ? [1, -1] : [sign]).map((next) => [...way, next])),
    [[]],
  );
}

/** Two columns that go the same way: where one sign is known, the other follows, if they clearly go together or against. */
function settleTogether(readings: Readings, one: string, other: string, least: number, text: string): void {
  const [first, second] = [readings.get(one), readings.get(other)];
  if (first === undefined || second === undefined || (first.sign === 0) === (second.sign === 0)) return;
  const [known, open] = first.sign === 0 ? [second, first] : [first, second];
  const rows = together(readings, [one, other]);
  const speaking = rows.filter(([a = 0, b = 0]) => a !== 0 && b !== 0);
  if (speaking.length < LEAST_ROWS) return;
  const same = shareOf(speaking, ([a = 0, b = 0]) => a > 0 === b > 0);
  const r = correlation(rows);
  const isClear =
    least === 0 ? Math.max(same, 1 - same) >= AGREEING && Math.abs(r) >= 0.7 : Math.abs(r) >= least;
  if (!isClear || (least === 0 && same >= 0.5 !== r > 0)) return;
  const goesAlong = r > 0 ? 1 : -1;
  settle(open, known.sign * goesAlong === 1 ? 1 : -1, text);
}

function settle(reading: Reading, sign: 1 | -1, why: string): void {
  reading.sign = sign;
  reading.why = why;
}

/** The values of these metrics on the rows that have all of them. */
function together(readings: Readings, metrics: readonly string[]): number[][] {
  const columns = metrics.map((metric) => readings.get(metric)?.values ?? []);
  return (columns[0] ?? []).flatMap((_, row) => {
    const values = columns.map((column) => column[row]).filter((value) => value !== undefined);
    return values.length === metrics.length ? [values] : [];
  });
}

function shareOf<T>(items: readonly T[], test: (item: T) => boolean): number {
  return items.length === 0 ? 0 : items.filter(test).length / items.length;
}

/** Pearson's; 0 where one side does not vary. */
function correlation(pairs: readonly (readonly number[])[]): number {
  const count = pairs.length;
  const mean = (at: 0 | 1) => pairs.reduce((sum, pair) => sum + (pair[at] ?? 0), 0) / count;
  const [a, b] = [mean(0), mean(1)];
  let [ab, aa, bb] = [0, 0, 0];
  for (const [one = 0, other = 0] of pairs) {
    ab += (one - a) * (other - b);
    aa += (one - a) ** 2;
    bb += (other - b) ** 2;
  }
  return aa === 0 || bb === 0 ? 0 : ab / Math.sqrt(aa * bb);
}
