import { defineCheck } from "./check.ts";
import { cstOf, replace } from "./edits.ts";
import { numbersOf, type Role } from "./numbers.ts";

/** Between what a share must lie, in percent, whether the ends belong to it, and why. */
interface Reach {
  readonly low: number;
  readonly high: number;
  readonly isOpen: boolean;
  readonly why: string;
  readonly better: string;
}

const PART: Omit<Reach, "why"> = { low: 0, high: 100, isOpen: true, better: "80" };

const REACHES: Readonly<Record<Role, Reach>> = {
  "EllipseCriterion.share": {
    ...PART,
    why: "An ellipse holds some of the shots; one of all shots has no end",
  },
  "Percentile.share": {
    ...PART,
    why: "A percentile lies between the shots; for the ends there are best and worst",
    better: "90",
  },
  "Span.share": { ...PART, why: "The middle is a part of the shots" },
  "Coverage.share": {
    ...PART,
    why: "The figures cover some of the readings; what covers all are limits",
    better: "95",
  },
  "Humidity.share": {
    low: 0,
    high: 100,
    isOpen: false,
    why: "Air holds no more water than 100 %",
    better: "50",
  },
  "Ball.share": {
    low: 50,
    high: 120,
    isOpen: false,
    why: "This is the carry compared with that of a new ball",
    better: "95",
  },
};

/** A share that there is not. */
export const check = defineCheck({
  on: ["Count", "Quantity", "Coverage", "Humidity", "Ball"],
  reason:
    "Nothing can be worked out from a share of none, of more than all, or of all where only a part makes sense.",
  run(node, { report }) {
    for (const { value, property, roles } of numbersOf(node)) {
      const reach = roles()
        .map((role) => REACHES[role])
        .find((known) => known !== undefined);
      if (reach === undefined) continue;
      const { low, high, isOpen, why, better } = reach;
      if (isOpen ? value > low && value < high : value >= low && value <= high) continue;
      const cst = cstOf(node, property);
      if (cst === undefined) continue;
      const range = isOpen ? `more than ${low} % and less than ${high} %` : `between ${low} % and ${high} %`;
      report({
        message: `${why}. Write ${range}.`,
        node,
        cst,
        fixes: [{ title: `Write ${better} %`, edits: [replace(cst.range, better)] }],
      });
    }
  },
  reporting: `
plan "Gate" {
  block "Start" test {
    20 shots
    success {
      area of the «100» % ellipse of offline and carry at most 250 yd²
      middle «0» % of carry spans at most 12 yd
      «120»th percentile of carry at least 140 yd
    }
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
  humidity «140» %
  ball "range" carries «9» %
}

instrument "Bay" {
  coverage «100» %
  reads carry within 2 m random
}`,
  fixed: `
plan "Gate" {
  block "Start" test {
    20 shots
    success {
      area of the 80 % ellipse of offline and carry at most 250 yd²
      middle 80 % of carry spans at most 12 yd
      90th percentile of carry at least 140 yd
    }
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
  humidity 50 %
  ball "range" carries 95 %
}

instrument "Bay" {
  coverage 95 %
  reads carry within 2 m random
}`,
  silent: `
plan "Gate" {
  block "Start" test {
    20 shots
    success area of the 80 % ellipse of offline and carry at most 250 yd²
  }
}

instrument "Bay" {
  coverage 95 %
  reads carry within 2 m random
}`,
});
