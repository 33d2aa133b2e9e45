import { windowsWithoutVariant } from "../analysis/possibility/windows-without-variant.ts";
import { defineCheck } from "./check.ts";
import { reportRemarks } from "./remarks.ts";

/** A window that has no variant for a club of the block. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason: "A shot is inside a window by the variant for its club. Where there is none, nobody can say.",
  run: (node, context) => reportRemarks(node, context, windowsWithoutVariant),
  reporting: `
window "Launch" {
  for driver is launch-angle between 10° up and 15° up
  for 7-iron at level "first year" is launch-angle between 12° up and 20° up
}

plan "Gate" {
  block "Start" {
    6 shots with driver
    6 shots with gap-wedge
    «target inside "Launch"»
  }
  block "Irons" {
    6 shots with 7-iron
    target inside "Launch"
  }
}`,
  silent: `
window "Launch" {
  is launch-angle between 20° up and 30° up
  for driver is inside "Driver launch"
}
window "Driver launch" {
  for driver is launch-angle between 10° up and 15° up
}

plan "Gate" {
  block "Start" {
    6 shots with driver
    6 shots with gap-wedge
    target inside "Launch"
  }
}`,
});
