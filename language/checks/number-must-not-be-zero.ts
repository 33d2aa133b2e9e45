import { defineCheck } from "./check.ts";
import { cstOf, replace } from "./edits.ts";
import { numbersOf, type Role } from "./numbers.ts";

/** Numbers of which there must be some, what is said of none, and what to write where that is clear. */
const NOT_ZERO: Readonly<Record<Role, readonly [advice: string, better?: string]>> = {
  "Shots.count": ["A block of no shots is no practice. Say how many are hit"],
  "CountCriterion.outOf": ["Of 0 shots none can be a hit. Say out of how many"],
  "RunCriterion.length": ["A run has at least one shot. Say how many in a row"],
  "GroupCriterion.needed": ["Every result meets none of them. Say how many must be met", "1"],
  "Usual.shots": ["What is usual is not known from 0 shots. Say from how many, or leave the number out"],
  "Gate.times": ["A gate that need not be passed is none. Say in how many sessions", "1"],
  "Coverage.factor": [
    "A multiple of 0 covers no reading. Say which multiple of the standard uncertainty",
    "2",
  ],
  "HeaderRow.row": ["Rows are counted from 1", "1"],
  "BlockStart.row": ["Rows are counted from 1, and the first holds the column names", "2"],
  "ShownIn.step": ["Readings are shown to a step above 0, such as 0.1", "0.1"],
  "Unit.factor": ["A unit is worth more than nothing. Say what one of it is worth"],
};

/** Nothing of something that there must be some of. */
export const check = defineCheck({
  on: ["Count", "Quantity", "Usual", "Gate", "Coverage", "HeaderRow", "BlockStart", "ShownIn", "Unit"],
  reason: "Nothing can be hit, counted, shown or read with none of it.",
  run(node, { report }) {
    for (const { value, property, roles } of numbersOf(node)) {
      if (value !== 0) continue;
      const [advice, better] =
        roles()
          .map((role) => NOT_ZERO[role])
          .find((known) => known !== undefined) ?? [];
      const cst = cstOf(node, property);
      if (advice === undefined || cst === undefined) continue;
      report({
        message: `${advice}.`,
        node,
        cst,
        fixes:
          better === undefined ? [] : [{ title: `Write ${better}`, edits: [replace(cst.range, better)] }],
      });
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    «0» shots
  }
  block "Again" test {
    10 shots
    success {
      at most 0 of «0» shots with carry below 100 yd
      «0» in a row with carry at least 150 yd
      «0» of {
        average carry at least 150 yd
      }
    }
  }
}

source "Bay" {
  header row «0»
}

metric pace is speed {
  shown in mph to «0»
}

dimension weight {
  unit kg
  unit stone = «0» kg
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    0 shots
  }
  block "Again" test {
    10 shots
    success {
      at most 0 of 0 shots with carry below 100 yd
      0 in a row with carry at least 150 yd
      1 of {
        average carry at least 150 yd
      }
    }
  }
}

source "Bay" {
  header row 1
}

metric pace is speed {
  shown in mph to 0.1
}

dimension weight {
  unit kg
  unit stone = 0 kg
}`,
  silent: `
plan "Gate" {
  block "Again" test {
    10 shots
    success at most 0 of 10 shots with carry below 100 yd
  }
}`,
});
