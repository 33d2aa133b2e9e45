import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";

/** A file that is used twice. */
export const check = defineCheck({
  on: ["Document"],
  reason: "The second line says nothing that the first has not said.",
  run(_, { document, names, report }) {
    const seen = new Set<string>();
    for (const { use, uri } of names.usedFiles(document)) {
      if (!seen.has(uri.toString())) {
        seen.add(uri.toString());
        continue;
      }
      report({
        message: "This file is used above already. Take the line out.",
        node: use,
        unnecessary: true,
        fixes: [{ title: "Take the line out", edits: [remove(document, rangeOf(use))] }],
      });
    }
  },
  files: {
    "standards.drill": `
metric pace is speed
`,
  },
  reporting: `
use "./standards"
«use "./standards.drill"»

plan "Gate" {
  needs pace
  block "Start" {
    10 shots
  }
}`,
  fixed: `
use "./standards"

plan "Gate" {
  needs pace
  block "Start" {
    10 shots
  }
}`,
  silent: `
use "./standards"

plan "Gate" {
  needs pace
  block "Start" {
    10 shots
  }
}`,
});
