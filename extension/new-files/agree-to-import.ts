import { l10n, type QuickPickItem, QuickPickItemKind, window } from "vscode";
import type { ImportedColumn, TableImport } from "../../shared/protocol/import-tables.ts";
import { shown, shownBesideIcons } from "../shown-text.ts";

/** Room for what stands in the first rows of a column. */
const LONGEST_CELL = 16;
const LONGEST_DETAIL = 200;

/** Shows each column with its first cells, what it is taken for and how sure that is. True where a file is wanted. */
export async function agreeToImport({ columns, open }: TableImport): Promise<boolean> {
  const create: QuickPickItem = {
    label: `$(new-file) ${l10n.t("Create a File from This Proposal")}`,
    description: l10n.t("Questions to settle: {0}", open),
    alwaysShow: true,
  };
  const tables = Map.groupBy(columns, ({ table }) => table);
  const items = [...tables].flatMap(([table, itsColumns]) => [
    { label: shown(table), kind: QuickPickItemKind.Separator },
    ...itsColumns.map(columnItem),
  ]);
  const picked = await window.showQuickPick([create, ...items], {
    title: l10n.t("What Each Column Is Taken For"),
    placeHolder: l10n.t("Create opens the proposal as a new file. Escape leaves everything as it is."),
    matchOnDescription: true,
    matchOnDetail: true,
    ignoreFocusOut: true,
  });
  return picked === create;
}

function columnItem({
  header,
  meaning,
  confidence,
  questions,
  reasons,
  cells,
}: ImportedColumn): QuickPickItem {
  const isDoubtful = confidence === "doubtful" || questions.length > 0;
  const icon = meaning === null ? "$(circle-slash)" : isDoubtful ? "$(warning)" : "$(check)";
  const rows = cells.map((cell) => shown(cell, LONGEST_CELL)).join(" · ");
  return {
    label: `${icon} ${shownBesideIcons(header)}`,
    description:
      meaning === null ? l10n.t("not read") : `${shownBesideIcons(meaning)} (${sureness(confidence)})`,
    detail: shownBesideIcons(
      [rows, ...questions, ...reasons].filter((part) => part !== "").join(" — "),
      LONGEST_DETAIL,
    ),
  };
}

function sureness(confidence: ImportedColumn["confidence"]): string {
  switch (confidence) {
    case "sure":
      return l10n.t("sure");
    case "likely":
      return l10n.t("likely");
    case "doubtful":
      return l10n.t("doubtful");
  }
}
