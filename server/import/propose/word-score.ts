/** How well a column's name is one of the phrases by which people name something. */
import { distance } from "fastest-levenshtein";
import type { Realm } from "../../../shared/metric-words.ts";
import { areNeutral, wordsOf } from "./header.ts";
import { OTHER_QUANTITIES, REALM_WORDS } from "./header-words.ts";

export interface Phrase {
  readonly words: readonly string[];
  readonly known: ReadonlySet<string>;
  readonly key: string;
  readonly folded: string;
  readonly realm: Realm | undefined;
}

export function phraseOf(phrase: string, realm?: Realm): Phrase {
  const words = wordsOf(phrase);
  return {
    words,
    known: new Set(words),
    key: words.toSorted().join(" "),
    folded: fold(words.join("")),
    realm,
  };
}

export function fold(text: string): string {
  return text.toLowerCase().replace(/[^\p{L}\p{N}#]/gu, "");
}

/** How well the words of a header are those of one of the phrases: 0 to 1. */
export function wordScore(words: readonly string[], phrases: readonly Phrase[]): number {
  if (words.length === 0) return 0;
  const key = words.toSorted().join(" ");
  const folded = fold(words.join(""));
  return Math.max(0, ...phrases.map((phrase) => scoreOf(words, key, folded, phrase)));
}

function scoreOf(words: readonly string[], key: string, folded: string, phrase: Phrase): number {
  if (key === phrase.key || folded === phrase.folded) return 1;
  if (folded.length >= 5 && isSlip(folded, phrase.folded)) return 0.7;
  if (!words.some((word) => phrase.known.has(word))) return 0;
  const realm = phrase.realm === undefined ? undefined : REALM_WORDS[phrase.realm];
  const extra = without(words, phrase.words);
  const missing = without(phrase.words, words);
  if (extra.some((word) => OTHER_QUANTITIES.has(word))) return 0;
  if (missing.length === 0 && areNeutral(extra, realm)) return 0.9;
  if (missing.length === 0)
    return Math.max(0.2, 0.55 - 0.1 * extra.length) * (phrase.words.length > 1 ? 1.2 : 1);
  if (extra.length === 0) return areNeutral(missing, realm) ? 0.8 : 0.45;
  return 0;
}

function isSlip(one: string, other: string): boolean {
  const most = other.length >= 9 ? 2 : 1;
  return other.length >= 5 && Math.abs(one.length - other.length) <= most && distance(one, other) <= most;
}

function without(words: readonly string[], taken: readonly string[]): string[] {
  const left = [...taken];
  return words.filter((word) => {
    const at = left.indexOf(word);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}
