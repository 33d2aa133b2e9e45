import { outOfReach } from "../analysis/decidability/out-of-reach.ts";
import { askForShots, stateConfidence } from "./ability-fixes.ts";
import { defineCheck } from "./check.ts";
import type { Meaning } from "./meanings.ts";
import { type Reported, reportRemarks } from "./remarks.ts";

/** A sentence about ability that no result of the shots asked for can show. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason:
    "Few shots say little about what a player can do: below a certain number not even the best result shows it, and the goal stays open whatever happens.",
  run: (node, context) => reportRemarks(node, context, remarksOn),
  reporting: `
plan "Gate" {
  block "Before" baseline {
    1 shot
  }
  block "Share" test {
    10 shots
    target start-direction within ±2°
    success «at least 80 % of shots on target at 90 % confidence»
  }
  block "Length" test {
    12 shots
    success «90th percentile of carry at most 160 yd at 80 % confidence»
  }
  block "Middle" test {
    20 shots
    success «middle 80 % of carry spans at most 12 yd at 90 % confidence»
  }
  block "Once" test {
    1 shot
    success «average carry at least 150 yd at 80 % confidence»
  }
  block "After" test {
    10 shots
    success «carry gains at least 5 yd against "Before" at 80 % confidence»
  }
}`,
  fixed: `
plan "Gate" {
  block "Before" baseline {
    1 shot
  }
  block "Share" test {
    11 shots
    target start-direction within ±2°
    success at least 80 % of shots on target at 90 % confidence
  }
  block "Length" test {
    16 shots
    success 90th percentile of carry at most 160 yd at 80 % confidence
  }
  block "Middle" test {
    29 shots
    success middle 80 % of carry spans at most 12 yd at 90 % confidence
  }
  block "Once" test {
    2 shots
    success average carry at least 150 yd at 80 % confidence
  }
  block "After" test {
    10 shots
    success carry gains at least 5 yd against "Before" at 80 % confidence
  }
}`,
  silent: `
plan "Gate" {
  block "Before" baseline {
    6 shots
  }
  block "Share" test {
    12 shots
    target start-direction within ±2°
    success {
      at least 70 % of shots on target at 80 % confidence
      at least 10 of 12 shots on target
    }
  }
  block "Length" test {
    12 shots
    success {
      90th percentile of carry at most 160 yd
      average carry at least 150 yd at 95 % confidence
      spread of carry at most 6 yd at 80 % confidence
      median carry at least 150 yd at 90 % confidence
    }
  }
  block "After" test {
    10 shots
    success carry gains at least 5 yd against "Before" at 80 % confidence
  }
}`,
});

function remarksOn(meaning: Meaning): Reported[] {
  return outOfReach(meaning)
    .filter(({ verdict }) => verdict === "met")
    .map(({ goal, remark, shots, confidence }) => ({
      ...remark,
      fixes: [...askForShots(meaning, shots), ...stateConfidence(meaning, goal.location, confidence)],
    }));
}
