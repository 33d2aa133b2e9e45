import type { AstNode } from "langium";
import { isDrill, isFinding, isPlan, isWindow } from "../generated/tree/ast.ts";
import { type CheckContext, defineCheck } from "./check.ts";
import { quoted } from "./wording.ts";

/** A drill, a window or a finding that the plans of its file leave aside, in a file that no other uses. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "Readers look for what a drill is there for. One that nothing refers to is left over, or was forgotten in a plan.",
  run(root, { document, names, hasSyntaxErrors, report }) {
    const parts = root.declarations.filter((node) => isDrill(node) || isWindow(node) || isFinding(node));
    // What is shared stands in files without plans; and what cannot be read may refer to it.
    if (parts.length === 0 || hasSyntaxErrors || !root.declarations.some(isPlan)) return;
    const meant = new Set<AstNode>();
    for (const reference of document.references)
      if ("ref" in reference && reference.ref) meant.add(reference.ref);
    const left = parts.filter((part) => !meant.has(part));
    if (left.length === 0 || isUsed(document, names)) return;
    for (const part of left) {
      report({
        message: `Nothing refers to this ${part.$type.toLowerCase()}. Name ${quoted(part.name)} in a plan, move it to a file of its own for others to use, or take it out.`,
        node: part,
        property: "name",
        unnecessary: true,
      });
    }
  },
  reporting: `
drill «"Line"» {
  10 shots
  target start-direction within ±2°
}

window "Path" is club-path within 2° of 1° in-to-out

plan "Gate" {
  block "Start" {
    10 shots
    target inside "Path"
  }
}`,
  silent: `
drill "Line" {
  10 shots
  target start-direction within ±2°
}

plan "Gate" {
  block "Start" from "Line"
}`,
});

/** Whether another file uses this one. Linear in the files; asked only where something is left over. */
function isUsed(document: CheckContext["document"], names: CheckContext["names"]): boolean {
  const uri = document.uri.toString();
  for (const file of names.files()) {
    if (file !== document && names.usedUris(file).some((used) => used.toString() === uri)) return true;
  }
  return false;
}
