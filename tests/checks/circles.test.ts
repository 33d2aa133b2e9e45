/** Steps, plans and windows that lead to each other in many ways: a circle is found, or that there is none, without trying every way. */
import { expect, test } from "vitest";
import { check } from "./checked-files.ts";

const LAYERS = 40;
const names = (layer: number) => [`${layer} left`, `${layer} right`];
const layers = Array.from({ length: LAYERS }, (_, layer) => layer);

/** Every plan of a layer leads to both of the next. */
const ladder = (of: (name: string, next: readonly string[]) => string) =>
  layers
    .flatMap((layer) => names(layer).map((name) => of(name, layer + 1 < LAYERS ? names(layer + 1) : [])))
    .join("\n");

const quoted = (texts: readonly string[]) => texts.map((text) => `"${text}"`);

const plan = (name: string, next: readonly string[]) => `plan "${name}" {
  block "All" test {
    3 shots
    success 3 in a row with carry at least 100 m
  }
  then {
    ${next.map((to) => `advance to "${to}"`).join("\n    ") || "repeat otherwise"}
  }
}`;

const step = (name: string, before: readonly string[]) =>
  `  step "${name}"${before.length > 0 ? ` after ${quoted(before).join(", ")}` : ""}`;

const window = (name: string, made: readonly string[]) =>
  `window "${name}" is ${made.map((of) => `inside "${of}"`).join(" or ") || "carry at least 100 m"}`;

const codes = async (text: string) => [...new Set((await check(text)).map(({ code }) => code))];

test("in steps", async () => {
  const plans = ladder((name) => plan(name, []));
  const curriculum = (text: string) => `${plans}\ncurriculum "Irons" {\n${text}\n}`;
  expect(await codes(curriculum(ladder(step)))).not.toContain("curriculum-must-have-no-cycle");
  const circle = ladder((name, before) => step(name, before.length > 0 ? before : ["0 left"]));
  const found = (await check(curriculum(circle))).filter(
    ({ code }) => code === "curriculum-must-have-no-cycle",
  );
  expect(found.map(({ message }) => message.match(/"/g)?.length)).toEqual([2 * (LAYERS + 1)]);
});

test("in what comes next", async () => {
  expect(await codes(ladder(plan))).not.toContain("next-should-not-go-in-circles");
  const circle = ladder((name, next) => plan(name, next.length > 0 ? next : ["0 left"]));
  expect(await codes(circle)).toContain("next-should-not-go-in-circles");
});

test("in windows", async () => {
  expect(await codes(ladder(window))).toEqual(["window-must-be-made-of-few"]);
  const circle = ladder((name, made) => window(name, made.length > 0 ? made : ["0 left"]));
  expect(await codes(circle)).toContain("window-must-not-be-made-of-itself");
});
