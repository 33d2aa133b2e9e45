import { rangeInWords } from "../analysis/words.ts";
import { isUsual } from "../generated/tree/ast.ts";
import { lowerPlayer } from "../lowering/session.ts";
import { defineCheck } from "./check.ts";
import { fileName } from "./meanings.ts";

/** A usual number that no shot has. */
export const check = defineCheck({
  on: ["Player"],
  looksAtMeaning: true,
  reason: "Changes are held against usual numbers. One that cannot be right is mostly in another unit.",
  run(player, { meanings, report }) {
    if (!meanings.isSound(player)) return;
    const model = meanings.attempt(player, () => lowerPlayer(player, fileName));
    const vocabulary = meanings.vocabulary();
    for (const [index, node] of player.statements.filter(isUsual).entries()) {
      const usual = model?.usual[index];
      const metric = usual && vocabulary.metrics.get(usual.metric);
      if (usual === undefined || metric === undefined) continue;
      const hand = model?.hand ?? "right";
      const { low, high } = vocabulary.plausible(metric.name, hand);
      if (usual.value >= low && usual.value <= high) continue;
      const manner = { hand, unit: metric.unit, isPlain: true };
      report({
        message: `A plausible ${metric.name} is ${rangeInWords({ low, high }, metric, manner)}. Look at the number and at its unit.`,
        node: node.amount,
      });
    }
  },
  reporting: `
player "P-1" {
  right-handed
  usual carry «900 yd» with 7-iron
  usual attack-angle «30° down» with 7-iron
}`,
  silent: `
player "P-1" {
  right-handed
  usual carry 150 yd with 7-iron
  usual attack-angle 3° down with 7-iron
}`,
});
