import { CstUtils } from "langium";
import { defineCheck } from "./check.ts";

/** What should not go into files that are shared: an address, a number to call, a person with the day of birth. */
const PERSONAL: readonly (readonly [what: string, pattern: RegExp, fewestDigits: number])[] = [
  ["an e-mail address", /(?<=[\w.+-])@[\w-]{1,64}\.[a-z]{2,}/i, 0],
  [
    "a telephone number",
    /(?:\+\d{1,3}[ /-]?|\(0\d{1,5}\)[ /-]?|\b0\d{2,4}[ /-])\d{2,4}(?:[ /-]?\d{2,4}){1,3}\b/,
    9,
  ],
  [
    "a name with a date of birth",
    /\p{Lu}\p{Ll}{1,30} \p{Lu}\p{Ll}{1,30}.{0,30}\b(?:born|birth|geboren|\*)\D{0,15}\d{1,4}[./-]\d{1,2}[./-]\d{1,4}/u,
    0,
  ],
];

/** Who a player is, written into a file that is shared. */
export const check = defineCheck({
  on: ["Document"],
  reason:
    "Plans and sessions are shared and kept in version control, where nothing is ever forgotten. Players go by codes.",
  run(document, { report }) {
    const root = document.$cstNode;
    const text = root?.text ?? "";
    if (root === undefined || !PERSONAL.some(([, pattern]) => pattern.test(text))) return;
    for (const leaf of CstUtils.flattenCst(root)) {
      if (!leaf.hidden && !leaf.text.startsWith('"')) continue;
      const found = PERSONAL.find(([, pattern, fewestDigits]) => {
        const match = pattern.exec(leaf.text);
        return match !== null && match[0].replace(/\D/g, "").length >= fewestDigits;
      });
      if (found === undefined) continue;
      report({
        message: `This looks like ${found[0]}. Keep it out of files that are shared: use a code, and keep whose code it is elsewhere.`,
        node: leaf.hidden ? document : leaf.astNode,
        cst: leaf,
      });
    }
  },
  reporting: `
player "P-07" {
  right-handed
  note «"Ask at someone@example.org"»
  note «"Ring +49 30 1234567"»
  note «"Jane Example, born 2009-05-01"»
}`,
  silent: `
player "P-07" {
  right-handed
  note "Came 2026-10-12 at 17:30, hit 120 of 140 balls, in rows 0012-0044"
}`,
});
