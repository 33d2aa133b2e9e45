/** Whether output is coloured. */
import { type Palette, PLAIN, TERMINAL } from "../report/palette.ts";
import type { Io, Output } from "./io.ts";

/**
 * In this order: what `--color` says; FORCE_COLOR, which `0` and `false` turn into the opposite; NO_COLOR; a terminal
 * that calls itself dumb; and else whether it is a terminal at all. Variables that are set but empty say nothing.
 */
export function paletteFor(output: Output, color: "auto" | "always" | "never", env: Io["env"]): Palette {
  return isColored(output, color, env) ? TERMINAL : PLAIN;
}

function isColored(output: Output, color: "auto" | "always" | "never", env: Io["env"]): boolean {
  if (color !== "auto") return color === "always";
  const { FORCE_COLOR: force, NO_COLOR: no, TERM: terminal } = env;
  if (force !== undefined && force !== "") return force !== "0" && force !== "false";
  if (no !== undefined && no !== "") return false;
  return terminal !== "dumb" && output.isTTY;
}
