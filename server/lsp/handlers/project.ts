import { DocumentState, type LangiumDocument } from "langium";
import type { LangiumSharedServices } from "langium/lsp";
import type { CancellationToken, Connection } from "vscode-languageserver";
import { plural } from "../../../shared/plural.ts";
import { type Project, project } from "../../../shared/protocol/project.ts";
import { type ProjectChangedParams, projectChanged } from "../../../shared/protocol/project-changed.ts";
import { LEFT_OUT } from "../../node/left-out.ts";
import type { File } from "../declared.ts";
import { outlineOf, projectOf } from "../project.ts";

/** Answers with what is declared, and tells when that changes. A keystroke costs no more than what its file declares. */
export function handleProject(connection: Connection, { workspace }: LangiumSharedServices): void {
  const { DocumentBuilder: builder, LangiumDocuments: documents } = workspace;
  connection.onRequest(project.method, async (_: null, token: CancellationToken): Promise<Project> => {
    await builder.waitUntil(DocumentState.Linked, token);
    return projectOf(documents);
  });

  const told = builder.onBuildPhase(DocumentState.IndexedReferences, () => {
    told.dispose();
    connection.console.info(inventory(projectOf(documents)));
  });

  const outlines = new Map<string, string>();
  let declarations = false;
  builder.onUpdate((_changed, deleted) => {
    for (const uri of deleted) if (outlines.delete(uri.toString())) declarations = true;
  });
  builder.onDocumentPhase(DocumentState.Linked, (document: LangiumDocument) => {
    const uri = document.uri.toString();
    const outline = outlineOf(document as File);
    if (outlines.get(uri) === outline) return;
    outlines.set(uri, outline);
    declarations = true;
  });
  builder.onBuildPhase(DocumentState.Validated, () => {
    tellProjectChanged(connection, declarations);
    declarations = false;
  });
}

function inventory({ files, plans, sessions, players, sources }: Project): string {
  const declared = [
    plural(plans.length, "plan"),
    plural(sessions.length, "session"),
    plural(players.length, "player"),
    plural(sources.length, "source"),
  ];
  return `Read ${plural(files, "file")}: ${declared.join(", ")}. Not read: folders that begin with a dot, ${[...LEFT_OUT].join(", ")}.`;
}

export function tellProjectChanged(connection: Connection, declarations: boolean): void {
  const params: ProjectChangedParams = { declarations };
  void connection.sendNotification(projectChanged.method, params);
}
