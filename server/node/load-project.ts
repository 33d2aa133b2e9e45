/** Loads `.drill` files, with all they use, and checks them. */
import { readFileSync } from "node:fs";
import { EmptyFileSystem, type LangiumDocument, TextDocument, URI } from "langium";
import type { Severity } from "../../language/checks/check.ts";
import type { DiagnosticData } from "../../language/checks/document-validator.ts";
import { createCoreServices, type DrillwrightServices } from "../../language/core-module.ts";
import type { Document } from "../../language/generated/tree/ast.ts";
import { layoutEdits } from "../../language/layout/layout.ts";
import { Lowering } from "../../language/lowering/document.ts";
import type { Finding, FindingSeverity } from "../report/check-report.ts";
import { PathError } from "./path-error.ts";
import { nameOfPath } from "./path-names.ts";
import { planText } from "./plan-text.ts";
import { isMissing, isSystemError, reasonOf } from "./system-errors.ts";

/** A file of a project. */
export interface ProjectFile {
  /** Its path relative to the working folder, with forward slashes. */
  readonly name: string;
  /** Empty where the file could not be read. */
  readonly document: LangiumDocument<Document>;
  /** False where it is here only because another file uses it. */
  readonly isGiven: boolean;
  /** From top to bottom. */
  readonly findings: readonly Finding[];
}

export interface Project {
  /** In the order of their names. */
  readonly files: readonly ProjectFile[];
  readonly lowering: Lowering;
  /** The text of a file in the layout of the language. */
  laidOut(file: ProjectFile): string;
  /** The file of that name, and every file that it uses, directly or through others. */
  reach(name: string): readonly ProjectFile[];
}

/** A text that stands in for a file: what came through standard input. */
export interface GivenText {
  /** Absolute path it is taken to have. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

/**
 * Reads, links and checks the files at these absolute paths and, in turn, those they use. What is wrong with a file is
 * among its findings. Linear in the length of the texts.
 * @param severities of what is looked for. Of a plan that is only to be scored nobody is told more than its errors.
 * @throws PathError where a given file is gone.
 */
export async function loadProject(
  given: readonly (string | GivenText)[],
  cwd: string,
  severities: readonly Severity[] = ["error"],
): Promise<Project> {
  const { shared, drillwright } = createCoreServices(EmptyFileSystem);
  await shared.workspace.WorkspaceManager.initializeWorkspace([]);
  const nameOf = (uri: URI) => (uri.scheme === "file" ? nameOfPath(uri.fsPath, cwd) : uri.toString());
  const loading = new Loading(drillwright);
  for (const file of given) {
    if (typeof file !== "string") loading.fromBytes(URI.file(file.path), file.bytes);
    else if (!loading.fromDisk(URI.file(file))) throw new PathError(`${nameOfPath(file, cwd)} is gone.`);
  }
  const isGiven = new Set(loading.documents);
  loading.usedFiles();
  await shared.workspace.DocumentBuilder.build([...loading.documents], { validation: false });
  const { DocumentValidator } = drillwright.validation;
  for (const document of loading.documents) {
    document.diagnostics = await DocumentValidator.validateDocument(document, {
      categories: [...severities],
    });
  }

  const files = loading.documents
    .map((document): ProjectFile => {
      const name = nameOf(document.uri);
      const problem = loading.problems.get(document);
      return {
        name,
        document,
        isGiven: isGiven.has(document),
        findings: problem === undefined ? findingsOf(document, name) : [unreadable(name, problem)],
      };
    })
    .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  return {
    files,
    lowering: new Lowering(drillwright, nameOf),
    laidOut: ({ document }) =>
      TextDocument.applyEdits(document.textDocument, layoutEdits(document, drillwright.parser.Lexer)),
    reach: (name) => reach(name, files, drillwright),
  };
}

/** Files on their way into the services' memory. */
class Loading {
  readonly documents: LangiumDocument<Document>[] = [];
  /** Why the text of a document could not be had. */
  readonly problems = new Map<LangiumDocument<Document>, string>();
  private readonly services: DrillwrightServices;

  constructor(services: DrillwrightServices) {
    this.services = services;
  }

  /** False where there is no such file. */
  fromDisk(uri: URI): boolean {
    try {
      this.fromBytes(uri, readFileSync(uri.fsPath));
    } catch (error) {
      if (isMissing(error)) return false;
      if (!isSystemError(error)) throw error;
      this.add(uri, "", `This file cannot be read: ${reasonOf(error)}.`);
    }
    return true;
  }

  fromBytes(uri: URI, bytes: Uint8Array): void {
    const content = planText(bytes);
    if ("text" in content) this.add(uri, content.text);
    else this.add(uri, "", content.problem);
  }

  /** Follows every `use`. Where it leads to no file nothing is loaded: saying so is the checks' part. */
  usedFiles(): void {
    // The list grows while it is walked.
    for (const document of this.documents) {
      for (const { uri, document: used } of this.services.names.Names.usedFiles(document)) {
        if (used === undefined) this.fromDisk(uri);
      }
    }
  }

  private add(uri: URI, text: string, problem?: string): void {
    const { LangiumDocuments, LangiumDocumentFactory } = this.services.shared.workspace;
    if (LangiumDocuments.hasDocument(uri)) return;
    const document = LangiumDocumentFactory.fromString<Document>(text, uri);
    LangiumDocuments.addDocument(document);
    this.documents.push(document);
    if (problem !== undefined) this.problems.set(document, problem);
  }
}

function findingsOf(document: LangiumDocument, file: string): Finding[] {
  return (document.diagnostics ?? []).map(({ range, severity, code, message, data }) => ({
    file,
    range,
    severity: SEVERITIES[severity ?? 1],
    code: String(code ?? ""),
    message: typeof message === "string" ? message : message.value,
    fixes: ((data as DiagnosticData | undefined)?.fixes ?? []).map(({ title, edits }) => ({
      title,
      edits: [...edits],
    })),
  }));
}

/** The protocol's numbers. */
const SEVERITIES: Readonly<Record<1 | 2 | 3 | 4, FindingSeverity>> = {
  1: "error",
  2: "warning",
  3: "hint",
  4: "hint",
};

function unreadable(file: string, message: string): Finding {
  const start = { line: 0, character: 0 };
  return { file, range: { start, end: start }, severity: "error", code: "unreadable", message, fixes: [] };
}

function reach(name: string, files: readonly ProjectFile[], services: DrillwrightServices): ProjectFile[] {
  const byDocument = new Map(files.map((file) => [file.document, file]));
  const reached = files.filter((file) => file.name === name);
  // The list grows while it is walked.
  for (const { document } of reached) {
    for (const { document: used } of services.names.Names.usedFiles(document)) {
      const file = used && byDocument.get(used);
      if (file !== undefined && !reached.includes(file)) reached.push(file);
    }
  }
  return reached;
}
