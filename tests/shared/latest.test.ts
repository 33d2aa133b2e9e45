import { expect, test } from "vitest";
import { Latest } from "../../shared/latest.ts";

const sized = (most: number, ...values: readonly [string, number][]) => {
  const latest = new Latest<string, number>(most, (size) => size);
  for (const [key, size] of values) latest.set(key, size);
  return latest;
};

test("what nobody has asked for the longest goes first", () => {
  const latest = sized(10, ["a", 4], ["b", 4]);
  latest.get("a");
  latest.set("c", 4);
  expect([latest.get("a"), latest.get("b"), latest.get("c")]).toEqual([4, undefined, 4]);
});

test("what is set again takes its new room only", () => {
  const latest = sized(10, ["a", 9], ["b", 1], ["a", 2], ["c", 7]);
  expect([latest.get("a"), latest.get("b"), latest.get("c")]).toEqual([2, 1, 7]);
});

test("the last is kept however large it is", () => {
  const latest = sized(10, ["a", 4], ["b", 40]);
  expect([latest.get("a"), latest.get("b")]).toEqual([undefined, 40]);
});
