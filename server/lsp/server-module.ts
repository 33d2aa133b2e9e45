/** What the server puts in place of the framework's services, and adds to them. */
import type { DeepPartial, Module } from "langium";
import type { LangiumServices, LangiumSharedServices } from "langium/lsp";
import type { DrillwrightEditorServices } from "../../language/editor/editor-module.ts";
import { DEFAULT_SETTINGS, LEVEL_OF } from "../../shared/settings.ts";
import { EditorDocumentBuilder } from "./document-builder.ts";
import { EditorDocumentFactory } from "./document-factory.ts";
import { DrillwrightDocumentUpdateHandler } from "./document-update-handler.ts";
import type { ServerState } from "./start-server.ts";
import { ServerCodeActionProvider } from "./starts-fix.ts";
import { VerdictCodeLenses } from "./verdict-code-lenses.ts";
import { VerdictHover } from "./verdict-hover.ts";
import { VerdictInlayHints } from "./verdict-inlay-hints.ts";
import { EditorWorkspaceManager } from "./workspace-manager.ts";

/** Hints and lenses read the scores through the state, which is filled when the server starts. */
export function serverModule(state: ServerState): Module<LangiumServices, DeepPartial<LangiumServices>> {
  const settingsOf = (uri: string) => state.settings?.of(uri) ?? DEFAULT_SETTINGS;
  const shown = (part: "drillwright.verdicts.inlay" | "drillwright.verdicts.lens") => (uri: string) => {
    const settings = settingsOf(uri);
    return settings["drillwright.verdicts.show"] && settings[part];
  };
  return {
    lsp: {
      HoverProvider: (services) =>
        new VerdictHover(
          services as DrillwrightEditorServices,
          () => state.scores,
          (uri, { verdict }) => {
            const settings = settingsOf(uri);
            return settings["drillwright.verdicts.show"] && settings[LEVEL_OF[verdict]] === "none";
          },
        ),
      CodeActionProvider: (services) =>
        new ServerCodeActionProvider(services as DrillwrightEditorServices, () => state.scores),
      InlayHintProvider: () => new VerdictInlayHints(() => state.scores, shown("drillwright.verdicts.inlay")),
      CodeLensProvider: () =>
        new VerdictCodeLenses(
          () => state.scores,
          shown("drillwright.verdicts.lens"),
          () => state.commands,
        ),
    },
  };
}

export function sharedServerModule({
  versions,
  unread,
}: ServerState): Module<LangiumSharedServices, DeepPartial<LangiumSharedServices>> {
  return {
    lsp: { DocumentUpdateHandler: (services) => new DrillwrightDocumentUpdateHandler(services) },
    workspace: {
      DocumentBuilder: (services) => new EditorDocumentBuilder(services, unread),
      LangiumDocumentFactory: (services) => new EditorDocumentFactory(services, versions, unread),
      WorkspaceManager: (services) => new EditorWorkspaceManager(services, unread),
    },
  };
}
