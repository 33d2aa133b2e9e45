import { CodeActionKind } from "vscode-languageserver";
import { rangeOf, replace } from "../../checks/edits.ts";
import { amount } from "../../checks/wording.ts";
import { isQuantity } from "../../generated/tree/ast.ts";
import { dimensionOfUnit, unitModel, unitSymbols } from "../../types/units.ts";
import type { Refactoring } from "./refactoring.ts";

/** Digits of a converted amount: a tenth of a yard in a thousand. */
const DIGITS = 4;

/** `12 yd` as `10.97 m`. Rounded: an amount in another unit is the coach's to settle. */
export const convertUnit: Refactoring = {
  kind: CodeActionKind.RefactorRewrite,
  offer: (node) => {
    const name = isQuantity(node) ? node.unit?.ref : undefined;
    if (!isQuantity(node) || name === undefined || node.value === undefined) return [];
    const from = unitModel(name);
    const value = node.value * from.factor + (from.offset ?? 0);
    const direction = node.direction === undefined ? "" : ` ${node.direction.$refText}`;
    const dimension = dimensionOfUnit(name);
    return unitSymbols(dimension)
      .filter((symbol) => symbol !== from.symbol)
      .flatMap((symbol) => {
        const unit = dimension.units.flatMap(({ names }) => names).find((other) => other.name === symbol);
        if (unit === undefined) return [];
        const to = unitModel(unit);
        const converted = Number(((value - (to.offset ?? 0)) / to.factor).toPrecision(DIGITS));
        // Amounts in texts are never negative and never written with exponents.
        if (!(converted > 0) || !/^\d+(\.\d+)?$/.test(String(converted))) return [];
        const text = amount(converted, symbol) + direction;
        return [{ title: `Convert to ${text}`, edits: [replace(rangeOf(node), text)] }];
      });
  },
};
