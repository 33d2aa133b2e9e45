/** Shots as they may be hit, made up around the limits that a block names. */
import type { Vocabulary } from "../../language/analysis/possibility/vocabulary.ts";
import { claimOf, meets, type PlayerTraits, type Readings } from "../../shared/condition.ts";
import type { Condition, Metric } from "../../shared/plan-model.ts";

/** Numbers in 0 … 1 that depend on nothing but the seed (mulberry32). */
export function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const MEASURED = [
  "club-speed",
  "ball-speed",
  "club-path",
  "face-angle",
  "attack-angle",
  "start-direction",
  "carry",
  "total",
  "curve",
] as const;

/** The limits that conditions name, by metric, and what lies just beside them. */
function limitsNamed(conditions: readonly Condition[], player: PlayerTraits): Map<string, number[]> {
  const limits = new Map<string, number[]>();
  const add = (condition: Condition): void => {
    for (const test of condition.anyOf.flatMap(({ allOf }) => allOf)) {
      if (test.kind === "window") for (const variant of test.variants) add(variant.condition);
      if (test.kind !== "number") continue;
      const { low, high } = claimOf(test.bounds, player.hand).interval;
      const ends = [low, high, (low + high) / 2].filter(Number.isFinite);
      const beside = ends.flatMap((end) => [end, end * 1.02 + 1e-3, end * 0.98 - 1e-3]);
      limits.set(test.metric, [...(limits.get(test.metric) ?? []), ...beside]);
    }
  };
  conditions.forEach(add);
  return limits;
}

/** As many shots as that, of which those are kept that are plausible and follow the geometry of flight. */
export function* shotsAround(
  conditions: readonly Condition[],
  player: PlayerTraits,
  club: string | null,
  { metrics }: Vocabulary,
  count: number,
  random: () => number,
): Generator<Readings> {
  const limits = limitsNamed(conditions, player);
  const plausible = (name: string) => metrics.get(name)?.plausible ?? { low: -1, high: 1 };
  const choose = (name: string): number => {
    const named = limits.get(name) ?? [];
    const { low, high } = plausible(name);
    const near = named[Math.floor(random() * named.length)];
    if (near !== undefined && random() < 0.7) return near;
    return random() < 0.2 ? 0 : low + random() * (high - low);
  };
  const shape = metrics.get("shape") as Metric;
  const nameOf = (readings: Readings) =>
    shape.categories.find((rule) => rule.condition !== null && meets(rule.condition, readings, player))?.name;
  for (let shot = 0; shot < count; shot++) {
    const values: Record<string, number> = Object.fromEntries(MEASURED.map((name) => [name, choose(name)]));
    // A metric that follows from two others is met on purpose now and then.
    const at = (name: string) => values[name] ?? 0;
    if (random() < 0.5) values["face-angle"] = choose("face-to-path") + at("club-path");
    if (random() < 0.5) values["ball-speed"] = choose("smash-factor") * at("club-speed");
    if (random() < 0.5) values.total = at("carry") + choose("roll");
    if (random() < 0.3) values["start-direction"] = choose("start-side");
    // Now and then the curve is what brings the ball to a place that is named.
    if (random() < 0.5) {
      const landing = Math.asin(choose("offline") / at("carry"));
      values.curve = at("carry") * Math.sin(landing - at("start-direction"));
    }
    const landing = at("start-direction") + Math.asin(at("curve") / at("carry"));
    values.offline = at("carry") * Math.sin(landing);
    values["face-to-path"] = at("face-angle") - at("club-path");
    values["smash-factor"] = at("ball-speed") / at("club-speed");
    values.roll = at("total") - at("carry");
    values["start-side"] = at("start-direction");
    const isPlausible = Object.entries(values).every(
      ([name, value]) => value >= plausible(name).low && value <= plausible(name).high,
    );
    const fliesOn = Math.abs(landing) < 1.2 && Math.abs(landing - at("start-direction") / 2) < 1.2;
    if (!isPlausible || !fliesOn) continue;
    const readings: Readings = { values, categories: {}, club };
    const name = nameOf(readings);
    yield { ...readings, categories: name === undefined ? {} : { shape: name } };
  }
}
