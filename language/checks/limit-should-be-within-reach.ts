import { isLoadLimit, type LoadLimit } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { cstOf, rangeOf, replace } from "./edits.ts";
import { code } from "./wording.ts";

/** From the shortest: a week has days, and a day has sessions. */
const PERIODS = ["session", "day", "week"];

/** A limit that another one is always reached before. */
export const check = defineCheck({
  on: ["Plan", "Player"],
  reason:
    "A week holds the swings of each of its days, and swings at full effort are swings. A limit above one that holds for more says nothing, and mostly one of the two is a slip.",
  run({ statements }, { report }) {
    const limits = statements.filter(isLoadLimit);
    for (const limit of limits) {
      const wider = limits.filter((other) => other.count < limit.count && covers(other, limit));
      const [first] = wider.sort((one, other) => one.count - other.count);
      const count = cstOf(limit, "count");
      if (first === undefined || count === undefined) continue;
      const text = code(first.$cstNode?.text ?? "");
      report({
        message: `Nobody gets this far: ${text} in line ${rangeOf(first).start.line + 1} covers these swings too, and allows fewer. Write ${first.count} or less here, or allow more there.`,
        node: limit,
        fixes: [{ title: `Make it ${first.count}`, edits: [replace(count.range, String(first.count))] }],
      });
    }
  },
  reporting: `
player "P-1" {
  right-handed
  «limit 60 swings a day»
  limit 40 swings a week
}

player "P-2" {
  left-handed
  limit 50 swings
  «limit 60 full-effort swings a session»
  limit 120 full-effort swings a week
  limit 90 swings a day
}

plan "Gate" {
  limit 30 swings
  «limit 40 full-effort swings»
  block "Start" {
    20 shots
  }
}`,
  fixed: `
player "P-1" {
  right-handed
  limit 40 swings a day
  limit 40 swings a week
}

player "P-2" {
  left-handed
  limit 50 swings
  limit 50 full-effort swings a session
  limit 120 full-effort swings a week
  limit 90 swings a day
}

plan "Gate" {
  limit 30 swings
  limit 30 full-effort swings
  block "Start" {
    20 shots
  }
}`,
  silent: `
player "P-1" {
  right-handed
  limit 60 swings
  limit 60 swings a day
  limit 40 full-effort swings a day
  limit 200 swings a week
  limit 150 full-effort swings a week
}`,
});

/** Whether each swing that a limit counts is counted by this one too, which is about more than those. */
function covers(wider: LoadLimit, { fullEffort, period }: LoadLimit): boolean {
  const length = PERIODS.indexOf(period ?? "session");
  const width = PERIODS.indexOf(wider.period ?? "session");
  if (wider.fullEffort === fullEffort) return width > length;
  return fullEffort && width >= length;
}
