/** "It takes at least so many shots": with one less it still cannot be shown, with so many it can. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { check } from "../checks/checked-files.ts";

const CODES = ["confidence-must-be-within-reach", "confidence-could-allow-a-miss"];

const goal = fc.oneof(
  {
    weight: 4,
    arbitrary: fc
      .constantFrom("least", "most")
      .chain((bound) =>
        fc
          .integer({ min: 2, max: 19 })
          .map((twentieth) => `middle ${5 * twentieth} % of carry spans at ${bound} 10 yd`),
      ),
  },
  fc
    .integer({ min: 1, max: 19 })
    .map((twentieth) => `at least ${5 * twentieth} % of shots with carry above 90 yd`),
  fc
    .integer({ min: 1, max: 19 })
    .map((twentieth) => `at most ${5 * twentieth} % of shots with carry above 90 yd`),
  fc.integer({ min: 4, max: 20 }).map((share) => `${share}th percentile of carry at most 90 yd`),
  fc.constantFrom("spread of carry between 9 yd and 12 yd", "median carry at least 90 yd"),
);

const planOf = (shots: number, claim: string, confidence: number) => `plan "Gate" {
  for 7-iron
  block "Start" test {
    ${shots} shots
    success ${claim} at ${confidence} % confidence
  }
}
`;

/** What is said of the goal; of one that can neither be shown nor missed the first. */
const saidOf = async (shots: number, claim: string, confidence: number) =>
  (await check(planOf(shots, claim, confidence))).find(({ code }) => CODES.includes(code));

test("the fewest shots that are named are the fewest", async () => {
  let named = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 2, max: 12 }),
      goal,
      fc.constantFrom(60, 75, 80, 90, 95),
      async (shots, claim, confidence) => {
        const said = await saidOf(shots, claim, confidence);
        const [, number] = /it takes at least (\d+) shots/.exec(said?.message ?? "") ?? [];
        if (said === undefined || number === undefined || Number(number) > 60) return;
        named++;
        for (let fewer = shots + 1; fewer < Number(number); fewer++) {
          expect((await saidOf(fewer, claim, confidence))?.code, `${claim}, ${fewer}`).toBeDefined();
        }
        expect((await saidOf(Number(number), claim, confidence))?.code).not.toBe(said.code);
      },
    ),
    { numRuns: 100 },
  );
  expect(named).toBeGreaterThan(15);
});
