/** One flight for people, with all that is said of it. */
import { formatAmount, formatNumber, formatRange, formatReading } from "../../../shared/quantity.ts";
import type { Estimate, Estimated } from "../../flight/estimate.ts";
import type { FlightMetric } from "../../flight/estimated-flight.ts";
import type { StatedAir } from "./conditions.ts";
import type { Bounds, LaunchEstimates, Worth } from "./estimates.ts";
import { LAUNCH_METRICS } from "./launches.ts";
import { airWords, closing, shown, spaced, table, uncertaintyWords, type Words } from "./words.ts";

/** As which metric a value of a flight is shown. */
const SHOWN: Readonly<Record<FlightMetric, string>> = {
  carry: "carry",
  offline: "offline",
  curve: "curve",
  apex: "apex",
  "descent-angle": "descent-angle",
  "flight-time": "flight-time",
  "landing-speed": "ball-speed",
  "landing-spin": "spin-rate",
};
const FLIGHT_METRICS = Object.keys(SHOWN) as FlightMetric[];

export function launchText(
  estimates: LaunchEstimates,
  air: StatedAir,
  bounds: Bounds | null,
  worth: readonly Worth[],
  words: Words,
): string {
  const { palette } = words;
  const { flight, reference, best } = estimates;
  const lines = [
    palette.strong("A flight, estimated"),
    ...table([
      ["launch", launchWords(estimates, words)],
      ["air", airWords(air)],
    ]),
    "",
    ...flightLines(flight, words),
    "",
    ...table([
      ["in reference air", carryWords(reference.carry, words)],
      ...(estimates.standardCarry === null
        ? []
        : [["standard carry", carryWords(estimates.standardCarry, words)] as const]),
      ...(estimates.launchEfficiency === null
        ? []
        : [["launch efficiency", efficiencyWords(estimates.launchEfficiency)] as const]),
      ...(best === null ? [] : [["farthest within reach", farthestWords(best.carry, best, words)] as const]),
      ...(bounds === null ? [] : boundsRows(bounds, words)),
      ...estimates.strike.map(
        ({ metric, value }) => [`a strike's ${spaced(metric)}`, shown(metric, value, words)] as const,
      ),
    ]),
    ...disagreementLines(estimates, words),
    ...worthLines(worth, words),
    "",
    ...closing(bounds !== null || worth.length > 0, words),
  ];
  return `${lines.join("\n")}\n`;
}

function flightLines(flight: LaunchEstimates["flight"], words: Words): string[] {
  const { carry } = flight;
  if (carry.status === "not-measured") return [words.palette.open(carry.reason)];
  const rows = FLIGHT_METRICS.flatMap((name) => {
    const estimate = flight[name];
    return estimate.status === "not-measured"
      ? []
      : [[spaced(name), withUncertainty(estimate, SHOWN[name], words)] as const];
  });
  return [...table(rows), ...(carry.warning === null ? [] : ["", words.palette.open(`! ${carry.warning}`)])];
}

/** `265 yd        ± 20 yd` */
function withUncertainty(estimate: Estimated, name: string, words: Words): string {
  const value = formatReading(estimate.value, words.metric(name), words.hand);
  return `${value.padEnd(14)} ± ${uncertaintyWords(estimate, name, words)}`;
}

function carryWords(estimate: Estimate, words: Words): string {
  return estimate.status === "not-measured" ? estimate.reason : withUncertainty(estimate, "carry", words);
}

function farthestWords(
  carry: number,
  launch: { readonly launchAngle: number; readonly spinRate: number },
  words: Words,
): string {
  return `${shown("carry", carry, words)}, launched at ${shown("launch-angle", launch.launchAngle, words)} with ${shown("spin-rate", launch.spinRate, words)}`;
}

function boundsRows({ window, free }: Bounds, words: Words): (readonly [name: string, text: string])[] {
  const range = (name: string, low: number, high: number) =>
    formatRange(low, high, words.metric(name), words.hand);
  const angles = window && range("launch-angle", window.low.launchAngle, window.high.launchAngle);
  const spins = window && range("spin-rate", window.low.spinRate, window.high.spinRate);
  return [
    ...(window === null ? [] : [["99 % of that", `launched at ${angles}, with ${spins}`] as const]),
    [
      "farthest of all",
      `${farthestWords(free.carry, free.launch, words)}: a bound that few swings can reach`,
    ],
  ];
}

function efficiencyWords(estimate: Estimate): string {
  if (estimate.status === "not-measured") return estimate.reason;
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
  return `${percent(estimate.value).padEnd(14)} ± ${percent(estimate.uncertainty)}`;
}

function launchWords({ stated: { values } }: LaunchEstimates, words: Words): string {
  return LAUNCH_METRICS.flatMap((name) => {
    const value = values[name];
    return value === undefined ? [] : [`${spaced(name)} ${shown(name, value, words)}`];
  }).join(", ");
}

function disagreementLines({ disagreements }: LaunchEstimates, words: Words): string[] {
  return disagreements.flatMap(({ metric, measured, low, high, from, by, reason }) => {
    const declared = words.metric(metric);
    return [
      "",
      words.palette.open(
        `! ${spaced(metric)} ${formatReading(measured, declared, words.hand)} does not fit ${from.map(spaced).join(", ")}, which${by === "model" ? " by the model" : ""} make it ${formatRange(low, high, declared, words.hand)}.`,
      ),
      `  ${reason}`,
    ];
  });
}

const CLUB_WORDS: Readonly<Record<string, string>> = {
  "face-angle": "face to the right",
  "club-path": "path to the right",
  "attack-angle": "attack upwards",
};
const LAUNCH_WORDS: Readonly<Record<string, string>> = {
  "launch-angle": "launch",
  "spin-rate": "spin",
  "spin-axis": "tilt of the axis to the right",
};

function worthLines(worth: readonly Worth[], words: Words): string[] {
  const rows = worth.flatMap(({ change: { metric, by }, effect }) => {
    const { carry, offline, curve } = effect;
    if (
      carry.status === "not-measured" ||
      offline.status === "not-measured" ||
      curve.status === "not-measured"
    )
      return [];
    const amount = formatAmount(by, { ...words.metric(metric), step: 1 });
    const name = `${amount} more ${CLUB_WORDS[metric] ?? LAUNCH_WORDS[metric]}`;
    return [
      [
        name,
        `carry ${change(carry.value, words)}, offline ${sideways(offline.value, words)}, curve ${sideways(curve.value, words)}`,
      ] as const,
    ];
  });
  return rows.length === 0
    ? []
    : ["", words.palette.strong("What a change is worth, everything else the same"), ...table(rows)];
}

/** `+1.2 yd`, to a tenth: a change is smaller than what it changes. */
function change(value: number, { metric }: Words): string {
  const text = formatNumber(value, metric("carry").unit, 0.1);
  return text.startsWith("−") || Number.parseFloat(text) === 0 ? text : `+${text}`;
}

function sideways(value: number, { metric }: Words): string {
  const { unit } = metric("offline");
  const text = formatNumber(Math.abs(value), unit, 0.1);
  return Number.parseFloat(text) === 0 ? text : `${text} more to the ${value < 0 ? "left" : "right"}`;
}
