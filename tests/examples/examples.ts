/** The files of `examples/`, read by the language's own services, and their sessions, scored. */
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import { type LangiumDocument, URI } from "langium";
import { NodeFileSystem } from "langium/node";
import { createCoreServices } from "../../language/core-module.ts";
import { type Document, isSession, type Session } from "../../language/generated/tree/ast.ts";
import { Lowering } from "../../language/lowering/document.ts";
import { importFiles } from "../../server/import/import-files.ts";
import type { OtherSession } from "../../server/scoring/earlier/other-sessions.ts";
import { runSession } from "../../server/scoring/run-session.ts";
import type { ScoreReport } from "../../shared/score-report.ts";

export const examplesFolder = new URL("../../examples/", import.meta.url);

/** Where the file stands under `examples/`, with slashes on every system. */
export type ExamplePath = string;

/** All `.drill` files, by where they stand. */
export function drillFiles(): ExamplePath[] {
  return readdirSync(examplesFolder, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => path.endsWith(".drill"))
    .sort();
}

/** Builds all files together, as an editor that opened the folder would; by where the files stand. */
export async function buildExamples() {
  const { shared, drillwright } = createCoreServices(NodeFileSystem);
  await shared.workspace.WorkspaceManager.initializeWorkspace([]);
  const documents = new Map<ExamplePath, LangiumDocument<Document>>();
  for (const path of drillFiles()) {
    const uri = URI.parse(new URL(path, examplesFolder).href);
    const document = await shared.workspace.LangiumDocuments.getOrCreateDocument(uri);
    documents.set(path, document as LangiumDocument<Document>);
  }
  await shared.workspace.DocumentBuilder.build([...documents.values()], { validation: true });
  return { documents, drillwright };
}

/** The reports on all sessions, by the file that declares them. */
export async function scoreExamples(): Promise<ReadonlyMap<ExamplePath, ScoreReport>> {
  const { documents, drillwright } = await buildExamples();
  const paths = new Map([...documents].map(([path, { uri }]) => [uri.toString(), path]));
  const lowering = new Lowering(drillwright, (uri) => paths.get(uri.toString()) ?? uri.toString());
  const sessions = [...documents].flatMap(([path, document]) =>
    document.parseResult.value.declarations.filter(isSession).map((session) => ({ path, session })),
  );
  const others = sessions.map(({ session }): OtherSession & { readonly of: Session } => ({
    of: session,
    ...lowering.facts(session),
    read: async () => {
      const input = lowering.session(session);
      return { input, data: await importFiles(input, dataFiles) };
    },
  }));
  const reports = new Map<ExamplePath, ScoreReport>();
  for (const { path, session } of sessions) {
    if (reports.has(path)) throw new Error(`${path} declares two sessions; the examples keep one a file.`);
    const around = { version: "test", others: others.filter(({ of }) => of !== session) };
    const { report } = await runSession(lowering.session(session), dataFiles, around);
    reports.set(path, report);
  }
  return reports;
}

const dataFiles = {
  locate: (path: string, sessionFile: string) => posix.join(posix.dirname(sessionFile), path),
  read: async (file: string) => {
    const url = new URL(file, examplesFolder);
    return existsSync(url) ? readFileSync(url) : undefined;
  },
  sha256: (content: Uint8Array) => createHash("sha256").update(content).digest("hex"),
};
