import type { AstNode, CstNode, LangiumDocument } from "langium";
import {
  type Category,
  isBlock,
  isCategory,
  isDirection,
  isUnitName,
  type UnitName,
} from "../generated/tree/ast.ts";
import { freeName } from "../names/free-name.ts";
import { nameTableOf } from "../names/name-table.ts";
import { directionsOf } from "../types/directions.ts";
import { type CheckContext, defineCheck, type Fix } from "./check.ts";
import { cstOf, removeWords, replace } from "./edits.ts";
import { code, quoted } from "./wording.ts";

/** A name that stands for two things of one kind. */
export const check = defineCheck({
  on: ["Document", "Plan", "Metric"],
  reason: "A name that stands for two things does not say which of them is meant.",
  run(node, context) {
    const named: Named[] =
      node.$type === "Document"
        ? [...nameTableOf(node).all()]
        : node.$type === "Plan"
          ? node.statements.filter(isBlock)
          : [...directionsOf(node), ...node.categories];
    const first = new Map<string, Named>();
    const taken = new Set(named.map(({ name }) => name));
    for (const one of named) {
      if (!one.name || context.isBroken(one)) continue;
      const key = isDirection(one) ? one.name : `${one.$type} ${one.name}`;
      const earlier = first.get(key);
      if (earlier === undefined) first.set(key, one);
      else reportAgain(one, earlier, taken, context);
    }
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
  }
  block «"Start"» {
    12 shots
  }
}

plan «"Gate"» {
  block "Start" {
    10 shots
  }
}

dimension weight {
  unit kg or kilogram or «kg»
}

metric grip-weight is weight
metric «grip-weight» is weight
metric lean is angle {
  positive forward
  negative «forward»
}
metric strike is one of toe, heel, «toe»`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
  }
  block "Start 2" {
    12 shots
  }
}

plan "Gate 2" {
  block "Start" {
    10 shots
  }
}

dimension weight {
  unit kg or kilogram
}

metric grip-weight is weight
metric grip-weight-2 is weight
metric lean is angle {
  positive forward
  negative forward
}
metric strike is one of toe, heel`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
  }
  block "Again" {
    10 shots
  }
}

player "Gate" {
  right-handed
}`,
});

type Named = AstNode & { readonly name: string };

function reportAgain(
  named: Named,
  earlier: Named,
  taken: ReadonlySet<string>,
  { document, report }: CheckContext,
): void {
  const cst = cstOf(named, "name");
  if (cst === undefined) return;
  const line = (earlier.$cstNode?.range.start.line ?? 0) + 1;
  const kind = isBlock(named) ? "block of this plan" : named.$type.toLowerCase();
  const what = isDirection(named)
    ? "the word for a side"
    : isCategory(named)
      ? "one of the names"
      : isUnitName(named)
        ? "a unit"
        : `the name of a ${kind}`;
  report({
    message: `${cst.text.startsWith('"') ? cst.text : code(cst.text)} is already ${what}, in line ${line}. Choose another name here.`,
    node: named,
    cst,
    fixes: isDirection(named)
      ? []
      : [
          isUnitName(named) || isCategory(named)
            ? withoutName(named, cst, document)
            : rename(cst, named.name, taken),
        ].filter((fix) => fix !== undefined),
  });
}

/** Takes a name out of a unit or a metric that has others. */
function withoutName(named: UnitName | Category, cst: CstNode, document: LangiumDocument): Fix | undefined {
  const names: readonly Named[] = isCategory(named) ? named.$container.categories : named.$container.names;
  const before = names[names.indexOf(named) - 1]?.$cstNode;
  if (before === undefined) return undefined;
  const range = { start: before.range.end, end: cst.range.end };
  return { title: `Take ${named.name} out`, edits: [removeWords(document, range)] };
}

/** The next free name: `"Gate 2"`, or `carry-2` where names are words. */
function rename(cst: CstNode, name: string, taken: ReadonlySet<string>): Fix {
  const isQuoted = cst.text.startsWith('"');
  const free = freeName(name, taken, isQuoted ? " " : "-");
  const text = isQuoted ? quoted(free) : free;
  return { title: `Call it ${text}`, edits: [replace(cst.range, text)] };
}
