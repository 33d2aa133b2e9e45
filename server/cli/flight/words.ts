/** Words that texts about one flight and about many have in common. */

import { CAUTION } from "../../../shared/care.ts";
import type { Hand, Metric } from "../../../shared/plan-model.ts";
import { formatAmount, formatNumber, formatReading } from "../../../shared/quantity.ts";
import { ZERO_CELSIUS } from "../../flight/constants.ts";
import type { Estimated } from "../../flight/estimate.ts";
import { LABEL, LIMITS, UNCERTAINTY } from "../../flight/limits.ts";
import type { Palette } from "../../report/palette.ts";
import type { StatedAir } from "./conditions.ts";

export interface Words {
  readonly metric: (name: string) => Metric;
  readonly hand: Hand;
  readonly palette: Palette;
}

/** An amount; that it is less than can be shown, where it is: nothing here is exact. */
export function uncertaintyWords({ uncertainty }: Estimated, name: string, { metric }: Words): string {
  const declared = metric(name);
  const text = formatAmount(uncertainty, declared);
  const step = declared.step * declared.unit.factor;
  return Number.parseFloat(text) === 0 ? `< ${formatAmount(step, declared)}` : text;
}

/** The air that was stated. */
export function airWords({ conditions, windExponent }: StatedAir): string {
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

/** What must stand under every number of the model; with the words of care where it speaks of swings. */
export function closing(isAboutSwings: boolean, { palette }: Words): string[] {
  return [
    LABEL,
    UNCERTAINTY,
    palette.faint(`Not to be trusted where: ${LIMITS.join(" ")}`),
    ...(isAboutSwings ? [CAUTION] : []),
  ];
}

/** A reading of a metric. */
export function shown(name: string, value: number, { metric, hand }: Words): string {
  return formatReading(value, metric(name), hand);
}

/** A metric's name as it is said. */
export function spaced(name: string): string {
  return name.replaceAll("-", " ");
}

/** Two columns. */
export function table(rows: readonly (readonly [name: string, text: string])[]): string[] {
  const width = Math.max(...rows.map(([name]) => name.length));
  return rows.map(([name, text]) => `  ${name.padEnd(width)}   ${text}`);
}
