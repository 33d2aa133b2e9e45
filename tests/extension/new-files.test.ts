/** What new files begin with must be what the language accepts. */
import { EmptyFileSystem, URI } from "langium";
import { describe, expect, test } from "vitest";
import {
  curriculumTemplate,
  DRILL,
  PLAN,
  type SessionFacts,
  sessionTemplate,
} from "../../extension/new-files/templates.ts";
import { usePath } from "../../extension/new-files/use-path.ts";
import { createCoreServices } from "../../language/core-module.ts";
import { SNIPPETS } from "../../language/editor/completion/snippets.ts";
import { FIRST_CAUTIONS } from "../../shared/care.ts";

/** The text as it stands right after it was inserted: every place filled with what it suggests. */
function inserted(snippet: string): string {
  const suggestions = new Map<string, string>();
  const unescaped = (text: string) => text.replace(/\\([$}\\])/g, "$1");
  const part = /\\([$}\\])|\$\{(\d+)(?::((?:\\.|[^}\\])*)|\|([^,|]*)[^|]*\|)?\}|\$0/g;
  return snippet.replace(part, (_, character, place, text, first) => {
    if (character !== undefined) return character;
    const suggestion = unescaped(text ?? first ?? suggestions.get(place) ?? "");
    if (place !== undefined) suggestions.set(place, suggestion);
    return suggestion;
  });
}

async function findings(files: Readonly<Record<string, string>>): Promise<string[]> {
  const { shared } = createCoreServices(EmptyFileSystem);
  await shared.workspace.WorkspaceManager.initializeWorkspace([]);
  const documents = Object.entries(files).map(([path, text]) => {
    const document = shared.workspace.LangiumDocumentFactory.fromString(text, URI.parse(`memory:${path}`));
    shared.workspace.LangiumDocuments.addDocument(document);
    return document;
  });
  await shared.workspace.DocumentBuilder.build(documents, { validation: true });
  return documents.flatMap(({ diagnostics }) => (diagnostics ?? []).map(({ message }) => String(message)));
}

test("a new plan is without a mistake", async () => {
  expect(await findings({ "/plan.drill": inserted(PLAN) })).toEqual([]);
});

test("a new drill is without a mistake, and can be used with another width", async () => {
  const drill = inserted(DRILL);
  const plan = `plan "Today" {
  for 7-iron
  caution "Stop on pain."
  block "Warm" warm-up { 6 shots at 50 % effort }
  block "Again" from "Name" with width = 2°
}
`;
  expect(await findings({ "/plan.drill": `${drill}\n${plan}` })).toEqual([]);
});

test("whatever asks to swing tells how to take care, in the same words", () => {
  const offered = [SNIPPETS.Plan, SNIPPETS.Drill].map((snippets) => snippets?.[0]?.body ?? "");
  for (const template of [PLAN, DRILL, ...offered]) {
    const cautions = [...template.matchAll(/^\tcaution "(.*)"$/gm)].map(([, text]) => text);
    expect(cautions).toEqual(FIRST_CAUTIONS);
  }
  expect(FIRST_CAUTIONS.join(" ")).toMatch(
    /warm up.*stop on pain.*clinician.*clear space.*rules of the range/i,
  );
});

test("a new curriculum of plans that exist is without a mistake, and each step opens the next", async () => {
  const plan = (name: string) => `plan "${name}" {
  for 7-iron
  block "Warm" warm-up { 6 shots at 50 % effort }
  block "Carry" test { 6 shots success average carry at least 140 m }
}
`;
  const text = inserted(curriculumTemplate({ uses: ["./plans"], steps: ["Strike", 'The "cut"'] }));
  const plans = plan("Strike") + plan('The \\"cut\\"');
  expect(await findings({ "/plans.drill": plans, "/curriculum.drill": text })).toEqual([]);
  expect(text).toContain('step "The \\"cut\\"" after "Strike" {');
});

describe("a new session", () => {
  const facts: SessionFacts = {
    uses: ["../library/people", "../plans/gate"],
    name: "P-07: 2026-10-12",
    plan: "Gate",
    player: "P-07",
    source: "Table",
    date: "2026-10-12",
  };
  const beside = {
    "/library/people.drill":
      'player "P-07" { right-handed }\nsource "Table" { column "Carry" is carry in yd }\n',
    "/plans/gate.drill": 'plan "Gate" {\n  for 7-iron\n  block "Shots" baseline { 10 shots }\n}\n',
  };

  test("of known plan, player and source is without a mistake", async () => {
    const text = inserted(sessionTemplate(facts));
    expect(await findings({ ...beside, "/sessions/new.drill": text })).toEqual([]);
    expect(text).toBe(`use "../library/people"
use "../plans/gate"

session "P-07: 2026-10-12" {
	plan "Gate"
	player "P-07"
	date 2026-10-12
	data "data/table.csv" from "Table"
}
`);
  });

  test("keeps names that a snippet would take for places", async () => {
    const name = ["Gate $", '{1:x} "wide" $0 \\ }'].join("");
    const plans = `plan ${JSON.stringify(name)} {\n  for 7-iron\n  block "Shots" baseline { 10 shots }\n}\n`;
    const text = inserted(sessionTemplate({ ...facts, plan: name }));
    expect(await findings({ ...beside, "/plans/gate.drill": plans, "/sessions/new.drill": text })).toEqual(
      [],
    );
    expect(text).toContain(`plan ${JSON.stringify(name)}\n`);
  });

  test("leaves places for what is not known", () => {
    const unknown = { ...facts, uses: [], plan: undefined, player: undefined, source: undefined };
    expect(sessionTemplate(unknown)).toMatch(/^session /);
    expect(inserted(sessionTemplate(unknown))).toMatch(/plan "Plan"\n\tplayer "P-01"/);
  });
});

test.each([
  ["/centre/sessions/new.drill", "/centre/plans/gate.drill", "../plans/gate"],
  ["/centre/new.drill", "/centre/plans/gate.drill", "./plans/gate"],
  ["/centre/new.drill", "/centre/gate.drill", "./gate"],
  ["/a/b/new.drill", "/c/gate.drill", "../../c/gate"],
  ["/C:/Centre/sessions/new.drill", "/C:/Centre/plans/week 1.drill", "../plans/week 1"],
  ["/centre/gate/new.drill", "/centre/gate.drill", "../gate"],
])("from %s, %s is used as %s", (from, to, path) => {
  expect(usePath(from, to)).toBe(path);
});
