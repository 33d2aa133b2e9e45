/** Verdicts beside the goals, over the protocol, against the bundled server. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import type { CodeLens, Diagnostic, Hover, InlayHint, MarkupContent } from "vscode-languageserver";
import { type ProjectChangedParams, projectChanged } from "../../shared/protocol/project-changed.ts";
import { type ScoresChangedParams, scoresChanged } from "../../shared/protocol/scores-changed.ts";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Gate" {
  for 7-iron
  block "Start line" test {
    4 shots
    target start-direction within ±2°
    success {
      at least 3 of 4 shots on target
      average carry at least 150 yd
    }
  }
}
`;
const SESSION = `use "./plan"
player "P-01" { right-handed }
source "Table" {
  column "Start" is start-direction in ° positive right
  column "Carry" is carry in yd
}
session "First try" { plan "Gate" player "P-01" date 2026-10-12 data "shots.csv" from "Table" }
`;
const DATA = "Start,Carry\n1.0,152\n-3.5,149\n0.5,155\n2.5,151\n";

const verdicts = (diagnostics: readonly Diagnostic[]) =>
  diagnostics
    .filter(({ source }) => source === "drillwright score")
    .map(({ range, code }) => `${range.start.line + 1} ${code}`);
const scored = (diagnostics: readonly Diagnostic[]) => verdicts(diagnostics).length > 0;

let client: LspClient;
afterEach(() => client.stop());

async function open(settings?: unknown): Promise<readonly Diagnostic[]> {
  client = await LspClient.start({
    files: { "plan.drill": PLAN, "session.drill": SESSION, "shots.csv": DATA },
    settings,
  });
  await client.open("plan.drill", PLAN);
  return client.diagnosticsOf("plan.drill", settings === undefined ? scored : undefined);
}

/** So many shots like those of the first four. */
const rows = (times: number) => {
  const [header, ...shots] = DATA.trimEnd().split("\n");
  return [header, ...Array.from({ length: times }, () => shots).flat()].join("\n");
};

describe("verdicts", () => {
  test("stand on the lines of the block, the target and the goals", async () => {
    expect(verdicts(await open())).toEqual(["3 missed", "5 met", "7 missed", "8 met"]);
  });

  test("say what was seen and what was required, and lead to the rows that decided", async () => {
    const missed = (await open()).find(({ range }) => range.start.line === 6);
    expect(missed?.message).toContain("2 of 4");
    expect(missed?.message).toContain("at least 3");
    expect(
      missed?.relatedInformation?.map(({ location }) => [location.uri, location.range.start.line]),
    ).toEqual([
      [client.uri("shots.csv"), 2],
      [client.uri("shots.csv"), 4],
    ]);
    expect(missed?.relatedInformation?.map(({ message }) => message)).toEqual([
      "line 3: start-direction 3.5° left",
      "line 5: start-direction 2.5° right",
    ]);
  });

  test("change while the plan is typed", async () => {
    await open();
    await client.change("plan.drill", PLAN.replace("within ±2°", "within ±4°"));
    const after = await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("7 met"));
    expect(verdicts(after)).toEqual(["3 met", "5 met", "7 met", "8 met"]);
  });

  test("give way to a mistake in the plan and come back when it is mended", async () => {
    await open();
    await client.change("plan.drill", PLAN.replace("3 of 4", "5 of 4"));
    const broken = await client.diagnosticsOf("plan.drill", (all) =>
      all.some(({ severity }) => severity === 1),
    );
    expect(broken.filter(({ source }) => source === "drillwright").map(({ code }) => code)).toEqual([
      "hits-must-not-exceed-shots",
    ]);
    await client.diagnosticsOf("plan.drill", (all) => !scored(all));
    await client.change("plan.drill", PLAN);
    await client.diagnosticsOf("plan.drill", scored);
  });

  describe("that are no longer current", () => {
    const lenses = async () => {
      const textDocument = { uri: client.uri("plan.drill") };
      const found = await client.request<CodeLens[]>("textDocument/codeLens", { textDocument });
      return found.map(({ range, command }) => `${range.start.line + 1} ${command?.title}`);
    };
    const lastScore = () => {
      const told = client.notifications.filter(({ method }) => method === scoresChanged.method);
      return (told.at(-1)?.params as ScoresChangedParams | undefined)?.plans[0];
    };

    test("are marked so while the plan has a mistake, and follow its blocks", async () => {
      await open();
      await client.change("plan.drill", `\n${PLAN.replace("3 of 4", "5 of 4")}`);
      await client.diagnosticsOf("plan.drill", (all) => all.length > 0 && !scored(all));
      expect(await lenses()).toEqual([
        "2 The plan is scored when its mistakes are mended. (no longer current: First try, 2026-10-12: 1 goal met · 1 missed)",
        "4 no longer current: 2 of 4 on target · 1 goal met · 1 missed",
      ]);
      expect(lastScore()).toMatchObject({ verdict: null, before: "1 goal met · 1 missed" });
    });

    test("are marked so while the table cannot be read", async () => {
      await open();
      await client.write("shots.csv", "");
      await client.until(
        () => typeof lastScore()?.problem === "string",
        () => "no problem told",
      );
      expect(lastScore()).toMatchObject({
        verdict: null,
        problem: expect.stringContaining("The file is empty."),
        before: "1 goal met · 1 missed",
      });
      const [plan] = await lenses();
      expect(plan).toMatch(/^1 The file is empty\..* \(no longer current: First try/);
      // Diagnostics remember nothing: they are those of a server that has just started.
      const diagnostics = await client.diagnosticsOf("plan.drill", scored);
      expect(verdicts(diagnostics)).not.toContain("8 met");
      await client.write("shots.csv", DATA);
      await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("8 met"));
      expect(await lenses()).toContain("1 First try, 2026-10-12: 1 goal met · 1 missed");
    });

    test("are not made up where there was no score before", async () => {
      client = await LspClient.start({
        files: { "plan.drill": PLAN, "session.drill": SESSION, "shots.csv": "" },
      });
      await client.open("plan.drill", PLAN);
      await client.until(
        () => lastScore() !== undefined,
        () => "no score told",
      );
      expect(lastScore()).toMatchObject({ verdict: null, before: null });
    });
  });

  test("change when a shot is recorded again", async () => {
    await open();
    await client.write("shots.csv", DATA.replace("-3.5", "-1.5"));
    await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("7 met"));
  });

  test("of a large table, read in pieces, are those of a small one, however often it is edited meanwhile", async () => {
    const many = (text: string) => text.replace("4 shots", "at least 4 shots");
    client = await LspClient.start({
      files: { "plan.drill": many(PLAN), "session.drill": SESSION, "shots.csv": rows(40_000) },
    });
    await client.open("plan.drill", many(PLAN));
    for (const tolerance of [9, 8, 7, 6, 5])
      await client.change("plan.drill", many(PLAN).replace("±2", `±${tolerance}`));
    await client.change("plan.drill", many(PLAN).replace("±2", "±1"));
    const found = await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("7 missed"));
    expect(found.find(({ range }) => range.start.line === 4)?.message).toContain("80000 of 160000");
  });

  test("stay undecided while shots are still to come", async () => {
    await open();
    await client.write("shots.csv", "Start,Carry\n1.0,152\n-3.5,149\n");
    const after = await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("7 undecided"));
    expect(after.find(({ range }) => range.start.line === 6)?.message).toContain(
      "needs each of the 2 shots not hit yet",
    );
  });

  test("disappear when the plan is closed", async () => {
    await open();
    await client.close("plan.drill");
    await client.diagnosticsOf("plan.drill", (all) => !scored(all));
  });

  test("are hidden by one switch, and take their level from the settings", async () => {
    await open({ verdicts: { show: false } });
    await client.until(
      () => client.notifications.some(({ method }) => method === "drillwright/scoresChanged"),
      () => "no scores",
    );
    expect(verdicts(await client.diagnosticsOf("plan.drill"))).toEqual([]);
  });

  test("that stand on no line are told where somebody asks, with the rows that decided", async () => {
    await open({ verdicts: { levels: { missed: "none" } } });
    await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("8 met"));
    const hover = async (line: number) => {
      const textDocument = { uri: client.uri("plan.drill") };
      const found = await client.request<Hover | null>("textDocument/hover", {
        textDocument,
        position: { line, character: 12 },
      });
      return (found?.contents as MarkupContent | undefined)?.value ?? "";
    };
    expect(await hover(6)).toContain("**missed**: 2 of 4");
    expect(await hover(6)).toContain(`- [line 3: start-direction 3.5° left](${client.uri("shots.csv")}#L3)`);
    // A met goal has its diagnostic, which says the same.
    expect(await hover(7)).not.toContain("**met**");
  });

  test("are summed up over the plan and each block, and at the end of each goal", async () => {
    await open();
    const textDocument = { uri: client.uri("plan.drill") };
    const lenses = await client.request<CodeLens[]>("textDocument/codeLens", { textDocument });
    expect(lenses.map(({ command }) => command?.title)).toEqual([
      "First try, 2026-10-12: 1 goal met · 1 missed",
      "missed · 2 of 4 on target · 1 goal met · 1 missed",
    ]);
    const range = { start: { line: 0, character: 0 }, end: { line: 20, character: 0 } };
    const hints = await client.request<InlayHint[]>("textDocument/inlayHint", { textDocument, range });
    expect(hints.map(({ position, label }) => [position.line + 1, label])).toEqual([
      [7, "missed: 2 of 4"],
      [8, "met: 152 yd"],
    ]);
  });
});

describe("a block's summary", () => {
  test("leads to the rows behind its open goals, in an editor that can show them", async () => {
    client = await LspClient.start({
      files: { "plan.drill": PLAN, "session.drill": SESSION, "shots.csv": DATA },
      initializationOptions: { commands: ["drillwright.showRows"] },
    });
    await client.open("plan.drill", PLAN);
    await client.diagnosticsOf("plan.drill", scored);
    const textDocument = { uri: client.uri("plan.drill") };
    const [, block] = await client.request<CodeLens[]>("textDocument/codeLens", { textDocument });
    const line = (line: number) => ({ start: { line, character: 0 }, end: { line: line + 1, character: 0 } });
    expect(block?.command).toEqual({
      title: "missed · 2 of 4 on target · 1 goal met · 1 missed",
      command: "drillwright.showRows",
      arguments: [
        {
          file: client.uri("plan.drill"),
          position: { line: 2, character: 2 },
          rows: [2, 4].map((row) => ({ file: client.uri("shots.csv"), range: line(row) })),
        },
      ],
    });
  });
});

describe("data that cannot be read", () => {
  test("is told on the session, once", async () => {
    client = await LspClient.start({ files: { "plan.drill": PLAN, "session.drill": SESSION } });
    await client.open("session.drill", SESSION);
    const found = await client.diagnosticsOf("session.drill", (all) =>
      all.some(({ source }) => source === "drillwright data"),
    );
    expect(found.map(({ source, code }) => `${source}: ${code}`)).toEqual([
      "drillwright score: not-measured",
      "drillwright data: file-missing",
    ]);
  });
});

describe("a session's own file", () => {
  test("tells how its session came out, and what is wrong with its data, whichever session the plan is shown with", async () => {
    const later = SESSION.replace("First try", "Second try")
      .replace("10-12", "10-19")
      .replace("shots", "later");
    client = await LspClient.start({
      files: {
        "plan.drill": PLAN,
        "one.drill": SESSION,
        "two.drill": later,
        "shots.csv": DATA.replace("0.5", "half"),
        "later.csv": DATA,
      },
    });
    await client.open("one.drill", SESSION);
    const found = await client.diagnosticsOf("one.drill", (all) =>
      all.some(({ source }) => source === "drillwright data"),
    );
    expect(found.map(({ range, code, message }) => `${range.start.line + 1} ${code} ${message}`)).toEqual([
      "7 missed missed: 1 goal met · 1 missed",
      expect.stringMatching(/^7 cell-unreadable .*"half"/),
    ]);
    const of = (file: string) =>
      client.notifications
        .filter(({ method }) => method === scoresChanged.method)
        .map(({ params }) => params as ScoresChangedParams)
        .findLast((each) => each.file === client.uri(file));
    await client.until(
      () => of("one.drill") !== undefined,
      () => "no score told",
    );
    expect(of("plan.drill")?.plans).toMatchObject([{ session: { name: "Second try" }, shown: true }]);
    expect(of("one.drill")).toMatchObject({
      plans: [],
      sessions: [
        { session: { name: "First try", range: { start: { line: 6 } } }, shown: false, verdict: "missed" },
      ],
    });

    await client.close("one.drill");
    await client.until(
      () => of("one.drill")?.sessions.length === 0,
      () => "the score of the closed file stays",
    );
  });
});

describe("the session shown", () => {
  const LATER = SESSION.replace("First try", "Second try")
    .replace("10-12", "10-19")
    .replace("shots.csv", "later.csv");

  test("is the latest, unless another is picked", async () => {
    client = await LspClient.start({
      files: {
        "plan.drill": PLAN,
        "one.drill": SESSION,
        "two.drill": LATER,
        "shots.csv": DATA,
        "later.csv": "Start,Carry\n0,160\n0,160\n0,160\n0,160\n",
      },
    });
    await client.open("plan.drill", PLAN);
    const latest = await client.diagnosticsOf("plan.drill", scored);
    expect(verdicts(latest)).toEqual(["3 met", "5 met", "7 met", "8 met"]);

    const file = client.uri("plan.drill");
    const [choices] = await client.request<{ sessions: { name: string }[]; picked: boolean }[]>(
      "drillwright/sessions",
      { file },
    );
    expect(choices?.sessions.map(({ name }) => name)).toEqual(["Second try", "First try"]);
    expect(choices?.picked).toBe(false);

    const plan = { file, name: "Gate" };
    await client.request("drillwright/selectSession", { plan, session: choices?.sessions[1] });
    await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("7 missed"));
    await client.request("drillwright/selectSession", { plan, session: null });
    await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("7 met"));
  });

  test("is the latest that is left when its file is deleted, and the project is told to be another", async () => {
    client = await LspClient.start({
      files: {
        "plan.drill": PLAN,
        "one.drill": SESSION,
        "two.drill": LATER,
        "shots.csv": DATA,
        "later.csv": "Start,Carry\n0,160\n0,160\n0,160\n0,160\n",
      },
    });
    await client.open("plan.drill", PLAN);
    await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("7 met"));
    const told = () =>
      client.notifications.filter(
        ({ method, params }) =>
          method === projectChanged.method && (params as ProjectChangedParams).declarations,
      ).length;
    const before = told();
    rmSync(join(client.folder, "two.drill"));
    await client.connection.sendNotification("workspace/didChangeWatchedFiles", {
      changes: [{ uri: client.uri("two.drill"), type: 3 }],
    });
    await client.diagnosticsOf("plan.drill", (all) => verdicts(all).includes("7 missed"));
    expect(told()).toBe(before + 1);
  });

  test("of one day is the one in the file whose name comes last, whichever was read first", async () => {
    const named = (name: string) => SESSION.replace("First try", name);
    client = await LspClient.start({
      files: {
        "plan.drill": PLAN,
        "b.drill": named("In b"),
        "c.drill": named("In c"),
        "a.drill": named("In a"),
        "shots.csv": DATA,
      },
    });
    await client.open("plan.drill", PLAN);
    await client.diagnosticsOf("plan.drill", scored);
    const [choices] = await client.request<{ sessions: { name: string }[] }[]>("drillwright/sessions", {
      file: client.uri("plan.drill"),
    });
    expect(choices?.sessions.map(({ name }) => name)).toEqual(["In c", "In b", "In a"]);
  });
});
