import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { repeated } from "./repeated.ts";

/** A file that is used twice. */
export const check = defineCheck({
  on: ["Document"],
  reason: "The second line says nothing that the first has not said.",
  run(_, { document, names, report }) {
    for (const { thing } of repeated(names.usedFiles(document), ({ uri }) => uri.toString())) {
      report({
        message: "This file is used above already. Take the line out.",
        node: thing.use,
        unnecessary: true,
        fixes: [{ title: "Take the line out", edits: [remove(document, rangeOf(thing.use))] }],
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
