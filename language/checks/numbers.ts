/** The plain numbers of a text, each with what it is a number of. */
import { type AstNode, AstUtils } from "langium";
import { once } from "../../shared/once.ts";
import { Count, type Drill, isCount, type Parameter, Quantity } from "../generated/tree/ast.ts";
import { parameterOf, placeOfNumber } from "../types/parameters.ts";
import type { TextEdit } from "./check.ts";
import { rangeOf, replace } from "./edits.ts";

/** The statement and the property a number stands in: `Shots.count`. */
export type Role = `${string}.${string}`;

export interface StatedNumber {
  readonly value: number;
  readonly property: string;
  /** More than one where a parameter stands in several places. Found out when asked for. */
  readonly roles: () => readonly Role[];
}

const NO_NUMBERS: readonly StatedNumber[] = [];

/**
 * The numbers that a node itself states. A number that a parameter stands for has the roles of the places where the
 * parameter does, so that it is looked at where it is written: as an argument or as a default.
 */
export function numbersOf(node: AstNode): readonly StatedNumber[] {
  if (node.$type === Count.$type || node.$type === Quantity.$type) {
    const amount = node as Count | Quantity;
    const { value } = amount;
    return value === undefined ? NO_NUMBERS : [{ value, property: "value", roles: () => rolesAt(amount) }];
  }
  return Object.entries(node).flatMap(([property, value]: [string, unknown]) =>
    typeof value === "number" && !property.startsWith("$")
      ? [{ value, property, roles: () => [`${node.$type}.${property}` as const] }]
      : [],
  );
}

function rolesAt(amount: Count | Quantity): readonly Role[] {
  if (isCount(amount)) return [roleOf(amount)];
  const roles = amount.unit === undefined ? rolesOf(parameterOf(amount.$container)) : [];
  return [...roles, "Quantity.value"];
}

/** Writes another number: where a parameter stands for it, as the default of that. */
export function writeNumber(count: Count, text: string): TextEdit {
  return replace((placeOfNumber(count) ?? count.$cstNode)?.range ?? rangeOf(count), text);
}

function roleOf(count: Count): Role {
  return `${count.$container.$type}.${count.$containerProperty ?? ""}`;
}

/** The places in its drill where a parameter stands for a plain number; none where it stands for amounts only. */
export function rolesOf(parameter: Parameter | undefined): readonly Role[] {
  if (parameter === undefined) return [];
  return rolesIn(parameter.$container).get(parameter) ?? [];
}

const rolesIn = once((drill: Drill): ReadonlyMap<Parameter, readonly Role[]> => {
  const found = new Map<Parameter, Role[]>();
  for (const count of AstUtils.streamAst(drill).filter(isCount)) {
    const named = count.parameter?.ref;
    if (named !== undefined) found.set(named, [...(found.get(named) ?? []), roleOf(count)]);
  }
  return found;
});
