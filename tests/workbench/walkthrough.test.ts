/** The walkthrough, followed to the letter by somebody who has never seen it: it ends with a scored session and its report. */
import { cp } from "node:fs/promises";
import { join } from "node:path";
import type { Browser, Locator } from "playwright-core";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { openWorkbench, type Workbench } from "./host/photograph.ts";
import { extensionFolder, repository } from "./host/places.ts";
import { scratchFolder } from "./host/scratch.ts";
import { ensureChromium } from "./host/tools.ts";
import { launchBrowser } from "./host/window.ts";

const scratch = scratchFolder("walkthrough");
let browser: Browser;
let workbench: Workbench;

beforeAll(async () => {
  const extension = join(scratch.path, "extension");
  const folder = join(scratch.path, "empty");
  await cp(extensionFolder(), extension, { recursive: true });
  await cp(join(repository, "tests/workbench/fixtures/empty"), folder, { recursive: true });
  browser = await launchBrowser(await ensureChromium());
  workbench = await openWorkbench({
    browser,
    extension: { folder: extension },
    folder,
    theme: "light",
    size: { width: 1500, height: 860 },
    pictures: join(scratch.path, "pictures"),
    // Folders are chosen in a list, and not in a window of the system.
    settings: { "files.simpleDialog.enable": true },
  });
});
afterAll(async () => {
  await workbench?.close();
  await browser?.close();
  await scratch.remove();
});

const tab = (name: RegExp): Locator => workbench.page.getByRole("tab", { name });

/** Goes back to the walkthrough for something, and does so again where it fails: what opens meanwhile comes to the front. */
async function inWalkthrough(work: () => Promise<void>): Promise<void> {
  const attempt = async () => {
    await workbench.runCommand("Drillwright: Get Started");
    await work();
  };
  await vi.waitFor(attempt, { timeout: 60_000 });
}

/** Does what a step says: clicks its button. */
async function follow(step: string, button: string): Promise<void> {
  const timeout = 10_000;
  const { page } = workbench;
  await inWalkthrough(async () => {
    await page.getByText(step, { exact: true }).first().click({ timeout });
    await page.getByRole("button", { name: button, exact: true }).first().click({ timeout });
  });
}

/** Picks from the list that has opened. */
async function pick(entry: string): Promise<void> {
  await workbench.page
    .locator(".quick-input-widget:visible .monaco-list-row", { hasText: entry })
    .first()
    .click();
}

/** What stands over the pages that are shown. */
async function headings(): Promise<string[]> {
  const ofFrames = workbench.page.frames().map((frame) => frame.locator("h1").allTextContents());
  return (await Promise.all(ofFrames.map((each) => each.catch(() => [])))).flat();
}

/** How many steps are ticked. */
const ticked = () =>
  workbench.page.locator('.getting-started-step [role="checkbox"][aria-checked="true"]').count();

test("every step of it can be taken as it says, and is ticked then", async () => {
  const { page } = workbench;
  await page.locator('.activitybar [aria-label^="Drillwright"]').first().waitFor();
  await follow("Create a sample coaching folder", "Create the Folder");
  await page.locator(".quick-input-widget:visible").getByText("Create Here").click();
  await page.getByText("The sample coaching folder was created in").first().waitFor();
  await page.locator('[id="status.notifications"]').click(); // a window in the background tells nothing by itself
  await Promise.all([
    page.waitForEvent("load"),
    page.locator(".notifications-center").getByRole("button", { name: "Open", exact: true }).click(),
  ]);
  await page.getByRole("treeitem", { name: "curricula" }).first().waitFor();
  // The front page of the sample shows itself, unless the editor takes its window for one that was loaded again.
  await tab(/README/)
    .waitFor({ timeout: 4_000 })
    .catch(() => {});

  await follow("Read a plan", "Open a Plan");
  await pick("Seven-iron: from cut to start line");
  await workbench.waitForMarks("warning");

  await follow("See how a session came out", "Pick the Session");
  await pick("P-07: start line, lesson two");
  await follow("Open the report", "Open the Report");
  await tab(/^Report: P-07: start line, lesson two/).waitFor();
  await expect.poll(headings, { timeout: 30_000 }).toContainEqual(expect.stringMatching(/^P-07: start line/));

  await follow("Change a tolerance", "Go to a Plan");
  await pick("Seven-iron: from cut to start line");
  await tab(/^seven-iron-start-line/).waitFor();
  await page.getByText("met · 15 of 18 on target").waitFor();
  await workbench.goTo(31, "    target club-path within 2".length);
  await page.keyboard.press("Delete");
  await page.keyboard.type("1");
  await page.getByText("missed: ").first().waitFor();

  await follow("See who practised what", "Show the Players");
  await page.locator(".pane-body .monaco-list-row").filter({ hasText: "P-21" }).first().waitFor();
  await follow("Write your own plan", "New Plan");
  await tab(/^Untitled/).waitFor();
  await inWalkthrough(() => expect.poll(ticked, { timeout: 10_000 }).toBe(7));
});
