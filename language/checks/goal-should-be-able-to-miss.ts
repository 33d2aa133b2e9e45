import { idleGoals } from "../analysis/possibility/idle-goals.ts";
import { defineCheck } from "./check.ts";
import { reportRemarks } from "./remarks.ts";

/** A goal that every shot meets which counts. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason: "A goal that the block's own requirements already answer tells nothing about the practice.",
  run: (node, context) => reportRemarks(node, context, idleGoals),
  reporting: `
plan "Gate" {
  block "Start" test {
    10 shots
    require carry at least 120 yd
    success {
      «average carry at least 110 yd»
      «worst carry above 100 yd»
    }
  }
  block "Strike" test {
    10 shots
    leave out shots where smash-factor below 1.3
    success {
      «at least 7 of 10 shots with smash-factor at least 1.25»
      «at most 2 of 10 shots with smash-factor below 1.2»
      «at most 2 of 10 shots with carry above 900 yd»
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    10 shots
    require carry at least 120 yd
    success {
      average carry at least 130 yd
      at most 2 of 10 shots with carry below 120 yd
      at least 7 of 10 shots with carry at least 110 yd
    }
  }
  block "Strike" test {
    10 shots
    leave out shots where smash-factor below 1.3
    success {
      at least 7 of 10 shots with smash-factor at least 1.35
      at most 2 of 10 shots with smash-factor below 1.4
    }
  }
}`,
});
