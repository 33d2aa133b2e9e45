/** What is said of the name of a declaration, or of a block, that is not known. */
import { AstUtils } from "langium";
import { nearest } from "../../../shared/nearest.ts";
import { isBlock, isClub, isSession, isSessionPlan } from "../../generated/tree/ast.ts";
import type { NamedType } from "../../names/name-table.ts";
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

/** A block that the plan of a session does not have. */
export function unknownBlock(unknown: UnknownName): Explanation {
  const session = AstUtils.getContainerOfType(unknown.container, isSession);
  const plan = session?.statements.find(isSessionPlan)?.plan?.ref;
  if (plan === undefined) return undefined;
  const blocks = plan.statements.filter(isBlock).flatMap(({ name }) => name ?? []); // one can be half written
  const meant = nearest(unknown.name, blocks).slice(0, MOST_OFFERED);
  const advice =
    meant[0] !== undefined
      ? `Did you mean ${quoted(meant[0])}?`
      : blocks.length > 0
        ? `It has ${listed(blocks.map(quoted), "and")}.`
        : "It has none yet.";
  return {
    message: `The plan ${quoted(plan.name)} has no block ${quoted(unknown.name)}. ${advice}`,
    fixes: meant.map((name) => write(unknown, quoted(name))),
  };
}
