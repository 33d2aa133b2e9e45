/** What a check is. Every other file in this folder that exports `check` is one; its file name is its id. */
import type { AstNode, CstNode, LangiumDocument } from "langium";
import type { Location } from "../../shared/plan-model.ts";
import type { Document, DrillwrightAstType } from "../generated/tree/ast.ts";
import type { Names } from "../names/names.ts";
import type { Meanings } from "./meanings.ts";

/** A zero-based range of a text, as in the language server protocol. */
export interface TextRange {
  readonly start: { readonly line: number; readonly character: number };
  readonly end: { readonly line: number; readonly character: number };
}

export interface TextEdit {
  readonly range: TextRange;
  readonly newText: string;
}

/** A change that removes a finding and brings no new one. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly TextEdit[];
}

/** Something a check has to say about a place in a file. */
export interface Finding {
  /** What is wrong, why, and what to do, in a coach's words. */
  readonly message: string;
  /** Where: a node, or one of its properties. */
  readonly node: AstNode;
  readonly property?: string;
  readonly index?: number;
  /** A narrower place than the node, where neither property nor node will do. */
  readonly cst?: CstNode;
  /** The place itself, where it is known and no node is at hand. */
  readonly range?: TextRange;
  readonly fixes?: readonly Fix[];
  /** The text is not needed and is shown faded. */
  readonly unnecessary?: boolean;
  /** Other places that have a part in it, and which part. `file` is a URI. */
  readonly related?: readonly Related[];
}

export interface Related {
  readonly message: string;
  readonly location: Location;
}

export interface CheckContext {
  readonly document: LangiumDocument<Document>;
  readonly names: Names;
  /** Some part of the file could not be read, so that what refers to what is not all known. */
  readonly hasSyntaxErrors: boolean;
  /** Whether a node lies in a part of the file that could not be read. Checks of single nodes are not asked there. */
  readonly isBroken: (node: AstNode) => boolean;
  /** What the plans of the file mean, for checks that look at that. */
  readonly meanings: Meanings;
  readonly report: (finding: Finding) => void;
}

export interface Check<Type extends keyof DrillwrightAstType = keyof DrillwrightAstType> {
  /** The nodes it looks at. */
  readonly on: readonly Type[];
  /** Looks at what is meant. Such a check is asked after all others, and of no part in which they found an error. */
  readonly looksAtMeaning?: boolean;
  /** Looks at how a practice is built. The examples of other checks are no whole practices, and are not held against it. */
  readonly isAboutPractice?: true;
  /** Why it is worth saying. Shown in the reference. */
  readonly reason: string;
  /** Called once for each node. Parts of a node can be missing while a file is being typed only where the grammar says so. */
  run(node: DrillwrightAstType[Type], context: CheckContext): void;
  /** Further files that the examples use, by name. */
  readonly files?: Readonly<Record<string, string>>;
  /** A file in which exactly the marked places, `«…»`, are reported by this check, and nothing by others. */
  readonly reporting: string;
  /** That file after the first fix of each finding. */
  readonly fixed?: string;
  /** A similar file in which nothing is reported. */
  readonly silent: string;
}

/** Gives a check its types. */
export function defineCheck<Type extends keyof DrillwrightAstType>(check: Check<Type>): Check<Type> {
  return check;
}

/** `code` of the diagnostics about ourselves: a check that failed where it should have answered. */
export const FAULT_CODE = "fault";

/** The weightiest first. */
export const SEVERITIES = ["error", "warning", "hint"] as const;

export type Severity = (typeof SEVERITIES)[number];

/** The id says how much weight a check has: `…-must-…` an error, `…-should-…` a warning, `…-could-…` a hint. */
export function severityOf(id: string): Severity {
  if (/(^|-)must(-|$)/.test(id)) return "error";
  if (/(^|-)should(-|$)/.test(id)) return "warning";
  if (/(^|-)could(-|$)/.test(id)) return "hint";
  throw new Error(`The id of a check must contain must, should or could: ${id}`);
}
