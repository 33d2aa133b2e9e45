import { l10n } from "vscode";
import { savePage } from "../save-page.ts";
import { withoutFolders } from "../views/reports.ts";
import type { Workbench } from "../workbench.ts";
import { reportFor } from "./open-report.ts";

/** Writes the report on the session that is shown to a file that somebody chooses. */
export async function saveReport(workbench: Workbench, given?: unknown): Promise<void> {
  const found = await reportFor(workbench, given);
  if (found === undefined) return;
  const { session, title, page } = found;
  await savePage(l10n.t("Save the Report…"), title, session.file, withoutFolders(page));
}
