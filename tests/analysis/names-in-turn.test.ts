/** Of a rule that is said to have no turn, no shot gets its name: thousands of shots, named as an import names them. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { rulesWithoutTurn } from "../../language/analysis/possibility/names-in-turn.ts";
import { Vocabulary } from "../../language/analysis/possibility/vocabulary.ts";
import { isMetric, Metric } from "../../language/generated/tree/ast.ts";
import { lowerMetric } from "../../language/lowering/vocabulary.ts";
import { meets } from "../../shared/condition.ts";
import type { Condition, Metric as MetricModel } from "../../shared/plan-model.ts";
import { services, withChecked } from "../checks/checked-files.ts";
import { randomNumbers, shotsAround } from "./shots.ts";

const SHOTS = 300;

const amount = (unit: string, min: number, max: number) =>
  fc.integer({ min, max }).map((value) => `${value}${unit}`);

const asked = fc.oneof(
  amount(" yd", 80, 120).map((limit) => `carry above ${limit}`),
  amount(" yd", 80, 120).map((limit) => `carry at most ${limit}`),
  amount(" yd", 80, 130).map((limit) => `total at least ${limit}`),
  amount(" yd", 0, 10).map((limit) => `roll below ${limit}`),
  amount("°", 0, 3).map((limit) => `face-to-path at least ${limit} open`),
  amount("°", 0, 3).map((limit) => `face-angle at most ${limit} closed`),
  amount("°", 0, 3).map((limit) => `club-path at least ${limit} out-to-in`),
);

const condition = fc.oneof(
  { weight: 3, arbitrary: asked },
  { weight: 1, arbitrary: fc.tuple(asked, asked).map((both) => both.join(" and ")) },
  { weight: 1, arbitrary: fc.tuple(asked, asked).map((either) => either.join(" or ")) },
);

const rules = fc.array(condition, { minLength: 2, maxLength: 5 });

test("no shot gets to a rule that is said to have no turn", async () => {
  const seen = { withTurn: 0, without: 0 };
  await fc.assert(
    fc.asyncProperty(rules, fc.integer(), async (conditions, seed) => {
      const names = conditions.map((_, place) => `kind-${place}`);
      const lines = conditions.map((text, place) => `  ${names[place]} where ${text}`);
      const text = `metric kind is one of ${names.join(", ")} {\n${lines.join("\n")}\n}\n`;
      await withChecked(text, {}, ({ document, found }) => {
        const nodes = [...services.names.Names.visible(document, Metric.$type)].filter(isMetric);
        const metrics = new Map<string, MetricModel>(
          nodes.map((node) => [node.name, lowerMetric(node)] as const),
        );
        const kind = metrics.get("kind");
        expect(kind?.categories).toHaveLength(conditions.length);
        if (kind === undefined) return;
        const vocabulary = new Vocabulary(metrics);
        const without = new Set(rulesWithoutTurn(kind, vocabulary).map(({ place }) => place));
        expect(found.map(({ range }) => range.start.line - 1).sort()).toEqual([...without].sort());
        seen.without += without.size;
        seen.withTurn += conditions.length - without.size;
        const held = kind.categories.map((category) => category.condition as Condition);
        for (const hand of ["right", "left"] as const) {
          const player = { hand, level: null };
          for (const shot of shotsAround(held, player, null, vocabulary, SHOTS, randomNumbers(seed))) {
            const first = held.findIndex((rule) => meets(rule, shot, player));
            expect(without, `${text}${JSON.stringify(shot.values)}`).not.toContain(first);
          }
        }
      });
    }),
    { numRuns: 60 },
  );
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(10);
});
