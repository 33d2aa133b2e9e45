import { AstUtils, type LangiumDocument } from "langium";
import { type Document, isClub, isDimension, isMetric, isSession, isSource } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";

/** A `use` whose names are not used. */
export const check = defineCheck({
  on: ["Document"],
  reason: "A file that is used for nothing makes readers look for what it is used for.",
  run(root, { document, names, hasSyntaxErrors, report }) {
    if (hasSyntaxErrors || root.uses.length === 0) return; // what cannot be read may use it
    const needed = new Set<LangiumDocument>();
    for (const reference of document.references) {
      if ("ref" in reference && reference.ref !== undefined) needed.add(AstUtils.getDocument(reference.ref));
    }
    const readsTables = root.declarations.some((node) => isSession(node) || isSource(node));
    const seen = new Set<LangiumDocument>();
    for (const { use, document: used } of names.usedFiles(document)) {
      if (used === undefined || used === document || seen.has(used) || needed.has(used)) continue;
      seen.add(used);
      if (readsTables && declaresVocabulary(used)) continue;
      report({
        message: "Nothing of this file is used here. Take the line out.",
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
«use "./standards"»

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
use "./standards"

plan "Gate" {
  needs pace
  block "Start" {
    10 shots
  }
}`,
});

/** Tables are read with all clubs and metrics in sight, whether the file names them or not. */
function declaresVocabulary(document: LangiumDocument<Document>): boolean {
  return document.parseResult.value.declarations.some(
    (node) => isClub(node) || isMetric(node) || isDimension(node),
  );
}
