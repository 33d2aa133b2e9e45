import type { Quantity } from "../generated/tree/ast.ts";
import { measureAt, unitFits } from "../types/amounts.ts";
import { siOf } from "../types/units.ts";
import { defineCheck } from "./check.ts";

/** What practice is held in, in SI, and the same in words. Records are outside: a slip is likelier than one of them. */
const LIKELY: Readonly<Record<string, readonly [low: number, high: number, words: string]>> = {
  AirTemperature: [248.15, 328.15, "The air on a range has between -25 °C and 55 °C"],
  AirPressure: [55_000, 108_000, "Where balls are hit the air has a pressure between 550 hPa and 1080 hPa"],
  Altitude: [0, 5000, "Nobody hits balls more than 5000 m above the sea"],
  WindPart: [0, 30, "In more than 30 m/s of wind nobody stands"],
};

/** Air that nobody practises in. */
export const check = defineCheck({
  on: ["AirTemperature", "AirPressure", "Altitude", "WindPart"],
  reason:
    "The air goes into every standardised distance. An amount that cannot be right is mostly in another unit.",
  run(node, { report }) {
    const quantity: Quantity = node.$type === "WindPart" ? node.speed : node.quantity;
    const unit = quantity.unit?.ref;
    const measure = measureAt(quantity);
    if (unit === undefined || measure === undefined || !unitFits(unit, measure.dimension)) return;
    const [low, high, words] = LIKELY[node.$type] ?? [];
    const isBelowZero = node.$type === "AirTemperature" && node.minus;
    const value = siOf(quantity, isBelowZero);
    if (value === undefined || low === undefined || high === undefined || (value >= low && value <= high))
      return;
    report({ message: `${words}. Look at the number and at its unit.`, node: quantity });
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
  wind «40 m/s» head
  temperature «72 °C»
  pressure «1013 Pa»
}

session "Second" {
  plan "Gate"
  player "P-1"
  data "second.csv" from "Bay"
  altitude «42000 ft»
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
  wind 4 m/s head
  temperature 72 °F
  pressure 1013 hPa
  altitude 42 m
}`,
});
