/**
 * The only list of the commands an editor offers. The extension registers each of them, its manifest is made from them.
 * The server registers none of these ids: a client that did the same would fail to start.
 */

export const COMMAND_CATEGORY = "Drillwright";

export interface Command {
  readonly id: `drillwright.${string}`;
  /** What it does, beginning with a verb. */
  readonly title: string;
  /** One of the editor's own icons. Every command with a button has one. */
  readonly icon?: `$(${string})`;
  /** When the command palette lists it; `false` for commands that need an argument. */
  readonly palette: string | true | false;
  /** Where else it is offered. */
  readonly menus?: Readonly<Partial<Record<Menu, MenuEntry | readonly MenuEntry[]>>>;
}

export type Menu =
  | "editor/title"
  | "editor/context"
  | "file/newFile"
  | "view/title"
  | "view/item/context"
  | "explorer/context";

export interface MenuEntry {
  /** Always, where it is missing. */
  readonly when?: string;
  readonly group: string;
}

/** A plan or session of one's own is open; the built-in vocabulary has nothing to score. */
const inDrillFile = "editorLangId == drillwright && resourceScheme != drillwright-library";
const onDrillFile = "resourceLangId == drillwright && resourceScheme != drillwright-library";

/** A row of a view behind which stands a session of a plan. */
const onSession =
  "(view == drillwright.players || view == drillwright.curricula) && viewItem == session-of-plan";

/** As a button of the row, and in its menu: keys do not reach the buttons. */
function onSessionRow(place: number): readonly MenuEntry[] {
  return [
    { when: onSession, group: "inline" },
    { when: onSession, group: `drillwright@${place}` },
  ];
}

/** Every command by the last part of its id. */
export const COMMANDS = {
  scoreSession: {
    id: "drillwright.scoreSession",
    title: "Score the Session",
    icon: "$(checklist)",
    palette: inDrillFile,
    menus: {
      "editor/title": { when: onDrillFile, group: "navigation" },
      "editor/context": { when: onDrillFile, group: "drillwright@1" },
    },
  },
  pickSession: {
    id: "drillwright.pickSession",
    title: "Pick the Session to Show",
    palette: inDrillFile,
    menus: { "editor/context": { when: onDrillFile, group: "drillwright@2" } },
  },
  showRows: {
    id: "drillwright.showRows",
    title: "Show the Rows behind the Verdict",
    palette: inDrillFile,
    menus: { "editor/context": { when: onDrillFile, group: "drillwright@3" } },
  },
  openReport: {
    id: "drillwright.openReport",
    title: "Open the Report",
    icon: "$(open-preview)",
    palette: inDrillFile,
    menus: {
      "editor/title": { when: onDrillFile, group: "drillwright@2" },
      "editor/context": { when: onDrillFile, group: "drillwright@4" },
      "view/item/context": onSessionRow(1),
    },
  },
  saveReport: {
    id: "drillwright.saveReport",
    title: "Save the Report…",
    palette: inDrillFile,
    menus: { "editor/context": { when: onDrillFile, group: "drillwright@5" } },
  },
  openCard: {
    id: "drillwright.openCard",
    title: "Open the Card for the Range",
    palette: inDrillFile,
    menus: {
      "editor/title": { when: onDrillFile, group: "drillwright@3" },
      "editor/context": { when: onDrillFile, group: "drillwright@6" },
    },
  },
  saveCard: {
    id: "drillwright.saveCard",
    title: "Save the Card…",
    palette: inDrillFile,
    menus: { "editor/context": { when: onDrillFile, group: "drillwright@7" } },
  },
  toggleVerdicts: {
    id: "drillwright.toggleVerdicts",
    title: "Show or Hide the Verdicts",
    palette: inDrillFile,
    menus: { "editor/title": { when: onDrillFile, group: "drillwright@1" } },
  },
  showSession: {
    id: "drillwright.showSession",
    title: "Show the Session on Its Plan",
    icon: "$(go-to-file)",
    palette: false,
    menus: {
      "view/item/context": onSessionRow(2),
    },
  },
  getStarted: {
    id: "drillwright.getStarted",
    title: "Get Started",
    palette: true,
  },
  createSample: {
    id: "drillwright.createSample",
    title: "Create a Sample Coaching Folder",
    palette: true,
  },
  openPlan: {
    id: "drillwright.openPlan",
    title: "Open a Plan",
    palette: "workbenchState != empty",
  },
  newPlan: {
    id: "drillwright.newPlan",
    title: "New Plan",
    palette: true,
    menus: { "file/newFile": { group: "drillwright@1" } },
  },
  newDrill: {
    id: "drillwright.newDrill",
    title: "New Drill",
    palette: true,
    menus: { "file/newFile": { group: "drillwright@2" } },
  },
  newSession: {
    id: "drillwright.newSession",
    title: "New Session",
    palette: true,
    icon: "$(add)",
    menus: {
      "file/newFile": { group: "drillwright@3" },
      "view/title": { when: "view == drillwright.players && workbenchState != empty", group: "navigation" },
    },
  },
  newCurriculum: {
    id: "drillwright.newCurriculum",
    title: "New Curriculum",
    palette: "workbenchState != empty",
    icon: "$(add)",
    menus: {
      "file/newFile": { when: "workbenchState != empty", group: "drillwright@4" },
      "view/title": { when: "view == drillwright.curricula && workbenchState != empty", group: "navigation" },
    },
  },
  importTable: {
    id: "drillwright.importTable",
    title: "Import a Table of Shots…",
    palette: true,
    menus: {
      "explorer/context": {
        when: "!explorerResourceIsFolder && resourceExtname =~ /^\\.(csv|tsv|json|jsonl|gz|txt)$/i",
        group: "drillwright@1",
      },
    },
  },
  showOutput: {
    id: "drillwright.showOutput",
    title: "Show the Output Log",
    palette: true,
  },
  restartServer: {
    id: "drillwright.restartServer",
    title: "Restart the Language Server",
    palette: true,
  },
} as const satisfies Readonly<Record<string, Command>>;

export type CommandName = keyof typeof COMMANDS;
