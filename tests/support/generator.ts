/**
 * Makes shots of players whose true ability is known, and writes them down as tables.
 *
 * The relations between what the club does and what the ball does are simple and stated at each line. They are chosen
 * so that the numbers fit each other and look like golf; they are no model of ball flight, and nothing is scored by them.
 * Everything follows from a seed: the same seed gives the same shots, to the last byte.
 *
 * Units: degrees, metres, metres a second, turns a minute. Abilities are stated as a right-hander says them (in-to-out,
 * open and up are positive) and hold for either hand; shots are in the target frame (right and up are positive).
 */

/** The next number of a stream, uniform from 0 (included) to 1 (excluded). */
export type Random = () => number;

/** Mulberry32, a 32-bit generator by Tommy Ettinger (2017, public domain): a counter, scrambled. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Mean and standard deviation of something that varies from shot to shot, normally distributed. */
export type Varying = readonly [mean: number, deviation: number];

/** One value of it (Box and Muller 1958). */
export function draw([mean, deviation]: Varying, random: Random): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return mean + deviation * radius * Math.cos(2 * Math.PI * random());
}

/** What a player truly does with one club at full effort. */
export interface Ability {
  readonly clubSpeed: Varying;
  readonly attack: Varying;
  readonly path: Varying;
  readonly faceToPath: Varying;
  /** Loft of the face at impact. */
  readonly loft: Varying;
  /** Ball speed over club speed of a centred strike. */
  readonly bestSmash: number;
  /** Share of it that a strike one standard deviation off the centre costs; the cost grows with the square. */
  readonly strikeCost: number;
}

/** Shots hit with one club. `effort` is a share of a full swing. */
export interface Task {
  readonly club: string;
  readonly ability: Ability;
  readonly effort?: number;
}

export interface GeneratedShot {
  readonly club: string;
  readonly clubSpeed: number;
  readonly ballSpeed: number;
  readonly attack: number;
  readonly path: number;
  readonly face: number;
  readonly faceToPath: number;
  readonly launch: number;
  readonly start: number;
  readonly spin: number;
  readonly spinAxis: number;
  readonly carry: number;
  readonly offline: number;
}

const RADIANS = Math.PI / 180;
const sin = (degrees: number) => Math.sin(degrees * RADIANS);
const cos = (degrees: number) => Math.cos(degrees * RADIANS);

/** One shot. Club angles have tenths of a degree, as a device would show them, so that their difference has them too. */
export function hit(
  { club, ability, effort = 1 }: Task,
  hand: "right" | "left",
  random: Random,
): GeneratedShot {
  const side = hand === "right" ? 1 : -1;
  const angle = (of: Varying, sign = 1) => Math.round(10 * sign * draw(of, random)) / 10;

  // Half an effort still moves the club with three quarters of its speed.
  const clubSpeed = ((1 + effort) / 2) * draw(ability.clubSpeed, random);
  const attack = angle(ability.attack);
  const path = angle(ability.path, side);
  const face = Math.round(10 * (path + angle(ability.faceToPath, side))) / 10;
  const faceToPath = Math.round(10 * (face - path)) / 10;
  const loft = draw(ability.loft, random);
  const spinLoft = Math.max(5, loft - attack);

  const strike = draw([0, 1], random);
  const ballSpeed = clubSpeed * ability.bestSmash * Math.max(0.3, 1 - ability.strikeCost * strike ** 2);

  // The ball leaves between where the face looks and where the club moves, nearer to the face.
  const faceShare = club === "driver" ? 0.85 : 0.75;
  const launch = faceShare * loft + (1 - faceShare) * attack;
  const start = faceShare * face + (1 - faceShare) * path;

  // More speed and more loft against the motion give more spin; the face, turned against the motion, tilts its axis.
  const spin = 1.75 * clubSpeed * spinLoft ** 1.4;
  const spinAxis = Math.atan(sin(faceToPath) / sin(spinLoft)) / RADIANS;

  // Every metre a second above 15 is worth some four metres, a little more or less from shot to shot.
  const carry = Math.max(2, 4.1 * (ballSpeed - 15)) * draw([1, 0.015], random);
  // Each degree of tilt bends the ball by 0.7 % of its carry, square to the line it started on.
  const curve = 0.007 * spinAxis * carry;
  const along = Math.sqrt(Math.max(0, carry ** 2 - curve ** 2));
  const offline = along * sin(start) + curve * cos(start);

  return {
    club,
    clubSpeed,
    ballSpeed,
    attack,
    path,
    face,
    faceToPath,
    launch,
    start,
    spin,
    spinAxis,
    carry,
    offline,
  };
}

/** The tasks in an order nobody can foresee (Fisher and Yates). */
export function shuffled<T>(items: readonly T[], random: Random): T[] {
  const result = [...items];
  for (let last = result.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1));
    [result[last], result[other]] = [result[other] as T, result[last] as T];
  }
  return result;
}

/** How a kind of table writes its columns. */
export interface Dialect<Row> {
  readonly separator: string;
  readonly decimal: "," | ".";
  readonly lineEnd: "\n" | "\r\n";
  readonly byteOrderMark: boolean;
  readonly newestFirst: boolean;
  readonly columns: readonly TableColumn<Row>[];
}

export interface TableColumn<Row> {
  readonly header: string;
  /** Stands under the header, where any column has one. */
  readonly unit?: string;
  readonly cell: (row: Row) => string | Measured;
}

/** A number and how many decimals are written of it. */
export interface Measured {
  readonly value: number;
  readonly decimals: number;
}

export function measured(value: number, decimals: number): Measured {
  return { value, decimals };
}

/** The table as text. `above` are the lines in front of the header. Cells are written as they are: they hold no separator. */
export function writeTable<Row>(
  dialect: Dialect<Row>,
  rows: readonly Row[],
  above: readonly string[],
): string {
  const { columns, separator, lineEnd } = dialect;
  const units = columns.some(({ unit }) => unit !== undefined) ? [columns.map(({ unit }) => unit ?? "")] : [];
  const body = rows.map((row) => columns.map(({ cell }) => written(cell(row), dialect.decimal)));
  if (dialect.newestFirst) body.reverse();
  const lines = [columns.map(({ header }) => header), ...units, ...body].map((cells) =>
    cells.join(separator),
  );
  return (
    (dialect.byteOrderMark ? "\uFEFF" : "") + [...above, ...lines].map((line) => line + lineEnd).join("")
  );
}

function written(cell: string | Measured, decimal: "," | "."): string {
  if (typeof cell === "string") return cell;
  const text = cell.value.toFixed(cell.decimals).replace(".", decimal);
  return /[1-9]/.test(text) ? text : text.replace("-", "");
}
