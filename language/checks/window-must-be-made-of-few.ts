import { isWindow, type Window } from "../generated/tree/ast.ts";
import { MOST_WINDOWS } from "../lowering/amounts.ts";
import { windowsNamedIn } from "../types/windows.ts";
import { defineCheck } from "./check.ts";
import { quoted } from "./wording.ts";

/** A window that is made of so many others that nobody can say what it asks for. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "Windows are written out where they are named. Each that names the one before it twice doubles what is to be looked at.",
  run({ declarations }, { report }) {
    const known = new Map<Window, number>();
    for (const window of declarations.filter(isWindow)) {
      if (windowsIn(window, known) <= MOST_WINDOWS) continue;
      // What is made of such a window is no other mistake.
      if (windowsNamedIn(window).some((other) => windowsIn(other, known) > MOST_WINDOWS)) continue;
      report({
        message: `${quoted(window.name)} is made of more than ${MOST_WINDOWS} windows, each counted as often as it is named. Write what a shot inside it must be with fewer of them.`,
        node: window,
        property: "name",
      });
    }
  },
  reporting: `
window "A" is carry at least 100 m
window "B" is inside "A" or inside "A" and inside "A" or inside "A" and outside "A"
window "C" is inside "B" or inside "B" and inside "B" or inside "B" and outside "B"
window "D" is inside "C" or inside "C" and inside "C" or inside "C" and outside "C"
window «"E"» is inside "D" or inside "D" and inside "D" or inside "D" and outside "D"
window "F" is inside "E"`,
  silent: `
window "A" is carry at least 100 m
window "B" is inside "A" or inside "A" and inside "A" or inside "A" and outside "A"
window "C" is inside "B" or inside "B" and inside "B" or inside "B" and outside "B"
window "D" is inside "C" and offline within ±10 m`,
});

/** How many windows are written out for it. One that is made of itself counts as it stands. Linear in the windows. */
function windowsIn(window: Window, known: Map<Window, number>): number {
  let count = known.get(window);
  if (count === undefined) {
    known.set(window, 0);
    count = windowsNamedIn(window).reduce((sum, other) => sum + 1 + windowsIn(other, known), 0);
    known.set(window, count);
  }
  return count;
}
