import { seldomDecided } from "../analysis/decidability/seldom-decided.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** A change that no number of new shots shows, because there are too few to compare them with. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "A change is as sure as the less sure of its two ends. Against a short baseline hitting more shots afterwards does not help.",
  run: (node, context) => reportRemarks(node, context, remarksOn),
  reporting: `
plan "Gate" {
  block "Before" baseline {
    3 shots
  }
  block "After" test {
    10 shots
    success {
      «carry gains at least 4 yd against "Before" at 90 % confidence»
      spread of carry at most 8 yd
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Before" baseline {
    12 shots
  }
  block "After" test {
    12 shots
    success {
      carry gains at least 4 yd against "Before" at 80 % confidence
      spread of carry at most 8 yd
    }
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  return seldomDecided(meaning)
    .filter(({ baselineIsTooShort }) => baselineIsTooShort)
    .map(({ remark }) => remark);
}
