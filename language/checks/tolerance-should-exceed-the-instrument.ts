import { once } from "../../shared/once.ts";
import { type TooNarrow, tooNarrowFor } from "../analysis/decidability/resolution.ts";
import { placeInWords } from "../analysis/words.ts";
import { percent } from "../criteria/wording.ts";
import { defineCheck } from "./check.ts";
import { linesOf, meaningOf, type SessionMeaning } from "./session-meaning.ts";
import { code, quoted } from "./wording.ts";

/** More than these are counted. */
const MOST_NAMED = 3;

/** A range that is narrower than what the session's instrument can tell. */
export const check = defineCheck({
  on: ["Session"],
  looksAtMeaning: true,
  reason:
    "A reading in the very middle of a range may be wrong by more than the range is wide. Then no shot is ever surely inside, and the goal stays open.",
  run(session, context) {
    const { instrument: node } = linesOf(session);
    const meaning = node && meaningOf(session, context);
    if (meaning?.instrument === undefined) return;
    const { instrument } = meaning;
    const found = tooNarrowIn(meaning);
    const [first] = found;
    if (node === undefined || first === undefined) return;
    const here = { file: context.document.uri.toString(), range: first.location.range };
    const lines = found.slice(0, MOST_NAMED).map(({ text, location, of, uncertainty, needed, level }) => {
      return `${code(text)} (${placeInWords(location, here)}): ${of} may be off by ${uncertainty}, and takes at least ${needed} to be sure at ${percent(level)}`;
    });
    const more = found.length - lines.length;
    const all = more > 0 ? [...lines, `${more} more`] : lines;
    context.report({
      message: `${quoted(instrument.name)} is too coarse for ${found.length === 1 ? "this range: it cannot tell that anything is inside, not even in the middle" : "these ranges: it cannot tell that anything is inside, not even in their middle"}. ${all.join("; ")}. Widen the range, or use a finer instrument.`,
      node,
      related: found.map(({ text, location }) => ({ message: text, location })),
    });
  },
  reporting: `
plan "Gate" {
  for 7-iron
  block "Start" test {
    10 shots
    target club-path within ±0.5°
    success {
      at least 6 of 10 shots on target
      average club-path within ±0.2°
      average face-to-path within ±0.4° at 90 % confidence
    }
  }
}

player "P-1" {
  right-handed
}

instrument "Bay unit" {
  coverage 95 %
  reads club-path within 0.8° random and 0.4° systematic
  reads face-angle within 0.6° random and 0.5° systematic
}

source "Bay" {
  column "Path" is club-path in ° positive right
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  «instrument "Bay unit"»
}`,
  silent: `
plan "Gate" {
  for 7-iron
  block "Start" test {
    10 shots
    target club-path within ±1°
    success {
      at least 6 of 10 shots on target
      average club-path within ±0.8°
      average face-to-path within ±0.6° at 90 % confidence
      average club-path at least 0.1° in-to-out
    }
  }
}

player "P-1" {
  right-handed
}

instrument "Bay unit" {
  coverage 95 %
  reads club-path within 0.8° random and 0.4° systematic
  reads face-angle within 0.6° random and 0.5° systematic
}

source "Bay" {
  column "Path" is club-path in ° positive right
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  instrument "Bay unit"
}`,
});

const tooNarrowIn = once(({ blocks, instrument, decisionLevel, player }: SessionMeaning): TooNarrow[] => {
  if (instrument === undefined) return [];
  const { hand, level } = player;
  const setting = { player: { hand: hand ?? ("right" as const), level }, instrument, decisionLevel };
  return blocks.flatMap((block) => tooNarrowFor(setting, block));
});
