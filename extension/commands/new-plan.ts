import { SnippetString, window, workspace } from "vscode";
import { LANGUAGE_ID } from "../drill-document.ts";
import { PLAN } from "../new-files/templates.ts";

/** Begins a plan in a file that has no name yet. */
export async function newPlan(): Promise<void> {
  const document = await workspace.openTextDocument({ language: LANGUAGE_ID });
  const editor = await window.showTextDocument(document);
  await editor.insertSnippet(new SnippetString(PLAN));
}
