import { isAirPressure, isAltitude } from "../generated/tree/ast.ts";
import { siOf } from "../types/units.ts";
import { defineCheck } from "./check.ts";
import { rangeOf, remove } from "./edits.ts";
import { code } from "./wording.ts";

/** How far weather takes the pressure from that of the standard atmosphere, in Pa. */
const WEATHER = 4500;

/** A pressure that cannot be that of the place. */
export const check = defineCheck({
  on: ["Session"],
  reason:
    "Weather reports give the pressure as it would be at the sea. Taken for that of a place in the hills, it makes the air too thick and every standardised carry too long.",
  run({ statements }, { document, report }) {
    const pressure = statements.find(isAirPressure);
    const altitude = statements.find(isAltitude);
    const stated = pressure && siOf(pressure.quantity);
    const height = altitude && siOf(altitude.quantity);
    if (pressure === undefined || stated === undefined || height === undefined) return;
    const expected = pressureAt(height);
    if (Math.abs(stated - expected) <= WEATHER) return;
    const isReduced = Math.abs(stated - pressureAt(0)) <= WEATHER;
    const usual = `At this altitude the air has about ${Math.round(expected / 1000) * 10} hPa.`;
    report({
      message: `${usual} ${isReduced ? "This looks like the pressure reduced to the sea, as in a weather report" : "Look at both numbers and their units"}. Write what a barometer shows at the place, or leave it to the ${code("altitude")}.`,
      node: pressure,
      fixes: [{ title: "Leave it to the altitude", edits: [remove(document, rangeOf(pressure))] }],
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
  altitude 620 m
  «pressure 1016 hPa»
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
  altitude 620 m
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
  altitude 620 m
  pressure 945 hPa
}`,
});

/** Pascal at so many metres in the standard atmosphere (ISO 2533), below 11 km. */
function pressureAt(height: number): number {
  return 101_325 * (1 - height / 44_330.8) ** 5.25588;
}
