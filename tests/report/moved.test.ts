/** What moved with a change that was tried. */
import { expect, test } from "vitest";
import { changesTried } from "../../server/report/moved.ts";
import { scoredSessions, secondVisit } from "./lesson.ts";

test("the block with the change is held against the baseline, what goals ask about first", async () => {
  const [tried, another] = changesTried(await secondVisit());
  expect(another).toBeUndefined();
  expect(tried).toMatchObject({
    block: "Gate",
    change: "motion: Chest stays over the ball a beat longer",
    baseline: "Where we are",
  });
  const asked = tried?.moves.map(({ metric, isAsked }) => `${metric.name}: ${isAsked}`);
  expect(asked?.slice(0, 4)).toEqual([
    "attack-angle: true", // the block requires it
    "club-path: true",
    "carry: true",
    "face-angle: false",
  ]);
});

test("of a metric both averages and what is likely of the difference", async () => {
  const [tried] = changesTried(await secondVisit());
  const path = tried?.moves.find(({ metric }) => metric.name === "club-path");
  // 12 and 18 shots of players whose true paths are 5.2° out-to-in and 0.7° in-to-out.
  expect([path?.before.n, path?.after.n]).toEqual([12, 18]);
  const degree = Math.PI / 180;
  expect(path?.limits?.low).toBeLessThan(5.9 * degree);
  expect(path?.limits?.high).toBeGreaterThan(5.9 * degree);
});

test("a block that nobody hit has nothing to tell", async () => {
  const third = (await scoredSessions()).find(({ report }) => report.session.name === "First visit, left");
  if (third === undefined) throw new Error("There is no such session.");
  const data = { ...third.data, shots: third.data.shots.filter(({ block }) => block !== "Gate") };
  expect(changesTried({ ...third, data })).toEqual([]);
});
