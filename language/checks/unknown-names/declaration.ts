/** What is said of the name of a declaration, or of a block, that is not known. */
import { AstUtils } from "langium";
import { nearest } from "../../../shared/nearest.ts";
import { isAgainstBlock, isBlock, isClub, isDrill } from "../../generated/tree/ast.ts";
import type { NamedType } from "../../names/name-table.ts";
import { planAt } from "../../names/scope-provider.ts";
import { usePath } from "../../names/use-target.ts";
import type { Fix } from "../check.ts";
import { insertUse } from "../edits.ts";
import { code, listed, quoted } from "../wording.ts";
import { type Explanation, type UnknownName, whatElse, write } from "./unknown-name.ts";

/** How many names a message offers. */
const MOST_OFFERED = 3;

/** @param keyword the word that declares what is looked for. @param written how its names are written. */
export function unknownDeclaration(
  unknown: UnknownName,
  type: NamedType,
  keyword: string,
  written: "plain" | "quoted",
): Explanation {
  const shown = written === "quoted" ? quoted : code;
  const paths = pathsTo(unknown, type);
  const meant = meantNames(unknown, type);
  const [path] = paths;
  const [first] = meant;
  const advice =
    path !== undefined
      ? `It is declared in another file: add ${code(`use ${quoted(path)}`)}.`
      : first !== undefined
        ? `Did you mean ${shown(first)}?`
        : `Declare it with ${code(keyword)}, or add a ${code("use")} of the file that does.`;
  return {
    message: `${shown(unknown.name)} is no ${keyword} that is known here.${whatElse(unknown, type)} ${advice}`,
    fixes: [
      ...paths.map((to): Fix => ({ title: `Use ${quoted(to)}`, edits: [insertUse(unknown.document, to)] })),
      ...meant.map((name) => write(unknown, written === "quoted" ? quoted(name) : name)),
    ],
  };
}

/** The files that declare the name, as a `use` would state them. */
function pathsTo({ names, document, name }: UnknownName, type: NamedType): string[] {
  const declarations = names.elsewhere(document, type, name);
  return [...new Set(declarations.map((node) => usePath(document.uri, AstUtils.getDocument(node).uri)))];
}

/** The club that tables spell like this, or else the known names that are a slip away. */
function meantNames({ names, document, name }: UnknownName, type: NamedType): string[] {
  const known = [...names.visible(document, type)];
  const spelled = known.filter(isClub).filter(({ spellings }) => spellings.includes(name.toLowerCase()));
  const meant =
    spelled.length > 0
      ? spelled.map((club) => club.name)
      : nearest(
          name,
          known.map((node) => node.name),
        );
  return meant.slice(0, MOST_OFFERED);
}

/** A block that the plan does not have of which blocks can be named here. */
export function unknownBlock(unknown: UnknownName): Explanation {
  const { container, name } = unknown;
  const plan = planAt(container);
  if (plan === undefined) return isAgainstBlock(container) ? againstNoPlan(unknown) : undefined;
  const blocks = plan.statements.filter(isBlock).flatMap((block) => block.name ?? []); // one can be half written
  const meant = nearest(name, blocks).slice(0, MOST_OFFERED);
  const advice =
    meant[0] !== undefined
      ? `Did you mean ${quoted(meant[0])}?`
      : blocks.length > 0
        ? `It has ${listed(blocks.map(quoted), "and")}.`
        : "It has none yet.";
  return {
    message: `The plan ${quoted(plan.name)} has no block ${quoted(name)}. ${advice}`,
    fixes: meant.map((block) => write(unknown, quoted(block))),
  };
}

/** A drill or a finding compares with the block of a plan. */
function againstNoPlan(unknown: UnknownName): Explanation {
  const where = AstUtils.getContainerOfType(unknown.container, isDrill) === undefined ? "finding" : "drill";
  const baseline = "the baseline";
  return {
    message: `A ${where} knows no block of a plan, so it cannot say ${quoted(unknown.name)}. Write ${code(`against ${baseline}`)}, which every plan can have.`,
    fixes: where === "drill" ? [write(unknown, baseline)] : [],
  };
}
