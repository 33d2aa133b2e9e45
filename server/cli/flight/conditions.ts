/** The air that the options state. */
import type { Conditions } from "../../../shared/plan-model.ts";
import { placeOf } from "../../flight/conditions.ts";
import { UsageError } from "../command.ts";
import type { AmountReader } from "./amounts.ts";

export interface AirOptions {
  readonly temperature: string;
  readonly pressure: string | undefined;
  readonly altitude: string;
  readonly humidity: string;
  readonly wind: string;
  readonly "wind-growth": string;
  readonly ball: string;
}

export interface StatedAir {
  readonly conditions: Conditions;
  readonly windExponent: number;
}

/** @throws UsageError where one of them cannot be read, or cannot be believed. */
export function airIn(options: AirOptions, amounts: AmountReader): StatedAir {
  const amount = (name: keyof AirOptions, dimension: string) =>
    amountIn(name, options[name], dimension, amounts);
  const exponent = Number(options["wind-growth"]);
  if (!(exponent >= 0 && exponent <= 1)) {
    throw new UsageError(
      `--wind-growth says "${options["wind-growth"]}", and takes a number from 0 (the same wind at every height) to 1. Over grass 0.14 is usual.`,
    );
  }
  const conditions: Conditions = {
    temperature: amount("temperature", "air-temperature"),
    pressure: options.pressure === undefined ? null : amount("pressure", "air-pressure"),
    altitude: amount("altitude", "length"),
    humidity: amount("humidity", "ratio"),
    wind: windIn(options.wind, amounts),
    ball: { name: "ball", carryFactor: amount("ball", "ratio") },
  };
  const place = placeOf(conditions);
  if (typeof place === "string") throw new UsageError(place);
  return { conditions, windExponent: exponent };
}

function amountIn(name: string, text: string | undefined, dimension: string, amounts: AmountReader): number {
  const amount = amounts.ofDimension(text ?? "", dimension);
  if (typeof amount === "number") return amount;
  throw new UsageError(
    `--${name} says "${text}", which ${amount === "blank" ? "is empty" : amount.problem}.`,
  );
}

/** Where the air goes with each word for it. */
const SIDES: Readonly<Record<string, { readonly along: number; readonly across: number }>> = {
  head: { along: -1, across: 0 },
  tail: { along: 1, across: 0 },
  "left-to-right": { along: 0, across: 1 },
  "right-to-left": { along: 0, across: -1 },
};

/** `calm`, or parts such as `3 m/s head` joined by `and`. */
function windIn(text: string, amounts: AmountReader): { along: number; across: number } {
  const wind = { along: 0, across: 0 };
  if (text.trim() === "calm") return wind;
  for (const part of text.split(/\s+and\s+/)) {
    const [, speed = "", word = ""] = /^(.*?)\s+(\S+)$/.exec(part.trim()) ?? [];
    const side = Object.hasOwn(SIDES, word) ? SIDES[word] : undefined;
    const value = side === undefined ? undefined : amounts.ofDimension(speed, "speed");
    if (side === undefined || typeof value !== "number" || value < 0) {
      throw new UsageError(
        `--wind says "${text}", which cannot be read. Write \`calm\`, or a speed and where it comes from: "3 m/s head", "2 m/s tail and 1 m/s left-to-right".`,
      );
    }
    wind.along += side.along * value;
    wind.across += side.across * value;
  }
  return wind;
}
