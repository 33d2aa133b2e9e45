import { AstUtils } from "langium";
import type { Document } from "../generated/tree/ast.ts";
import { NAMED_TYPES, type NamedType } from "../names/name-table.ts";
import { usePath } from "../names/use-target.ts";
import { defineCheck } from "./check.ts";
import { code, listed, quoted } from "./wording.ts";

/** A name that two used files declare, and this one does not. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "Where two files declare the same name, which of them is meant would hang on the order in which they are used.",
  run(root, { document, names, isBroken, report }) {
    if (root.uses.length < 2) return;
    const isNamed = new Set<string>(NAMED_TYPES);
    const files = new Map<string, readonly string[]>();
    for (const reference of document.references) {
      const cst = reference.$refNode;
      if (!("ref" in reference) || reference.ref === undefined || cst === undefined) continue;
      const type = reference.ref.$type;
      if (!isNamed.has(type) || isBroken(cst.astNode)) continue;
      const key = `${type} ${reference.$refText}`;
      let paths = files.get(key);
      if (paths === undefined) {
        const documents = names
          .find(document, type as NamedType, reference.$refText)
          .map((node) => AstUtils.getDocument<Document>(node));
        const isOwn = documents[0] === document;
        const used = documents.filter((file) => !names.library().includes(file));
        paths = isOwn ? [] : [...new Set(used.map(({ uri }) => usePath(document.uri, uri)))];
        files.set(key, paths);
      }
      if (paths.length < 2) continue;
      report({
        message: `${code(reference.$refText)} is declared in ${listed(paths.map(quoted), "and in")}. Rename one of them, or use only one of the files.`,
        node: cst.astNode,
        cst,
      });
    }
  },
  files: {
    "indoors.drill": `
metric pace is speed
metric rhythm is ratio
`,
    "outdoors.drill": `
metric pace is speed
metric breeze is speed
`,
  },
  reporting: `
use "./indoors"
use "./outdoors"

plan "Gate" {
  block "Start" {
    10 shots
    target «pace» at least 3 m/s and rhythm at least 3
    leave out shots where breeze above 8 m/s
  }
}`,
  silent: `
use "./indoors"

plan "Gate" {
  block "Start" {
    10 shots
    target pace at least 3 m/s and rhythm at least 3
  }
}`,
});
