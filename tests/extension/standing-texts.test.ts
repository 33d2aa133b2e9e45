import { describe, expect, test } from "vitest";
import { countsText, spokenText, standingText } from "../../extension/views/curricula/standing-texts.ts";
import type { Standing } from "../../shared/curriculum-standing.ts";

/** As the editor's own function does it. */
const t = (sentence: string, ...values: (string | number)[]) =>
  sentence.replace(/\{(\d+)\}/g, (_, place) => String(values[Number(place)]));

function standing(state: Standing["state"], more: Partial<Standing> = {}): Standing {
  return { state, metOn: null, review: null, waitsFor: [], sessions: 0, unscored: 0, latest: null, ...more };
}

const said = (state: Standing["state"], more: Partial<Standing> = {}) =>
  standingText(standing(state, more), t);

describe("what is behind a state", () => {
  test("of a step that was met: when, and the next review", () => {
    expect(said("met", { metOn: "2026-09-14" })).toBe("met on 2026-09-14");
    expect(said("met", { metOn: "2026-09-14", review: "2026-10-12" })).toBe(
      "met on 2026-09-14 · review on 2026-10-12",
    );
    expect(said("met")).toBe("met, on a day that no session states");
    expect(said("due", { metOn: "2026-09-14", review: "2026-09-21" })).toBe(
      "review due since 2026-09-21 · met on 2026-09-14",
    );
  });

  test("of the current step: how often it was practised", () => {
    expect(said("current")).toBe("not practised yet");
    expect(said("current", { sessions: 1, latest: "missed" })).toBe("1 session, the last: Missed");
    expect(said("current", { sessions: 3, unscored: 1, latest: "undecided" })).toBe(
      "3 sessions, the last: Undecided · 1 session not scored",
    );
    expect(said("current", { sessions: 2, unscored: 2 })).toBe("2 sessions · 2 sessions not scored");
  });

  test("of a closed step: every gate that it waits for", () => {
    const gate = { plan: "Strike", block: null, times: 1, met: 0 };
    expect(said("closed", { waitsFor: [gate, { ...gate, block: "Cold look" }] })).toBe(
      "waits for “Strike” · waits for block “Cold look” of “Strike”",
    );
    expect(said("closed", { waitsFor: [{ ...gate, times: 2, met: 1 }] })).toBe(
      "waits for “Strike”, met in 1 of 2 sessions",
    );
    expect(said("closed", { waitsFor: [{ ...gate, block: "Cold look", times: 2 }] })).toBe(
      "waits for block “Cold look” of “Strike”, met in 0 of 2 sessions",
    );
    expect(said("closed", { waitsFor: [gate], sessions: 1, latest: "missed" })).toBe(
      "waits for “Strike” · 1 session, the last: Missed",
    );
  });
});

test("is said with the state, where its words do not hold it", () => {
  expect(spokenText(standing("current"), t)).toBe("Current, not practised yet");
  expect(spokenText(standing("met", { metOn: "2026-09-14" }), t)).toBe("met on 2026-09-14");
});

test("players are counted by where they stand, what asks for something first", () => {
  const all = (["met", "closed", "met", "due", "current"] as const).map((state) => standing(state));
  expect(countsText(all, t)).toBe("1 due for review · 1 current · 2 met · 1 not open yet");
  expect(countsText([], t)).toBe("");
});
