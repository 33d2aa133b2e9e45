/** What stands between two tokens of one line. */
import { touchesNumber } from "../../shared/quantity.ts";
import type { Token } from "../syntax/tokens.ts";

const ORDINALS: ReadonlySet<string> = new Set(["st", "nd", "rd", "th"]);
const NONE_BEFORE: ReadonlySet<string> = new Set([",", ")", ":"]);
const NONE_AFTER: ReadonlySet<string> = new Set(["(", "±", "+/-"]);

/** Nothing or one space. Typography has it that degrees touch their number, and ± the number behind it. */
export function spaceBetween(before: Token, after: Token): "" | " " {
  if (NONE_AFTER.has(before.image) || NONE_BEFORE.has(after.image)) return "";
  const isNumber = before.tokenType.name === "NUMBER";
  if (isNumber && (touchesNumber(after.image) || ORDINALS.has(after.image))) return "";
  if (before.image === "{" && after.image === "}") return "";
  return " ";
}
