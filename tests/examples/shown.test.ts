/** What the examples are there to show, between them. */
import { expect, test } from "vitest";
import { scoreExamples } from "./examples.ts";

const reports = await scoreExamples();
const all = [...reports.values()];
const blocks = all.flatMap((report) => report.blocks);
const criteria = blocks.flatMap((block) => block.criteria);
const setAside = all.flatMap((report) => report.setAside);

test.each(["count", "share", "run", "statistic"])("a %s ends in each of the four verdicts", (kind) => {
  const verdicts = criteria.filter((criterion) => criterion.kind === kind).map(({ verdict }) => verdict);
  expect(new Set(verdicts)).toEqual(new Set(["met", "missed", "undecided", "not-measured"]));
});

test.each([
  ["a share", "share"],
  ["an average", "statistic"],
])("%s at a confidence is met, missed and undecided, with its limits", (_, kind) => {
  const ability = criteria.filter(
    ({ kind: found, evidence }) => found === kind && evidence.interval !== null,
  );
  expect(new Set(ability.map(({ verdict }) => verdict))).toEqual(new Set(["met", "missed", "undecided"]));
});

test("a whole session is met, missed or undecided", () => {
  expect(new Set(all.map(({ verdict }) => verdict))).toEqual(new Set(["met", "missed", "undecided"]));
});

test.each([
  ["a mark in the data", /^marked /],
  ["a line of the plan", /^left out: /],
  ["the number of shots asked for", /^after the \d+ shots/],
])("shots are set aside by %s", (_, reason) => {
  expect(setAside.filter((shot) => reason.test(shot.reason))).not.toEqual([]);
});

test("blocks are told by a column, by stated starts and by the plan's order", () => {
  expect(new Set(all.map(({ assignment }) => assignment.method))).toEqual(
    new Set(["column", "starts", "order"]),
  );
});

test("one cell cannot be read, and nothing else is wrong with the tables", () => {
  const findings = all.flatMap((report) => report.findings);
  expect(findings.map(({ code, text }) => ({ code, text }))).toEqual([
    { code: "cell-unreadable", text: "O,6" },
  ]);
});

test("some shots cannot be judged, for want of a reading", () => {
  expect(
    criteria.filter(({ evidence }) => evidence.tally !== null && evidence.tally.unknown > 0),
  ).not.toEqual([]);
});

test("blocks are hit with fewer shots than asked for, with none, and with more", () => {
  expect(blocks.some(({ shots }) => shots.hit > 0 && shots.hit < shots.asked)).toBe(true);
  expect(blocks.some(({ shots }) => shots.hit === 0)).toBe(true);
  expect(blocks.some(({ shots }) => shots.counted > shots.asked)).toBe(true);
});

test("readings are computed where a table does not hold them", () => {
  expect(all.flatMap(({ notes }) => notes).join("\n")).toMatch(/face-to-path was computed/);
});
