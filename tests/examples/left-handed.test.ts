import { expect, test } from "vitest";
import type { ScoreReport } from "../../shared/score-report.ts";
import { scoreExamples } from "./examples.ts";

const reports = await scoreExamples();

/** What must not depend on which device wrote the table: everything but rows, files and the last digit of a reading. */
function verdictsOf(report: ScoreReport | undefined) {
  return report?.blocks.map(({ name, verdict, shots, onTarget, targets, requirements, criteria }) => ({
    name,
    verdict,
    shots,
    onTarget,
    conditions: [...targets, ...requirements].map(({ text, tally }) => ({ text, tally })),
    criteria: criteria.map(({ id, verdict, evidence }) => ({ id, verdict, tally: evidence.tally })),
  }));
}

const hall = reports.get("sessions/p12-start-line-hall.drill");
const field = reports.get("sessions/p12-start-line-field.drill");

test("a left-hander's session has the same verdicts from two tables with opposite signs, units and order", () => {
  expect(hall?.player.hand).toBe("left");
  expect(hall?.blocks.flatMap((block) => block.criteria)).not.toEqual([]);
  expect(verdictsOf(hall)).toEqual(verdictsOf(field));
});

test("a left-hander hears the same words for sides from both", () => {
  const observed = (report: ScoreReport | undefined) =>
    report?.blocks.flatMap(({ criteria }) => criteria.map(({ evidence }) => evidence.observed));
  expect(observed(hall)).toEqual(observed(field));
  expect(observed(hall)?.join("\n")).toContain("out-to-in");
});
