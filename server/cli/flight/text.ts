/** Flights for people. */
import type { Hand, Metric } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import { formatAmount, formatNumber, formatRange, formatReading } from "../../../shared/quantity.ts";
import { ZERO_CELSIUS } from "../../flight/constants.ts";
import type { FlightMetric } from "../../flight/derived-metrics.ts";
import type { Estimate, Estimated } from "../../flight/estimate.ts";
import { LABEL, LIMITS, UNCERTAINTY } from "../../flight/limits.ts";
import { CAUTION } from "../../report/caution.ts";
import type { Palette } from "../../report/palette.ts";
import { printable } from "../../report/printable.ts";
import type { StatedAir } from "./conditions.ts";
import type { LaunchEstimates, Worth } from "./estimates.ts";
import { LAUNCH_METRICS } from "./launches.ts";

export interface Words {
  readonly metric: (name: string) => Metric;
  readonly hand: Hand;
  readonly palette: Palette;
}

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

/** One launch, with all that is said of it. */
export function launchText(
  estimates: LaunchEstimates,
  air: StatedAir,
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
      ...(best === null
        ? []
        : [
            [
              "farthest within reach",
              `${shown("carry", best.carry, words)}, launched at ${shown("launch-angle", best.launchAngle, words)} with ${shown("spin-rate", best.spinRate, words)}`,
            ] as const,
          ]),
      ...estimates.strike.map(
        ({ metric, value }) => [`a strike's ${spaced(metric)}`, shown(metric, value, words)] as const,
      ),
    ]),
    ...disagreementLines(estimates, words),
    ...worthLines(worth, words),
    "",
    ...closing(
      worth.some(({ change }) => change.metric in CLUB_WORDS),
      words,
    ),
  ];
  return `${lines.join("\n")}\n`;
}

/** A table of launches: a line each. */
export function tableText(all: readonly LaunchEstimates[], air: StatedAir, words: Words): string {
  const { palette } = words;
  const header = ["line", "carry", "±", "offline", "curve", "apex", "descent", "time"];
  const hasStandard = all.some(({ standardCarry }) => standardCarry !== null);
  const hasEfficiency = all.some(({ launchEfficiency }) => launchEfficiency !== null);
  const rows = all.map(({ stated, flight, standardCarry, launchEfficiency }) => [
    `${stated.line ?? ""}`,
    cell(flight.carry, "carry", words),
    flight.carry.status === "not-measured" ? "" : uncertaintyWords(flight.carry, "carry", words),
    cell(flight.offline, "offline", words),
    cell(flight.curve, "curve", words),
    cell(flight.apex, "apex", words),
    cell(flight["descent-angle"], "descent-angle", words),
    cell(flight["flight-time"], "flight-time", words),
    ...(hasStandard ? [standardCarry === null ? "" : cell(standardCarry, "carry", words)] : []),
    ...(hasEfficiency
      ? [launchEfficiency === null ? "" : cell(launchEfficiency, "launch-efficiency", words)]
      : []),
    flight.carry.status === "extrapolated" ? "!" : flight.carry.status === "not-measured" ? "–" : "",
  ]);
  const names = [
    ...header,
    ...(hasStandard ? ["standard"] : []),
    ...(hasEfficiency ? ["efficiency"] : []),
    "",
  ];
  const widths = names.map((name, column) =>
    Math.max(...[name, ...rows.map((row) => row[column] ?? "")].map(({ length }) => length)),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((text, column) => text.padStart(widths[column] ?? 0))
      .join("  ")
      .trimEnd();
  const lines = [
    palette.strong(`${plural(all.length, "flight")}, estimated`),
    ...table([["air", airWords(air)]]),
    "",
    palette.faint(line(names)),
    ...rows.map(line),
    ...remarkLines(all),
    "",
    ...closing(false, words),
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

/** An amount; that it is less than can be shown, where it is: nothing here is exact. */
function uncertaintyWords({ uncertainty }: Estimated, name: string, { metric }: Words): string {
  const declared = metric(name);
  const text = formatAmount(uncertainty, declared);
  const step = declared.step * declared.unit.factor;
  return Number.parseFloat(text) === 0 ? `< ${formatAmount(step, declared)}` : text;
}

function carryWords(estimate: Estimate, words: Words): string {
  return estimate.status === "not-measured" ? estimate.reason : withUncertainty(estimate, "carry", words);
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

function airWords({ conditions, windExponent }: StatedAir): string {
  const { temperature, pressure, altitude, humidity, wind, ball } = conditions;
  const one = (value: number, symbol: string, step: number) =>
    formatNumber(value, { symbol, factor: 1 }, step);
  const air =
    pressure === null ? `${one(altitude ?? 0, "m", 1)} above the sea` : one(pressure / 100, "hPa", 0.1);
  const parts = [
    { value: wind?.along ?? 0, plus: "tail", minus: "head" },
    { value: wind?.across ?? 0, plus: "left-to-right", minus: "right-to-left" },
  ].flatMap(({ value, plus, minus }) =>
    value === 0 ? [] : [`${one(Math.abs(value), "m/s", 0.1)} ${value > 0 ? plus : minus}`],
  );
  const growth =
    windExponent === 0 || parts.length === 0
      ? ""
      : ` at 10 m, growing with height to the power ${windExponent}`;
  return [
    one((temperature ?? 0) - ZERO_CELSIUS, "°C", 0.1),
    air,
    `${one(100 * (humidity ?? 0), "%", 1)} humidity`,
    parts.length === 0 ? "calm" : `wind ${parts.join(" and ")}${growth}`,
    ...((ball?.carryFactor ?? 1) === 1
      ? []
      : [`a ball that carries ${one(100 * (ball?.carryFactor ?? 1), "%", 1)}`]),
  ].join(", ");
}

function disagreementLines({ disagreements }: LaunchEstimates, words: Words): string[] {
  return disagreements.flatMap(({ metric, measured, low, high, from, reason }) => {
    const declared = words.metric(metric);
    return [
      "",
      words.palette.open(
        `! ${spaced(metric)} ${formatReading(measured, declared, words.hand)} does not fit ${from.map(spaced).join(", ")}, which make it ${formatRange(low, high, declared, words.hand)}.`,
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

/** What of a table was extrapolated, not computed, or could not be read, and why: a line for each reason. */
function remarkLines(all: readonly LaunchEstimates[]): string[] {
  const lines = new Map<string, number[]>();
  const note = (text: string, line: number | null) =>
    lines.set(text, [...(lines.get(text) ?? []), line ?? 0]);
  for (const { stated, flight } of all) {
    for (const problem of stated.problems) note(problem, stated.line);
    const { carry } = flight;
    if (carry.status === "not-measured") note(carry.reason, stated.line);
    else if (carry.warning !== null) note(`! ${carry.warning}`, stated.line);
  }
  const remarks = [...lines].map(([text, places]) => {
    const first = places.slice(0, 8).join(", ");
    const more = places.length > 8 ? ` and ${places.length - 8} more` : "";
    return printable(`${places.length === 1 ? "line" : "lines"} ${first}${more}: ${text}`);
  });
  return remarks.length === 0 ? [] : ["", ...remarks];
}

function closing(isAboutSwings: boolean, { palette }: Words): string[] {
  return [
    LABEL,
    UNCERTAINTY,
    palette.faint(`Not to be trusted where: ${LIMITS.join(" ")}`),
    ...(isAboutSwings ? [CAUTION] : []),
  ];
}

function cell(estimate: Estimate, name: string, words: Words): string {
  return estimate.status === "not-measured" ? "–" : shown(name, estimate.value, words);
}

function shown(name: string, value: number, { metric, hand }: Words): string {
  return formatReading(value, metric(name), hand);
}

function spaced(name: string): string {
  return name.replaceAll("-", " ");
}

function table(rows: readonly (readonly [name: string, text: string])[]): string[] {
  const width = Math.max(...rows.map(([name]) => name.length));
  return rows.map(([name, text]) => `  ${name.padEnd(width)}   ${text}`);
}
