/** Criteria about numbers that sum up shots: statistics, ellipses and changes, from short phrases. */
import type {
  Against,
  Amount,
  Bounds,
  ChangeCriterion,
  EllipseCriterion,
  Movement,
  Statistic,
  StatisticCriterion,
} from "../../shared/plan-model.ts";
import { amount, bounds } from "./words.ts";

type Measured = StatisticCriterion | EllipseCriterion | ChangeCriterion;
type Common = Pick<Measured, "id" | "text" | "location" | "confidence">;

/** Undefined where the claim is none of these. */
export function measuredCriterion(claim: string, common: Common): Measured | undefined {
  return (
    ellipseCriterion(claim, common) ?? changeCriterion(claim, common) ?? statisticCriterion(claim, common)
  );
}

function ellipseCriterion(claim: string, common: Common): EllipseCriterion | undefined {
  const parts = /^(area|\S+ axis) of the ([\d.]+) % ellipse of (\S+) and (\S+) (.+)$/.exec(claim);
  if (parts === null) return undefined;
  const [, measure, share, first = "", second = "", range = ""] = parts;
  return {
    kind: "ellipse",
    ...common,
    measure: measure as "area",
    share: Number(share) / 100,
    metrics: [first, second],
    bounds: bounds(range),
  };
}

function changeCriterion(claim: string, common: Common): ChangeCriterion | undefined {
  const parts =
    /^(?:(.+?) (?:of )?)??(\S+) (gains|rises by|loses|falls by|moves|stays within) (.+) against (.+)$/.exec(
      claim,
    );
  if (parts === null) return undefined;
  const [, name = "average", metric = "", verb = "", moved = "", what = ""] = parts;
  return {
    kind: "change",
    ...common,
    statistic: statistic(name),
    metric,
    movement: movement(verb, moved),
    against: against(what),
  };
}

function statisticCriterion(claim: string, common: Common): StatisticCriterion | undefined {
  const parts =
    /^(average|median|spread|best|worst|[\d.]+[a-z]+ percentile|middle [\d.]+ %)(?: of)? (\S+) (?:spans )?(.+)$/.exec(
      claim,
    );
  if (parts === null) return undefined;
  const [, name = "", metric = "", range = ""] = parts;
  return { kind: "statistic", ...common, statistic: statistic(name), metric, bounds: bounds(range) };
}

/** `average`, `90th percentile`, `middle 80 %`. */
export function statistic(phrase: string): Statistic {
  const [, percentile, span] = /^([\d.]+)[a-z]+ percentile$|^middle ([\d.]+) %$/.exec(phrase) ?? [];
  if (percentile !== undefined) return { kind: "percentile", share: Number(percentile) / 100 };
  if (span !== undefined) return { kind: "span", share: Number(span) / 100 };
  return { kind: phrase as "average" };
}

const KINDS = {
  gains: "rises",
  "rises by": "rises",
  loses: "falls",
  "falls by": "falls",
  moves: "moves",
} as const;

/** `gains 5 yd`, `loses no more than 4 yd`, `falls by at least 20 %`, `moves at least 2° in-to-out`, `stays within 5 yd`. */
function movement(verb: string, moved: string): Movement {
  if (verb === "stays within") return { kind: "stays", amount: amount(moved) };
  const [, limit = "at least ", phrase = ""] = /^(at least |at most |no more than )?(.+)$/.exec(moved) ?? [];
  const bound = limit === "at least " ? "least" : "most";
  return { kind: KINDS[verb as keyof typeof KINDS], bound, amount: amount(phrase) };
}

/** `usual`, `the last session`, `session "Monday"`, `"Where we are"`. */
function against(phrase: string): Against {
  if (phrase === "usual") return { kind: "usual" };
  if (phrase === "the last session") return { kind: "last session" };
  const [, session] = /^session "(.+)"$/.exec(phrase) ?? [];
  return session === undefined ? { kind: "block", block: JSON.parse(phrase) } : { kind: "session", session };
}

/** Bounds without a unit, as tables have them; an infinite limit is none. */
export function plainRange(low: number, high: number): Bounds {
  if (low === Number.NEGATIVE_INFINITY) return plainLimit(high, "at most");
  if (high === Number.POSITIVE_INFINITY) return plainLimit(low, "at least");
  return { kind: "between", one: plainAmount(low), other: plainAmount(high) };
}

/** A limit with the word of the negative side is a limit on the amount on that side. */
function plainLimit(value: number, kind: "at most" | "at least"): Bounds {
  const mirrored = kind === "at most" ? "at least" : "at most";
  return { kind: value < 0 ? mirrored : kind, limit: plainAmount(value) };
}

function plainAmount(value: number): Amount {
  return {
    value: Math.abs(value),
    unit: { symbol: "", factor: 1 },
    direction: value < 0 ? { word: "minus", sign: -1, handed: false } : null,
  };
}
