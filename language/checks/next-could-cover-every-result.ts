import { GrammarUtils } from "langium";
import { defineCheck } from "./check.ts";
import { insertAfter, rangeOf } from "./edits.ts";
import { standingsOf } from "./next-cases.ts";
import { alwaysHolds } from "./next-step-must-be-within-reach.ts";
import { code } from "./wording.ts";

/** Results after which nothing is recommended. */
export const check = defineCheck({
  on: ["Next"],
  isAboutPractice: true,
  reason: "Goals can also stay undecided or unmeasured. Where no line holds, nobody is told what comes next.",
  run(next, { report }) {
    const last = next.steps.at(-1);
    const then = GrammarUtils.findNodeForKeyword(next.$cstNode, "then");
    if (last === undefined || then === undefined || next.steps.some(alwaysHolds)) return;
    if (standingsOf(next)?.mayLeaveNone === false) return;
    const indentation = " ".repeat(rangeOf(last).start.character);
    report({
      message: `Where none of these lines holds nothing is recommended. End with one that always does, such as ${code("repeat otherwise")}.`,
      node: next,
      cst: then,
      fixes: [
        {
          title: "Write repeat otherwise",
          edits: [insertAfter(rangeOf(last), `\n${indentation}repeat otherwise`)],
        },
      ],
    });
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
  «then» {
    advance to "A" when every goal is met
    step back to "B" when any goal is missed
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
    step back to "B" when any goal is missed
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
    repeat when any goal is missed or undecided or not-measured
  }
}`,
});
