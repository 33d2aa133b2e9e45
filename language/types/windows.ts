import { AstUtils } from "langium";
import { isWindowTest, type Window } from "../generated/tree/ast.ts";

/** The windows that a window's condition names, as often as it names them; without those that are not known. */
export function windowsNamedIn(window: Window): Window[] {
  return AstUtils.streamAst(window)
    .filter(isWindowTest)
    .flatMap(({ window: named }) => named?.ref ?? [])
    .toArray();
}
