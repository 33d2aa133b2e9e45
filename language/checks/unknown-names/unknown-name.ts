/** A name that means nothing where it stands. */
import type { AstNode, CstNode, LangiumDocument } from "langium";
import { Club, Dimension, type Document, Metric, UnitName } from "../../generated/tree/ast.ts";
import type { NamedType } from "../../names/name-table.ts";
import type { Names } from "../../names/names.ts";
import { dimensionOfUnit } from "../../types/units.ts";
import type { Finding, Fix } from "../check.ts";
import { replace } from "../edits.ts";

export interface UnknownName {
  readonly name: string;
  readonly cst: CstNode;
  /** The node that holds the reference. */
  readonly container: AstNode;
  readonly document: LangiumDocument<Document>;
  readonly names: Names;
}

/** What there is to say, or undefined where the name can only be judged when another mistake is gone. */
export type Explanation = Pick<Finding, "message" | "fixes"> | undefined;

export function write({ cst }: UnknownName, text: string): Fix {
  return { title: `Write ${text}`, edits: [replace(cst.range, text)] };
}

const KINDS = new Map<NamedType, string>([
  [Club.$type, "a club"],
  [Metric.$type, "a metric"],
  [Dimension.$type, "a dimension"],
]);

/** What the name is, where it is something else than what is looked for: ` It is a unit of speed.` */
export function whatElse({ name, names, document }: UnknownName, lookedFor: NamedType): string {
  const [unit] = names.find(document, UnitName.$type, name);
  if (unit?.$type === UnitName.$type && lookedFor !== UnitName.$type) {
    return ` It is a unit of ${dimensionOfUnit(unit).name}.`;
  }
  for (const [type, words] of KINDS) {
    if (type !== lookedFor && names.find(document, type, name).length > 0) return ` It is ${words}.`;
  }
  return "";
}
