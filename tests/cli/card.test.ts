/** `drillwright card`. */
import { expect, test } from "vitest";
import { LESSON } from "../report/lesson.ts";
import { drillwright } from "./command-line.ts";
import { PLAN, practice } from "./practice.ts";

test("a whole card", async () => {
  const { code, stdout, stderr } = await drillwright(LESSON, ["card", "plans/start-line.drill"]);
  expect([code, stderr]).toEqual([0, ""]);
  await expect(stdout).toMatchFileSnapshot("../report/expected/card.html");
});

test("a box for every shot, blocks in order, and the word of care before the first", async () => {
  const { stdout } = await drillwright(practice(), ["card", "plans/irons.drill"]);
  const places = ["Stop on pain, dizziness", "Stop on pain.", "1. <bdi>Wake up</bdi>", "2. <bdi>Gate</bdi>"];
  const found = places.map((text) => stdout.indexOf(text));
  expect(found).toEqual(found.toSorted((one, other) => one - other));
  expect(found[0]).toBeGreaterThan(0);
  const gate = stdout.slice(found[3]);
  const shots = gate.slice(gate.indexOf("5 shots"), gate.indexOf("<dl>"));
  expect(shots.match(/class="box"/g)).toHaveLength(5);
});

test("what a drill says stands on the card, with its arguments", async () => {
  const { stdout } = await drillwright(LESSON, ["card", "plans/start-line.drill"]);
  expect(stdout).toContain("<dd><bdi>club-path within 2° of 1° in-to-out</bdi></dd>");
  expect(stdout).toContain("<dd><bdi>Brush the grass a hand past the ball</bdi></dd>");
});

test("what the windows ask for stands on the card, for the clubs that are hit", async () => {
  const windows = `window "Neutral" {
  is club-path within 2° of 1° in-to-out
  for driver is club-path within 3° of 2° in-to-out
  for driver at level "first year" is club-path within 5° of 1° in-to-out
}
`;
  const target = PLAN.replace("target start-direction within ±2°", 'target inside "Neutral"');
  const asked = async (plan: string) =>
    (await drillwright({}, ["card", "-"], { stdin: windows + plan })).stdout.match(
      /<dt>&quot;Neutral&quot;<\/dt><dd><bdi>(.*?)<\/bdi>/,
    )?.[1];
  expect(await asked(target)).toBe("club-path within 2° of 1° in-to-out");
  expect(await asked(target.replace("for 7-iron", "for driver"))).toBe(
    "for driver at level &quot;first year&quot;: club-path within 5° of 1° in-to-out; for driver: club-path within 3° of 2° in-to-out",
  );
  expect(await asked(PLAN)).toBe(undefined);
});

test("a text that is piped in", async () => {
  const { code, stdout } = await drillwright({}, ["card", "-"], { stdin: PLAN });
  expect(code).toBe(0);
  expect(stdout).toContain("<title>Start line</title>");
});

test.each([
  [["card"], 2, "card needs FILE|-."],
  [["card", "library/range.drill"], 2, "library/range.drill declares no plan."],
  [["card", "plans/irons.drill", "--plan", "Star line"], 2, 'no plan "Star line". Did you mean Start line?'],
  [["card", "plans"], 2, "plans is a folder."],
])("%s: %i", async (words, code, message) => {
  const files = { ...practice(), "plans/other.drill": PLAN.replace("Start line", "Other") };
  const answer = await drillwright(files, words);
  expect([answer.code, answer.stdout]).toEqual([code, ""]);
  expect(answer.stderr).toContain(message);
});

test("a plan with errors has no card", async () => {
  const { code, stdout, stderr } = await drillwright({ "a.drill": PLAN.replace("3 of 5", "6 of 5") }, [
    "card",
    "a.drill",
  ]);
  expect([code, stdout]).toEqual([3, ""]);
  expect(stderr).toContain("hits-must-not-exceed-shots");
});
