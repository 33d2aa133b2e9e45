/** Turns what the parser and the checks have to say about a file into diagnostics. */

import {
  type AstNode,
  type Cancellation,
  type CstNode,
  type DocumentValidator,
  interruptAndCheck,
  type LangiumDocument,
  type ParseResult,
  type ValidationOptions,
} from "langium";
import { comparePositions } from "../../shared/position.ts";
import type { DrillwrightServices } from "../core-module.ts";
import { CHECKS } from "../generated/checks.ts";
import type { Document } from "../generated/tree/ast.ts";
import type { Names } from "../names/names.ts";
import { syntaxErrors } from "../syntax/syntax-errors.ts";
import { BrokenParts } from "./broken-parts.ts";
import {
  type Check,
  type CheckContext,
  FAULT_CODE,
  type Finding,
  type Fix,
  type Related,
  SEVERITIES,
  type Severity,
  severityOf,
  type TextRange,
} from "./check.ts";
import { cstOf } from "./edits.ts";
import { Meanings } from "./meanings.ts";
import { Memory } from "./remembered.ts";

/** The protocol's diagnostic, as the framework has it. */
type Diagnostic = Awaited<ReturnType<DocumentValidator["validateDocument"]>>[number];

/** `source` of the diagnostics that are about mistakes in the text. */
export const MISTAKE_SOURCE = "drillwright";

/** `code` of the diagnostics of parser and lexer. */
export const SYNTAX_CODE = "syntax";

/** More than this helps nobody, and floods an editor when a file is no plan at all. */
const MOST_DIAGNOSTICS = 200;

/** Nodes looked at between two chances to be interrupted. */
const NODES_A_SLICE = 500;

/** What a diagnostic carries for code actions. */
export interface DiagnosticData {
  readonly fixes: readonly Fix[];
}

/** What a check is asked by: objects of one shape, which checks themselves are not. */
interface Entry {
  readonly id: string;
  readonly severity: Severity;
  readonly looksAtMeaning: boolean;
  readonly run: Check["run"];
}

const SEVERITY_NUMBERS = { error: 1, warning: 2, hint: 4 } as const;
const UNNECESSARY = 1;

/**
 * Runs every check in one walk over the tree. Cost: linear in the nodes. A check that throws is a fault of ours, which
 * is said once, with the weight of what it could have found; everything else is found all the same.
 */
export class DrillwrightDocumentValidator implements DocumentValidator {
  private readonly names: Names;
  private readonly checks: Readonly<Record<string, Check>>;
  private readonly memory = new Memory();
  private readonly checksBySeverities = new Map<string, ReadonlyMap<string, readonly Entry[]>>();

  /** @param checks by id. */
  constructor(
    services: DrillwrightServices,
    checks: Readonly<Record<string, Check>> = CHECKS as Readonly<Record<string, Check>>,
  ) {
    this.names = services.names.Names;
    this.checks = checks;
  }

  /** @param options the severities of the checks to be run, as categories; all where none are named. */
  async validateDocument(
    document: LangiumDocument,
    options?: ValidationOptions,
    cancelToken?: Cancellation.CancellationToken,
  ): Promise<Diagnostic[]> {
    const diagnostics = syntaxDiagnostics(document.parseResult);
    const broken = new BrokenParts(document.parseResult);
    const isBroken = (node: AstNode) => broken.includes(node);
    const file = document as LangiumDocument<Document>;
    const errorsFound = () => diagnostics.filter(isError).map(({ range }) => range);
    let asked: Entry | undefined;
    const context: CheckContext = {
      document: file,
      names: this.names,
      hasSyntaxErrors: diagnostics.length > 0,
      isBroken,
      meanings: new Meanings(file, this.names, isBroken, errorsFound, this.memory),
      report: (finding) => {
        if (asked !== undefined) diagnostics.push(toDiagnostic(asked, finding));
      },
    };
    const failed = new Set<Entry>();
    const ask = (entry: Entry, node: AstNode): void => {
      if (failed.has(entry)) return;
      asked = entry;
      try {
        entry.run(node as never, context);
      } catch (error) {
        failed.add(entry);
        diagnostics.push(toFault(entry, node, error));
      }
    };
    const { categories = [] } = options ?? {};
    const checks = this.checksOf(categories.length > 0 ? categories : SEVERITIES);
    const aboutMeaning: [Entry, AstNode][] = [];
    let visited = 0;
    const waiting: AstNode[] = [document.parseResult.value];
    for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
      if (++visited % NODES_A_SLICE === 0 && cancelToken !== undefined) await interruptAndCheck(cancelToken);
      if (!broken.isWhole(node)) pushChildren(node, waiting);
      if (broken.has(node)) continue;
      for (const entry of checks.get(node.$type) ?? []) {
        if (entry.looksAtMeaning) aboutMeaning.push([entry, node]);
        else ask(entry, node);
      }
    }
    for (const [entry, node] of aboutMeaning) {
      if (cancelToken !== undefined) await interruptAndCheck(cancelToken);
      ask(entry, node);
    }
    return inOrder(weightiest(inOrder(diagnostics)));
  }

  /** Those of these severities, by the type of the nodes they look at. */
  private checksOf(severities: readonly string[]): ReadonlyMap<string, readonly Entry[]> {
    const key = severities.join();
    const known = this.checksBySeverities.get(key);
    if (known !== undefined) return known;
    const wanted = Object.entries(this.checks).filter(([id]) => severities.includes(severityOf(id)));
    const checks = byType(Object.fromEntries(wanted));
    this.checksBySeverities.set(key, checks);
    return checks;
  }
}

/** Adds the nodes that a node is made of. Plain loops: this runs for every node at every keystroke. */
function pushChildren(node: AstNode, into: AstNode[]): void {
  for (const property in node) {
    const value: unknown = node[property as keyof AstNode];
    if (typeof value !== "object" || property.startsWith("$")) continue;
    if (Array.isArray(value)) {
      for (const item of value) if (isNode(item)) into.push(item);
    } else if (isNode(value)) into.push(value);
  }
}

/** References have no type of their own, and lead out of the tree. */
function isNode(value: unknown): value is AstNode {
  return typeof value === "object" && value !== null && "$type" in value;
}

function byType(checks: Readonly<Record<string, Check>>): Map<string, Entry[]> {
  const result = new Map<string, Entry[]>();
  for (const [id, { on, looksAtMeaning = false, run }] of Object.entries(checks)) {
    const entry = { id, severity: severityOf(id), looksAtMeaning, run };
    for (const type of on) {
      const entries = result.get(type) ?? [];
      entries.push(entry);
      result.set(type, entries);
    }
  }
  return result;
}

function toDiagnostic({ id, severity }: Entry, finding: Finding): Diagnostic {
  const cst =
    finding.cst ??
    (finding.property === undefined ? undefined : cstOf(finding.node, finding.property, finding.index)) ??
    finding.node.$cstNode;
  return {
    message: finding.message,
    range: finding.range ?? rangeOf(cst),
    severity: SEVERITY_NUMBERS[severity],
    code: id,
    source: MISTAKE_SOURCE,
    ...(finding.unnecessary ? { tags: [UNNECESSARY] } : {}),
    ...(finding.related ? { relatedInformation: finding.related.map(toRelated) } : {}),
    data: { fixes: finding.fixes ?? [] } satisfies DiagnosticData,
  };
}

function toRelated({ message, location: { file, range } }: Related) {
  return { message, location: { uri: file, range } };
}

function isError({ severity }: Diagnostic): boolean {
  return severity === SEVERITY_NUMBERS.error;
}

function toFault({ id, severity }: Entry, node: AstNode, error: unknown): Diagnostic {
  const reason = error instanceof Error ? error.message : String(error);
  return {
    message: `This could not be checked, which is our fault, not yours. Please report it: ${id}: ${reason}`,
    range: rangeOf(node.$cstNode),
    severity: SEVERITY_NUMBERS[severity],
    code: FAULT_CODE,
    source: MISTAKE_SOURCE,
    data: { fixes: [] } satisfies DiagnosticData,
  };
}

/** A node that spans several lines is underlined on its first only. */
function rangeOf(cst: CstNode | undefined): TextRange {
  if (cst === undefined) return { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };
  const { start, end } = cst.range;
  if (start.line === end.line) return { start, end };
  const firstLine = cst.text.split(/\r?\n/, 1)[0] ?? "";
  return { start, end: { line: start.line, character: start.character + firstLine.trimEnd().length } };
}

function syntaxDiagnostics(result: ParseResult): Diagnostic[] {
  if (result.parserErrors.length === 0) return [];
  return syntaxErrors(result).map(({ message, range, fixes }) => ({
    message,
    range,
    severity: SEVERITY_NUMBERS.error,
    code: SYNTAX_CODE,
    source: MISTAKE_SOURCE,
    data: { fixes: fixes ?? [] } satisfies DiagnosticData,
  }));
}

/** As many as are shown: the first errors, then the first warnings, so that no number of hints can hide one. */
function weightiest(diagnostics: Diagnostic[]): Diagnostic[] {
  if (diagnostics.length <= MOST_DIAGNOSTICS) return diagnostics;
  const weight = ({ severity }: Diagnostic) => severity ?? SEVERITY_NUMBERS.hint;
  return diagnostics.sort((a, b) => weight(a) - weight(b)).slice(0, MOST_DIAGNOSTICS);
}

function inOrder(diagnostics: Diagnostic[]): Diagnostic[] {
  return diagnostics.sort((one, other) => comparePositions(one.range.start, other.range.start));
}
