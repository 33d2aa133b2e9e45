import { isWind, type UncertaintyPart, type WindPart } from "../generated/tree/ast.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, replace } from "./edits.ts";
import { code } from "./wording.ts";

/** Head and tail wind are one axis, and so are the two from the side. */
const ALONG: ReadonlySet<string> = new Set(["head", "tail"]);

/** Two parts that say the same of a wind or of an uncertainty. */
export const check = defineCheck({
  on: ["Wind", "Uncertainty"],
  reason:
    "A wind has a part along the target line and one across it, and a reading is off by chance and for all shots alike.",
  run(statement, { report }) {
    const [first, second] = statement.parts;
    if (first === undefined || second === undefined || axisOf(first) !== axisOf(second)) return;
    const axis = axisOf(first);
    const message = isWind(statement)
      ? `Both parts are ${axis} the target line. Write one of them, and the other ${axis === "along" ? "across" : "along"} it, such as ${code(axis === "along" ? "1 m/s left-to-right" : "2 m/s head")}.`
      : `Both parts are ${code(axis)}. Keep one, and say what is ${code(axis === "random" ? "systematic" : "random")} if that is meant.`;
    report({
      message,
      node: second,
      fixes: [
        {
          title: "Keep the first",
          edits: [replace({ start: rangeOf(first).end, end: rangeOf(second).end }, "")],
        },
      ],
    });
  },
  reporting: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  wind 3 m/s head and «1 m/s tail»
}

instrument "Bay" {
  coverage 95 %
  reads carry within 2 m random and «3 m random»
}`,
  fixed: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  wind 3 m/s head
}

instrument "Bay" {
  coverage 95 %
  reads carry within 2 m random
}`,
  silent: `
plan "Gate" {
  block "Start" {
    10 shots
  }
}

player "P-1" {
  right-handed
}

source "Bay" {
  column "Carry" is carry in m
}

session "First" {
  plan "Gate"
  player "P-1"
  data "first.csv" from "Bay"
  wind 3 m/s head and 1 m/s left-to-right
}

instrument "Bay" {
  coverage 95 %
  reads carry within 2 m random and 3 m systematic
}`,
});

function axisOf(part: WindPart | UncertaintyPart): string {
  if (part.$type === "UncertaintyPart") return part.kind;
  return ALONG.has(part.side) ? "along" : "across";
}
