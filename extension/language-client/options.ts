import { type LogOutputChannel, workspace } from "vscode";
import { type LanguageClientOptions, RevealOutputChannelOn } from "vscode-languageclient";
import { COMMANDS } from "../../shared/commands.ts";
import type { ClientOptions } from "../../shared/protocol/client-options.ts";
import { LANGUAGE_ID, LIBRARY_SCHEME } from "../drill-document.ts";
import { middleware } from "./middleware.ts";

/** What the client tells and asks, wherever its server runs. */
export function clientOptions(output: LogOutputChannel): LanguageClientOptions {
  return {
    documentSelector: schemes().map((scheme) => ({ scheme, language: LANGUAGE_ID })),
    diagnosticCollectionName: LANGUAGE_ID,
    outputChannel: output,
    revealOutputChannelOn: RevealOutputChannelOn.Never,
    initializationOptions: { commands: Object.values(COMMANDS).map(({ id }) => id) } satisfies ClientOptions,
    progressOnInitialization: true,
    middleware,
  };
}

/**
 * Files where plans live. A document of another scheme, such as the old side of a comparison, would be one whose
 * neighbours cannot be found; its text would only be reported twice.
 */
function schemes(): string[] {
  const ofFolders = workspace.workspaceFolders?.map(({ uri }) => uri.scheme) ?? [];
  return [...new Set(["file", "untitled", "vscode-vfs", LIBRARY_SCHEME, ...ofFolders])];
}
