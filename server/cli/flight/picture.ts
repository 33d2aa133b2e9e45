/** Flights as a picture. */
import type { Unit } from "../../../shared/plan-model.ts";
import { LABEL } from "../../flight/limits.ts";
import { flightPicture, type PicturedShot, standalone } from "../../report/pictures/flight.ts";
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
  const svg = flightPicture({
    title: LABEL,
    shots,
    unit,
    landing: "in the air that was stated, an estimate",
    share: null,
  });
  return svg === null ? undefined : standalone(svg);
}

function groundOf({ carry, offline }: LaunchEstimates["flight"]): { x: number; z: number } | null {
  if (carry.status === "not-measured" || offline.status === "not-measured") return null;
  const downrange = Math.sqrt(Math.max(0, carry.value ** 2 - offline.value ** 2));
  return { x: downrange, z: offline.value };
}
