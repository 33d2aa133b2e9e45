import { type Disposable, type TextDocument, type TextEditor, Uri, window, workspace } from "vscode";

export const LANGUAGE_ID = "drillwright";

/** Scheme of the built-in vocabulary, whose texts the server provides. */
export const LIBRARY_SCHEME = "drillwright-library";

/** Whether a document is a plan or session of one's own. */
export function isDrillDocument({ languageId, uri }: TextDocument): boolean {
  return languageId === LANGUAGE_ID && uri.scheme !== LIBRARY_SCHEME;
}

/** The active editor, where it shows a plan or session of one's own. */
export function activeDrillEditor(): TextEditor | undefined {
  const editor = window.activeTextEditor;
  return editor && isDrillDocument(editor.document) ? editor : undefined;
}

/** A document, and the line somebody looks at in it. */
export interface Spot {
  readonly uri: Uri;
  readonly line: number;
}

/** The plan or session that somebody looked at last. */
let last: Uri | undefined;

/** Remembers what somebody looks at. */
export function followDrillEditors(): Disposable {
  const look = () => {
    last = activeDrillEditor()?.document.uri ?? last;
  };
  look();
  return window.onDidChangeActiveTextEditor(look);
}

/**
 * The spot a command is about: in the document a menu gave, else in the active editor, else in what somebody looked at
 * last, as long as it is open: the walkthrough speaks of it.
 */
export function spotOf(given: unknown): Spot | undefined {
  const editor = activeDrillEditor();
  const line = (uri: Uri) =>
    editor?.document.uri.toString() === uri.toString() ? editor.selection.active.line : 0;
  const uri = given instanceof Uri ? given : (editor?.document.uri ?? openAgain(last));
  return uri && { uri, line: line(uri) };
}

function openAgain(uri: Uri | undefined): Uri | undefined {
  const isOpen = workspace.textDocuments.some((each) => each.uri.toString() === uri?.toString());
  return isOpen ? uri : undefined;
}
