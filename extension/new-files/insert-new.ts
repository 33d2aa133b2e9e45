import { SnippetString, window, workspace } from "vscode";
import { LANGUAGE_ID } from "../drill-document.ts";

/** Begins a file that has no name yet with a snippet. */
export async function insertNew(snippet: string): Promise<void> {
  const document = await workspace.openTextDocument({ language: LANGUAGE_ID });
  const editor = await window.showTextDocument(document);
  await editor.insertSnippet(new SnippetString(snippet));
}
