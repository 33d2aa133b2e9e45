/** What gets into the package, as the build stages it. */
import { globSync, readFileSync, statSync } from "node:fs";
import { describe, expect, test } from "vitest";

const stage = new URL("../../dist/extension/", import.meta.url);
const read = (file: string) => readFileSync(new URL(file, stage), "utf8");
const files = globSync("**/*", { cwd: stage.pathname })
  .filter((file) => statSync(new URL(file, stage)).isFile())
  .sort();
const scripts = files.filter((file) => /\.c?js$/.test(file));

test("the package holds these files and no others", () => {
  expect(files.filter((file) => !file.startsWith("walkthrough/"))).toEqual([
    "CHANGELOG.md",
    "LICENSE",
    "README.md",
    "SUPPORT.md",
    "client.cjs",
    "drillwright.tmLanguage.json",
    "extension.browser.js",
    "extension.cjs",
    "icons/drill-dark.svg",
    "icons/drill-light.svg",
    "icons/icon.png",
    "icons/view.svg",
    "l10n/bundle.l10n.de.json",
    "language-configuration.json",
    "markdown.tmLanguage.json",
    "package.json",
    "package.nls.de.json",
    "package.nls.json",
    "sample.json",
    "server/lsp.browser.js",
    "server/lsp.cjs",
    "server/server.cjs",
    "server/server.late.cjs",
    "server/third-party-notices.txt",
    "third-party-notices.txt",
  ]);
});

test("no file speaks of the machine that built it, or leads to sources", () => {
  const root = new URL("../../", import.meta.url).pathname;
  const speaks = (file: string) => read(file).includes(root) || read(file).includes("sourceMappingURL=");
  expect(files.filter((file) => !file.endsWith(".png") && speaks(file))).toEqual([]);
});

describe("scripts", () => {
  /** What a script asks its host for. */
  const required = (file: string) =>
    [
      ...new Set([...read(file).matchAll(/(?<![.\w])require\("([^"]+)"\)/g)].map(([, name]) => name ?? "")),
    ].sort();

  test("the one that is loaded first is small, and loads the client only when it is needed", () => {
    expect(required("extension.cjs")).toEqual(["./client.cjs", "vscode"]);
    expect(statSync(new URL("extension.cjs", stage)).size).toBeLessThan(100_000);
  });

  test("those for a browser are one file each and know nothing of Node", () => {
    expect(required("extension.browser.js")).toEqual(["vscode"]);
    expect(required("server/lsp.browser.js")).toEqual([]);
    const ofNode = /["'`]node:|\bprocess\.(?:versions|stdin)\b|\b__dirname\b/;
    const browser = scripts.filter((each) => each.includes("browser"));
    expect(browser.filter((file) => ofNode.test(read(file)))).toEqual([]);
  });

  test("bring the licences of all that went into them", () => {
    expect(read("third-party-notices.txt")).toMatch(/^vscode-languageclient \d/m);
    expect(read("server/third-party-notices.txt")).toMatch(/^langium \d/m);
    expect(read("server/third-party-notices.txt")).toMatch(/^@noble\/hashes \d/m);
  });
});

describe("the manifest as it is packed", () => {
  const manifest = JSON.parse(read("package.json"));

  test("names scripts that are there", () => {
    for (const script of [manifest.main, manifest.browser]) expect(files).toContain(script.replace("./", ""));
  });

  test("uses nothing that is only proposed, and binds no key", () => {
    expect(manifest.enabledApiProposals).toBeUndefined();
    expect(manifest.contributes.keybindings).toBeUndefined();
  });
});
