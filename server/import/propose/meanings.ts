/** What a column may mean: by the words of its name, its unit and its cells. */

import { METRIC_WORDS } from "../../../shared/metric-words.ts";
import type { Metric, Unit } from "../../../shared/plan-model.ts";
import { clubLookup } from "../cells/clubs.ts";
import { parseDate } from "../cells/date.ts";
import { clockOf } from "../cells/moment.ts";
import { symbolOf } from "../cells/unit-words.ts";
import { type ParsedHeader, parseHeader } from "./header.ts";
import { OTHER_QUANTITIES, OTHER_WORDS, UNREAD_WORDS } from "./header-words.ts";
import type { Profile } from "./profile.ts";
import { directionOf } from "./signs.ts";
import { isTypical, isUsual, shareInside } from "./value-ranges.ts";
import type { Vocabulary } from "./vocabulary.ts";
import { fold, type Phrase, phraseOf, wordScore } from "./word-score.ts";

export type OtherKind = keyof typeof OTHER_WORDS;

/** `unread` is something that no word of the language stands for. */
export type Meaning =
  | {
      readonly kind: "metric";
      readonly metric: Metric;
      readonly unit: Unit;
      readonly isUnitStated: boolean;
      /** Where the unit is not stated, all in which the values would be of a size that people see; the likeliest first. */
      readonly units: readonly Unit[];
    }
  | { readonly kind: "category"; readonly metric: Metric }
  | { readonly kind: OtherKind | "unread" };

export interface Candidate {
  readonly meaning: Meaning;
  /** 0 to 1. */
  readonly score: number;
  readonly reasons: readonly string[];
}

interface Entry {
  readonly of: Metric | OtherKind | "unread";
  readonly phrases: readonly Phrase[];
}

/** From here on the words of a name alone tell what it is. */
const NAMED = 0.85;

/** What cells can add to words that do not tell alone. */
const LESS_THAN_NAMED = 0.84;

/** What a column comes to whose unit its metric cannot have: what it may well be besides goes before. */
const UNREADABLE = 0.6;

/** No column's name is longer. */
const LONGEST_NAME = 80;

/** Finds what columns mean in the words of one vocabulary. */
export class Meanings {
  readonly #entries: readonly Entry[];
  readonly #vocabulary: Vocabulary;
  readonly #known = new Map<string, boolean>();
  readonly #club: (text: string) => string | undefined;

  constructor(vocabulary: Vocabulary) {
    this.#vocabulary = vocabulary;
    this.#club = clubLookup([], vocabulary.clubs);
    const metrics = vocabulary.metrics.map((metric): Entry => {
      const { realm, words = [] } = METRIC_WORDS[metric.name] ?? {};
      return { of: metric, phrases: [metric.name, ...words].map((phrase) => phraseOf(phrase, realm)) };
    });
    const others = Object.entries(OTHER_WORDS).map(
      ([kind, words]): Entry => ({ of: kind as OtherKind, phrases: words.map((word) => phraseOf(word)) }),
    );
    const unread: Entry = { of: "unread", phrases: UNREAD_WORDS.map((word) => phraseOf(word)) };
    this.#entries = [...metrics, ...others, unread];
  }

  /** Whether a text is a column's name whose words alone tell what it is. */
  isKnown(text: string): boolean {
    if (text.length > LONGEST_NAME || !/[\p{L}#]/u.test(text)) return false;
    let known = this.#known.get(text);
    if (known === undefined) {
      const header = parseHeader(text);
      known = this.#wordScores(header).some((score) => score >= NAMED);
      this.#known.set(text, known);
    }
    return known;
  }

  /** What a column may mean, the likeliest first. */
  of(header: ParsedHeader, unitBelow: string | undefined, profile: Profile): Candidate[] {
    const unit = header.unit ?? unitBelow ?? profile.unit;
    const scores = this.#wordScores(header);
    const candidates = this.#entries.flatMap(({ of }, at) => {
      const words = scores[at] ?? 0;
      if (words === 0) return [];
      return typeof of === "string"
        ? this.#other(of, words, profile, unit)
        : this.#metric(of, words, profile, unit);
    });
    candidates.push(...this.#byCells(profile, candidates));
    return candidates.sort((one, other) => other.score - one.score);
  }

  /**
   * How well the header's words name each entry. What stands aside belongs to the name where a name comes of it, as in
   * `Launch angle (horizontal)`, or another quantity, as in `Carry (target)`; else it is a remark.
   */
  #wordScores({ words, aside }: ParsedHeader): number[] {
    const scoresOf = (words: readonly string[]) =>
      this.#entries.map(({ phrases }) => wordScore(words, phrases));
    if (aside.length > 0) {
      const together = scoresOf([...words, ...aside]);
      const isOther = aside.some((word) => OTHER_QUANTITIES.has(word));
      if (isOther || together.some((score) => score >= NAMED)) return together;
    }
    return scoresOf(words);
  }

  #metric(metric: Metric, words: number, profile: Profile, symbol: string | undefined): Candidate[] {
    if (metric.model !== null && words < 1) return [];
    if (metric.categories.length > 0) return this.#category(metric, words, profile);
    if (profile.stated > 0 && profile.read < 0.5 * profile.stated) return [];
    const reasons = [byWords(words)];
    const choice = this.#unitOf(metric, symbol, profile);
    if (choice === undefined) {
      const reason = `it would be ${metric.name}, which cannot be in ${symbol}`;
      return words >= NAMED ? [{ meaning: { kind: "unread" }, score: UNREADABLE, reasons: [reason] }] : [];
    }
    const { unit, isStated, units } = choice;
    const inside = shareInside(metric, unit, profile);
    if (isStated) reasons.push(`its unit is ${unit.symbol === "" ? "one" : unit.symbol}`);
    if (inside < 0.5) return [];
    if (inside < 0.95) reasons.push(`${Math.round(100 * (1 - inside))} % of the values are implausible`);
    const named = words < NAMED ? Math.min(LESS_THAN_NAMED, words * bySides(metric, profile)) : words;
    const score = named * (isStated ? 1 : 0.97) * (inside < 0.95 ? 0.6 : 1);
    return [{ meaning: { kind: "metric", metric, unit, isUnitStated: isStated, units }, score, reasons }];
  }

  #category(metric: Metric, words: number, { texts, stated, read }: Profile): Candidate[] {
    if (read > 0.3 * stated) return [];
    const names = new Set(metric.categories.map(({ name }) => fold(name)));
    const known = [...texts].reduce((sum, [text, count]) => sum + (names.has(fold(text)) ? count : 0), 0);
    const share = stated === 0 ? 0.5 : known / stated;
    const reasons = [byWords(words), `${Math.round(100 * share)} % of the texts are its names`];
    return [{ meaning: { kind: "category", metric }, score: words * (share >= 0.5 ? 1 : 0.6), reasons }];
  }

  /** The unit that is stated, where the metric can have it; else one in which the values are plausible. */
  #unitOf(
    metric: Metric,
    symbol: string | undefined,
    profile: Profile,
  ): { unit: Unit; isStated: boolean; units: readonly Unit[] } | undefined {
    const units = this.#vocabulary.units.get(metric.dimension) ?? [];
    if (symbol !== undefined) {
      // What is no speed in milliseconds is metres a second without its stroke.
      const stated = symbol === "ms" && metric.dimension === "speed" ? "m/s" : symbol;
      const found = units.find(({ names }) => names.some((name) => (symbolOf(name) ?? name) === stated));
      return found === undefined ? undefined : { unit: found.unit, isStated: true, units: [] };
    }
    const isRatio = metric.unit.symbol === "" || metric.unit.symbol === "%";
    const one: Unit = { symbol: "", factor: 1 };
    const shown = metric.unit;
    const all = [shown, ...(isRatio ? [one] : []), ...units.map(({ unit }) => unit)];
    const fitting = all.filter(
      (unit) => shareInside(metric, unit, profile) >= 0.95 && isTypical(metric, unit, profile),
    );
    const usual = fitting.filter(({ symbol }) => isUsual(symbol, metric));
    const possible = [...new Map(usual.map((unit) => [unit.symbol, unit])).values()];
    // Nobody gives an angle in radians without saying so, or spin in anything but turns a minute.
    const onlyOne = metric.dimension === "angle" || metric.dimension === "rotation" || isRatio;
    const unit = (onlyOne ? fitting[0] : possible[0]) ?? shown;
    return { unit, isStated: onlyOne && fitting.length > 0, units: possible };
  }

  #other(kind: OtherKind | "unread", words: number, profile: Profile, unit: string | undefined): Candidate[] {
    const { stated, read, sided, texts } = profile;
    const reasons = [kind === "unread" ? "its name says that it is something else" : byWords(words)];
    const share = (test: (text: string) => boolean) =>
      stated === 0
        ? 0.5
        : [...texts].reduce((sum, [text, count]) => sum + (test(text) ? count : 0), 0) /
          [...texts.values()].reduce((sum, count) => sum + count, 0);
    const fit = {
      // `I7` and `Eisen 7` are numbers beside a word, too.
      club: () =>
        share((text) => this.#club(text) !== undefined) >= 0.5 || read - sided < 0.5 * stated ? 1 : 0,
      block: () => (unit === undefined && texts.size < 0.6 * Math.max(stated, 4) ? 1 : 0.3),
      player: () => (unit === undefined && share((text) => /\p{L}/u.test(text)) >= 0.5 ? 1 : 0.4),
      session: () => (unit === undefined ? 1 : 0),
      date: () => (share((text) => parseDate(text) !== undefined) >= 0.5 ? 1 : 0),
      time: () => (share((text) => clockOf(text) !== undefined) >= 0.5 ? 1 : 0),
      exclusion: () => (unit === undefined && texts.size <= 6 ? 1 : 0),
      order: () =>
        sided > 0 ? 0 : unit === undefined && read >= 0.5 * stated && texts.size >= 0.5 * stated ? 1 : 0.2,
      unread: () => 1.01, // what is listed as something else is that, though its words hold a metric's
    }[kind]();
    return fit === 0 ? [] : [{ meaning: { kind }, score: words * fit, reasons }];
  }

  /** What the cells alone tell: clubs, dates and times need no name. */
  #byCells({ texts, stated, read, numbers }: Profile, named: readonly Candidate[]): Candidate[] {
    if (stated < 3) return [];
    if (areCounted(numbers) && named.every(({ score }) => score < NAMED))
      return [{ meaning: { kind: "order" }, score: NAMED, reasons: ["its cells count the rows"] }];
    if (named.some(({ score }) => score >= 0.6)) return [];
    const all = [...texts.keys()];
    const share = (test: (text: string) => boolean) => all.filter(test).length / all.length;
    const found = (kind: OtherKind, what: string): Candidate[] => [
      { meaning: { kind }, score: 0.7, reasons: [`its cells are ${what}`] },
    ];
    if (read < stated && share((text) => this.#club(text) !== undefined) >= 0.7)
      return found("club", "clubs");
    if (share((text) => parseDate(text) !== undefined && !/^\d+$/.test(text)) >= 0.9)
      return found("date", "dates");
    if (share((text) => clockOf(text) !== undefined) >= 0.9) return found("time", "times of day");
    return [];
  }
}

/** Whether numbers count row by row, up or down: `1, 2, 3`. They may begin anew now and then, and skip what was left out. */
function areCounted(numbers: Profile["numbers"]): boolean {
  const stated = numbers.filter((number) => number !== undefined);
  if (
    stated.length < 5 ||
    stated.length < numbers.length ||
    !stated.every((number) => Number.isInteger(number))
  )
    return false;
  const steps = stated.slice(1).map((number, at) => number - (stated[at] ?? 0));
  return [1, -1].some((step) => steps.filter((each) => each === step).length >= 0.8 * steps.length);
}

/** How much likelier the words beside the numbers make a metric: they are its sides, or others. */
function bySides({ directions }: Metric, { sides, sided, read }: Profile): number {
  if (directions.length === 0 || sided < 0.5 * read) return 1;
  const words = new Set(sides.filter((side) => side !== ""));
  if (words.size !== 2) return 1;
  return [...words].every((word) => directionOf(word, directions) !== undefined) ? 1.5 : 0.7;
}

function byWords(score: number): string {
  return score >= 0.95
    ? "its name says so"
    : score >= 0.8
      ? "its name says so, beside other words"
      : "its name resembles it";
}
