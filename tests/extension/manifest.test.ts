/** What editors and their users expect of a manifest. */
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { DrillwrightLanguageMetaData } from "../../language/generated/tree/module.ts";
import { LIBRARY_SCHEME } from "../../language/library/library.ts";
import { COMMANDS, type Command } from "../../shared/commands.ts";

const folder = new URL("../../extension/", import.meta.url);
const json = (file: string) => JSON.parse(readFileSync(new URL(file, folder), "utf8"));
const manifest = json("package.json");
const texts: Record<string, string> = json("package.nls.json");
const { contributes } = manifest;

test("the listing is complete", () => {
  expect(manifest).toMatchObject({
    name: "drillwright",
    publisher: "drillwright",
    license: "MIT",
    pricing: "Free",
  });
  expect(manifest.version).toMatch(/^\d+\.\d+\.\d+$/);
  expect(manifest.keywords.length).toBeLessThanOrEqual(5);
  expect(manifest.galleryBanner).toEqual({ color: expect.stringMatching(/^#[0-9a-f]{6}$/), theme: "dark" });
  const allowed = [
    "Programming Languages",
    "Snippets",
    "Linters",
    "Formatters",
    "Testing",
    "Education",
    "Visualization",
  ];
  expect(allowed).toEqual(expect.arrayContaining(manifest.categories));
});

test("the icon is a PNG of 256 by 256 pixels", () => {
  const png = readFileSync(new URL(manifest.icon, folder));
  expect(png.subarray(0, 8)).toEqual(Buffer.from("\x89PNG\r\n\x1a\n", "latin1"));
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([256, 256]);
});

test("the oldest editor admitted is the one whose interface the code is checked against", () => {
  const types = JSON.parse(
    readFileSync(new URL("../node_modules/@types/vscode/package.json", folder), "utf8"),
  );
  expect(manifest.engines.vscode).toBe(`^${types.version}`);
});

test("the extension sleeps until a plan is opened, one of its commands is called, or one of its pages comes back", () => {
  expect(manifest.activationEvents).toEqual([
    "onWebviewPanel:drillwright.report",
    "onWebviewPanel:drillwright.card",
  ]);
});

test("it works in folders nobody has vouched for, and in those that are on no disk", () => {
  expect(manifest.capabilities).toEqual({
    untrustedWorkspaces: { supported: true },
    virtualWorkspaces: true,
  });
});

test("every file it names exists", () => {
  const named =
    JSON.stringify(manifest)
      .match(/"(\.\/|icons\/)[^"]+"/g)
      ?.map((quoted) => JSON.parse(quoted)) ?? [];
  const built = [manifest.main, manifest.browser];
  expect(named.length).toBeGreaterThan(5);
  expect(named.filter((file) => !built.includes(file) && !existsSync(new URL(file, folder)))).toEqual([]);
});

test("every text it refers to is there, and none is left over", () => {
  const used = [...JSON.stringify(manifest).matchAll(/"%([^%"]+)%"/g)].map(([, key]) => key);
  expect(Object.keys(texts).sort()).toEqual([...new Set(used)].sort());
  expect(Object.values(texts).filter((text) => text.trim() === "")).toEqual([]);
});

test("files of the language have an icon, light and dark", () => {
  expect(contributes.languages[0].icon).toEqual({
    light: expect.stringMatching(/\.svg$/),
    dark: expect.stringMatching(/\.svg$/),
  });
});

test("editor and language agree on the name of the language and of its files", () => {
  expect(contributes.languages[0]).toMatchObject({
    id: DrillwrightLanguageMetaData.languageId,
    extensions: DrillwrightLanguageMetaData.fileExtensions,
  });
});

describe("commands", () => {
  const commands: Command[] = Object.values(COMMANDS);

  test("have a category, and a title that does not repeat it", () => {
    for (const { title, category } of contributes.commands) {
      expect(category).toBe("Drillwright");
      expect(texts[title.slice(1, -1)]).toMatch(/^[A-Z](?!.*Drillwright)/);
    }
  });

  test("have an icon of the editor's own wherever they are a button, of which there is one", () => {
    const buttons = commands.filter(({ menus }) =>
      [menus?.["editor/title"] ?? []].flat().some(({ group }) => group.startsWith("navigation")),
    );
    expect(buttons.map(({ icon }) => icon)).toEqual([expect.stringMatching(/^\$\([a-z-]+\)$/)]);
  });

  test("are offered in menus of files only where they can do their work", () => {
    const entries: { command: string; when?: string }[] = [
      ...contributes.menus["editor/title"],
      ...contributes.menus["editor/context"],
    ];
    expect(entries.length).toBeGreaterThan(0);
    for (const { when } of entries) {
      expect(when).toContain("resourceLangId == drillwright");
      expect(when).toContain(`resourceScheme != ${LIBRARY_SCHEME}`);
    }
  });

  test("that read a table are offered on tables only, beside the editor's own", () => {
    const entries: { when: string; group: string }[] = contributes.menus["explorer/context"];
    expect(entries.length).toBeGreaterThan(0);
    for (const { when, group } of entries) {
      expect(when).toContain("resourceExtname =~ /");
      expect(group).toMatch(/^drillwright@\d$/);
    }
  });

  test("stand at a view of ours where they belong to one", () => {
    const views = Object.values<{ id: string }[]>(contributes.views).flat();
    const entries: { when?: string }[] = [
      ...contributes.menus["view/title"],
      ...contributes.menus["view/item/context"],
    ];
    expect(entries.length).toBeGreaterThan(0);
    for (const { when } of entries) {
      const named = [...(when ?? "").matchAll(/\bview == ([\w.]+)/g)].map(([, id]) => id);
      expect(named).not.toEqual([]);
      expect(views.map(({ id }) => id)).toEqual(expect.arrayContaining(named));
    }
  });

  test("that are buttons of a row are in its menu too: keys do not reach buttons", () => {
    const entries: { command: string; group: string }[] = contributes.menus["view/item/context"];
    const named = (isButton: boolean) =>
      entries.filter(({ group }) => (group === "inline") === isButton).map(({ command }) => command);
    expect(named(true)).not.toEqual([]);
    expect(named(false)).toEqual(expect.arrayContaining(named(true)));
  });

  test("that need an argument are not in the palette", () => {
    expect(contributes.menus.commandPalette).toContainEqual({
      command: COMMANDS.showSession.id,
      when: "false",
    });
  });
});

test("signs such as ° are no suspects, while characters that look like others are", () => {
  const defaults = contributes.configurationDefaults["[drillwright]"];
  expect(defaults["editor.unicodeHighlight.nonBasicASCII"]).toBe(false);
  expect(Object.keys(defaults)).not.toContain("editor.unicodeHighlight.ambiguousCharacters");
  expect(Object.keys(defaults)).not.toContain("editor.unicodeHighlight.invisibleCharacters");
});

test("every setting has a default that it admits, a description, a scope and a place", () => {
  const settings = Object.entries<Record<string, unknown>>(contributes.configuration.properties);
  expect(settings.length).toBeGreaterThan(0);
  for (const [id, setting] of settings) {
    expect(id).toMatch(/^drillwright(\.[a-zA-Z]+)+$/);
    expect(setting).toMatchObject({
      markdownDescription: expect.any(String),
      scope: expect.stringMatching(/^(resource|window)$/),
      order: expect.any(Number),
    });
    if (setting.type === "boolean") expect(setting.default).toBeTypeOf("boolean");
    else expect(setting.enum).toContain(setting.default);
  }
});

describe("views", () => {
  const views: Record<string, { id: string; name: string; icon: string }[]> = contributes.views;

  test("stand in one place, and are few", () => {
    expect(contributes.viewsContainers).toEqual({
      activitybar: [expect.objectContaining({ id: "drillwright" })],
    });
    expect(Object.keys(views)).toEqual(["drillwright"]);
    expect(views.drillwright?.length).toBeLessThanOrEqual(5);
  });

  test("say what to do where they have nothing to show, in a folder and without one", () => {
    const commands = new Set(Object.values(COMMANDS).map(({ id }) => id as string));
    for (const { id } of Object.values(views).flat()) {
      const welcome: { view: string; when: string; contents: string }[] = contributes.viewsWelcome;
      const own = welcome.filter(({ view }) => view === id);
      expect(own.map(({ when }) => when)).toEqual(["workbenchState == empty", "workbenchState != empty"]);
      for (const { contents } of own) {
        const links = [...(texts[contents.slice(1, -1)] ?? "").matchAll(/\(command:([^)]+)\)/g)];
        expect(links.length).toBeGreaterThan(0);
        for (const [, command = ""] of links)
          expect(command.startsWith("drillwright.") ? [...commands] : [command]).toContain(command);
      }
    }
  });
});

describe("the walkthrough", () => {
  interface Step {
    readonly id: string;
    readonly description: string;
    readonly media: { readonly svg: string; readonly altText: string };
    readonly completionEvents: readonly string[];
  }
  const [walkthrough, ...others] = contributes.walkthroughs;
  const steps: readonly Step[] = walkthrough.steps;

  test("is one, of few steps", () => {
    expect(others).toEqual([]);
    expect(steps.length).toBeLessThanOrEqual(7);
  });

  test.each(steps)("$id leads somewhere, knows when it is done, and has a picture", (step) => {
    expect(texts[step.description.slice(1, -1)]).toMatch(/\]\(command:drillwright\.[\w.]+\)/);
    expect(step.completionEvents).toEqual([
      expect.stringMatching(/^(onCommand|onContext|onView):drillwright\.\w+$/),
    ]);
    const picture = readFileSync(new URL(step.media.svg, folder), "utf8");
    // Colours are the editor's, so that it fits every theme; fallbacks stand behind them.
    for (const [colour] of picture.matchAll(/(?:fill|stroke)="[^"]*"/g))
      expect(colour).toMatch(/"(none|var\(--vscode-[^"]+)"$/);
    expect(picture).not.toMatch(/<script|href=|\son\w+=/);
  });
});
