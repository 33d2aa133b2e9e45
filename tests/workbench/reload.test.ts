/** A window that is loaded again: the pages beside plans come back, and are true again. */
import { cp, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Browser, Locator } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openWorkbench, type Workbench } from "./host/photograph.ts";
import { extensionFolder, repository } from "./host/places.ts";
import { scratchFolder } from "./host/scratch.ts";
import { ensureChromium } from "./host/tools.ts";
import { launchBrowser } from "./host/window.ts";

const PLAN = "plans/seven-iron-start-line.drill";

const scratch = scratchFolder("reload");
const folder = join(scratch.path, "examples");
let browser: Browser;
let workbench: Workbench;

beforeAll(async () => {
  const extension = join(scratch.path, "extension");
  await cp(extensionFolder(), extension, { recursive: true });
  await cp(join(repository, "examples"), folder, { recursive: true });
  browser = await launchBrowser(await ensureChromium());
  workbench = await openWorkbench({
    browser,
    extension: { folder: extension },
    folder,
    theme: "light",
    pictures: join(scratch.path, "pictures"),
  });
});
afterAll(async () => {
  await workbench?.close();
  await browser?.close();
  await scratch.remove();
});

const tab = (name: string): Locator => workbench.page.getByRole("tab", { name: new RegExp(`^${name}`) });

/** Loads the window again, from the editor: keys do not reach the workbench while a page has them. */
async function reload(): Promise<void> {
  await tab("seven-iron").click();
  await workbench.reload();
}

/** Changes a file behind the editor's back. */
async function rewrite(path: string, from: string, to: string): Promise<void> {
  const file = join(folder, path);
  const text = await readFile(file, "utf8");
  expect(text).toContain(from);
  await writeFile(file, text.replaceAll(from, to));
}

/** Shows the tab of a page, and reads the page. */
async function textOf(name: string, says: string): Promise<string> {
  await tab(name).click();
  await workbench.webview().getByText(says).first().waitFor();
  return (await workbench.webview().textContent()) ?? "";
}

test("report and card come back with it, as their plan is then, and are closed for good by who closes them", async () => {
  await workbench.openFile(PLAN);
  await workbench.waitForMarks("warning");
  await workbench.runCommand("Drillwright: Open the Report");
  await tab("Report: ").waitFor();
  await textOf("Report: ", "club-path within 2°");
  await tab("seven-iron").click();
  await workbench.runCommand("Drillwright: Open the Card for the Range");
  await tab("Card: ").waitFor();
  await textOf("Card: ", "club-path within 2°");

  await rewrite(PLAN, "club-path within 2°", "club-path within 3°");
  await reload();
  expect(await textOf("Report: ", "club-path within 3°")).toContain("P-");
  expect(await textOf("Card: ", "club-path within 3°")).toContain("Seven-iron");

  await tab("Card: ").click({ button: "middle" });
  await tab("Card: ").waitFor({ state: "detached" });
  await reload();
  await textOf("Report: ", "club-path within 3°");
  expect(await tab("Card: ").count()).toBe(0);
});

test("a report that cannot be made then says why until it can, and one whose session is gone is closed", async () => {
  await rewrite(PLAN, "at least 12 of 18", "at least 19 of 18");
  await reload();
  await textOf("Report: ", "The plan is scored when its mistakes are mended.");
  await tab("seven-iron").click();
  await workbench.goTo(34, "      at least 1".length + 1);
  await workbench.page.keyboard.press("Delete");
  await workbench.page.keyboard.type("2");
  await textOf("Report: ", "club-path within 3°");

  const session = (await tab("Report: ").textContent())?.replace(/^Report: |, \d{4}.*$/g, "") ?? "";
  await rewrite("sessions/p12-start-line-hall.drill", `session "${session}"`, 'session "Another"');
  await reload();
  await tab("Report: ").waitFor({ state: "detached" });
});
