import { describe, expect, test } from "vitest";
import { type Practised, standingsIn } from "../../server/scoring/curriculum-standing.ts";
import type { CurriculumStep } from "../../shared/plan-model.ts";
import type { Verdict } from "../../shared/score-report.ts";
import { somewhere } from "../criteria/words.ts";

const DAY = 86_400;
const today = "2026-10-20";

function step(plan: string, more: Partial<CurriculumStep> = {}): CurriculumStep {
  return { plan, after: [], gates: [], reviews: [], location: somewhere, ...more };
}

function gate(plan: string, block: string | null = null, times = 1): CurriculumStep["gates"][number] {
  return { plan, block, times, location: somewhere };
}

/** A session of P-01 whose one block, "Test", came out as all of it did. */
function session(
  plan: string,
  verdict: Verdict | null,
  date: string | null = "2026-10-01",
): Practised<string> {
  return { player: "P-01", plan, date, outcome: { verdict, blocks: [{ name: "Test", verdict }] } };
}

const notScored: Practised<string> = { player: "P-01", plan: "A", date: "2026-10-02", outcome: null };

/** The standing of P-01 at the last of the steps. */
function standing(steps: readonly CurriculumStep[], ...sessions: readonly Practised<string>[]) {
  return standingsIn({ steps: [...steps] }, sessions, today)
    .at(-1)
    ?.get("P-01");
}

describe("a step", () => {
  const [a, b] = [step("A"), step("B", { after: ["A"] })];

  test("is current until every goal of its plan is met in a session", () => {
    const wanted = { state: "current", sessions: 1, metOn: null };
    expect(standing([a], session("A", "missed"))).toMatchObject({ ...wanted, latest: "missed" });
    expect(standing([a], session("A", "undecided"))).toMatchObject({ ...wanted, latest: "undecided" });
    const sessions = [session("A", "met", "2026-10-08"), session("A", "missed", "2026-10-09")];
    expect(standing([a], ...sessions)).toMatchObject({
      state: "met",
      metOn: "2026-10-08",
      latest: "missed",
    });
  });

  test("whose plan sets no goals is met when it was practised", () => {
    expect(standing([a], session("A", null))).toMatchObject({ state: "met", latest: null });
  });

  test("is closed until every goal of the plans before it is met, where it states no gate", () => {
    expect(standing([a, b], session("A", "undecided"))).toMatchObject({
      state: "closed",
      waitsFor: [{ plan: "A", block: null, times: 1, met: 0 }],
    });
    expect(standing([a, b], session("A", "met"))).toMatchObject({ state: "current", waitsFor: [] });
  });

  test("is met whether or not its gates held when it was practised", () => {
    const sessions = [session("A", "missed"), session("B", "met")];
    expect(standing([a, b], ...sessions)).toMatchObject({ state: "met", waitsFor: [] });
  });

  test("tells of sessions that could not be scored, which show nothing either way", () => {
    expect(standing([a], notScored)).toMatchObject({
      state: "current",
      sessions: 1,
      unscored: 1,
      latest: null,
    });
    expect(standing([a, b], notScored)?.state).toBe("closed");
  });
});

describe("a gate", () => {
  const inTwo = [step("A"), step("B", { after: ["A"], gates: [gate("A", null, 2)] })];

  test("may ask for several sessions, and counts them", () => {
    expect(standing(inTwo, session("A", "met"), session("A", "missed"))).toMatchObject({
      state: "closed",
      waitsFor: [{ plan: "A", block: null, times: 2, met: 1 }],
    });
    expect(standing(inTwo, session("A", "met"), session("A", "met"))?.state).toBe("current");
  });

  test("on a block asks for nothing else of its plan", () => {
    const onBlock = [step("A"), step("B", { after: ["A"], gates: [gate("A", "Test")] })];
    const missed: Practised<string> = {
      ...session("A", "missed"),
      outcome: { verdict: "missed", blocks: [{ name: "Test", verdict: "met" }] },
    };
    expect(standing(onBlock, missed)?.state).toBe("current");
    expect(standing(onBlock, session("A", "missed"))?.state).toBe("closed");
    expect(standing(onBlock, session("A", null))?.state).toBe("closed");
  });

  test("that is stated is all that is asked: other plans before the step open nothing", () => {
    const after = [step("A"), step("B"), step("C", { after: ["A", "B"], gates: [gate("A")] })];
    expect(standing(after, session("A", "met"))?.state).toBe("current");
  });
});

describe("a review", () => {
  const reviewed = [step("A", { reviews: [7 * DAY, 28 * DAY] })];

  test("is due from its day on, counted from the first day the step was met", () => {
    expect(standing(reviewed, session("A", "met", "2026-10-13"))).toMatchObject({
      state: "due",
      review: "2026-10-20",
    });
    expect(standing(reviewed, session("A", "met", "2026-10-14"))).toMatchObject({
      state: "met",
      review: "2026-10-21",
    });
  });

  test("is done by a session of its day or later that meets the step again, and by no other", () => {
    const first = session("A", "met", "2026-10-01");
    const review = (verdict: Verdict, date: string) => standing(reviewed, first, session("A", verdict, date));
    expect(review("met", "2026-10-07")).toMatchObject({ state: "due", review: "2026-10-08" });
    expect(review("met", "2026-10-08")).toMatchObject({ state: "met", review: "2026-10-29" });
    expect(review("missed", "2026-10-08")).toMatchObject({ state: "due", review: "2026-10-08" });
    expect(review("undecided", "2026-10-08")).toMatchObject({ state: "due", review: "2026-10-08" });
  });

  test("that comes late does for those before it too", () => {
    const sessions = [session("A", "met", "2026-08-01"), session("A", "met", "2026-09-10")];
    expect(standing(reviewed, ...sessions)).toMatchObject({ state: "met", review: null });
  });

  test("has no day where the session that met the step states none", () => {
    expect(standing(reviewed, session("A", "met", null))).toMatchObject({
      state: "met",
      metOn: null,
      review: null,
    });
  });

  test("of part of a day is on the next, over the end of a month and of a year", () => {
    const soon = [step("A", { reviews: [1.5 * DAY] })];
    expect(standing(soon, session("A", "met", "2026-12-30"))?.review).toBe("2027-01-01");
  });

  test("beyond all calendars never comes", () => {
    for (const days of [1e7, 1e12])
      expect(standing([step("A", { reviews: [days * DAY] })], session("A", "met"))?.review).toBeNull();
  });
});

test("every player of the curriculum stands at every step, and others at none", () => {
  const other = { ...session("B", "missed"), player: "P-02" };
  const elsewhere = { ...session("Z", "met"), player: "P-03" };
  const [a, b] = standingsIn(
    { steps: [step("A"), step("B")] },
    [session("A", "met"), other, elsewhere],
    today,
  );
  const states = (of: typeof a) => [...(of ?? [])].map(([player, { state }]) => [player, state]);
  expect(states(a)).toEqual([
    ["P-01", "met"],
    ["P-02", "current"],
  ]);
  expect(states(b)).toEqual([
    ["P-01", "current"],
    ["P-02", "current"],
  ]);
});
