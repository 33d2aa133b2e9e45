/** The use of a drill: what its parameters stand for. */
import type { DrillUse as DrillUseModel } from "../../shared/plan-model.ts";
import type { ArgumentValue, DrillUse, Parameter } from "../generated/tree/ast.ts";
import type { Bindings } from "../types/parameters.ts";
import { type FileName, placeOf, textOf } from "./place.ts";
import { resolved } from "./unresolved.ts";

/** What every parameter of the drill stands for, defaults included. */
export function bindingsOf(use: DrillUse): Bindings {
  const bindings = new Map<Parameter, ArgumentValue>();
  for (const parameter of resolved(use.drill).parameters) {
    if (parameter.value !== undefined) bindings.set(parameter, parameter.value);
  }
  for (const { parameter, value } of use.arguments) bindings.set(resolved(parameter), value);
  return bindings;
}

/** The drill with what its parameters stand for, defaults included, in the coach's words. */
export function lowerDrillUse(use: DrillUse, fileName: FileName): DrillUseModel {
  const drill = resolved(use.drill);
  const bindings = bindingsOf(use);
  const values = drill.parameters.map((parameter) => {
    const value = bindings.get(parameter);
    return [parameter.name, value === undefined ? "" : textOf(value)] as const;
  });
  return { name: drill.name, arguments: Object.fromEntries(values), location: placeOf(use, fileName) };
}
