/** What is said of the name of a declaration, or of a block, that is not known. */
import { AstUtils } from "langium";
import { foldNumbered } from "../../../shared/fold.ts";
import { metricsCalled } from "../../../shared/metric-words.ts";
import { nearest } from "../../../shared/nearest.ts";
import { isAgainstBlock, isBlock, isClub, isDrill, Metric, Player } from "../../generated/tree/ast.ts";
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

/** What people call this, where tables or the trade do; else the known names that are a slip away, or share its words. */
function meantNames({ names, document, name }: UnknownName, type: NamedType): string[] {
  const nodes = [...names.visible(document, type)];
  const known = nodes.map((node) => node.name);
  // Codes differ by a digit: what is a slip in another name would be somebody else's shots.
  if (type === Player.$type) return known.filter((code) => foldNumbered(code) === foldNumbered(name));
  const called = type === Metric.$type ? metricsCalled(name).filter((metric) => known.includes(metric)) : [];
  const spelled = nodes.filter(isClub).filter(({ spellings }) => spellings.includes(name.toLowerCase()));
  const groups = [
    [...called, ...spelled.map((club) => club.name)],
    nearest(name, known),
    known.filter((other) => isPartOf(name, other) || isPartOf(other, name)),
  ];
  return groups.find((group) => group.length > 0)?.slice(0, MOST_OFFERED) ?? [];
}

/** Whether a name is made of words of another, in any order: `spin` of `spin-rate`, `iron-7` of `7-iron`. */
function isPartOf(name: string, other: string): boolean {
  const words = new Set(other.toLowerCase().split("-"));
  return name
    .toLowerCase()
    .split("-")
    .every((word) => words.has(word));
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
