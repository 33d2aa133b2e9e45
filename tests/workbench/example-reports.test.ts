/** The report on every session of the example, and the card of every plan, as files in a real browser. */
import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { type Browser, chromium } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { scratchFolder } from "./host/scratch.ts";
import { ensureChromium } from "./host/tools.ts";

const COMMAND_LINE = fileURLToPath(new URL("../../dist/cli/drillwright.cjs", import.meta.url));
const examples = fileURLToPath(new URL("../../examples/", import.meta.url));
const namesIn = (folder: string) => readdirSync(join(examples, folder)).map((file) => `${folder}/${file}`);

const scratch = scratchFolder("reports");
let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: await ensureChromium(), args: ["--no-sandbox"] });
});
afterAll(async () => {
  await browser?.close();
  await scratch.remove();
});

describe.each([
  ["report", namesIn("sessions")],
  ["card", namesIn("plans")],
])("the %s on", (command, files) => {
  test.each(files)("%s opens from disk, asks for nothing, and prints on two pages or fewer", async (file) => {
    const output = join(scratch.path, `${command}-${file.replace("/", "-")}.html`);
    execFileSync(process.execPath, [COMMAND_LINE, command, file, "--output", output], { cwd: examples });
    const page = await browser.newPage();
    const asked: string[] = [];
    const complaints: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    page.on("console", (message) => complaints.push(message.text()));
    const address = pathToFileURL(output).href;
    await page.goto(address);
    expect(await page.getByRole("heading", { level: 1 }).count()).toBeGreaterThan(0);
    expect([asked, complaints]).toEqual([[address], []]);
    const paper = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(paper.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(2);
    await page.close();
  });
});
