/** Codes in place of players' names. */
import { fold, foldNumbered } from "../../../shared/fold.ts";
import { splitText } from "../table/delimited.ts";

/** The heads of a key file's columns. */
export const KEY_HEADER = ["code", "name"] as const;

interface Coded {
  readonly code: string;
  readonly name: string;
}

/** Which code stands for which name. Names are the same whatever their case, spaces, punctuation and the order of their words. */
export class PlayerCodes {
  readonly #codes = new Map<string, Coded>();
  /** The first of each name, whatever the order of its words. */
  readonly #byWords = new Map<string, Coded>();
  #next = 1;
  #pattern: RegExp | undefined;
  #parts: { readonly pattern: RegExp; readonly codes: ReadonlyMap<string, string> } | undefined;

  /** Reads a key file as `rows` writes it. What is no line of one is passed over. */
  static read(text: string): PlayerCodes {
    const codes = new PlayerCodes();
    for (const { cells } of splitText(text.replace(/^\uFEFF/, ""), ",").records.slice(1)) {
      const [code = "", name = ""] = cells;
      if (code.trim() !== "" && name.trim() !== "") codes.#add(code.trim(), name.replace(/^'/, "").trim());
    }
    return codes;
  }

  /** The code of a player, a new one where there is none: `P-01`. What is a code already stays one. */
  codeOf(name: string): string {
    const known = this.#known(name);
    if (known !== undefined) return known.code;
    const isCode = [...this.#codes.values()].some(({ code }) => foldNumbered(code) === foldNumbered(name));
    if (isCode || /^P-\d+$/i.test(name.trim())) return name.trim();
    return this.#add(this.#free(), name.trim());
  }

  /** The text with every known name in it replaced by its code. */
  replaceIn(text: string): string {
    const whole = this.#known(text);
    if (whole !== undefined) return whole.code;
    this.#pattern ??= patternOfAll([...this.#codes.values()].map(({ name }) => name));
    return text.replace(this.#pattern, (name) => this.#codes.get(fold(name))?.code ?? name);
  }

  /** The same, with first and last names alone replaced, too; by an ellipsis where several players have them. */
  replacePartsIn(text: string): string {
    this.#parts ??= this.#partsOfNames();
    const { pattern, codes } = this.#parts;
    return this.replaceIn(text).replace(pattern, (part) => codes.get(fold(part)) ?? part);
  }

  /** The lines of the key file under its header. */
  rows(): [code: string, name: string][] {
    return [...this.#codes.values()].map(({ code, name }) => [code, name]);
  }

  #known(name: string): Coded | undefined {
    return this.#codes.get(fold(name)) ?? this.#byWords.get(sortedWords(name));
  }

  #add(code: string, name: string): string {
    const coded = { code, name };
    this.#codes.set(fold(name), coded);
    if (!this.#byWords.has(sortedWords(name))) this.#byWords.set(sortedWords(name), coded);
    this.#pattern = undefined;
    this.#parts = undefined;
    return code;
  }

  #partsOfNames(): { pattern: RegExp; codes: ReadonlyMap<string, string> } {
    const codes = new Map<string, string>();
    for (const { code, name } of this.#codes.values()) {
      for (const part of wordsOf(name).map(fold)) {
        const other = codes.get(part);
        codes.set(part, other === undefined || other === code ? code : "…");
      }
    }
    const parts = [...this.#codes.values()].flatMap(({ name }) => wordsOf(name));
    return { pattern: patternOfAll(parts), codes };
  }

  #free(): string {
    const taken = new Set([...this.#codes.values()].map(({ code }) => foldNumbered(code)));
    for (; ; this.#next++) {
      const code = `P-${String(this.#next).padStart(2, "0")}`;
      if (!taken.has(foldNumbered(code))) return code;
    }
  }
}

function wordsOf(name: string): string[] {
  return name.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "");
}

function sortedWords(name: string): string {
  return wordsOf(name).map(fold).sort().join(" ");
}

/** Finds these names, and in them no shorter ones. Those of two letters may be anything. */
function patternOfAll(names: readonly string[]): RegExp {
  const long = names.filter((name) => fold(name).length > 2);
  const parts = long.sort((one, other) => other.length - one.length).map(patternOf);
  return new RegExp(
    parts.length === 0 ? "(?!)" : `(?<![\\p{L}\\p{N}])(?:${parts.join("|")})(?![\\p{L}\\p{N}])`,
    "giu",
  );
}

function patternOf(name: string): string {
  return name
    .replace(/[\\^$.*+?()[\]{}|/-]/g, (found) => (found === "-" ? "-" : `\\${found}`))
    .replace(/\s+/g, "\\s+");
}
