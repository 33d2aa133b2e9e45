/** The only list of refactorings, in the order in which they are offered. */
import { convertUnit } from "./convert-unit.ts";
import { extractDrill } from "./extract-drill.ts";
import { inlineDrill } from "./inline-drill.ts";
import { literalToParameter } from "./literal-to-parameter.ts";
import type { Refactoring } from "./refactoring.ts";
import { splitBlock } from "./split-block.ts";

export const REFACTORINGS: readonly Refactoring[] = [
  literalToParameter,
  convertUnit,
  extractDrill,
  inlineDrill,
  splitBlock,
];
