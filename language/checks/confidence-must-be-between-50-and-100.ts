import { defineCheck } from "./check.ts";
import { cstOf, replace } from "./edits.ts";

const OFFERED = [90, 80, 95];

/** A confidence that nothing or everything would have. */
export const check = defineCheck({
  on: ["Confidence", "DecisionLevel"],
  reason:
    "At 50 % or less the same shots could show a sentence and its opposite, and no number of shots shows anything with certainty.",
  run(confidence, { report }) {
    if (confidence.level > 50 && confidence.level < 100) return;
    const level = cstOf(confidence, "level");
    if (level === undefined) return;
    const why =
      confidence.level >= 100
        ? "No number of shots makes anything certain"
        : `${confidence.level} % is no better than a guess`;
    report({
      message: `${why}. Ask for more than 50 % and less than 100 %; 80 % and 90 % are usual.`,
      node: confidence,
      property: "level",
      fixes: OFFERED.map((offered) => ({
        title: `Ask for ${offered} %`,
        edits: [replace(level.range, String(offered))],
      })),
    });
  },
  reporting: `
plan "Gate" {
  decide at «40» %
  block "Start" test {
    20 shots
    success {
      at least 50 % of shots with carry at least 150 yd at «100» % confidence
      average carry at least 150 yd at «50» % confidence
    }
  }
}`,
  fixed: `
plan "Gate" {
  decide at 90 %
  block "Start" test {
    20 shots
    success {
      at least 50 % of shots with carry at least 150 yd at 90 % confidence
      average carry at least 150 yd at 90 % confidence
    }
  }
}`,
  silent: `
plan "Gate" {
  decide at 80 %
  block "Start" test {
    20 shots
    success {
      at least 50 % of shots with carry at least 150 yd at 51 % confidence
      average carry at least 150 yd at 99.9 % confidence
    }
  }
}`,
});
