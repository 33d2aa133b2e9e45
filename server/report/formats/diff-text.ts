/** How two plans differ, as text for people. */
import { plural } from "../../../shared/plural.ts";
import type { Difference, PlanDiff } from "../diff/plan-diff.ts";
import type { Palette } from "../palette.ts";
import { printable } from "../printable.ts";

/**
 * ```
 * plan "Start line"
 *   block "Gate"
 *     ~ changed target, wider: start-direction within ±2° → start-direction within ±3°
 *     + added goal: 3 in a row on target
 * ```
 */
export function diffText({ old, new: now, differences }: PlanDiff, palette: Palette): string {
  if (differences.length === 0) return `${printable(`${old} and ${now} mean the same.`)}\n`;
  const lines: string[] = [];
  let [plan, block]: (string | null)[] = [null, null];
  for (const difference of differences) {
    if (difference.plan !== plan) {
      plan = difference.plan;
      block = null;
      if (plan !== null) lines.push(palette.strong(printable(`plan "${plan}"`)));
    }
    if (difference.block !== block) {
      block = difference.block;
      if (block !== null) lines.push(`  ${palette.strong(printable(`block "${block}"`))}`);
    }
    const depth = plan === null ? "" : block === null ? "  " : "    ";
    lines.push(depth + differenceLine(difference, palette));
  }
  return `${[...lines, "", plural(differences.length, "difference")].join("\n")}.\n`;
}

function differenceLine({ change, what, old, new: now, effect }: Difference, palette: Palette): string {
  switch (change) {
    case "added":
      return `${palette.good("+ added")} ${what}: ${printable(now ?? "")}`;
    case "removed":
      return `${palette.bad("- removed")} ${what}: ${printable(old ?? "")}`;
    case "changed":
      return `${palette.open("~ changed")} ${what}${effect === null ? "" : `, ${effect}`}: ${printable(old ?? "")} → ${printable(now ?? "")}`;
  }
}
