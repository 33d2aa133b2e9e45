/** Conditions that are nothing but one number held against bounds: those can be drawn and measured. */
import type { Condition, ShotTest } from "../../shared/plan-model.ts";

/** The test of such a condition; null for others. */
export function onlyNumber({
  anyOf: [first, second],
}: Condition): Extract<ShotTest, { kind: "number" }> | null {
  const [test, another] = first?.allOf ?? [];
  return second === undefined && another === undefined && test?.kind === "number" ? test : null;
}
