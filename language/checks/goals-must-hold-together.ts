import { goalsAgainstEachOther } from "../analysis/possibility/goals-together.ts";
import { defineCheck } from "./check.ts";
import { reportRemarks } from "./remarks.ts";

/** Goals of one block that no result meets together. */
export const check = defineCheck({
  on: ["Plan", "Drill"],
  looksAtMeaning: true,
  reason: "A block is met when all its goals are. Two that exclude each other leave it missed for ever.",
  run: (node, context) => reportRemarks(node, context, goalsAgainstEachOther, true),
  reporting: `
plan "Gate" {
  block "Shape" test {
    12 shots
    success {
      at least 7 of 12 shots with shape is draw or straight
      «at least 6 of 12 shots with curve at least 4 yd fade»
    }
  }
  block "Length" test {
    10 shots
    success {
      median carry at least 150 yd
      «90th percentile of carry at most 145 yd»
    }
  }
  block "Averages" test {
    10 shots
    success {
      average carry at least 150 yd
      all of {
        «average total at most 145 yd»
        spread of carry at most 5 yd
      }
    }
  }
  block "Change" test {
    10 shots
    success {
      carry gains at least 8 yd against usual
      «carry stays within 5 yd against usual»
    }
  }
}`,
  silent: `
plan "Gate" {
  block "Shape" test {
    12 shots
    success {
      at least 6 of 12 shots with shape is draw or straight
      at least 6 of 12 shots with curve at least 4 yd fade
    }
  }
  block "Length" test {
    10 shots
    success {
      median carry at least 150 yd
      90th percentile of carry at most 155 yd
    }
  }
  block "Averages" test {
    10 shots
    success {
      average carry at least 150 yd
      any of {
        average total at most 145 yd
        spread of carry at most 5 yd
      }
    }
  }
  block "Change" test {
    10 shots
    success {
      carry gains at least 4 yd against usual
      carry stays within 5 yd against usual
    }
  }
}`,
});
