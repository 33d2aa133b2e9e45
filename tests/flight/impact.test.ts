/** The strike against independently computed values, for both hands, and what must hold for every strike. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DEGREE, RPM } from "../../server/flight/constants.ts";
import {
  type ClubDelivery,
  CONTACT,
  FACE_SHARE,
  launchOf,
  startByShare,
  strikeOf,
} from "../../server/flight/impact.ts";
import { dot } from "../../server/flight/vector.ts";
import { signOf } from "../../shared/interval.ts";
import type { Direction, Hand } from "../../shared/plan-model.ts";
import { expectNear, numberIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";

const WORDS: Record<string, Direction> = {
  open: { word: "open", sign: 1, handed: true },
  closed: { word: "closed", sign: -1, handed: true },
  "in-to-out": { word: "in-to-out", sign: 1, handed: true },
  "out-to-in": { word: "out-to-in", sign: -1, handed: true },
};

/** `3 open`, `square`, `4 in-to-out`, `zero`: degrees to the right. */
function degreesRight(words: string, hand: string): number {
  if (words === "square" || words === "zero") return 0;
  const [amount = "", word = ""] = words.split(" ");
  const direction = WORDS[word];
  if (direction === undefined) throw new Error(`"${words}" is not understood.`);
  const player: Hand = hand === "L" ? "left" : "right";
  return numberIn(amount) * signOf(direction, player);
}

const rows = oracleRows("flight/dplane.csv", [
  "id",
  "hand",
  "dynamic_loft_deg",
  "face_words",
  "attack_deg",
  "path_words",
  "club_speed_mps",
  "face_right_deg",
  "path_right_deg",
  "normal_x",
  "normal_y",
  "normal_z",
  "club_x",
  "club_y",
  "club_z",
  "spin_loft_deg",
  "launch_from_normal_deg",
  "ball_x",
  "ball_y",
  "ball_z",
  "axis_x",
  "axis_y",
  "axis_z",
  "launch_deg",
  "start_deg",
  "spin_axis_deg",
  "ball_speed_mps",
  "spin_rpm",
  "horizontal_face_share",
]);

describe("strikes", () => {
  test.each(rows)("$id $hand: face $face_words, path $path_words, loft $dynamic_loft_deg°", (row) => {
    const face = degreesRight(row.face_words, row.hand);
    const path = degreesRight(row.path_words, row.hand);
    expect([face, path]).toEqual([numberIn(row.face_right_deg), numberIn(row.path_right_deg)]);
    const strike = strikeOf({
      dynamicLoft: numberIn(row.dynamic_loft_deg) * DEGREE,
      faceAngle: face * DEGREE,
      attackAngle: numberIn(row.attack_deg) * DEGREE,
      clubPath: path * DEGREE,
    });
    const launch = launchOf(strike, numberIn(row.club_speed_mps));
    near(strike.normal, [row.normal_x, row.normal_y, row.normal_z]);
    near(strike.club, [row.club_x, row.club_y, row.club_z]);
    near(strike.start, [row.ball_x, row.ball_y, row.ball_z]);
    near(strike.axis, [row.axis_x, row.axis_y, row.axis_z]);
    near(
      [strike.spinLoft, strike.lean, launch.launchAngle, launch.startDirection, launch.spinAxis].map(
        (angle) => angle / DEGREE,
      ),
      [row.spin_loft_deg, row.launch_from_normal_deg, row.launch_deg, row.start_deg, row.spin_axis_deg],
    );
    near([launch.ballSpeed], [row.ball_speed_mps]);
    expectNear(launch.spinRate / RPM, numberIn(row.spin_rpm), { absolute: 1e-5 }, row);
    const share = optionalNumberIn(row.horizontal_face_share);
    if (share !== undefined && Math.abs(face - path) > 0) {
      const measured = (launch.startDirection / DEGREE - path) / (face - path);
      expectNear(measured, share, { absolute: 1e-8 }, row);
    }

    function near(values: readonly number[], cells: readonly string[]) {
      for (const [index, cell] of cells.entries()) {
        // Ten digits are printed.
        const value = numberIn(cell);
        expectNear(values[index], value, { absolute: Math.max(1e-8, 6e-10 * Math.abs(value)) }, row);
      }
    }
  });
});

test("a worked example: the ball starts right and bends left", () => {
  const delivery = degrees({ dynamicLoft: 16, faceAngle: 1.5, attackAngle: -1, clubPath: 3 });
  const strike = strikeOf(delivery);
  const launch = launchOf(strike, 42);
  expect(strike.spinLoft / DEGREE).toBeCloseTo(17.064423963001, 10);
  expect(strike.lean / DEGREE).toBeCloseTo(3.1576137731259, 10);
  expect(launch.launchAngle / DEGREE).toBeCloseTo(12.854787799765, 10);
  expect(launch.startDirection / DEGREE).toBeCloseTo(1.788727330149, 10);
  expect(launch.spinAxis / DEGREE).toBeCloseTo(-5.045132135415, 10);
  expect(launch.ballSpeed).toBeCloseTo(60.064619536996, 10);
  expect(launch.spinRate / RPM).toBeCloseTo(3702.149799142, 6);
  const byShare = startByShare(delivery, 0.75);
  expect(byShare.launchAngle / DEGREE).toBeCloseTo(11.750571860852, 10);
  expect(byShare.startDirection / DEGREE).toBeCloseTo(1.888289043123, 10);
  expect(byShare.spinAxis / DEGREE).toBeCloseTo(-5.023916925419, 10);
});

test("club and face that move and look the same way make no spin", () => {
  const delivery = degrees({ dynamicLoft: 10, faceAngle: 2, attackAngle: 10, clubPath: 2 });
  const { start, normal, surfaceSpeed, spinAxis } = strikeOf(delivery);
  expect({ start, surfaceSpeed, spinAxis }).toEqual({ start: normal, surfaceSpeed: 0, spinAxis: 0 });
});

test("a wet face gives less spin and a start closer to where the face looks", () => {
  const delivery = degrees({ dynamicLoft: 45, faceAngle: 3, attackAngle: -5, clubPath: -2 });
  const [dry, wet] = [strikeOf(delivery), strikeOf(delivery, { ...CONTACT, friction: 0.1 })];
  expect(wet.surfaceSpeed).toBeLessThan(dry.surfaceSpeed / 2);
  expect(wet.startDirection).toBeGreaterThan(dry.startDirection);
  expect(Math.tan(wet.lean)).toBeCloseTo(0.1, 12);
});

test("the face's share of the start is near what was measured, from driver to wedge", () => {
  for (let loft = 8; loft <= 45; loft++) {
    const { startDirection } = strikeOf(
      degrees({ dynamicLoft: loft, faceAngle: 1, attackAngle: 0, clubPath: -1 }),
    );
    const share = (startDirection / DEGREE + 1) / 2;
    expect(share).toBeGreaterThan(FACE_SHARE.least - 0.03);
    expect(share).toBeLessThan(FACE_SHARE.most + 0.03);
  }
});

describe("every strike", () => {
  const angle = (least: number, most: number) =>
    fc.double({ min: least, max: most, noNaN: true }).map((value) => value * DEGREE);
  const deliveries = fc.record({
    dynamicLoft: angle(1, 70),
    faceAngle: angle(-15, 15),
    attackAngle: angle(-15, 10),
    clubPath: angle(-15, 15),
  });

  test("mirrored is the strike of the other hand", () => {
    fc.assert(
      fc.property(deliveries, (delivery) => {
        const { faceAngle, clubPath } = delivery;
        const one = strikeOf(delivery);
        const other = strikeOf({ ...delivery, faceAngle: 0 - faceAngle, clubPath: 0 - clubPath });
        expect(other.startDirection).toBe(0 - one.startDirection);
        // Half a turn to either side is the same.
        const isTopspin = Math.abs(one.spinAxis) === Math.PI;
        expect(isTopspin ? Math.abs(other.spinAxis) : other.spinAxis).toBe(
          isTopspin ? Math.PI : 0 - one.spinAxis,
        );
        // A mirrored axis keeps its part along the mirror's normal.
        expect(other.axis.map((part) => part + 0)).toEqual([0 - one.axis[0], 0 - one.axis[1], one.axis[2]]);
        const same = ({ launchAngle, spinLoft, lean, ballSpeed, surfaceSpeed }: typeof one) =>
          [launchAngle, spinLoft, lean, ballSpeed, surfaceSpeed] as const;
        expect(same(other)).toEqual(same(one));
      }),
    );
  });

  test("starts across the axis of its spin, and tilts it as face and path ask", () => {
    fc.assert(
      fc.property(deliveries, (delivery) => {
        const { dynamicLoft, faceAngle, attackAngle, clubPath } = delivery;
        const { start, axis, spinAxis, spinLoft, launchAngle } = strikeOf(delivery);
        expect(dot(start, axis)).toBeCloseTo(0, 9);
        const tilt = Math.sin(spinAxis) * Math.sin(spinLoft) * Math.cos(launchAngle);
        const asked = Math.cos(attackAngle) * Math.cos(dynamicLoft) * Math.sin(faceAngle - clubPath);
        expect(tilt).toBeCloseTo(asked, 9);
      }),
    );
  });

  test("has a spin loft that does not tell face from club, and is at least loft less attack", () => {
    fc.assert(
      fc.property(deliveries, (delivery) => {
        const { dynamicLoft, faceAngle, attackAngle, clubPath } = delivery;
        const { spinLoft } = strikeOf(delivery);
        const swapped = strikeOf({
          dynamicLoft: attackAngle,
          faceAngle: clubPath,
          attackAngle: dynamicLoft,
          clubPath: faceAngle,
        });
        expect(swapped.spinLoft).toBeCloseTo(spinLoft, 10);
        expect(spinLoft).toBeGreaterThanOrEqual(Math.abs(dynamicLoft - attackAngle) - 1e-12);
        const square = strikeOf({ ...delivery, faceAngle: clubPath });
        expect(square.spinLoft).toBeCloseTo(Math.abs(dynamicLoft - attackAngle), 10);
      }),
    );
  });

  test("loses ball speed with spin loft", () => {
    fc.assert(
      fc.property(deliveries, angle(1, 10), (delivery, more) => {
        const lower = strikeOf(delivery);
        const higher = strikeOf({ ...delivery, dynamicLoft: delivery.dynamicLoft + more });
        // Past a right angle the face looks away from where the club goes.
        fc.pre(higher.spinLoft > lower.spinLoft + 1e-6 && higher.spinLoft < Math.PI / 2);
        expect(higher.ballSpeed).toBeLessThan(lower.ballSpeed);
      }),
    );
  });
});

function degrees(delivery: ClubDelivery): ClubDelivery {
  const { dynamicLoft, faceAngle, attackAngle, clubPath } = delivery;
  return {
    dynamicLoft: dynamicLoft * DEGREE,
    faceAngle: faceAngle * DEGREE,
    attackAngle: attackAngle * DEGREE,
    clubPath: clubPath * DEGREE,
  };
}
