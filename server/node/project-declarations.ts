/** What the files of a project declare that a proposal for tables can refer to. */
import { type LangiumDocument, type URI, UriUtils } from "langium";
import {
  type Column,
  type Document,
  isBlock,
  isColumn,
  isDecimalMark,
  isHeaderRow,
  isPlan,
  isPlayer,
  isSeparator,
  isSource,
} from "../../language/generated/tree/ast.ts";
import { handOf } from "../../language/lowering/session.ts";
import { usePath } from "../../language/names/use-target.ts";
import type { ProjectDeclarations } from "../import/propose/project.ts";

/**
 * Files need only have been parsed.
 * @param proposal the file that will refer to them, which is left out itself
 */
export function projectDeclarations(
  files: Iterable<LangiumDocument<Document>>,
  proposal: URI,
): ProjectDeclarations {
  const declared = [...files]
    .filter(({ uri }) => !UriUtils.equals(uri, proposal))
    .flatMap(({ uri, parseResult }) => {
      const use = usePath(proposal, uri);
      // One can be half written.
      return parseResult.value.declarations
        .filter(({ name }) => name)
        .map((node) => ({ node, name: node.name, use }));
    });
  return {
    plans: declared.flatMap(({ node, name, use }) =>
      isPlan(node)
        ? [{ name, use, blocks: node.statements.filter(isBlock).flatMap((block) => block.name ?? []) }]
        : [],
    ),
    players: declared.flatMap(({ node, name, use }) =>
      isPlayer(node) ? [{ name, use, hand: handOf(node) }] : [],
    ),
    sources: declared.flatMap(({ node, name, use }) => {
      if (!isSource(node)) return [];
      const { statements } = node;
      return {
        name,
        use,
        separator: statements.find(isSeparator)?.mark ?? null,
        decimal: statements.find(isDecimalMark)?.mark ?? "point",
        headerRow: statements.find(isHeaderRow)?.row ?? 1,
        columns: statements
          .filter(isColumn)
          .map((column) => ({ header: column.header ?? "", says: saidOf(column) })),
      };
    }),
  };
}

/** `club-path in ° positive right` of `column "Path" is club-path in ° positive right`. */
function saidOf({ content }: Column): string {
  return (content?.$cstNode?.text ?? "").replace(/^is\s+/, "").replace(/\s+/g, " ");
}
