/** Carry brought to reference air: against a table, what takes it away, and what must hold for every shot. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { airOf } from "../../server/flight/air.ts";
import { SS94_FLAT } from "../../server/flight/coefficients.ts";
import { ZERO_CELSIUS } from "../../server/flight/constants.ts";
import { fly } from "../../server/flight/fly.ts";
import { standardCarry } from "../../server/flight/standard-carry.ts";
import { REFERENCE } from "../../server/flight/surroundings.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import {
  AIR_COLUMNS,
  airIn,
  coefficientsIn,
  LAUNCH_COLUMNS,
  launchIn,
  surroundingsIn,
  YARD,
} from "./flights.ts";
import { conditions, estimateOf, IRON, reasonOf, shot } from "./shots.ts";

const rows = oracleRows("flight/normalisation.csv", [
  "id",
  "aero",
  ...LAUNCH_COLUMNS,
  ...AIR_COLUMNS,
  "wind_x_mps",
  "wind_z_mps",
  "measured_carry_yd",
  "model_carry_yd",
  "model_reference15_yd",
  "model_reference21_yd",
  "standard15_difference_yd",
  "standard15_ratio_yd",
  "standard21_difference_yd",
  "standard21_ratio_yd",
]);

const REFERENCE_21 = { ...REFERENCE, air: airOf(ZERO_CELSIUS + 21, 101_325, 0.5) };

describe("from the air of a day to reference air", () => {
  test.each(rows)(
    "$id $aero: $temperature_c °C, $pressure_hpa hPa, wind $wind_x_mps $wind_z_mps m/s",
    (row) => {
      const launch = launchIn(row);
      const place = surroundingsIn({ ...row, wind_exponent: "0", drag_scale: "1", lift_scale: "1" });
      const coefficients = coefficientsIn(row);
      const measured = numberIn(row.measured_carry_yd);
      const model = near(fly(launch, place, coefficients).carry / YARD, row.model_carry_yd);
      for (const [reference, modelled, difference, ratio] of [
        [REFERENCE, row.model_reference15_yd, row.standard15_difference_yd, row.standard15_ratio_yd],
        [REFERENCE_21, row.model_reference21_yd, row.standard21_difference_yd, row.standard21_ratio_yd],
      ] as const) {
        const there = near(fly(launch, reference, coefficients).carry / YARD, modelled);
        near(measured + there - fly(launch, place, coefficients).carry / YARD, difference);
        near((measured * there) / model, ratio);
      }

      function near(value: number, cell: string): number {
        expectNear(value, numberIn(cell), { absolute: 0.01 }, row);
        return value;
      }
    },
  );

  const shown = rows.filter(({ aero }) => aero === "ss94_flat");
  test.each(shown)("$id as a reading of a shot", (row) => {
    const launch = launchIn(row);
    const carry = numberIn(row.measured_carry_yd) * YARD;
    const values = {
      carry,
      "ball-speed": launch.ballSpeed,
      "launch-angle": launch.launchAngle,
      "start-direction": launch.startDirection,
      "spin-rate": launch.spinRate,
      "spin-axis": launch.spinAxis,
    };
    const stated = conditions({
      temperature: numberIn(row.temperature_c) + ZERO_CELSIUS,
      pressure: numberIn(row.pressure_hpa) * 100,
      humidity: numberIn(row.humidity_pct) / 100,
      wind: { along: numberIn(row.wind_x_mps), across: numberIn(row.wind_z_mps) },
    });
    const { value, uncertainty } = estimateOf(standardCarry({ values, derived: [] }, stated));
    expectNear(value / YARD, numberIn(row.standard15_difference_yd), { absolute: 0.01 }, row);
    // The two coefficient sets agree about a correction far better than about a carry.
    expect(uncertainty).toBeLessThan(0.5 * Math.abs(value - carry) + 1);
  });
});

describe("an estimate", () => {
  test("of an iron on a cold day with head wind", () => {
    const cold = conditions({ temperature: ZERO_CELSIUS + 5, wind: { along: -4, across: 0 } });
    const estimate = estimateOf(standardCarry(shot(IRON), cold));
    expect(estimate.status).toBe("supported");
    expect(estimate.warning).toBeNull();
    expect(estimate.assumptions).toEqual([]);
    expect(estimate.value / YARD).toBeGreaterThan(180);
    expect(estimate.value / YARD).toBeLessThan(190);
  });

  test("in reference air is what was measured", () => {
    const reference = conditions({ temperature: ZERO_CELSIUS + 15, humidity: 0 });
    const { value, uncertainty } = estimateOf(standardCarry(shot(IRON), reference));
    expect([value, uncertainty]).toEqual([150.876, 0]);
  });

  test("of a short iron is extrapolated, and says so", () => {
    const wedge = IRON.replace("54 m/s", "44 m/s").replace("6200", "8800");
    const { status, warning } = estimateOf(standardCarry(shot(wedge), conditions()));
    expect([status, warning]).toEqual([
      "extrapolated",
      "Extrapolated, since the ball spins more for its speed than in the measurements behind the flight model.",
    ]);
  });

  test("with a ball that carries 92 % is that of a new one", () => {
    const [whole, ranged] = [1, 0.92].map((carryFactor) =>
      estimateOf(standardCarry(shot(IRON), conditions({ ball: { name: "range", carryFactor } }))),
    );
    expect((ranged?.value ?? 0) - (whole?.value ?? 0)).toBeCloseTo(150.876 / 0.92 - 150.876, 3);
  });

  test("takes for granted what is not stated, says so, and is less certain for it", () => {
    const open = estimateOf(
      standardCarry(shot(IRON), conditions({ humidity: null, pressure: null, altitude: 0, ball: null })),
    );
    const stated = estimateOf(standardCarry(shot(IRON), conditions()));
    expect(open.value).toBeCloseTo(stated.value, 3);
    expect(open.uncertainty).toBeGreaterThan(stated.uncertainty + 0.1);
    expect(open.assumptions).toEqual([
      "humidity 50 %, since none is stated",
      "the air pressure of the standard atmosphere at this altitude",
      "a sound ball of full flight, since none is stated",
    ]);
  });

  test("believes the pressure at the place before one made from the altitude", () => {
    const both = standardCarry(shot(IRON), conditions({ altitude: 2000 }));
    expect(both).toEqual(standardCarry(shot(IRON), conditions()));
  });
});

describe("there is none", () => {
  test.each([
    ["spin-rate 6200 rpm, ", {}, "The shot has no spin-rate."],
    ["carry 165 yd, ", {}, "The shot has no carry."],
    ["", { temperature: null }, "does not state the temperature: write `temperature 18 °C`"],
    ["", { wind: null }, "write `wind 3 m/s head`, or `wind calm`"],
    ["", { pressure: null }, "write `pressure 965 hPa` or `altitude 420 m`"],
    ["", { ball: { name: "range", carryFactor: null } }, 'how far the ball "range" carries'],
    ["", { temperature: 18 }, "made for a temperature of −30 to 50 °C, and another is stated"],
    ["", { pressure: 1013.25 }, "made for an air pressure of 500 to 1100 hPa"],
    ["", { humidity: 60 }, "made for a humidity of 0 to 100 %"],
    ["", { wind: { along: 30, across: 0 } }, "made for a wind of at most 20 m/s"],
  ])("without %s%o", (left, other, reason) => {
    const phrase = IRON.replace(left, "");
    expect(reasonOf(standardCarry(shot(phrase), conditions(other)))).toContain(reason);
  });

  test.each([
    ["54 m/s", "20 m/s", "the ball starts slower through the air than the flight model is made for"],
    ["6200 rpm", "200 rpm", "the ball spins less for its speed than the flight model is made for"],
    ["16°", "-2°", "the ball does not start upwards"],
  ])("for %s turned into %s", (from, to, reason) => {
    const phrase = IRON.replace(from, to);
    expect(reasonOf(standardCarry(shot(phrase), conditions()))).toBe(
      `There is no estimate, since ${reason}.`,
    );
  });

  test("from what cannot be right", () => {
    const misread = IRON.replace("54 m/s", "120 m/s").replace("165 yd", "900 yd");
    expect(reasonOf(standardCarry(shot(misread), conditions()))).toBe(
      "The shot's carry and ball-speed cannot be right: check the unit.",
    );
  });

  test("from a spin that was not measured", () => {
    const computed = shot(IRON, ["spin-rate", "smash-factor"]);
    expect(reasonOf(standardCarry(computed, conditions()))).toBe(
      "Of the shot, spin-rate was computed from other readings, not measured.",
    );
  });
});

test("whatever the readings, there is a finite estimate or a reason", () => {
  const anything = fc.oneof(fc.double(), fc.double({ min: -1, max: 100 }), fc.constant(undefined));
  const names = ["carry", "ball-speed", "launch-angle", "start-direction", "spin-rate", "spin-axis"];
  fc.assert(
    fc.property(fc.array(anything, { minLength: 6, maxLength: 6 }), (numbers) => {
      const values = Object.fromEntries(
        names.flatMap((name, index) => (numbers[index] === undefined ? [] : [[name, numbers[index]]])),
      );
      const estimate = standardCarry({ values, derived: [] }, conditions());
      if (estimate.status === "not-measured") expect(estimate.reason).toMatch(/\.$/);
      else expect(Number.isFinite(estimate.value + estimate.uncertainty)).toBe(true);
    }),
    { numRuns: 300 },
  );
});

test("a standardised carry is whole tenths of a millimetre", () => {
  const { value } = estimateOf(standardCarry(shot(IRON), conditions()));
  expect(value).toBe(Number(value.toFixed(4)));
  const launch = launchIn({
    ball_speed_mps: "54",
    launch_deg: "16",
    start_deg: "1",
    spin_rpm: "6200",
    spin_axis_deg: "4",
  });
  const air = airIn({ temperature_c: "18", pressure_hpa: "1013.25", humidity_pct: "50" });
  const [there, here] = [REFERENCE.air, air].map(
    (each) => fly(launch, { ...REFERENCE, air: each }, SS94_FLAT).carry,
  );
  expect(value).toBeCloseTo(165 * YARD + (there ?? 0) - (here ?? 0), 3);
});
