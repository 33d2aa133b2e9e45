/** Air against independently computed and printed values. */
import { describe, test } from "vitest";
import {
  moistAir,
  pressureAt,
  REFERENCE_AIR,
  STANDARD_GAS,
  standardTemperatureAt,
  viscosityOfAir,
} from "../../server/flight/air.ts";
import { ZERO_CELSIUS } from "../../server/flight/constants.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";

describe("moist air, CIPM-2007", () => {
  const rows = oracleRows("flight/moist_air.csv", [
    "id",
    "temperature_c",
    "pressure_hpa",
    "humidity_pct",
    "density_kg_m3",
    "vapour_mole_fraction",
    "saturation_pressure_pa",
    "compressibility",
    "viscosity_pa_s",
    "simplified_density_kg_m3",
  ]);

  test.each(rows)("$id: $temperature_c °C, $pressure_hpa hPa, $humidity_pct %", (row) => {
    const t = numberIn(row.temperature_c);
    const p = numberIn(row.pressure_hpa);
    const h = numberIn(row.humidity_pct);
    const air = moistAir(t + ZERO_CELSIUS, p * 100, h / 100);
    expectNear(air.density, numberIn(row.density_kg_m3), { relative: 1e-8 }, row);
    expectNear(air.vapour, numberIn(row.vapour_mole_fraction), { relative: 1e-8 }, row);
    expectNear(air.saturation, numberIn(row.saturation_pressure_pa), { relative: 1e-8 }, row);
    expectNear(air.compressibility, numberIn(row.compressibility), { relative: 1e-9 }, row);
    expectNear(viscosityOfAir(t + ZERO_CELSIUS), numberIn(row.viscosity_pa_s), { relative: 1e-8 }, row);
    const short = (0.34848 * p - 0.009 * h * Math.exp(0.061 * t)) / (t + ZERO_CELSIUS);
    expectNear(short, numberIn(row.simplified_density_kg_m3), { relative: 1e-8 }, row);
    expectNear(air.density, short, { relative: 1.5e-3 }, row); // the short formula for moist air
  });
});

test("reference air", () => {
  expectNear(REFERENCE_AIR.density, 1.225521345, { relative: 1e-9 }, REFERENCE_AIR);
  expectNear(REFERENCE_AIR.viscosity, 1.789380278e-5, { relative: 1e-9 }, REFERENCE_AIR);
});

describe("standard atmosphere", () => {
  const rows = oracleRows("flight/isa.csv", [
    "geopotential_m",
    "temperature_k",
    "pressure_pa",
    "density_kg_m3",
    "viscosity_pa_s",
    "printed_pressure_hpa",
    "printed_density",
    "printed_viscosity",
  ]);

  test.each(rows)("$geopotential_m m", (row) => {
    const altitude = numberIn(row.geopotential_m);
    const temperature = standardTemperatureAt(altitude);
    const pressure = pressureAt(altitude);
    const density = pressure / (STANDARD_GAS * temperature);
    expectNear(temperature, numberIn(row.temperature_k), { absolute: 1e-9 }, row);
    expectNear(pressure, numberIn(row.pressure_pa), { absolute: 0.0006 }, row);
    expectNear(density, numberIn(row.density_kg_m3), { absolute: 6e-9 }, row);
    expectNear(viscosityOfAir(temperature), numberIn(row.viscosity_pa_s), { relative: 1e-7 }, row);
    expectNear(pressure / 100, numberIn(row.printed_pressure_hpa), { absolute: 0.005 }, row);
    expectNear(density, numberIn(row.printed_density), { absolute: 5e-6 }, row);
    expectNear(viscosityOfAir(temperature), numberIn(row.printed_viscosity), { absolute: 0.5e-9 }, row);
  });
});
