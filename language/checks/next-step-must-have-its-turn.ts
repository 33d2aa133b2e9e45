import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { standingsOf } from "./next-cases.ts";
import { alwaysHolds } from "./next-step-must-be-within-reach.ts";

/** A line that no verdicts lead to: it excludes itself, or one before it holds whenever it does. */
export const check = defineCheck({
  on: ["Next"],
  reason: "The first line that holds is the recommendation. One that is never the first recommends nothing.",
  run(next, { document, hasSyntaxErrors, report }) {
    const standings = hasSyntaxErrors ? undefined : standingsOf(next); // goals that cannot be read have verdicts too
    if (standings === undefined) return;
    const always = next.steps.findIndex(alwaysHolds);
    // What comes after a line that always holds is said to.
    for (const step of always < 0 ? next.steps : next.steps.slice(0, always)) {
      const standing = standings.of.get(step);
      if (standing === undefined || standing.mayBeFirst) continue;
      report({
        message: standing.mayHold
          ? "Whenever this line holds, one before it holds too and is taken. Put this one first, or take it out."
          : "No verdicts make this line hold: what it asks for excludes itself. Ask for less at once, or take it out.",
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
    «step back to "B" when "All" is missed and every goal is met»
    advance to "A" when every goal is met
    «step back to "B" when "All" is met»
    repeat otherwise
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
    success {
      3 in a row with carry at least 90 m
      average carry at least 80 m
    }
  }
  block "More" test {
    3 shots
    success 3 in a row with carry at least 95 m
  }
  then {
    advance to "A" when every goal is met
    advance to "A" when "All" is met and any goal is missed
    step back to "B" when "All" is missed and any goal is met
    repeat when "All" is met
    repeat otherwise
  }
}`,
});
