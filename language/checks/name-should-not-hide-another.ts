import { AstUtils } from "langium";
import { type Document, isSession } from "../generated/tree/ast.ts";
import { isLibraryUri } from "../library/library.ts";
import { nameTableOf } from "../names/name-table.ts";
import { usePath } from "../names/use-target.ts";
import { defineCheck } from "./check.ts";
import { quoted } from "./wording.ts";

/** A declaration that takes the name of one in the built-in vocabulary or in a used file. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "A file's own name is meant before one from elsewhere. Readers who know the other one will read the plan wrongly.",
  run(root, { document, names, isBroken, report }) {
    const seen = new Set<string>();
    for (const named of nameTableOf(root).all()) {
      const key = `${named.$type} ${named.name}`;
      if (isSession(named) || isBroken(named) || seen.has(key)) continue;
      seen.add(key);
      const other = names
        .find(document, named.$type, named.name)
        .find((node) => AstUtils.getDocument<Document>(node) !== document);
      if (other === undefined) continue;
      const { uri } = AstUtils.getDocument(other);
      const where = isLibraryUri(uri)
        ? "in the built-in vocabulary"
        : `in ${quoted(usePath(document.uri, uri))}`;
      report({
        message: `This name is taken ${where}, and here it would mean something else. Choose another, or use the one that is there.`,
        node: named,
        property: "name",
      });
    }
  },
  files: {
    "standards.drill": `
metric pace is speed

plan "Gate" {
  block "Start" {
    10 shots
  }
}`,
  },
  reporting: `
use "./standards"

metric «carry» is length

plan «"Gate"» {
  needs pace, carry
  block "Start" {
    12 shots
  }
}`,
  silent: `
use "./standards"

metric carry-indoors is length

plan "Gate, again" {
  needs pace, carry-indoors
  block "Start" {
    12 shots
  }
}`,
});
