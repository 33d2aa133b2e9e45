import { defineCheck } from "./check.ts";
import { code } from "./wording.ts";

/** A window that asks for nothing. */
export const check = defineCheck({
  on: ["Window"],
  reason: "Of a window that says nothing nobody can say which shots are inside.",
  run(window, { report }) {
    if (window.variants.length > 0) return;
    report({
      message: `What is a shot inside this window like? Write for example ${code("is club-path within 2° of 1° in-to-out")}.`,
      node: window,
      property: "name",
    });
  },
  reporting: `
window «"Neutral path"» {
}`,
  silent: `
window "Neutral path" {
  is club-path within 2° of 1° in-to-out
}`,
});
