import { l10n, SnippetString, Uri, window, workspace } from "vscode";
import { type DeclaredAt, type Project, project } from "../../shared/protocol/project.ts";
import { newDocument, usesIn } from "../new-files/new-document.ts";
import { sessionTemplate } from "../new-files/templates.ts";
import { askInTurn, type Question } from "../questions.ts";
import { shownBesideIcons } from "../shown-text.ts";
import { today } from "../today.ts";
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
  const document = await newDocument(title, "sessions", fileName(player?.name, date), plan?.file);
  if (document === undefined) return;
  const uses = usesIn(
    document,
    [player, source, plan].flatMap((each) => each?.file ?? []),
  );
  const editor = await window.showTextDocument(document);
  await editor.insertSnippet(
    new SnippetString(
      sessionTemplate({
        uses,
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

function fileName(player: string | undefined, date: string): string {
  const words = [player ?? "session", date].join(" ").toLowerCase();
  return `${words.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "")}.drill`;
}
