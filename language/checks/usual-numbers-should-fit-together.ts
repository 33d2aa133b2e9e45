import { type UsualNumber, usualNumbersAtOdds } from "../analysis/possibility/usual-numbers-together.ts";
import { isUsual, type Player } from "../generated/tree/ast.ts";
import { lowerQuantity } from "../lowering/amounts.ts";
import { handOf, lowerPlayer } from "../lowering/session.ts";
import { NO_BINDINGS } from "../types/parameters.ts";
import { defineCheck } from "./check.ts";
import { cstOf } from "./edits.ts";
import { fileName } from "./meanings.ts";

/** Usual numbers of a player that no shots have together. */
export const check = defineCheck({
  on: ["Player"],
  looksAtMeaning: true,
  reason:
    "Metrics hang together, and so do their averages: a face that looks 2° to the right of the target and a path 1° to the right of it are 1° apart. Changes are held against usual numbers, so that one that cannot be right makes progress out of nothing.",
  run(player, { meanings, report }) {
    if (!meanings.isSound(player)) return;
    const numbers = meanings.attempt(player, () => numbersOf(player)) ?? [];
    const hand = handOf(player) ?? "right";
    for (const { message, location, related } of usualNumbersAtOdds(numbers, hand, meanings.vocabulary()))
      report({ message, range: location.range, related, node: player });
  },
  reporting: `
player "P-1" {
  right-handed
  usual ball-speed 120 mph with 7-iron
  usual club-speed 86 mph with 7-iron
  «usual smash-factor 1.25 with 7-iron»
  usual face-angle 2° open spread 2° with 7-iron over 60 shots
  usual club-path 1° in-to-out with 7-iron
  «usual face-to-path 4° open with 7-iron»
  usual carry 230 yd with driver
  «usual total 215 yd with driver»
}

player "P-2" {
  left-handed
  usual face-angle 2° open
  usual face-to-path 1° open
  «usual club-path 1° out-to-in»
  usual dynamic-loft 24° with 7-iron
  usual attack-angle 4° down with 7-iron
  «usual spin-loft 20° with 7-iron»
  usual club-speed 80 mph with 5-iron
  «usual ball-speed 140 mph with 5-iron»
}`,
  silent: `
player "P-1" {
  right-handed
  usual ball-speed 120 mph with 7-iron
  usual club-speed 86 mph with 7-iron
  usual smash-factor 1.38 with 7-iron
  usual face-angle 2° open spread 2° with 7-iron over 6 shots
  usual club-path 1° in-to-out with 7-iron
  usual face-to-path 3° open with 7-iron
  usual carry 230 yd with driver
  usual total 215 yd with 3-wood
}

player "P-2" {
  left-handed
  usual face-angle 2° open
  usual face-to-path 1° open
  usual club-path 1° in-to-out
  usual dynamic-loft 24° with 7-iron
  usual attack-angle 4° down with 7-iron
  usual spin-loft 28° with 7-iron
}`,
});

/** The usual numbers with how they were written. */
function numbersOf(player: Player): UsualNumber[] {
  const lines = player.statements.filter(isUsual);
  return lowerPlayer(player, fileName).usual.flatMap((usual, place) => {
    const written = lines[place]?.amount;
    if (written === undefined) return [];
    const amount = lowerQuantity(written, NO_BINDINGS);
    const [, decimals = ""] = cstOf(written, "value")?.text.split(".") ?? [];
    return [{ ...usual, amount, digit: 10 ** -decimals.length * amount.unit.factor }];
  });
}
