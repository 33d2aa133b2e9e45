/** Codes in place of players' names. */
import { fold, foldNumbered } from "../spelling.ts";
import { splitText } from "../table/delimited.ts";

/** The heads of a key file's columns. */
export const KEY_HEADER = ["code", "name"] as const;

/** Which code stands for which name. Names are the same whatever their case, spaces and punctuation. */
export class PlayerCodes {
  readonly #codes = new Map<string, { readonly code: string; readonly name: string }>();
  #next = 1;
  #pattern: RegExp | undefined;

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
    const known = this.#codes.get(fold(name));
    if (known !== undefined) return known.code;
    const isCode = [...this.#codes.values()].some(({ code }) => foldNumbered(code) === foldNumbered(name));
    if (isCode || /^P-\d+$/i.test(name.trim())) return name.trim();
    return this.#add(this.#free(), name.trim());
  }

  /** The text with every known name in it replaced by its code. */
  replaceIn(text: string): string {
    const whole = this.#codes.get(fold(text));
    if (whole !== undefined) return whole.code;
    this.#pattern ??= this.#namesPattern();
    return text.replace(this.#pattern, (name) => this.#codes.get(fold(name))?.code ?? name);
  }

  /** The lines of the key file under its header. */
  rows(): [code: string, name: string][] {
    return [...this.#codes.values()].map(({ code, name }) => [code, name]);
  }

  #add(code: string, name: string): string {
    this.#codes.set(fold(name), { code, name });
    this.#pattern = undefined;
    return code;
  }

  #free(): string {
    const taken = new Set([...this.#codes.values()].map(({ code }) => foldNumbered(code)));
    for (; ; this.#next++) {
      const code = `P-${String(this.#next).padStart(2, "0")}`;
      if (!taken.has(foldNumbered(code))) return code;
    }
  }

  /** Longer names first, so that no name is taken for a shorter one in it. */
  #namesPattern(): RegExp {
    const names = [...this.#codes.values()].map(({ name }) => name).filter((name) => fold(name).length > 2);
    const parts = names.sort((one, other) => other.length - one.length).map(patternOf);
    return new RegExp(
      parts.length === 0 ? "(?!)" : `(?<![\\p{L}\\p{N}])(?:${parts.join("|")})(?![\\p{L}\\p{N}])`,
      "giu",
    );
  }
}

function patternOf(name: string): string {
  return name
    .replace(/[\\^$.*+?()[\]{}|/-]/g, (found) => (found === "-" ? "-" : `\\${found}`))
    .replace(/\s+/g, "\\s+");
}
