/** What is said of a unit or a direction word that is not known. */
import { GrammarUtils } from "langium";
import { nearest } from "../../../shared/nearest.ts";
import {
  type Dimension,
  isMetricColumn,
  isQuantity,
  isUnit,
  type Quantity,
  UnitName,
} from "../../generated/tree/ast.ts";
import { hasSides, knownMetricAt, measureAt, roleOf, unitFits, unitToWrite } from "../../types/amounts.ts";
import { directionsOf, metricAt } from "../../types/directions.ts";
import { dimensionOfUnit, unitSymbols } from "../../types/units.ts";
import type { Fix } from "../check.ts";
import { removeWords, replace } from "../edits.ts";
import { amount, code, listed } from "../wording.ts";
import { type Explanation, type UnknownName, whatElse, write } from "./unknown-name.ts";

export function unknownUnit(unknown: UnknownName): Explanation {
  const { name, container } = unknown;
  const misplaced = isQuantity(container)
    ? (directionBeforeUnit(unknown, container) ?? squareInWords(unknown, container))
    : undefined;
  if (misplaced !== undefined) return misplaced;
  const fitting = fittingUnits(unknown);
  const spellings = fitting.map((unit) => unit.name);
  const meant = [...withItsSigns(name, spellings), ...nearest(name, spellings)].slice(0, 3);
  const dimensions = new Set(fitting.map(dimensionOfUnit));
  const [dimension] = dimensions;
  const advice =
    meant[0] !== undefined
      ? `Did you mean ${code(meant[0])}?`
      : dimension !== undefined && dimensions.size === 1
        ? `Amounts of ${dimension.name} are written in ${listed(unitSymbols(dimension).map(code), "or")}.`
        : `Declare it with ${code("unit")} in its dimension, or add a ${code("use")} of the file that does.`;
  return {
    message: `${code(name)} is no unit that is known here.${whatElse(unknown, UnitName.$type)} ${advice}`,
    fixes: meant.map((text) => write(unknown, text)),
  };
}

/** `C` for `°C`. */
function withItsSigns(name: string, spellings: readonly string[]): string[] {
  return spellings.filter((spelling) => spelling.replace(/^[^\p{L}]+/u, "") === name && spelling !== name);
}

/** `sq yd` and `square yards`, where the unit was read as a direction. */
function squareInWords({ name, names, document, cst }: UnknownName, { direction }: Quantity): Explanation {
  const length = direction?.$refNode;
  if (!/^(?:sq|square)$/i.test(name) || length === undefined) return undefined;
  const [unit] = names.find(document, UnitName.$type, length.text);
  if (unit?.$type !== UnitName.$type) return undefined;
  const square = `${unit.$container.names[0]?.name}²`;
  if (names.find(document, UnitName.$type, square).length === 0) return undefined;
  const range = { start: cst.range.start, end: length.range.end };
  return {
    message: `A square is part of its unit: ${code(square)}.`,
    fixes: [{ title: `Write ${square}`, edits: [replace(range, square)] }],
  };
}

/** The units that can stand here; all, where what is measured is not known. */
function fittingUnits({ container, names, document }: UnknownName): UnitName[] {
  const units = [...names.visible(document, UnitName.$type)].filter((node) => node.$type === UnitName.$type);
  const circumstance =
    isQuantity(container) && roleOf(container) === "circumstance" ? measureAt(container) : undefined;
  const wanted: Dimension | undefined = isUnit(container)
    ? container.$container
    : metricAt(container)?.dimension?.ref;
  return units.filter((unit) => {
    const dimension = dimensionOfUnit(unit);
    if (circumstance !== undefined) return unitFits(unit, circumstance.dimension);
    return wanted === undefined || dimension === wanted;
  });
}

/** `2 right °` and `2 right`: the direction stands where the unit belongs. */
function directionBeforeUnit({ name, names, document, cst }: UnknownName, quantity: Quantity): Explanation {
  const metric = knownMetricAt(quantity);
  const { value } = quantity;
  if (metric === undefined || value === undefined || !directionsOf(metric).some((word) => word.name === name))
    return undefined;
  const behind = quantity.direction?.$refNode;
  const isUnit = behind !== undefined && names.find(document, UnitName.$type, behind.text).length > 0;
  const symbol = isUnit ? behind.text : unitToWrite(metric);
  if (symbol === undefined) return undefined;
  const right = `${amount(value, symbol)} ${name}`;
  const start = quantity.$cstNode?.range.start ?? cst.range.start;
  const { end } = isUnit ? behind.range : cst.range;
  return {
    message: `A unit is missing before the direction word ${code(name)}: write ${code(right)}.`,
    fixes: [{ title: `Write ${right}`, edits: [replace({ start, end }, right)] }],
  };
}

export function unknownDirection(unknown: UnknownName): Explanation {
  const { name, container, document, cst } = unknown;
  const isAmount = isQuantity(container);
  if (isAmount && container.unit !== undefined && container.unit.ref === undefined) return undefined;
  const takeOut: Fix = { title: `Take ${name} out`, edits: [removeWords(document, cst.range)] };
  if (isAmount && roleOf(container) === "circumstance") {
    return { message: `This amount has no direction. Take ${code(name)} out.`, fixes: [takeOut] };
  }
  const metric = metricAt(container);
  if (metric === undefined) return undefined;
  if (!hasSides(metric)) {
    return {
      message: `${code(metric.name)} has no sides, so ${code(name)} says nothing about it. Take it out.`,
      fixes: [isMetricColumn(container) ? withoutPositive(unknown) : takeOut],
    };
  }
  const words = [...new Set(directionsOf(metric).map((word) => word.name))];
  const [other] = words.filter((word) => word === OTHER_DIRECTIONS[name.toLowerCase()]);
  const meant = other === undefined ? nearest(name, words) : [other];
  const is = `${code(name)} is no direction of ${code(metric.name)}.`;
  return {
    message:
      other === undefined
        ? `${is} Its directions are ${listed(words.map(code), "and")}.`
        : `${is} Did you mean ${code(other)}?`,
    fixes: (meant.length > 0 ? meant : words).map((text) => write(unknown, text)),
  };
}

/** Words that other people use for directions. */
const OTHER_DIRECTIONS: Readonly<Record<string, string>> = {
  "inside-out": "in-to-out",
  "in-out": "in-to-out",
  "outside-in": "out-to-in",
  "out-in": "out-to-in",
  shut: "closed",
  upward: "up",
  upwards: "up",
  downward: "down",
  downwards: "down",
  rightward: "right",
  rightwards: "right",
  leftward: "left",
  leftwards: "left",
  slice: "fade",
  hook: "draw",
};

/** Takes `positive left` out of a column. */
function withoutPositive({ container, document, cst, name }: UnknownName): Fix {
  const keyword = GrammarUtils.findNodeForKeyword(container.$cstNode, "positive") ?? cst;
  const range = { start: keyword.range.start, end: cst.range.end };
  return { title: `Take positive ${name} out`, edits: [removeWords(document, range)] };
}
