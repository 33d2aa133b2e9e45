/** What a column is taken for, in a few words: `carry in yd`. Nothing where it is not read. */
import { quote } from "../finding.ts";
import type { ProposedColumn } from "./columns.ts";

export function meaningText({ meaning, signs, units, sidesIn, says }: ProposedColumn): string {
  if (says) return says;
  if (meaning === null) return "";
  switch (meaning.kind) {
    case "metric": {
      const stated = meaning.unit.symbol === "" ? "" : ` in ${meaning.unit.symbol}`;
      const unit = units.length > 0 ? ` in ${units.join(" or ")}?` : stated;
      const side =
        signs.length > 0
          ? `,${sidesIn === null ? "" : ` sides in ${quote(sidesIn.header)}, or`} positive ${signs.join(" or ")}?`
          : meaning.positive === null
            ? ""
            : `, positive ${meaning.positive}`;
      return `${meaning.metric}${unit}${side}`;
    }
    case "category":
      return meaning.metric;
    case "exclusion":
      return `set aside when ${meaning.texts.map(quote).join(", ")}`;
    default:
      return meaning.kind;
  }
}
