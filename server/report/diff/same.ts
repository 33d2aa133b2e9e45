/** Whether two parts of plans mean the same, however they are written and wherever they stand. */
import { intervalOf } from "../../../shared/interval.ts";

/** Members that say where and in which words, but not what. */
const WORDING = new Set(["location", "text", "id", "plusMinus", "unit", "documentation"]);

/**
 * A text that is the same for parts that mean the same: 10 yd and 30 ft are one length, and bounds are the numbers that
 * meet them, of either hand, since direction words may mirror.
 */
export function meaningOf(part: unknown): string {
  return JSON.stringify(part, (key, value) => {
    if (WORDING.has(key)) return undefined;
    if (key === "bounds") return [intervalOf(value, "right"), intervalOf(value, "left")];
    return typeof value === "number" ? Number(value.toPrecision(12)) : value;
  });
}
