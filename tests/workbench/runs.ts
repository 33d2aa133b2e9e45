/** What is run in which editor. A run is a suite, a folder and a way to open it; add one by adding an entry. */
import { join, resolve } from "node:path";
import { extensionFolder, repository } from "./host/places.ts";
import type { SuiteRun } from "./host/run-suite.ts";

const suite = (name: string): string => join(import.meta.dirname, "suite", `${name}.ts`);
const folder = (path: string): string => resolve(repository, path);
const extension = extensionFolder();

export type Run = SuiteRun & {
  readonly name: string;
  /** What people are told because the suite calls commands that tell it. Nothing else may be. */
  readonly tells?: readonly RegExp[];
};

/** Of the two sample folders that are created, and of the two pages that are saved. */
const tells = [
  /^Info: The sample coaching folder was created in /,
  /wrenlow-practice-centre-2\.$/,
  /^Info: Saved: plans\/.*\.html/,
  /^Info: Saved: sessions\/.*\.html/,
];

/** Files are chosen in a list, which a suite can answer, and not in a window of the system. */
const settings = { "files.simpleDialog.enable": true };

export const runs: readonly Run[] = [
  {
    name: "in the editor",
    suite: suite("editor"),
    extension,
    folder: folder("examples"),
    tells,
    settings,
    trusted: true,
    host: "editor",
  },
  {
    name: "in a folder nobody has vouched for",
    suite: suite("restricted"),
    extension,
    folder: folder("examples"),
    trusted: false,
    host: "editor",
  },
  {
    name: "on an ordinary day",
    suite: suite("everyday"),
    extension,
    folder: folder("examples"),
    trusted: true,
    host: "editor",
  },
  {
    name: "with hostile names",
    suite: suite("hostile"),
    extension,
    folder: folder("tests/workbench/fixtures/hostile"),
    trusted: true,
    host: "editor",
  },
  {
    name: "in a browser, in a folder on no disk",
    suite: suite("editor"),
    extension,
    folder: folder("examples"),
    tells,
    settings,
    trusted: true,
    host: "browser",
  },
];
