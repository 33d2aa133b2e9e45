/** The report on a session, as an editor shows it beside the plan. */
import { afterEach, expect, test } from "vitest";
import { type SessionReport, sessionReport } from "../../shared/protocol/session-report.ts";
import { practice } from "../cli/practice.ts";
import { LspClient } from "../support/lsp-client.ts";

let client: LspClient;
afterEach(() => client.stop());

const FILES = Object.fromEntries(Object.entries(practice()).map(([path, text]) => [path, String(text)]));

const reportOn = (file: string, name: string) =>
  client.request<SessionReport | null>(sessionReport.method, { session: { file: client.uri(file), name } });

test("a page that stands for itself, whether the files are open or not", async () => {
  client = await LspClient.start({ files: FILES });
  const report = await reportOn("sessions/monday.drill", "Monday");
  expect(report).toMatchObject({ title: "Monday, 2026-10-12", problem: null });
  expect(report?.page).toMatch(/^<!doctype html>/);
  expect(report?.page).toContain("at least 3 of 5 shots on target");
});

test("why there is none, and nothing of a session that is not there", async () => {
  const files = {
    ...FILES,
    "plans/irons.drill": FILES["plans/irons.drill"]?.replace("3 of 5", "6 of 5") ?? "",
  };
  client = await LspClient.start({ files });
  expect(await reportOn("sessions/monday.drill", "Monday")).toEqual({
    title: "Monday",
    page: null,
    problem: "The plan is scored when its mistakes are mended.",
  });
  expect(await reportOn("sessions/monday.drill", "Tuesday")).toBeNull();
});

test("there is none of a table that cannot be read: nobody has missed anything", async () => {
  const { "data/monday.csv": _table, ...files } = FILES;
  client = await LspClient.start({ files });
  expect(await reportOn("sessions/monday.drill", "Monday")).toMatchObject({
    page: null,
    problem: expect.stringMatching(/^There is no file /),
  });
});
