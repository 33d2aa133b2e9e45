/** Flights as a table for other programs. Every column says that it is an estimate, and in which unit it is. */
import { csvLine } from "../../../shared/csv.ts";
import { DEGREE, RPM } from "../../flight/constants.ts";
import type { Estimate } from "../../flight/estimate.ts";
import type { FlightMetric } from "../../flight/estimated-flight.ts";
import type { LaunchEstimates } from "./estimates.ts";
import { LAUNCH_METRICS } from "./launches.ts";

/** Units of the columns, and what one is worth in SI. */
const UNITS = { m: 1, "m/s": 1, s: 1, "°": DEGREE, rpm: RPM, "%": 0.01 } as const;

const LAUNCH_UNITS: Readonly<Record<(typeof LAUNCH_METRICS)[number], keyof typeof UNITS>> = {
  "ball-speed": "m/s",
  "launch-angle": "°",
  "start-direction": "°",
  "spin-rate": "rpm",
  "spin-axis": "°",
  carry: "m",
  "dynamic-loft": "°",
  "face-angle": "°",
  "attack-angle": "°",
  "club-path": "°",
};

const FLIGHT_UNITS: Readonly<Record<FlightMetric, keyof typeof UNITS>> = {
  carry: "m",
  offline: "m",
  curve: "m",
  apex: "m",
  "descent-angle": "°",
  "flight-time": "s",
  "landing-speed": "m/s",
  "landing-spin": "rpm",
};

export function csvOf(all: readonly LaunchEstimates[]): string {
  const launchNames = LAUNCH_METRICS.filter((name) => all.some(({ stated }) => name in stated.values));
  const flightNames = Object.keys(FLIGHT_UNITS) as FlightMetric[];
  const header = [
    "line",
    ...launchNames.map((name) => `${name} (${LAUNCH_UNITS[name]})`),
    "status",
    ...flightNames.flatMap((name) => [
      `estimated ${name} (${FLIGHT_UNITS[name]})`,
      `uncertainty of ${name} (${FLIGHT_UNITS[name]})`,
    ]),
    "estimated carry in reference air (m)",
    "estimated standard-carry (m)",
    "uncertainty of standard-carry (m)",
    "estimated launch-efficiency (%)",
    "uncertainty of launch-efficiency (%)",
    "remarks",
  ];
  const rows = all.map(({ stated, flight, reference, standardCarry, launchEfficiency }) => [
    String(stated.line ?? ""),
    ...launchNames.map((name) => number(stated.values[name], LAUNCH_UNITS[name])),
    flight.carry.status,
    ...flightNames.flatMap((name) => both(flight[name], FLIGHT_UNITS[name])),
    both(reference.carry, "m")[0] ?? "",
    ...both(standardCarry, "m"),
    ...both(launchEfficiency, "%"),
    remarksOf(stated.problems, flight.carry),
  ]);
  return [header, ...rows].map((cells) => `${csvLine(cells)}\n`).join("");
}

function both(estimate: Estimate | null, unit: keyof typeof UNITS): [string, string] {
  if (estimate === null || estimate.status === "not-measured") return ["", ""];
  return [number(estimate.value, unit), number(estimate.uncertainty, unit)];
}

function number(value: number | undefined, unit: keyof typeof UNITS): string {
  return value === undefined ? "" : String(Number((value / UNITS[unit]).toFixed(4)));
}

function remarksOf(problems: readonly string[], carry: Estimate): string {
  const why = carry.status === "not-measured" ? carry.reason : (carry.warning ?? "");
  return [...problems, why].filter((text) => text !== "").join(" ");
}
