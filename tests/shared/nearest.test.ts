import { expect, test } from "vitest";
import { nearest } from "../../shared/nearest.ts";

test.each([
  ["Cary", ["Side", "Carry"], "Carry"],
  ["carry", ["CARRY"], "CARRY"],
  ["Sdie", ["Spin", "Side"], "Side"], // two letters swapped are one slip
  ["Sid", ["Sida", "Sidb"], "Sida"],
  ["7j", ["driver", "7i"], "7i"],
])("%j is most likely one of %j: %j", (name, candidates, meant) => {
  expect(nearest(name, candidates)[0]).toBe(meant);
});

test.each([
  ["Carry", ["Club", "Spin axis"]],
  ["?", ["d", "p"]],
  ["7j", ["5w", ""]],
  ["Carry", []],
])("%j is none of %j", (name, candidates) => {
  expect(nearest(name, candidates)).toEqual([]);
});
