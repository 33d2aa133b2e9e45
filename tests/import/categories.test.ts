/** Names that follow from readings, with the built-in vocabulary. */
import { beforeAll, describe, expect, test } from "vitest";
import { deriveCategories, namings } from "../../server/import/derive/categories.ts";
import { libraryVocabulary } from "../../server/node/vocabulary.ts";
import type { Metric } from "../../shared/plan-model.ts";
import { column } from "../support/scoring-input.ts";
import { importTable, outline } from "./import-table.ts";

let metrics: readonly Metric[];
beforeAll(async () => {
  metrics = (await libraryVocabulary()).metrics;
});

const DEGREE = Math.PI / 180;
const YARD = 0.9144;

/** The shape of a shot that starts so many degrees, and bends so many yards, to the right. */
function shape(
  start: number | undefined,
  curve: number | undefined,
  hand: "right" | "left" | null = "right",
) {
  const values: Record<string, number> = {};
  if (start !== undefined) {
    values["start-direction"] = start * DEGREE;
    values["start-side"] = start * DEGREE;
  }
  if (curve !== undefined) values.curve = curve * YARD;
  const categories: Record<string, string> = {};
  const derived = deriveCategories(
    categories,
    { values, club: null },
    namings(metrics, { hand, level: null }),
  );
  expect(derived).toEqual(Object.keys(categories));
  return categories.shape;
}

describe("the shape of a shot", () => {
  test.each([
    [0, 0, "straight"],
    [0, 5, "fade"],
    [0, -5, "draw"],
    [3, -5, "push-draw"],
    [-3, 0, "pull"],
    [3, 20, "slice"],
  ])("%d° and %d yd is %s for a right-hander, and for a left-hander in the mirror", (start, curve, name) => {
    expect(shape(start, curve)).toBe(name);
    expect(shape(-start, -curve, "left")).toBe(name);
  });

  test("is unknown while a rule before the one that is met cannot be judged", () => {
    expect(shape(3, undefined)).toBeUndefined();
    expect(shape(undefined, 5)).toBeUndefined();
  });

  test("is known where what is unknown makes no difference", () => {
    expect(shape(undefined, 20)).toBe("slice");
  });

  test("is unknown where it depends on a hand nobody stated, else known", () => {
    expect(shape(0, 5, null)).toBeUndefined();
    expect(shape(0, 0, null)).toBe("straight");
  });
});

test("what the table says goes before what follows, in its own words or the source's", () => {
  const columns = [
    column("Shape", { kind: "category", metric: "shape", spellings: [{ text: "Baby F", category: "fade" }] }),
  ];
  const data = importTable("Shape\nPush Fade\nbaby f\nduck\n\n-\n", { columns, metrics });
  expect(data.shots.map(({ categories, derived }) => [categories.shape, derived])).toEqual([
    ["push-fade", []],
    ["fade", []],
    [undefined, []],
    [undefined, []],
  ]);
  expect(outline(data.findings)).toEqual(["warning category-unknown line 4 Shape"]);
});
