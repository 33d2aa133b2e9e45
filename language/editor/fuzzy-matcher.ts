/** Which names fit what has been typed: `gd` and `dir` both find `start-direction`… if their letters begin words. */
import { DefaultFuzzyMatcher } from "langium/lsp";

export class DrillwrightFuzzyMatcher extends DefaultFuzzyMatcher {
  /** Names are words joined by hyphens, and texts: a word begins behind whatever is neither letter nor digit. */
  protected override isWordTransition(previous: number, current: number): boolean {
    return !LETTER_OR_DIGIT.test(String.fromCharCode(previous)) || super.isWordTransition(previous, current);
  }
}

const LETTER_OR_DIGIT = /[\p{L}\p{N}]/u;
