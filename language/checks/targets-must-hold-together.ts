import { conflictsIn } from "../analysis/possibility/block-conflicts.ts";
import { conflictRemark } from "../analysis/possibility/conflict-words.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** Targets and requirements that no shot can meet together, or one that none can meet by itself. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "Metrics hang together: what is asked of two may leave no shot for a third. A task that nobody can do teaches nothing, and every shot would count as a miss.",
  run: (node, context) => reportRemarks(node, context, remarksOn, true),
  reporting: `
window "Neutral path" {
  is club-path within 2° of 1° in-to-out
  for driver is club-path within 2° of 5° in-to-out
}

drill "Flush" (gain: ratio = 1.4) blocked {
  18 shots
  require smash-factor at least gain
}

plan "Gate" {
  for 7-iron, driver
  block "Face" {
    10 shots
    target face-angle within ±1°
    require club-path at least 4° in-to-out
    «target face-to-path within ±2°»
  }
  block "Length" {
    10 shots
    target total at most 150 yd
    «target carry at least 160 yd»
  }
  block "Speed" {
    10 shots
    «require ball-speed at least 150 mph and club-speed at most 85 mph»
    «target carry at least 1600 yd»
  }
  block "Path" {
    6 shots with 7-iron
    6 shots with driver
    target inside "Neutral path"
    «target club-path at most 1° in-to-out»
  }
  block "Flush irons" from «"Flush" with gain = 1.7» {
  }
  block "Shape" {
    10 shots
    target shape is draw
    «target curve above 5 yd fade or curve within ±2 yd»
  }
}`,
  silent: `
window "Neutral path" {
  is club-path within 2° of 1° in-to-out
  for driver is club-path within 2° of 5° in-to-out
}

drill "Flush" (gain: ratio = 1.4) blocked {
  18 shots
  require smash-factor at least gain
}

plan "Gate" {
  for 7-iron, driver
  block "Face" {
    10 shots
    target face-angle within ±1°
    require club-path at least 1° in-to-out
    target face-to-path within ±2°
  }
  block "Length" {
    10 shots
    target total at most 170 yd
    target carry at least 160 yd
  }
  block "Speed" {
    10 shots
    require ball-speed at least 120 mph and club-speed at most 85 mph
    target carry at least 160 yd
  }
  block "Path" {
    6 shots with 7-iron
    6 shots with driver
    target inside "Neutral path"
    target club-path at most 4° in-to-out
  }
  block "Flush irons" from "Flush" with gain = 1.5 {
  }
  block "Shape" {
    10 shots
    target shape is draw
    target curve at most 10 yd draw or curve above 5 yd fade
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  return conflictsIn(meaning)
    .filter(({ concernsAll, culprit }) => concernsAll && culprit.role !== "leave out")
    .map((conflict) => conflictRemark(conflict, meaning));
}
