/** Where nothing says where blocks start, the reading that was taken can be written into the session. */
import { TextDocument } from "langium";
import { afterEach, describe, expect, test } from "vitest";
import type { CodeAction, Diagnostic } from "vscode-languageserver";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Irons" {
  for 7-iron
  block "Say \\"when\\"" {
    3 shots
    success at least 2 of 3 shots with carry at least 150 yd
  }
  block "Test" {
    2 shots
    success at least 1 of 2 shots with carry at least 150 yd
  }
}
`;
/** The fifth and sixth shot are more than the plan asks for. */
const DATA = "Carry\n152\n149\n155\n151\n140\n160\n";

const session = (statements: string) => `use "./plan"
player "P-01" { right-handed }
source "Table" {
  column "Carry" is carry in yd
}
session "Monday" ${statements}
`;
const SESSION = session(`{
  plan "Irons"
  player "P-01"
  data "shots.csv" from "Table"
}`);
const FIXED = session(`{
  plan "Irons"
  player "P-01"
  data "shots.csv" from "Table"
  block "Say \\"when\\"" from row 2
  block "Test" from row 5
}`);

let client: LspClient;
afterEach(() => client.stop());

const guesses = (diagnostics: readonly Diagnostic[]) =>
  diagnostics.filter(({ code }) => code === "starts-guessed");
const isGuessed = (diagnostics: readonly Diagnostic[]) => guesses(diagnostics).length > 0;
/** The session's own verdict comes with the score. */
const isScored = (diagnostics: readonly Diagnostic[]) =>
  diagnostics.some(({ source }) => source === "drillwright score");

async function open(text: string, data = DATA): Promise<readonly Diagnostic[]> {
  client = await LspClient.start({ files: { "plan.drill": PLAN, "session.drill": text, "shots.csv": data } });
  await client.open("session.drill", text);
  return client.diagnosticsOf("session.drill", isScored);
}

/** The text after the fix of what was guessed. */
async function fixed(text: string, only?: string[]): Promise<string | undefined> {
  const [guess] = guesses(await client.diagnosticsOf("session.drill", isGuessed));
  if (guess === undefined) return undefined;
  const { data: _, ...bare } = guess;
  const uri = client.uri("session.drill");
  const actions = await client.request<CodeAction[]>("textDocument/codeAction", {
    textDocument: { uri },
    range: guess.range,
    context: { diagnostics: [bare], ...(only && { only }) },
  });
  const action = actions.find(({ title }) => title === "Write where each block was taken to start");
  if (action === undefined) return undefined;
  expect(action).toMatchObject({ kind: "quickfix", diagnostics: [{ code: "starts-guessed" }] });
  const document = TextDocument.create(uri, "drillwright", 1, text);
  return TextDocument.applyEdits(document, [...(action.edit?.changes?.[uri] ?? [])]);
}

/** What the diagnostics say, wherever they stand. */
const said = (diagnostics: readonly Diagnostic[]) =>
  diagnostics.map(({ code, message, relatedInformation }) => ({
    code,
    message,
    rows: relatedInformation?.map(({ location, message }) => [location.uri, location.range, message]),
  }));

describe("a session whose shots do not add up", () => {
  test("says which reading was taken and why, on its own line", async () => {
    const [guess] = guesses(await open(SESSION));
    expect(guess).toMatchObject({ severity: 3, source: "drillwright data", range: { start: { line: 5 } } });
    expect(guess?.message).toContain("each block took its number of shots in the order of the plan");
    expect(guess?.message).toContain('"Test" has 3 shots where 2 were asked for.');
  });

  test("is fixed by writing the reading down: nothing is guessed, nothing new is found, every verdict stays", async () => {
    const before = await open(SESSION);
    await client.open("plan.drill", PLAN);
    const verdicts = said(await client.diagnosticsOf("plan.drill", isScored));
    expect(await fixed(SESSION)).toBe(FIXED);
    await client.change("session.drill", FIXED);
    const after = await client.diagnosticsOf("session.drill", (all) => isScored(all) && !isGuessed(all));
    expect(said(after)).toEqual(said(before.filter(({ code }) => code !== "starts-guessed")));
    expect(said(await client.diagnosticsOf("plan.drill", isScored))).toEqual(verdicts);
  });

  test("is left alone by those who ask for other kinds of actions", async () => {
    await open(SESSION);
    expect(await fixed(SESSION, ["refactor"])).toBeUndefined();
    expect(await fixed(SESSION, ["quickfix"])).toBe(FIXED);
  });

  test.each([
    [
      "on one line",
      session('{ plan "Irons" player "P-01" data "shots.csv" from "Table" }'),
      session(`{ plan "Irons" player "P-01" data "shots.csv" from "Table"
  block "Say \\"when\\"" from row 2
  block "Test" from row 5
}`),
    ],
    [
      "with a remark behind the table, and more below",
      session(`{
    plan "Irons"
    data "shots.csv" from "Table" // as it came
    player "P-01"
}`),
      session(`{
    plan "Irons"
    data "shots.csv" from "Table" // as it came
    block "Say \\"when\\"" from row 2
    block "Test" from row 5
    player "P-01"
}`),
    ],
    [
      "with another statement behind the table",
      session(`{
  plan "Irons"
  data "shots.csv" from "Table" player "P-01"
}`),
      session(`{
  plan "Irons"
  data "shots.csv" from "Table"
  block "Say \\"when\\"" from row 2
  block "Test" from row 5
  player "P-01"
}`),
    ],
    ["with line ends of two characters", SESSION.replaceAll("\n", "\r\n"), FIXED.replaceAll("\n", "\r\n")],
  ])("%s", async (_, text, expected) => {
    await open(text);
    expect(await fixed(text)).toBe(expected);
  });
});

test("a session whose shots add up guesses nothing", async () => {
  expect(guesses(await open(SESSION, "Carry\n152\n149\n155\n151\n140\n"))).toEqual([]);
});
