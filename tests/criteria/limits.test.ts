/** The numbers that readings are held against: where the answer of a condition may change. */
import { expect, test } from "vitest";
import { limitsIn } from "../../language/criteria/limits.ts";
import type { Condition, Hand } from "../../shared/plan-model.ts";
import { condition, metricCalled } from "./words.ts";

/** By metric, in the unit it is shown in, in order. */
function limits(
  asked: Condition,
  {
    club = null,
    level = null,
    hand = "right",
  }: { club?: string | null; level?: string | null; hand?: Hand } = {},
  computed: Parameters<typeof limitsIn>[3] = () => undefined,
) {
  const found = limitsIn(asked, club, { hand, level }, computed);
  return Object.fromEntries(
    [...found].map(([metric, held]) => {
      const { factor } = metricCalled(metric).unit;
      const shown = [...held].map((limit) => Number((limit / factor).toPrecision(9)));
      return [metric, shown.sort((one, other) => one - other)];
    }),
  );
}

test.each([
  ["carry at least 150 yd", { carry: [150] }],
  ["club-path within ±2°", { "club-path": [-2, 2] }],
  [
    "carry above 140 yd; carry below 150 yd | club-path at most 2° right",
    { carry: [140, 150], "club-path": [2] },
  ],
])("%s", (text, found) => {
  expect(limits(condition(text))).toEqual(found);
});

test("words that mirror with the hand do so", () => {
  const asked = condition("club-path at most 2° in-to-out");
  expect([limits(asked), limits(asked, { hand: "left" })]).toEqual([
    { "club-path": [2] },
    { "club-path": [-2] },
  ]);
});

test("of a window those of its variants for this club and at this player's level", () => {
  const variant = (carry: number, clubs: string[], level: string | null) => ({
    clubs,
    level,
    condition: condition(`carry at least ${carry} yd`),
  });
  const asked: Condition = {
    anyOf: [
      {
        allOf: [
          {
            kind: "window",
            window: "Long",
            inside: true,
            variants: [
              variant(160, ["7-iron"], "expert"),
              variant(150, ["7-iron"], null),
              variant(240, ["driver"], null),
              variant(130, [], "first year"),
              variant(140, [], null),
            ],
          },
        ],
      },
    ],
  };
  expect(limits(asked)).toEqual({ carry: [140] });
  expect(limits(asked, { level: "first year" })).toEqual({ carry: [130, 140] });
  expect(limits(asked, { club: "7-iron" })).toEqual({ carry: [140, 150] });
  expect(limits(asked, { club: "7-iron", level: "expert" })).toEqual({ carry: [140, 150, 160] });
  expect(limits(asked, { club: "driver", level: "expert" })).toEqual({ carry: [140, 240] });
});

test("of a name those of its rules, where it was computed", () => {
  const asked: Condition = {
    anyOf: [{ allOf: [{ kind: "category", metric: "shape", categories: ["draw"] }] }],
  };
  const shape = {
    ...metricCalled("carry"),
    name: "shape",
    categories: [
      { name: "straight", condition: condition("face-to-path within ±1°") },
      { name: "draw", condition: condition("face-to-path at least 3° closed") },
      { name: "other", condition: null },
    ],
  };
  expect(limits(asked)).toEqual({});
  expect(limits(asked, {}, (name) => (name === "shape" ? shape : undefined))).toEqual({
    "face-to-path": [-3, -1, 1],
  });
});
