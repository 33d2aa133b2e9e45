import { seldomDecided } from "../analysis/decidability/seldom-decided.ts";
import { askForShots } from "./ability-fixes.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** A sentence about ability that stays open most of the time, even for a player of whom it is comfortably true. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "A goal that good players meet one time in four makes practice look like failure. More shots, a lower confidence or a wider margin decide more often.",
  run: (node, context) => reportRemarks(node, context, remarksOn),
  reporting: `
plan "Gate" {
  block "Share" test {
    10 shots
    target start-direction within ±2°
    success «at least 70 % of shots on target at 90 % confidence»
  }
  block "Length" test {
    4 shots
    success {
      «average carry within 5 yd of 150 yd at 90 % confidence»
      spread of carry at most 8 yd
    }
  }
  block "Spread" test {
    5 shots
    success «spread of offline at most 12 yd at 95 % confidence»
  }
}`,
  fixed: `
plan "Gate" {
  block "Share" test {
    37 shots
    target start-direction within ±2°
    success at least 70 % of shots on target at 90 % confidence
  }
  block "Length" test {
    18 shots
    success {
      average carry within 5 yd of 150 yd at 90 % confidence
      spread of carry at most 8 yd
    }
  }
  block "Spread" test {
    28 shots
    success spread of offline at most 12 yd at 95 % confidence
  }
}`,
  silent: `
plan "Gate" {
  block "Share" test {
    12 shots
    target start-direction within ±2°
    success at least 70 % of shots on target at 80 % confidence
  }
  block "Length" test {
    10 shots
    success {
      average carry within 5 yd of 150 yd at 90 % confidence
      spread of carry at most 8 yd
    }
  }
  block "Spread" test {
    12 shots
    success spread of offline at most 12 yd at 80 % confidence
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  return seldomDecided(meaning)
    .filter(({ baselineIsTooShort }) => !baselineIsTooShort)
    .map(({ remark, shots }) => ({ ...remark, fixes: askForShots(meaning, shots) }));
}
