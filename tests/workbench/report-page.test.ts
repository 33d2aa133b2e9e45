/** Reports and cards in a real browser: are they accessible, do they ask for nothing, do they fit on paper? */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ensureChromium } from "./host/tools.ts";

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const pageAt = (name: string) => readFileSync(new URL(`../report/expected/${name}`, import.meta.url), "utf8");

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: await ensureChromium(), args: ["--no-sandbox"] });
});
afterAll(() => browser.close());

/** The page, shown as somebody with these wishes sees it; what it asks of the network, and complains of. */
async function shown(name: string, wishes: Parameters<Browser["newPage"]>[0] = {}) {
  const page = await browser.newPage(wishes);
  const asked: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  page.on("console", (message) => complaints.push(message.text()));
  await page.setContent(pageAt(name));
  return { page, asked, complaints };
}

describe.each([
  { name: "second-visit.html", pages: 2 },
  { name: "card.html", pages: 2 },
])("$name", ({ name, pages }) => {
  test.each(["light", "dark"] as const)("nothing is hard to reach or to read, %s", async (colorScheme) => {
    const { page, asked, complaints } = await shown(name, { colorScheme });
    expect(await violations(page)).toEqual([]);
    expect([asked, complaints]).toEqual([[], []]);
    await page.close();
  });

  test.each(["light", "dark"] as const)(
    "nor in the colours that somebody has set, %s",
    async (colorScheme) => {
      const { page } = await shown(name, { colorScheme, forcedColors: "active" });
      expect(await violations(page)).toEqual([]);
      await page.close();
    },
  );

  test.each([
    ["vscode-light", "dark", "AA"],
    ["vscode-dark", "light", "AA"],
    ["vscode-high-contrast", "light", "AAA"],
    ["vscode-high-contrast vscode-high-contrast-light", "dark", "AAA"],
  ] as const)(
    "nor in an editor whose theme is %s while the system is %s",
    async (theme, colorScheme, level) => {
      const { page } = await shown(name, { colorScheme });
      await page.evaluate(`document.body.className = ${JSON.stringify(theme)}`);
      expect(await violations(page, level)).toEqual([]);
      await page.close();
    },
  );

  test("a narrow window scrolls in one direction only", async () => {
    const { page } = await shown(name, { viewport: { width: 320, height: 640 } });
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(320);
    await page.close();
  });

  test(`it prints on ${pages} pages or fewer`, async () => {
    const { page } = await shown(name);
    const paper = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(paper.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(pages);
    await page.close();
  });
});

/** By rule, with the elements; colours against WCAG 2.2, at a level. */
async function violations(page: Page, level: "AA" | "AAA" = "AA"): Promise<string[]> {
  await page.evaluate(axeSource);
  const rules = { "color-contrast-enhanced": { enabled: level === "AAA" } };
  const results = (await page.evaluate(`axe.run(${JSON.stringify({ rules })})`)) as AxeResults;
  return results.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}
