import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { quoted } from "./wording.ts";

/** Two variants of a window for the same shots. */
export const check = defineCheck({
  on: ["Window"],
  reason: "Of two variants for one club and level, one is never looked at.",
  run({ variants }, { document, report }) {
    const seen = new Set<string>();
    for (const variant of variants) {
      const clubs = variant.clubs.length === 0 ? [""] : variant.clubs.map(({ $refText }) => $refText);
      const keys = clubs.map((club) => `${club} ${variant.level ?? ""}`);
      const again = clubs.find((_, index) => seen.has(keys[index] ?? ""));
      for (const key of keys) seen.add(key);
      if (again === undefined) continue;
      const what = [again, variant.level === undefined ? "" : `level ${quoted(variant.level)}`].filter(
        Boolean,
      );
      report({
        message: `There is a variant for ${what.join(" at ") || "all other shots"} already. Keep one of the two.`,
        node: variant,
        fixes: [{ title: "Keep the first", edits: [remove(document, rangeOf(variant))] }],
      });
    }
  },
  reporting: `
window "Far" {
  is carry at least 100 m
  for driver is carry at least 200 m
  «for driver is carry at least 210 m»
}`,
  fixed: `
window "Far" {
  is carry at least 100 m
  for driver is carry at least 200 m
}`,
  silent: `
window "Far" {
  is carry at least 100 m
  for driver is carry at least 200 m
  for driver at level "first year" is carry at least 150 m
}`,
});
