/**
 * Takes pictures of the packaged extension at work:
 *
 *     npm run pictures
 *     node tests/workbench/pictures.ts [name …] [--to folder] [--vsix file] [--scale 2]
 *
 * Without names it takes all. Add a picture by adding an entry to the list. Those of the read-me are in
 * `extension/pictures`, taken with `--scale 1` and brought to few colours (`pngquant 96`) so that they stay small.
 */
import { existsSync } from "node:fs";
import { cp, readFile } from "node:fs/promises";
import { basename, join, relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import type { Locator } from "playwright-core";
import { openWorkbench, type Theme, type Workbench } from "./host/photograph.ts";
import { extensionFolder, repository } from "./host/places.ts";
import { scratchFolder } from "./host/scratch.ts";
import { ensureChromium } from "./host/tools.ts";
import { launchBrowser } from "./host/window.ts";

type Picture = {
  /** Also the file's name, without its ending. */
  readonly name: string;
  readonly theme: Theme;
  /** Relative to the repository; the window shows a copy. */
  readonly folder: string;
  readonly trusted?: boolean;
  readonly size?: { readonly width: number; readonly height: number };
  readonly settings?: { readonly [key: string]: unknown };
  /** Brings the workbench into the state to be shown; the picture is taken afterwards. */
  readonly arrange: (workbench: Workbench) => Promise<void>;
};

const FIRST_VISIT = "tests/workbench/fixtures/first-visit";
const PLAN = "plans/seven-iron-start-line.drill";

/** The front page's: a plan with its verdicts. */
async function verdicts(workbench: Workbench): Promise<void> {
  await workbench.openFile(PLAN);
  await workbench.waitForMarks("warning");
  await workbench.goTo(45);
  await workbench.page
    .locator(".codelens-decoration")
    .filter({ hasText: "on target", visible: true })
    .first()
    .waitFor();
}

/** The choice of the session that is shown. */
async function sessions(workbench: Workbench): Promise<void> {
  await verdicts(workbench);
  await workbench.runCommand("Drillwright: Pick the Session to Show");
  await workbench.page
    .locator(".quick-input-widget:visible .monaco-list-row", { hasText: "P-07" })
    .first()
    .waitFor();
}

/** In the bar of views, as soon as the editor knows the extension. */
function viewIcon({ page }: Workbench): Locator {
  return page.locator('.activitybar [aria-label^="Drillwright"]').first();
}

/** Who practised what, beside a plan. */
async function players(workbench: Workbench): Promise<void> {
  await workbench.openFile(PLAN);
  await workbench.waitForMarks("warning");
  await viewIcon(workbench).click();
  const row = (name: string) =>
    workbench.page.locator(".pane-body .monaco-list-row").filter({ hasText: name });
  for (const name of ["P-07", "P-07: start line, lesson two", "P-12"]) {
    await row(name).first().click();
    await workbench.page.keyboard.press("ArrowRight");
  }
  await row("Prove it").waitFor();
  await workbench.openFile(PLAN);
  await workbench.goTo(45);
}

/** Where the players of a curriculum stand, beside it. */
async function curricula(workbench: Workbench): Promise<void> {
  await workbench.openFile("curricula/irons.drill");
  await viewIcon(workbench).click();
  const row = (name: string) =>
    workbench.page.locator(".pane-body .monaco-list-row").filter({ hasText: name }).first();
  for (const name of ["Seven-iron: a week later", "Five-iron: ball first"]) {
    await row(name).click();
    await workbench.page.keyboard.press("ArrowRight");
    await workbench.openFile("curricula/irons.drill");
  }
  await row("P-12").waitFor();
}

/** A run of the goals in the test explorer, with a missed one opened. */
async function goals(workbench: Workbench): Promise<void> {
  await workbench.openFile(PLAN);
  await workbench.waitForMarks("warning");
  await workbench.runCommand("Testing: Focus on Test Explorer View");
  await workbench.waitForText("Seven-iron: from cut");
  await workbench.openFile(PLAN);
  await workbench.runCommand("Test: Run Tests in Current File");
  await workbench.page.locator(".test-explorer .codicon-testing-failed-icon").first().waitFor();
  const row = (tree: string, name: string) =>
    workbench.page.locator(`${tree} .monaco-list-row`).filter({ hasText: name }).first();
  for (const name of ["Seven-iron: from cut", "Gate"]) {
    await row(".test-explorer", name).click();
    await workbench.page.keyboard.press("ArrowRight");
  }
  await row(".test-output-peek-tree", "at least 12 of 18").click();
}

/** A page beside a plan. */
const beside = (command: string) => async (workbench: Workbench) => {
  await workbench.openFile(PLAN);
  await workbench.waitForMarks("warning");
  await workbench.runCommand(command);
  await workbench.webview().locator("h1").first().waitFor();
};

/** What the columns of a table are taken for that nobody has described yet. */
async function importing(workbench: Workbench): Promise<void> {
  await workbench.openFile("plans/wedges-half-swings.drill");
  await viewIcon(workbench).waitFor();
  const row = (name: string) => workbench.page.getByRole("treeitem", { name }).first();
  await row("data").click();
  await row("p-31-first-visit.csv").click({ button: "right" });
  const entry = workbench.page.getByText("Import a Table of Shots").first();
  await entry.waitFor();
  await workbench.page.waitForTimeout(500); // a menu that has just opened takes no clicks
  await entry.click();
  await workbench.waitForText("What Each Column Is Taken For");
}

/** The walkthrough, at a step. */
const walkthrough = (step: string) => async (workbench: Workbench) => {
  await viewIcon(workbench).waitFor();
  await workbench.runCommand("Drillwright: Get Started");
  await workbench.page.getByText(step, { exact: true }).first().click();
};

const pictures: readonly Picture[] = [
  { name: "verdicts-light", theme: "light", folder: "examples", arrange: verdicts },
  { name: "verdicts-dark", theme: "dark", folder: "examples", arrange: verdicts },
  {
    name: "hover",
    theme: "dark",
    folder: "examples",
    arrange: async (workbench) => {
      await workbench.openFile(PLAN);
      await workbench.waitForMarks("warning");
      await workbench.goTo(38);
      await workbench.hover("attack-angle between");
    },
  },
  {
    name: "rows",
    theme: "light",
    folder: "examples",
    arrange: async (workbench) => {
      await workbench.openFile(PLAN);
      await workbench.waitForMarks("warning");
      await workbench.goTo(38);
      await workbench.runCommand("Problems: Focus on Problems View");
    },
  },
  {
    name: "mistake",
    theme: "light",
    folder: "tests/workbench/fixtures/mistake",
    arrange: async (workbench) => {
      await workbench.openFile("mistake.drill");
      await workbench.waitForMarks("error");
      await workbench.goTo(10, 12);
      await workbench.runCommand("Quick Fix");
    },
  },
  { name: "sessions-light", theme: "light", folder: "examples", arrange: sessions },
  { name: "sessions-dark", theme: "dark", folder: "examples", arrange: sessions },
  { name: "players-light", theme: "light", folder: "examples", arrange: players },
  { name: "players-dark", theme: "dark", folder: "examples", arrange: players },
  { name: "curricula-light", theme: "light", folder: "examples", arrange: curricula },
  { name: "curricula-dark", theme: "dark", folder: "examples", arrange: curricula },
  { name: "curricula-contrast", theme: "high contrast", folder: "examples", arrange: curricula },
  {
    name: "stale",
    theme: "dark",
    folder: "examples",
    arrange: async (workbench) => {
      await workbench.openFile(PLAN);
      await workbench.waitForMarks("warning");
      await workbench.goTo(34, 19);
      await workbench.page.keyboard.type("9");
      await workbench.waitForMarks("error");
      await workbench.waitForText("no longer current");
    },
  },
  {
    name: "players-empty",
    theme: "light",
    folder: "tests/workbench/fixtures/empty",
    arrange: async (workbench) => {
      await viewIcon(workbench).click();
      await workbench.waitForText("No file of this workspace");
    },
  },
  {
    name: "walkthrough-light",
    theme: "light",
    folder: "examples",
    size: { width: 1500, height: 860 },
    arrange: walkthrough("See how a session came out"),
  },
  {
    name: "walkthrough-dark",
    theme: "dark",
    folder: "examples",
    size: { width: 1500, height: 860 },
    arrange: walkthrough("Change a tolerance"),
  },
  {
    name: "report-light",
    theme: "light",
    folder: "examples",
    arrange: beside("Drillwright: Open the Report"),
  },
  { name: "report-dark", theme: "dark", folder: "examples", arrange: beside("Drillwright: Open the Report") },
  {
    name: "report-contrast",
    theme: "high contrast",
    folder: "examples",
    arrange: beside("Drillwright: Open the Report"),
  },
  {
    name: "card-light",
    theme: "light",
    folder: "examples",
    arrange: beside("Drillwright: Open the Card for the Range"),
  },
  {
    name: "card-dark",
    theme: "dark",
    folder: "examples",
    arrange: beside("Drillwright: Open the Card for the Range"),
  },
  { name: "import-light", theme: "light", folder: FIRST_VISIT, arrange: importing },
  { name: "import-dark", theme: "dark", folder: FIRST_VISIT, arrange: importing },
  {
    name: "imported",
    theme: "light",
    folder: FIRST_VISIT,
    arrange: async (workbench) => {
      await importing(workbench);
      await workbench.page.keyboard.press("Enter");
      await workbench.waitForText("settle:");
    },
  },
  { name: "goals-light", theme: "light", folder: "examples", arrange: goals },
  { name: "goals-dark", theme: "dark", folder: "examples", arrange: goals },
  {
    name: "hostile",
    theme: "light",
    folder: "tests/workbench/fixtures/hostile",
    arrange: async (workbench) => {
      await workbench.openFile("plan.drill");
      await workbench.waitForMarks("warning");
      await viewIcon(workbench).click();
      for (let key = 0; key < 6; key++) {
        const row = workbench.page.locator(".pane-body .monaco-list-row").nth(key);
        if ((await row.getAttribute("aria-expanded")) !== "false") continue;
        await row.click();
        await workbench.page.keyboard.press("ArrowRight");
        await workbench.page.waitForTimeout(500);
      }
      await workbench.openFile("plan.drill");
      await workbench.runCommand("Drillwright: Pick the Session to Show");
    },
  },
  {
    name: "restricted",
    theme: "high contrast",
    folder: "examples",
    trusted: false,
    arrange: async (workbench) => {
      await workbench.openFile("plans/driver-up-on-it.drill");
      await workbench.waitForMarks("warning");
    },
  },
];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { to: { type: "string" }, vsix: { type: "string" }, scale: { type: "string", default: "2" } },
});
const unknown = positionals.filter((name) => pictures.every((picture) => picture.name !== name));
if (unknown.length > 0) {
  console.error(
    `No such picture: ${unknown.join(", ")}. There are: ${pictures.map(({ name }) => name).join(", ")}.`,
  );
  process.exit(2);
}
const wanted = pictures.filter(({ name }) => positionals.length === 0 || positionals.includes(name));
const to = resolve(values.to ?? join(repository, ".cache", "pictures"));
await takePictures(wanted, to, values.vsix ? resolve(values.vsix) : await packedExtension());

async function takePictures(wanted: readonly Picture[], to: string, vsix: string): Promise<void> {
  const scratch = scratchFolder("pictures");
  const browser = await launchBrowser(await ensureChromium());
  try {
    for (const { name, folder, arrange, ...options } of wanted) {
      const copy = join(scratch.path, name, basename(folder));
      await cp(join(repository, folder), copy, { recursive: true });
      const workbench = await openWorkbench({
        ...options,
        browser,
        extension: { vsix },
        folder: copy,
        pictures: to,
        scale: Number(values.scale),
      });
      try {
        await arrange(workbench);
        console.log(relative(process.cwd(), await workbench.photograph(name)));
      } catch (error) {
        console.error(
          `See ${relative(process.cwd(), await workbench.photograph(`${name}-failed`))} for how it looked when`,
        );
        throw error;
      } finally {
        await workbench.close();
      }
    }
  } finally {
    await browser.close();
    await scratch.remove();
  }
}

/** The one that `npm run package` made of this version. */
async function packedExtension(): Promise<string> {
  const { version } = JSON.parse(await readFile(join(extensionFolder(), "package.json"), "utf8"));
  const file = join(repository, "dist", `drillwright-${version}.vsix`);
  if (!existsSync(file))
    throw new Error(`${file} does not exist. Run npm run package first, or name a file with --vsix.`);
  return file;
}
