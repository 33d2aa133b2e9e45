/** The air and the ball of a session, as it states them. */
import { formatNumber } from "../../../shared/quantity.ts";
import { ZERO_CELSIUS } from "../../flight/constants.ts";
import type { ReportedSession } from "../reported-session.ts";
import { remarks, type Section } from "../section.ts";

/** Null where nothing is stated. */
export function conditionsSection({ input }: ReportedSession): Section | null {
  const { wind, temperature, pressure, altitude, humidity, ball } = input.session.conditions;
  const shown = (value: number | null, name: string, symbol: string, step: number, factor = 1) =>
    value === null ? [] : [`${name} ${formatNumber(value, { symbol, factor }, step)}`];
  return remarks("Conditions", [
    ...(wind === null ? [] : [windInWords(wind)]),
    ...shown(temperature === null ? null : temperature - ZERO_CELSIUS, "temperature", "°C", 1),
    ...shown(pressure, "pressure", "hPa", 1, 100),
    ...shown(altitude, "altitude", "m", 1),
    ...shown(humidity, "humidity", "%", 1, 0.01),
    ...(ball === null ? [] : [ballInWords(ball)]),
  ]);
}

function windInWords({ along, across }: { readonly along: number; readonly across: number }): string {
  const speed = (value: number) => formatNumber(Math.abs(value), { symbol: "m/s", factor: 1 }, 0.1);
  const parts = [
    along === 0 ? null : `${speed(along)} ${along > 0 ? "from behind" : "against the shot"}`,
    across === 0 ? null : `${speed(across)} from ${across > 0 ? "left to right" : "right to left"}`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? "no wind" : `wind ${parts.join(" and ")}`;
}

function ballInWords({ name, carryFactor }: { readonly name: string; readonly carryFactor: number | null }) {
  const carry = carryFactor === null ? "" : `, which carries ${Math.round(100 * carryFactor)} % of a new one`;
  return `ball "${name}"${carry}`;
}
