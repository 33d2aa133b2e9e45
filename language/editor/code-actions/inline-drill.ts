import { GrammarUtils } from "langium";
import { CodeActionKind } from "vscode-languageserver";
import { lineEndOf, rangeOf, replace } from "../../checks/edits.ts";
import { quoted } from "../../checks/wording.ts";
import { type Block, isBlock } from "../../generated/tree/ast.ts";
import { statementsOf } from "../../lowering/block.ts";
import { withArguments } from "../../lowering/place.ts";
import type { Refactoring } from "./refactoring.ts";

/** A block from a drill with the drill's statements written out, its parameters replaced by what they stand for. */
export const inlineDrill: Refactoring = {
  kind: CodeActionKind.RefactorInline,
  offer: (block, { document }) => {
    if (!isBlock(block)) return [];
    const drill = block.use?.drill?.ref;
    if (drill === undefined) return [];
    const own = new Set(block.statements);
    const indentation = " ".repeat(rangeOf(block).start.character);
    const lineEnd = lineEndOf(document);
    const inherited = statementsOf(block)
      .filter(({ statement }) => !own.has(statement))
      .map(({ statement, bindings }) => {
        const text = withArguments(statement, bindings);
        const further = " ".repeat(rangeOf(statement).start.character);
        return `${indentation}  ${text.replaceAll(`\n${further}`, `\n${indentation}  `)}`;
      });
    const kind = block.kind ?? drill.kind;
    const header = `block ${quoted(block.name)}${kind === undefined ? "" : ` ${kind}`} {`;
    const text = [header, ...inherited].join(lineEnd) + ownBody(block, lineEnd + indentation);
    return [{ title: `Write drill ${quoted(drill.name)} out`, edits: [replace(rangeOf(block), text)] }];
  },
};

/** What stands between the block's own braces, comments included, up to its end. */
function ownBody(block: Block, lineEnd: string): string {
  const { text = "", offset = 0 } = block.$cstNode ?? {};
  const brace = GrammarUtils.findNodeForKeyword(block.$cstNode, "{");
  return brace === undefined ? `${lineEnd}}` : text.slice(brace.end - offset);
}
