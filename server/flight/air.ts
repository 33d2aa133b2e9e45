/** Air: how dense and how viscous it is. */
import { GRAVITY, ZERO_CELSIUS } from "./constants.ts";

/** Molar masses of dry air with 0.04 % carbon dioxide and of water, kg/mol, and the gas constant, J/(mol K). */
const DRY = 28.96546e-3;
const WATER = 18.01528e-3;
const GAS = 8.314472;

export interface Air {
  /** kg/m³. */
  readonly density: number;
  /** Pa s. */
  readonly viscosity: number;
}

/**
 * Air of a temperature (kelvin), a pressure (Pa, at the place itself: a weather report's is reduced to sea level) and a relative
 * humidity (0 to 1).
 */
export function airOf(temperature: number, pressure: number, humidity: number): Air {
  return {
    density: moistAir(temperature, pressure, humidity).density,
    viscosity: viscosityOfAir(temperature),
  };
}

/**
 * The density of moist air and what it is made of, by CIPM-2007: A. Picard, R. S. Davis, M. Gläser, K. Fujii 2008, Metrologia 45,
 * 149–155. Stated for 15 to 27 °C and 600 to 1100 hPa; a little beyond, the error is far below what a ball would notice.
 */
export function moistAir(temperature: number, pressure: number, humidity: number) {
  const [T, p, h] = [temperature, pressure, humidity];
  const t = T - ZERO_CELSIUS;
  /** Pa. */
  const saturation = Math.exp(1.2378847e-5 * T * T - 1.9121316e-2 * T + 33.93711047 - 6343.1645 / T);
  const enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
  /** Mole fraction of water. */
  const vapour = (h * enhancement * saturation) / p;
  const compressibility =
    1 -
    (p / T) *
      (1.58123e-6 -
        2.9331e-8 * t +
        1.1043e-10 * t * t +
        (5.707e-6 - 2.051e-8 * t) * vapour +
        (1.9898e-4 - 2.376e-6 * t) * vapour * vapour) +
    (p / T) ** 2 * (1.83e-11 - 0.765e-8 * vapour * vapour);
  const density = ((p * DRY) / (compressibility * GAS * T)) * (1 - vapour * (1 - WATER / DRY));
  return { density, saturation, vapour, compressibility };
}

/** Viscosity of air, Pa s, by ISO 2533:1975, formula 22. Humidity does not enter. */
export function viscosityOfAir(temperature: number): number {
  return (1.458e-6 * temperature ** 1.5) / (temperature + 110.4);
}

/** The standard atmosphere: temperature at sea level, K, its fall with height, K/m, and the gas constant of its air, J/(kg K). */
const SEA_LEVEL = 288.15;
const LAPSE = 0.0065;
export const STANDARD_GAS = 101_325 / (1.225 * SEA_LEVEL);

/** Pressure (Pa) at a height above the sea (m, up to 11 000) in the standard atmosphere, ISO 2533:1975. */
export function pressureAt(altitude: number): number {
  return 101_325 * (standardTemperatureAt(altitude) / SEA_LEVEL) ** (GRAVITY / (LAPSE * STANDARD_GAS));
}

/** Temperature (K) there. The air's own temperature is to be preferred: this one is for comparing with the standard. */
export function standardTemperatureAt(altitude: number): number {
  return SEA_LEVEL - LAPSE * altitude;
}

/** 15 °C, 101 325 Pa, dry. By the same formula as any other air, or a difference of formulas would pass for one of air. */
export const REFERENCE_AIR = airOf(ZERO_CELSIUS + 15, 101_325, 0);
