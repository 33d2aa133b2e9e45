/** From the conditions a session states to the surroundings of a flight. */
import type { Conditions } from "../../shared/plan-model.ts";
import { airOf, pressureAt } from "./air.ts";
import { GRAVITY, ZERO_CELSIUS } from "./constants.ts";
import { BALL, type Surroundings } from "./surroundings.ts";

/** Where the shots were hit, as far as it is stated. */
export interface Place {
  readonly surroundings: Surroundings;
  /** The same with the driest and the dampest air that what is stated leaves open: two, or none where humidity is stated. */
  readonly extremes: readonly Surroundings[];
  /** How far the ball carries as a share of a new one. */
  readonly carryFactor: number;
  readonly assumptions: readonly string[];
}

/** Relative humidity where none is stated. */
const USUAL_HUMIDITY = 0.5;

/** What can be believed. SI. */
const BELIEVED = {
  temperature: { least: ZERO_CELSIUS - 30, most: ZERO_CELSIUS + 50, says: "a temperature of −30 to 50 °C" },
  pressure: { least: 50_000, most: 110_000, says: "an air pressure of 500 to 1100 hPa" },
  altitude: { least: -450, most: 5000, says: "an altitude of −450 to 5000 m" },
  humidity: { least: 0, most: 1, says: "a humidity of 0 to 100 %" },
  wind: { least: 0, most: 20, says: "a wind of at most 20 m/s" },
} as const;

/**
 * The place, or a sentence that says what is missing and how to state it. The shots of a session ask for the same place again and
 * again: it is worked out once for each object, which nobody changes.
 * @param windExponent how the wind grows with height, see `Wind`
 */
export function placeOf(conditions: Conditions, windExponent = 0): Place | string {
  const before = known.get(conditions);
  if (before?.windExponent === windExponent) return before.place;
  const place = findPlace(conditions, windExponent);
  known.set(conditions, { windExponent, place });
  return place;
}

const known = new WeakMap<Conditions, { readonly windExponent: number; readonly place: Place | string }>();

function findPlace(conditions: Conditions, windExponent: number): Place | string {
  const { temperature, pressure, altitude, humidity, wind, ball } = conditions;
  if (temperature === null) return "The session does not state the temperature: write `temperature 18 °C`.";
  if (wind === null) return "The session does not state the wind: write `wind 3 m/s head`, or `wind calm`.";
  if (pressure === null && altitude === null) {
    return "The session states neither the air pressure nor the altitude: write `pressure 965 hPa` or `altitude 420 m`.";
  }
  if (ball !== null && ball.carryFactor === null) {
    return `The session does not state how far the ball "${ball.name}" carries: write \`ball "${ball.name}" carries 92 %\`, or 100 % for one that flies like a new ball.`;
  }
  const speed = Math.sqrt(wind.along * wind.along + wind.across * wind.across);
  const doubtful = Object.entries({ temperature, pressure, altitude, humidity, wind: speed }).find(
    ([name, value]) => value !== null && !isBelieved(name as keyof typeof BELIEVED, value),
  );
  if (doubtful !== undefined) {
    return `The flight model is made for ${BELIEVED[doubtful[0] as keyof typeof BELIEVED].says}, and another is stated: check it.`;
  }
  const stationPressure = pressure ?? pressureAt(altitude ?? 0);
  const at = (damp: number): Surroundings => ({
    air: airOf(temperature, stationPressure, damp),
    wind: { ...wind, exponent: windExponent },
    ball: BALL,
    gravity: GRAVITY,
  });
  return {
    surroundings: at(humidity ?? USUAL_HUMIDITY),
    extremes: humidity === null ? [at(0), at(1)] : [],
    carryFactor: ball?.carryFactor ?? 1,
    assumptions: [
      ...(humidity === null ? ["humidity 50 %, since none is stated"] : []),
      ...(pressure === null ? ["the air pressure of the standard atmosphere at this altitude"] : []),
      ...(ball === null ? ["a sound ball of full flight, since none is stated"] : []),
    ],
  };
}

function isBelieved(name: keyof typeof BELIEVED, value: number): boolean {
  return value >= BELIEVED[name].least && value <= BELIEVED[name].most;
}
