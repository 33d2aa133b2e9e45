import type { NextStep } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";

/** A line behind one that always holds. */
export const check = defineCheck({
  on: ["Next"],
  reason:
    "The first line that holds is the recommendation. Behind one that always holds no other is looked at.",
  run({ steps }, { document, report }) {
    const always = steps.findIndex(alwaysHolds);
    if (always < 0) return;
    for (const step of steps.slice(always + 1)) {
      report({
        message: `Line ${rangeOf(steps[always] as NextStep).start.line + 1} always holds, so this one is never looked at. Put it before that line, or take it out.`,
        node: step,
        fixes: [{ title: "Take it out", edits: [remove(document, rangeOf(step))] }],
      });
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

plan "C" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 90 m
  }
  then {
    advance to "A" when every goal is met
    repeat otherwise
    «step back to "B"»
  }
}`,
  fixed: `
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

plan "C" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 90 m
  }
  then {
    advance to "A" when every goal is met
    repeat otherwise
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

plan "C" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 90 m
  }
  then {
    advance to "A" when every goal is met
    step back to "B" when any goal is missed
    repeat
  }
}`,
});

/** Whether a line asks for nothing. */
export function alwaysHolds({ when }: NextStep): boolean {
  return when === undefined || when.otherwise;
}
