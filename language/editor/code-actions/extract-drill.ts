import { AstUtils, GrammarUtils } from "langium";
import { CodeActionKind } from "vscode-languageserver";
import { insertBefore, lineEndOf, rangeOf, replace } from "../../checks/edits.ts";
import { quoted } from "../../checks/wording.ts";
import {
  type Block,
  type BlockStatement,
  Drill,
  isAgainstBlock,
  isBlock,
  isNumberTest,
  isPlan,
  isTarget,
  isWithin,
  type Quantity,
} from "../../generated/tree/ast.ts";
import { rewritten } from "../../lowering/place.ts";
import { freeName } from "../../names/free-name.ts";
import { measureOf } from "../../types/amounts.ts";
import type { Refactoring } from "./refactoring.ts";

/** A block's statements as a drill, the tolerances of its targets as parameters. */
export const extractDrill: Refactoring = {
  kind: CodeActionKind.RefactorExtract,
  offer: (block, { document, names }) => {
    const plan = AstUtils.getContainerOfType(block, isPlan);
    if (!isBlock(block) || block.use !== undefined || plan === undefined) return [];
    if (block.statements.length === 0) return [];
    const taken = [...names.visible(document, Drill.$type)].map(({ name }) => name);
    const name = freeName(block.name, taken, " ");
    // A drill knows no blocks of the plans that use it.
    const stays = (statement: BlockStatement) => AstUtils.streamAst(statement).some(isAgainstBlock);
    const moving = block.statements.filter((statement) => !stays(statement));
    const staying = block.statements.filter(stays);

    const tolerances = moving.flatMap(tolerancesIn);
    const parameters = new Map<Quantity, string>();
    for (const { quantity, metric } of tolerances) {
      parameters.set(quantity, freeName(`${metric}-tolerance`, parameters.values()));
    }
    const declared = tolerances.map(
      ({ quantity, dimension }) => `${parameters.get(quantity)}: ${dimension} = ${quantity.$cstNode?.text}`,
    );
    const lineEnd = lineEndOf(document);
    const header = [
      `drill ${quoted(name)}`,
      declared.length > 0 ? `(${declared.join(", ")})` : undefined,
      block.kind,
      "{",
    ];
    const body = bodyOf(block, parameters, staying);
    const drill = `${header.filter(Boolean).join(" ")}${body}}${lineEnd}${lineEnd}`;
    return [
      {
        title: `Extract drill ${quoted(name)}`,
        edits: [
          insertBefore(startOf(plan), drill),
          replace(rangeOf(block), useOf(block, name, staying, lineEnd)),
        ],
      },
    ];
  },
};

/** The tolerances of a target, with what is measured. */
function tolerancesIn(statement: BlockStatement) {
  if (!isTarget(statement)) return [];
  return AstUtils.streamAst(statement)
    .filter(isWithin)
    .toArray()
    .flatMap(({ tolerance: quantity, $container: test }) => {
      const metric = isNumberTest(test) ? test.metric?.ref : undefined;
      const dimension = metric && measureOf(metric)?.dimension.name;
      return metric === undefined || dimension === undefined || quantity.value === undefined
        ? []
        : [{ quantity, metric: metric.name, dimension }];
    });
}

/**
 * What stands between the braces of a block, comments included, with its lines one step further out, parameters in place
 * of their amounts, and without the statements that stay.
 */
function bodyOf(
  block: Block,
  parameters: ReadonlyMap<Quantity, string>,
  staying: readonly BlockStatement[],
): string {
  const changes = [
    ...[...parameters].map(([quantity, name]) => ({ cst: quantity.$cstNode, by: name })),
    ...staying.map((statement) => ({ cst: statement.$cstNode, by: "" })),
  ];
  const brace = GrammarUtils.findNodeForKeyword(block.$cstNode, "{");
  const start = (brace?.end ?? 0) - (block.$cstNode?.offset ?? 0);
  const body = rewritten(block, changes).slice(start, -1);
  const further = " ".repeat(rangeOf(block).start.character);
  return body.replaceAll(`\n${further}`, "\n").replace(/\n[ \t]+(?=\r?\n)/g, "");
}

/** The block that uses the drill instead. */
function useOf(block: Block, drill: string, staying: readonly BlockStatement[], lineEnd: string): string {
  const use = `block ${quoted(block.name)} from ${quoted(drill)}`;
  if (staying.length === 0) return use;
  const indentation = " ".repeat(rangeOf(block).start.character);
  const lines = staying.map((statement) => `${indentation}  ${statement.$cstNode?.text}`);
  return [`${use} {`, ...lines, `${indentation}}`].join(lineEnd);
}

/** Where a declaration starts, its doc comment included. */
function startOf(node: Parameters<typeof rangeOf>[0]) {
  const cst = node.$cstNode;
  const comment = cst && /\/\*\*[\s\S]*?\*\/\s*$/.exec(cst.root.fullText.slice(0, cst.offset))?.[0];
  if (cst === undefined || comment === undefined) return rangeOf(node);
  const lines = comment.split("\n").length - 1;
  const start = { line: cst.range.start.line - lines, character: 0 };
  return { start, end: start };
}
