import { goalConflictsIn } from "../analysis/possibility/goal-conflicts.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** A goal that no shot can help to meet. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "Only shots that are as required, and not left out, count. A goal that needs others is missed whatever the player does.",
  run: (node, context) => reportRemarks(node, context, remarksOn, true),
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    require carry at least 120 yd
    leave out shots where smash-factor below 1.3
    success {
      «at least 5 of 10 shots with carry below 100 yd»
      «at most 3 of 10 shots with carry at least 110 yd»
      «3 in a row with smash-factor below 1.2»
      «average carry at most 110 yd»
      «median total below 115 yd»
      «at least 50 % of shots with club-speed above 200 mph»
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    require carry at least 120 yd
    leave out shots where smash-factor below 1.3
    success {
      at least 5 of 10 shots with carry below 140 yd
      at most 3 of 10 shots with carry below 120 yd
      3 in a row with smash-factor below 1.4
      average carry at most 150 yd
      at least 50 % of shots with club-speed above 80 mph
    }
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  return goalConflictsIn(meaning)
    .filter(({ concernsAll }) => concernsAll)
    .map(({ remark }) => remark);
}
