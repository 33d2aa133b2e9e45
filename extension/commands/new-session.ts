import { l10n, SnippetString, type TextDocument, Uri, WorkspaceEdit, window, workspace } from "vscode";
import { type DeclaredAt, type Project, project } from "../../shared/protocol/project.ts";
import { LANGUAGE_ID } from "../drill-document.ts";
import { sessionTemplate } from "../new-files/templates.ts";
import { usePath } from "../new-files/use-path.ts";
import { askInTurn, type Question } from "../questions.ts";
import { shownBesideIcons } from "../shown-text.ts";
import type { Workbench } from "../workbench.ts";

/** Begins a session: asks for plan, player and source where there are several, and where to put the file. */
export async function newSession({ server }: Workbench): Promise<void> {
  const declared = await server.ask(project, null);
  const title = l10n.t("New Session");
  const answers = await askInTurn(title, questions(declared));
  if (answers === undefined) return;
  const [plan, player, source] = answers;
  const date = today();
  const name = player === undefined ? date : `${player.name}: ${date}`;
  const document = await newDocument(title, fileName(player?.name, date));
  if (document === undefined) return;
  const files = new Set([player, source, plan].flatMap((each) => each?.file ?? []));
  const reachable = [...files].map((file) => Uri.parse(file)).filter((uri) => isBeside(uri, document.uri));
  const editor = await window.showTextDocument(document);
  await editor.insertSnippet(
    new SnippetString(
      sessionTemplate({
        uses: reachable.map((uri) => usePath(document.uri.path, uri.path)),
        name,
        plan: plan?.name,
        player: player?.name,
        source: source?.name,
        date,
      }),
    ),
  );
}

function questions({ plans, players, sources }: Project): Question<DeclaredAt>[] {
  return [
    { placeHolder: l10n.t("Which plan was practised?"), choices: choices(plans) },
    { placeHolder: l10n.t("Who practised?"), choices: choices(players) },
    { placeHolder: l10n.t("How is the table read?"), choices: choices(sources) },
  ];
}

function choices(all: readonly DeclaredAt[]) {
  return all.map((each) => ({
    label: shownBesideIcons(each.name),
    description: workspace.asRelativePath(Uri.parse(each.file)),
    answer: each,
  }));
}

/** A new, empty file at a place that somebody chooses; one without a name where no folder is open. */
async function newDocument(title: string, name: string): Promise<TextDocument | undefined> {
  const folder = workspace.workspaceFolders?.[0];
  if (folder === undefined) return workspace.openTextDocument({ language: LANGUAGE_ID });
  const uri = await window.showSaveDialog({
    title,
    saveLabel: l10n.t("Create"),
    defaultUri: Uri.joinPath(folder.uri, "sessions", name),
    filters: { Drillwright: ["drill"] },
  });
  if (uri === undefined) return undefined;
  const edit = new WorkspaceEdit();
  edit.createFile(uri, { overwrite: false, ignoreIfExists: false });
  if (await workspace.applyEdit(edit)) return workspace.openTextDocument(uri);
  throw new Error(
    l10n.t("{0} was not created. Choose the name of a file that does not exist yet.", uri.path),
  );
}

function isBeside(uri: Uri, other: Uri): boolean {
  return uri.scheme === other.scheme && uri.authority === other.authority;
}

function fileName(player: string | undefined, date: string): string {
  const words = [player ?? "session", date].join(" ").toLowerCase();
  return `${words.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "")}.drill`;
}

/** Of the player, where they are: not of the prime meridian. */
function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
