import { worthOf } from "../types/units.ts";
import { defineCheck } from "./check.ts";
import { rangeOf } from "./edits.ts";

/** Reviews that do not come one after the other. */
export const check = defineCheck({
  on: ["Review"],
  reason:
    "Reviews are counted from the day a step was met. One that is not later than the one before it is none.",
  run(review, { report }) {
    let before = 0;
    for (const [index, interval] of review.intervals.entries()) {
      const seconds = worthOf(interval) ?? Number.POSITIVE_INFINITY;
      if (seconds <= before) {
        report({
          message: `This review is not later than the one before it. Write the intervals in order, each from the day the step was met.`,
          node: review,
          property: "intervals",
          index,
          range: rangeOf(interval),
        });
      }
      before = Math.max(before, seconds);
    }
  },
  reporting: `
plan "A" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 100 m
  }
}
plan "B" {
  block "Look" baseline {
    5 shots
  }
  block "All" test {
    3 shots
    success 3 in a row with carry at least 110 m
  }
}

curriculum "Irons" {
  step "A" {
    review after 28 d, «7 d»
  }
}`,
  silent: `
plan "A" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 100 m
  }
}
plan "B" {
  block "Look" baseline {
    5 shots
  }
  block "All" test {
    3 shots
    success 3 in a row with carry at least 110 m
  }
}

curriculum "Irons" {
  step "A" {
    review after 7 d, 4 weeks
  }
}`,
});
