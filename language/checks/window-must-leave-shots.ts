import { emptyWindow } from "../analysis/possibility/window-conflicts.ts";
import { lowerCondition } from "../lowering/amounts.ts";
import { NO_BINDINGS } from "../types/parameters.ts";
import { defineCheck } from "./check.ts";

/** A window that no shot can be inside. */
export const check = defineCheck({
  on: ["WindowVariant"],
  looksAtMeaning: true,
  reason: "Every plan that refers to the window would ask for what cannot be.",
  run(variant, { meanings, report }) {
    if (!meanings.isSound(variant)) return;
    const condition = meanings.attempt(variant, () => lowerCondition(variant.condition, NO_BINDINGS));
    const message = condition && emptyWindow(condition, meanings.vocabulary());
    if (message !== undefined) report({ message, node: variant, property: "condition" });
  },
  reporting: `
window "Flat" {
  is «launch-angle at most 10° up and launch-angle at least 14° up»
  for driver is attack-angle at most 2° up
}
window "Fast" is «ball-speed at least 150 mph and club-speed at most 85 mph»

plan "Gate" {
  block "Start" {
    10 shots
    target inside "Fast"
  }
  block "Low" {
    10 shots
    target inside "Flat"
  }
  block "Count" test {
    10 shots
    success at least 5 of 10 shots inside "Fast"
  }
}`,
  silent: `
window "Flat" {
  is launch-angle at most 14° up and launch-angle at least 10° up
  for driver is attack-angle at most 2° up
}
window "Fast" is ball-speed at least 150 mph and club-speed at most 105 mph
`,
});
