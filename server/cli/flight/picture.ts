/** Flights as a picture. */
import type { Unit } from "../../../shared/plan-model.ts";
import { LABEL } from "../../flight/limits.ts";
import { groundAt } from "../../flight/shown-flight.ts";
import {
  type FlightDrawing,
  flightDrawing,
  type PicturedShot,
  standalone,
} from "../../report/pictures/flight.ts";
import type { StatedAir } from "./conditions.ts";
import { type LaunchEstimates, pathThrough } from "./estimates.ts";

/** Side view and view from above. Undefined where the model has no flight. */
export function pictureOf(all: readonly LaunchEstimates[], air: StatedAir, unit: Unit): string | undefined {
  const shots = all.flatMap((estimates): PicturedShot[] => {
    const { stated, flight, reference } = estimates;
    const landing = groundOf(flight);
    if (landing === null) return [];
    return [
      {
        name: stated.line === null ? "the launch" : `line ${stated.line}`,
        path: pathThrough(stated, air),
        landing,
        standard: groundOf(reference),
      },
    ];
  });
  const drawing: FlightDrawing = {
    title: LABEL,
    shots,
    unit,
    landing: "in the air that was stated, an estimate",
    share: null,
  };
  const drawn = flightDrawing(drawing, WIDTH);
  return drawn === null ? undefined : standalone(drawn, drawing);
}

const WIDTH = 640;

function groundOf({ carry, offline }: LaunchEstimates["flight"]) {
  if (carry.status === "not-measured" || offline.status === "not-measured") return null;
  return groundAt(carry.value, offline.value);
}
