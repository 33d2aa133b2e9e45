/** What people read can be said in their language, all of it, and says the same. */
import { globSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../shared/commands.ts";

const folder = new URL("../../extension/", import.meta.url);
const read = (file: string) => readFileSync(new URL(file, folder), "utf8");
const json = (file: string): Record<string, string> => JSON.parse(read(file));
const sources = globSync("**/*.ts", { cwd: folder.pathname });

/** Sentences in the scripts: what is handed to `l10n.t`, or to a `t` that stands for it. */
const sentences = new Set(
  sources.flatMap((file) =>
    [...read(file).matchAll(/\bt\(\s*("(?:[^"\\]|\\.)*")/g)].map(
      ([, text]) => JSON.parse(text ?? '""') as string,
    ),
  ),
);
/** Titles of commands stand in messages too. */
const titles = Object.values(COMMANDS).map(({ title }) => title);
const english = json("package.nls.json");
const languages = globSync("l10n/bundle.l10n.*.json", { cwd: folder.pathname }).flatMap(
  (file) => /bundle\.l10n\.(\w+)\.json$/.exec(file)?.[1] ?? [],
);

/** What must be the same in every language: places for values, links, and emphasised or coded words' marks. */
function marks(text: string): string[] {
  const places = text.match(/\{\d+\}/g) ?? [];
  const links = [...text.matchAll(/\]\((command:[^)]+)\)/g)].flatMap(([, link]) => link ?? []);
  const emphasis = text.match(/\*[^*]+\*/g)?.map(() => "*") ?? [];
  return [...places, ...links, ...emphasis].sort();
}

test("sentences are found in the scripts, and there is a second language", () => {
  expect(sentences.size).toBeGreaterThan(40);
  expect(languages).toContain("de");
});

test("every sentence stands as such where it is said: one that is put together could not be translated", () => {
  const calls = sources.flatMap((file) =>
    [...read(file).matchAll(/\bl10n\.t\(\s*([^\s"][^)]*)/g)].map(([, argument]) => `${file}: ${argument}`),
  );
  // The titles of commands are the one exception; they come from the list that the test above knows.
  expect(calls.filter((call) => !/: (title|COMMANDS(\.\w+|\[name\])\.title)$/.test(call))).toEqual([]);
});

test("no text of the editor's own functions is shown without a translation", () => {
  const shown = /\bshow(?:Information|Warning|Error)Message\(\s*["`]/;
  expect(sources.filter((file) => shown.test(read(file)))).toEqual([]);
});

describe.each(languages)("%s", (language) => {
  const bundle = json(`l10n/bundle.l10n.${language}.json`);
  const manifest = json(`package.nls.${language}.json`);

  test("has every sentence of the scripts and every title, and none that nobody says", () => {
    expect(Object.keys(bundle).sort()).toEqual([...new Set([...sentences, ...titles])].sort());
  });

  test("has every text of the manifest, and none that it does not refer to", () => {
    expect(Object.keys(manifest).sort()).toEqual(Object.keys(english).sort());
  });

  test("keeps places, links and emphasis", () => {
    for (const [text, translation] of Object.entries(bundle)) expect(marks(translation)).toEqual(marks(text));
    for (const [key, text] of Object.entries(english))
      expect(marks(manifest[key] ?? "")).toEqual(marks(text));
  });

  test("says something everywhere, and in its own words but for what is the same in both", () => {
    const same = Object.entries(bundle).filter(([text, translation]) => text === translation);
    expect(same.map(([text]) => text)).toEqual(["Plan: {0}"]);
    expect(
      [...Object.values(bundle), ...Object.values(manifest)].filter((text) => text.trim() === ""),
    ).toEqual([]);
  });
});
