/** Files of a folder, checked as an editor would check them. */
import { EmptyFileSystem, type LangiumDocument, URI } from "langium";
import type { TextEdit, TextRange } from "../../language/checks/check.ts";
import {
  type DiagnosticData,
  DrillwrightDocumentValidator,
} from "../../language/checks/document-validator.ts";
import { createCoreServices, type DrillwrightServices } from "../../language/core-module.ts";
import type { Document } from "../../language/generated/tree/ast.ts";

/** A finding as an editor gets it. */
export interface Found {
  readonly code: string;
  readonly severity: "error" | "warning" | "hint";
  readonly message: string;
  readonly range: TextRange;
  readonly fixes: DiagnosticData["fixes"];
}

export interface Checked {
  readonly found: readonly Found[];
  readonly document: LangiumDocument<Document>;
}

const SEVERITIES: Readonly<Record<number, Found["severity"]>> = { 1: "error", 2: "warning", 4: "hint" };

const { shared, drillwright } = createCoreServices(EmptyFileSystem);
await shared.workspace.WorkspaceManager.initializeWorkspace([]);

export const services: DrillwrightServices = drillwright;

/** The name under which an example's own file lies in its folder. */
export const MAIN = "example.drill";

/** Checks a file among others, all in one folder, and hands the findings of each to `use` before the files go again. */
export async function withChecked<T>(
  text: string,
  others: Readonly<Record<string, string>>,
  use: (main: Checked, others: ReadonlyMap<string, Checked>) => T | Promise<T>,
): Promise<T> {
  const documents = Object.entries({ [MAIN]: text, ...others }).map(([name, content]) => {
    const uri = URI.parse(`file:///examples/${name}`);
    const document = shared.workspace.LangiumDocumentFactory.fromString<Document>(content, uri);
    shared.workspace.LangiumDocuments.addDocument(document);
    return [name, document] as const;
  });
  try {
    await shared.workspace.DocumentBuilder.build(documents.map(([, document]) => document));
    const validator = new DrillwrightDocumentValidator(drillwright); // one that remembers nothing
    for (const [, document] of documents) document.diagnostics = await validator.validateDocument(document);
    const checked = new Map(
      documents.map(([name, document]) => [name, { found: foundIn(document), document }]),
    );
    const main = checked.get(MAIN) as Checked;
    checked.delete(MAIN);
    return await use(main, checked);
  } finally {
    await shared.workspace.DocumentBuilder.update(
      [],
      documents.map(([, { uri }]) => uri),
    );
  }
}

/** The findings in a file that stands alone or among others. */
export function check(
  text: string,
  others: Readonly<Record<string, string>> = {},
): Promise<readonly Found[]> {
  return withChecked(text, others, ({ found }) => found);
}

function foundIn(document: LangiumDocument): Found[] {
  return (document.diagnostics ?? []).map(({ code, severity, message, range, data }) => ({
    code: String(code),
    severity: SEVERITIES[severity ?? 1] ?? "error",
    message: typeof message === "string" ? message : message.value,
    range,
    fixes: (data as DiagnosticData).fixes,
  }));
}

/** The text after edits that do not overlap. */
export function edited(text: string, edits: readonly TextEdit[]): string {
  const starts = [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)];
  const offset = ({ line, character }: TextRange["start"]) =>
    line >= starts.length ? text.length : Math.min(text.length, (starts[line] ?? 0) + character);
  const sorted = edits
    .map((edit) => ({ ...edit, from: offset(edit.range.start), to: offset(edit.range.end) }))
    .sort((one, other) => one.from - other.from || one.to - other.to);
  let result = "";
  let at = 0;
  for (const { from, to, newText } of sorted) {
    if (from < at) throw new Error(`Two edits overlap at ${from}: ${JSON.stringify(newText)}`);
    result += text.slice(at, from) + newText;
    at = to;
  }
  return result + text.slice(at);
}
