/** What the suites of the editor share: the example folder's plan, and the editor's own answers about it. */
import assert from "node:assert/strict";
import {
  type Diagnostic,
  extensions,
  languages,
  Range,
  type TextDocument,
  type Uri,
  WorkspaceEdit,
  window,
  workspace,
} from "vscode";
import type { TestingApi } from "../../../extension/testing-api.ts";
import { eventually, facts } from "../host/suite-runner.ts";

export const PLAN = "plans/seven-iron-start-line.drill";

/** `source` of mistakes in the text, and of verdicts. */
export const MISTAKE = "drillwright";
export const VERDICT = "drillwright score";

/** A file of the folder that is open. */
export function fileOf(path: string): Uri {
  const folder = workspace.workspaceFolders?.[0];
  assert.ok(folder, "no folder is open");
  return folder.uri.with({ path: `${folder.uri.path}/${path}` });
}

/** Shows a file of the folder, as it is on disk. */
export async function show(path: string): Promise<TextDocument> {
  const document = await workspace.openTextDocument(fileOf(path));
  await window.showTextDocument(document);
  return document;
}

/** The extension, awake and with its server running. */
export async function drillwright(): Promise<TestingApi> {
  const extension = extensions.getExtension<TestingApi>(facts.extensionId);
  assert.ok(extension, `${facts.extensionId} is not known to the editor`);
  const api = await extension.activate();
  await api.ready();
  return api;
}

/** The diagnostics of one source, as soon as they are as wanted. */
export async function diagnostics(
  document: TextDocument,
  source: string,
  what: string,
  areWanted: (all: readonly Diagnostic[]) => boolean,
): Promise<readonly Diagnostic[]> {
  const all = () => languages.getDiagnostics(document.uri).filter((each) => each.source === source);
  await eventually(what, () => areWanted(all()));
  return all();
}

/** The id of a diagnostic's kind. */
export function codeOf({ code }: Diagnostic): string {
  return String(typeof code === "object" ? code.value : code);
}

/** Replaces the first place where a text stands, as typing would. */
export async function replace(document: TextDocument, text: string, by: string): Promise<void> {
  const at = document.getText().indexOf(text);
  assert.notEqual(at, -1, `"${text}" does not stand in ${document.uri.path}`);
  const edit = new WorkspaceEdit();
  edit.replace(document.uri, new Range(document.positionAt(at), document.positionAt(at + text.length)), by);
  assert.ok(await workspace.applyEdit(edit));
}
