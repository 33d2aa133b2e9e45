/** The air of a session: from the tree to the model. */
import type { Conditions } from "../../shared/plan-model.ts";
import {
  isAirPressure,
  isAirTemperature,
  isAltitude,
  isBall,
  isHumidity,
  isWind,
  type Quantity,
  type Session,
  type Wind,
} from "../generated/tree/ast.ts";
import { NO_BINDINGS } from "../types/parameters.ts";
import { lowerQuantity } from "./amounts.ts";

export function lowerConditions({ statements }: Session): Conditions {
  const wind = statements.find(isWind);
  const temperature = statements.find(isAirTemperature);
  const pressure = statements.find(isAirPressure);
  const altitude = statements.find(isAltitude);
  const humidity = statements.find(isHumidity);
  const ball = statements.find(isBall);
  return {
    wind: wind === undefined ? null : lowerWind(wind),
    temperature: temperature === undefined ? null : degrees(temperature.quantity, temperature.minus),
    pressure: pressure === undefined ? null : amountIn(pressure.quantity),
    altitude: altitude === undefined ? null : amountIn(altitude.quantity),
    humidity: humidity === undefined ? null : humidity.share / 100,
    ball:
      ball === undefined
        ? null
        : { name: ball.name, carryFactor: ball.share === undefined ? null : ball.share / 100 },
  };
}

/** Where the air goes: towards the target and to the right are positive. */
const SIDES = {
  tail: { along: 1, across: 0 },
  head: { along: -1, across: 0 },
  "left-to-right": { along: 0, across: 1 },
  "right-to-left": { along: 0, across: -1 },
} as const;

function lowerWind({ parts }: Wind): Conditions["wind"] {
  const wind = { along: 0, across: 0 };
  for (const { speed, side } of parts) {
    const value = amountIn(speed);
    wind.along += SIDES[side].along * value;
    wind.across += SIDES[side].across * value;
  }
  return wind;
}

function amountIn(quantity: Quantity): number {
  return lowerQuantity(quantity, NO_BINDINGS).value;
}

/** Kelvin; `minus` turns the sign on the scale it was written in. */
function degrees(quantity: Quantity, minus: boolean): number {
  const { value, unit } = lowerQuantity(quantity, NO_BINDINGS);
  const zero = unit.offset ?? 0;
  return minus ? 2 * zero - value : value;
}
