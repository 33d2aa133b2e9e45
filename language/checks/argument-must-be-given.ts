import { defineCheck } from "./check.ts";
import { cstOf, insertAfter, rangeOf } from "./edits.ts";
import { code, listed, quoted } from "./wording.ts";

/** A parameter without a default that is given nothing. */
export const check = defineCheck({
  on: ["DrillUse"],
  reason: "A drill leaves open what its parameters stand for. One without a default must be told each time.",
  run(use, { report }) {
    const drill = use.drill?.ref;
    if (drill === undefined) return;
    const given = new Set(use.arguments.map(({ parameter }) => parameter?.ref));
    const missing = drill.parameters.filter(
      (parameter) => parameter.value === undefined && !given.has(parameter),
    );
    if (missing.length === 0) return;
    const texts = missing.map(
      ({ name, isClub, dimension }) => `${name} = ${isClub ? "7-iron" : example(dimension?.$refText)}`,
    );
    const behind = use.arguments.length > 0 ? `, ${texts.join(", ")}` : ` with ${texts.join(", ")}`;
    const name = cstOf(use, "drill");
    report({
      message: `${quoted(drill.name)} needs ${listed(
        missing.map((parameter) => code(parameter.name)),
        "and",
      )}. Write for example ${code(`with ${texts.join(", ")}`)}.`,
      node: use,
      ...(name === undefined ? {} : { cst: name }),
      fixes: [{ title: `Write ${texts.join(", ")}`, edits: [insertAfter(rangeOf(use), behind)] }],
    });
  },
  reporting: `
drill "Gate" (width: angle, hits: ratio = 7) {
  10 shots
  target start-direction within ±width
  success at least hits of 10 shots on target
}

plan "Gate" {
  block "Start" from «"Gate"»
}`,
  fixed: `
drill "Gate" (width: angle, hits: ratio = 7) {
  10 shots
  target start-direction within ±width
  success at least hits of 10 shots on target
}

plan "Gate" {
  block "Start" from "Gate" with width = 2°
}`,
  silent: `
drill "Gate" (width: angle, hits: ratio = 7) {
  10 shots
  target start-direction within ±width
  success at least hits of 10 shots on target
}

plan "Gate" {
  block "Start" from "Gate" with width = 3°
}`,
});

/** An amount of the dimension, to begin with. */
function example(dimension: string | undefined): string {
  return EXAMPLES[dimension ?? ""] ?? "1";
}

const EXAMPLES: Readonly<Record<string, string>> = {
  angle: "2°",
  length: "5 yd",
  speed: "1 mph",
  duration: "1 s",
  rotation: "100 rpm",
};
