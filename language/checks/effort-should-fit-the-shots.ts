import { otherEffort } from "../analysis/possibility/effort.ts";
import { defineCheck } from "./check.ts";
import { reportRemarks } from "./remarks.ts";

/** A target, a requirement or shots left out for an effort at which no shots of the block are to be hit. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason: "Who swings as easily as the block says does not do what such a line asks for.",
  run: (node, context) => reportRemarks(node, context, otherEffort),
  reporting: `
plan "Gate" {
  block "Easy" {
    8 shots at 50 % effort
    8 shots at 60 % effort
    «require effort at least 80 %»
  }
  block "Half" {
    8 shots at 50 % effort
    «leave out shots where effort below 70 %»
  }
}`,
  silent: `
plan "Gate" {
  block "Easy" {
    8 shots at 50 % effort
    8 shots at 80 % effort
    require effort at least 80 %
  }
  block "Half" {
    8 shots at 70 % effort
    leave out shots where effort below 70 %
    target carry at least 40 yd or effort at most 40 %
  }
  block "Free" {
    8 shots at 50 % effort
    8 shots
    require effort at least 80 %
  }
}`,
});
