/** What each column of a table is taken for, how sure that is, and what the coach must settle. */

import { oppositeOf, signOf } from "../../../shared/interval.ts";
import type { Hand, Metric, Unit } from "../../../shared/plan-model.ts";
import { clubLookup } from "../cells/clubs.ts";
import { parseDate } from "../cells/date.ts";
import { isBlank } from "../cells/number.ts";
import { quote } from "../finding.ts";
import { choose, type Draft, shareUnits } from "./choose.ts";
import type { Form } from "./form.ts";
import { parseHeader } from "./header.ts";
import { type Meaning, Meanings, type OtherKind } from "./meanings.ts";
import { type Minus, type Profile, profileOf } from "./profile.ts";
import { evidenceOf, linkedSigns, type Reading, settleSigns } from "./relations.ts";
import { areAmounts, type SideColumn, sideColumns } from "./side-columns.ts";
import { foreignSides, linkText, sidesOf, signFor, statedDirection, unknownSides } from "./signs.ts";
import type { Vocabulary } from "./vocabulary.ts";

export type Confidence = "sure" | "likely" | "doubtful";

/** What a column is proposed to be. Null where nothing is proposed. */
export type ProposedMeaning =
  | {
      readonly kind: "metric";
      readonly metric: string;
      readonly unit: Unit;
      /** The word for what a number without a sign word means; null where the metric has no sides or the cells name them. */
      readonly positive: string | null;
    }
  | { readonly kind: "category"; readonly metric: string }
  | { readonly kind: Exclude<OtherKind, "exclusion"> }
  /** It names the sides of amounts in another column. */
  | { readonly kind: "sides" }
  | { readonly kind: "exclusion"; readonly texts: readonly string[] };

export interface ProposedColumn {
  readonly header: string;
  readonly meaning: ProposedMeaning | null;
  readonly confidence: Confidence;
  readonly reasons: readonly string[];
  readonly samples: readonly string[];
  /** What the coach must settle before the column can be relied on: questions. */
  readonly settle: readonly string[];
  /** The sides and the units to choose from where the table does not tell; the column is not read before one is chosen. */
  readonly signs: readonly string[];
  readonly units: readonly string[];
  /** Where a source of the project reads the column, what that says of it; null where it does not read it. */
  readonly says?: string | null;
  /** Two texts beside the numbers that stand for the two sides in `signs`, in a way that is not known. */
  readonly sideTexts: readonly string[];
  /** Words for sides in the cells that the language does not have. */
  readonly foreignSides: SideColumn["sides"];
  /** A column that may name the sides of these amounts. */
  readonly sidesIn: SideColumn | null;
  /** What marks numbers below zero where that is no minus in front, and for each side that may be positive the one it stands for. */
  readonly minus: { readonly text: Minus; readonly side: ReadonlyMap<string, string> } | null;
}

const SURE = 0.85;
const LIKELY = 0.6;

/**
 * Proposes meanings: the best of each column by name, unit and cells, each metric once; then what columns say about each
 * other. A sign is proposed only where the header, the cells or other columns prove it.
 */
export function proposeColumns(form: Form, vocabulary: Vocabulary, hand: Hand | null): ProposedColumn[] {
  const meanings = new Meanings(vocabulary);
  const drafts = form.names.map((header, place): Draft => {
    const profile = profileOf(place, form);
    const parsed = parseHeader(header);
    const below = parseHeader(`_ [${(form.units[place] ?? "").replace(/^[[(]|[\])]$/g, "")}]`).unit;
    const candidates = header.trim() === "" ? [] : meanings.of(parsed, below, profile);
    return { place, header, parsed, profile, candidates, chosen: undefined, taken: undefined };
  });
  choose(drafts);
  partByDay(drafts, form.rows);
  shareUnits(drafts);
  const seen = new Set<string>();
  const repeated = new Set(form.names.filter((name) => seen.has(name) || !seen.add(name)));
  const readings = readingsOf(drafts, hand);
  const evidence = evidenceOf(readings);
  settleSigns(readings);
  const follows = followers(readings, drafts);
  const [sides] = sideColumns(form);
  const columns = drafts.map((draft): ProposedColumn => {
    const column = proposed(draft, { readings, follows, evidence, vocabulary, sides });
    return repeated.has(draft.header) && column.meaning !== null
      ? {
          ...column,
          confidence: "doubtful",
          settle: [
            ...column.settle,
            "Another column has the same name, and which is meant cannot be told. Rename one.",
          ],
        }
      : column;
  });
  const named = new Set(columns.flatMap(({ sidesIn }) => sidesIn?.header ?? []));
  return columns.map((column) =>
    column.meaning === null && named.has(column.header)
      ? { ...column, meaning: { kind: "sides" }, reasons: ["its cells name sides"] }
      : column,
  );
}

/**
 * A column of dates with times is the date where it names several days, and neither a date nor a session stands in another
 * column: the days are sessions.
 */
function partByDay(drafts: readonly Draft[], rows: Form["rows"]): void {
  const kinds = drafts.map(({ chosen }) => chosen?.meaning.kind);
  const time = drafts[kinds.indexOf("time")];
  if (time?.chosen === undefined || kinds.includes("date") || kinds.includes("session")) return;
  const texts = rows.map(({ cells }) => (cells[time.place] ?? "").trim()).filter((text) => !isBlank(text));
  const days = texts.map((text) => parseDate(text)?.dayFirst ?? parseDate(text)?.monthFirst);
  if (days.includes(undefined) || new Set(days).size < 2) return;
  const reasons = [...time.chosen.reasons, "it names several days"];
  time.chosen = { ...time.chosen, meaning: { kind: "date" }, reasons };
}

/** The metrics by name, with what is known of their signs from headers and cells. */
function readingsOf(drafts: readonly Draft[], hand: Hand | null): Map<string, Reading> {
  const readings = new Map<string, Reading>();
  for (const { chosen, parsed, profile } of drafts) {
    if (chosen?.meaning.kind !== "metric") continue;
    const { metric, unit } = chosen.meaning;
    const stated = statedDirection(parsed, metric.directions);
    const cells = sidesOf(profile, metric);
    const isHanded = stated?.handed === true || cells?.some((side) => side?.handed === true) === true;
    if (isHanded && hand === null) continue; // which side of the frame it is depends on the player
    const values = profile.numbers.map((number, row) => {
      const side = cells?.[row];
      const sign = side === undefined ? 1 : signOf(side, hand ?? "right");
      return number === undefined ? undefined : sign * number * unit.factor;
    });
    const sign =
      metric.directions.length === 0 || cells !== undefined
        ? 1
        : stated === undefined
          ? 0
          : signOf(stated, hand ?? "right");
    readings.set(metric.name, { metric, values, sign, why: "" });
  }
  return readings;
}

/** For each metric whose sign follows from that of another column, what to say of it. */
function followers(readings: ReadonlyMap<string, Reading>, drafts: readonly Draft[]): Map<string, string> {
  const headers = new Map(
    drafts.flatMap(({ chosen, header }) =>
      chosen?.meaning.kind === "metric" ? [[chosen.meaning.metric.name, header]] : [],
    ),
  );
  return new Map(
    [...linkedSigns(readings)].flatMap(([name, link]) => {
      const [metric, leader] = [readings.get(name)?.metric, readings.get(link.leader)?.metric];
      if (metric === undefined || leader === undefined) return [];
      return [[name, linkText(metric, link, leader, headers.get(link.leader) ?? leader.name)]];
    }),
  );
}

/** What columns say about each other. */
interface TableFacts {
  readonly readings: ReadonlyMap<string, Reading>;
  /** By metric. */
  readonly follows: ReadonlyMap<string, string>;
  readonly evidence: ReturnType<typeof evidenceOf>;
  readonly vocabulary: Vocabulary;
  /** A column that holds nothing but sides. */
  readonly sides: SideColumn | undefined;
}

function proposed(draft: Draft, table: TableFacts): ProposedColumn {
  const { evidence, vocabulary } = table;
  const { header, chosen, profile, taken } = draft;
  const base = {
    header,
    samples: profile.samples,
    settle: [] as string[],
    signs: [] as string[],
    units: [] as string[],
    sideTexts: [] as string[],
    foreignSides: new Map() as SideColumn["sides"],
    sidesIn: null as SideColumn | null,
    minus: null as ProposedColumn["minus"],
  };
  if (chosen === undefined || chosen.meaning.kind === "unread") {
    const reasons = taken === undefined ? (chosen?.reasons ?? []) : [`${taken} is in another column`];
    return { ...base, meaning: null, confidence: "sure", reasons };
  }
  const reasons = [...chosen.reasons];
  const settle: string[] = [];
  let score = chosen.score;
  const { meaning } = chosen;
  if (meaning.kind === "metric") {
    const own = evidence.filter(({ metric }) => metric === meaning.metric.name);
    reasons.push(...own.map(({ text }) => text));
    if (own.some(({ supports }) => !supports)) {
      score = Math.min(score, LIKELY - 0.01);
      settle.push(
        `Is this ${meaning.metric.name}? ${sentence(own.filter(({ supports }) => !supports).map(({ text }) => text))}`,
      );
    } else if (own.some(({ supports }) => supports)) score = Math.min(1, score + 0.1);
    return metricColumn(draft, meaning, { base, reasons, settle, score }, table);
  }
  if (meaning.kind === "category") {
    return {
      ...base,
      meaning: { kind: "category", metric: meaning.metric.name },
      ...judged(score, `Is this ${meaning.metric.name}?`),
      reasons,
    };
  }
  if (meaning.kind === "exclusion") {
    const texts = excluding(header, profile);
    const question = `Does ${texts.map(quote).join(" or ")} in this column mean that a shot does not count?`;
    if (texts.length === 0) return { ...base, meaning: null, confidence: "doubtful", reasons };
    return {
      ...base,
      meaning: { kind: "exclusion", texts },
      confidence: "likely",
      reasons,
      settle: [question],
    };
  }
  if (meaning.kind === "club") {
    const find = clubLookup([], vocabulary.clubs);
    const unknown = [...profile.texts.keys()].filter((text) => find(text) === undefined).slice(0, 8);
    if (unknown.length > 0)
      settle.push(
        `Which clubs are ${unknown.map(quote).join(", ")}? Say so: where ${quote(unknown[0] ?? "")} is …`,
      );
  }
  const { kind } = meaning;
  if (kind === "unread") return { ...base, meaning: null, confidence: "sure", reasons };
  const judgement = judged(score, `Is this the ${kind}?`);
  return {
    ...base,
    meaning: { kind },
    ...judgement,
    reasons,
    settle: [...judgement.settle, ...settle],
  };
}

function judged(score: number, question: string): { confidence: Confidence; settle: string[] } {
  if (score >= SURE) return { confidence: "sure", settle: [] };
  return score >= LIKELY
    ? { confidence: "likely", settle: [] }
    : { confidence: "doubtful", settle: [question] };
}

function metricColumn(
  { profile, parsed }: Draft,
  { metric, unit, isUnitStated, units: possible }: Extract<Meaning, { kind: "metric" }>,
  {
    base,
    reasons,
    settle,
    score,
  }: {
    base: Omit<ProposedColumn, "meaning" | "confidence" | "reasons">;
    reasons: string[];
    settle: string[];
    score: number;
  },
  { readings, follows, sides }: TableFacts,
): ProposedColumn {
  if (score < LIKELY && settle.length === 0) settle.push(`Is this ${metric.name}?`);
  let confidence: Confidence = score >= SURE ? "sure" : score >= LIKELY ? "likely" : "doubtful";
  const units = isUnitStated || possible.length < 2 ? [] : possible.map(({ symbol }) => symbol);
  if (!isUnitStated) {
    confidence = units.length > 0 ? "doubtful" : confidence === "sure" ? "likely" : confidence;
    if (units.length > 0)
      settle.push(`The unit is not stated: ${units.join(" or ")}? Keep one of these lines.`);
    else
      reasons.push(
        `its values are of a size for ${unit.symbol === "" ? "one" : unit.symbol}, or its like are in it`,
      );
  }
  const { positive, signs, why } = signFor(metric, parsed, profile, readings.get(metric.name));
  if (why !== "") reasons.push(why);
  const minus = minusColumn(profile, metric, [positive ?? [], signs].flat());
  if (minus?.text === "()") settle.push("Do brackets around a number mean minus, as was taken?");
  const sideTexts = signs.length === 2 ? unknownSides(profile) : [];
  const sidesIn =
    sides !== undefined &&
    signs.length > 0 &&
    profile.sided === 0 &&
    areAmounts(profile.numbers) &&
    metric.directions.some(({ word }) => word === "left")
      ? sides
      : null;
  if (signs.length > 0) {
    confidence = "doubtful";
    settle.push(
      sidesIn !== null
        ? `No number has a sign here, and column ${quote(sidesIn.header)} names sides. Are they those of these numbers? Keep one of these lines, the first if they are.`
        : sideTexts.length > 0
          ? `Which sides are ${sideTexts.map(quote).join(" and ")}? Keep one of these lines.`
          : `Which way is positive? ${follows.get(metric.name) ?? "The table does not tell."} Keep one of these lines${metric.directions.some(({ handed }) => handed) ? `; where the sign turns for left-handers, say ${handedWords(metric)}` : ""}.`,
    );
  }
  return {
    ...base,
    meaning: { kind: "metric", metric: metric.name, unit, positive },
    confidence,
    reasons,
    settle,
    signs,
    units,
    sideTexts,
    foreignSides: sidesOf(profile, metric) === undefined ? base.foreignSides : foreignSides(profile, metric),
    sidesIn,
    minus,
  };
}

function minusColumn(
  { minus }: Profile,
  { directions }: Metric,
  words: readonly string[],
): ProposedColumn["minus"] {
  if (minus === null || words.length === 0) return null;
  const opposites = directions.flatMap((direction) => {
    const word = oppositeOf(direction, directions)?.word;
    return word === undefined ? [] : [[direction.word, word] as const];
  });
  return { text: minus, side: new Map(opposites) };
}

function handedWords({ directions }: Metric): string {
  return directions
    .filter(({ handed }) => handed)
    .map(({ word }) => word)
    .join(" or ");
}

/** The texts of a yes-or-no column that mean that a shot does not count. */
function excluding(header: string, { texts }: Profile): string[] {
  const isNegative = /excl|ignor|mis|out|discard|bad|delet|inval|ungültig|gelöscht/i.test(header);
  const no = new Set("n no false 0 - x bad invalid mishit nein falsch".split(" "));
  const yes = new Set("y yes true 1 x j ja wahr".split(" "));
  return [...texts.keys()].filter((text) => (isNegative ? yes : no).has(text.toLowerCase()));
}

function sentence(texts: readonly string[]): string {
  const joined = [...new Set(texts)].join(", and ");
  return joined === "" ? "" : `${joined.charAt(0).toUpperCase()}${joined.slice(1)}.`;
}
