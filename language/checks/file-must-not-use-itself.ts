import { UriUtils } from "langium";
import { useTarget } from "../names/use-target.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";

/** A `use` of the file it stands in. */
export const check = defineCheck({
  on: ["Use"],
  reason: "A file knows its own names already, so the path was meant to be that of another file.",
  run(use, { document, report }) {
    const target = useTarget(use, document.uri);
    if (target === undefined || !UriUtils.equals(target, document.uri)) return;
    report({
      message: "This is the file itself, which knows its own names. Take the line out, or name another file.",
      node: use,
      fixes: [{ title: "Take the line out", edits: [remove(document, rangeOf(use))] }],
    });
  },
  reporting: `
«use "./example"»

plan "Gate" {
  block "Start" {
    10 shots
  }
}`,
  fixed: `

plan "Gate" {
  block "Start" {
    10 shots
  }
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}`,
});
