/** Usual numbers that are taken from shots fit together, rounded as they may be; one that is far off does not. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { check } from "../checks/checked-files.ts";
import { expectCases } from "./plans.ts";
import { randomNumbers } from "./shots.ts";

const CODE = "usual-numbers-should-fit-together";

expectCases({
  "a face, a path and what lies between them": {
    wrong: `player "P-07" {
  right-handed
  usual face-angle 2° open
  usual club-path 3° out-to-in
  «usual face-to-path 1° closed»
}`,
    code: CODE,
    says: ["(line 3)", "(line 4)", "face-to-path 5° open", "face-angle − club-path"],
    right: `player "P-07" {
  right-handed
  usual face-angle 2° open
  usual club-path 3° out-to-in
  usual face-to-path 5° open
}`,
  },
  "the same of a left-hander, in words that everybody sees alike": {
    wrong: `player "P-12" {
  left-handed
  usual face-angle 2° left
  usual club-path 3° right
  «usual face-to-path 5° closed»
}`,
    code: CODE,
    says: ["face-to-path 5° open"],
    right: `player "P-12" {
  left-handed
  usual face-angle 2° left
  usual club-path 3° right
  usual face-to-path 5° open
}`,
  },
  "speeds that leave no such smash factor": {
    wrong: `player "P-07" {
  right-handed
  usual club-speed 90 mph with driver
  usual ball-speed 130 mph with driver
  «usual smash-factor 1.3 with driver»
}`,
    code: CODE,
    says: ["smash-factor 1.444", "ball-speed / club-speed"],
    right: `player "P-07" {
  right-handed
  usual club-speed 90 mph with driver
  usual ball-speed 130 mph with driver
  usual smash-factor 1.3 with 7-iron
}`,
  },
  "a ball faster than any strike makes it": {
    wrong: `player "P-07" {
  right-handed
  usual club-speed 80 mph with 5-iron
  «usual ball-speed 140 mph with 5-iron»
}`,
    code: CODE,
    says: ["ball-speed at most 128 mph", "a plausible smash-factor is at most 1.6"],
    right: `player "P-07" {
  right-handed
  usual club-speed 80 km/h with 5-iron
  usual ball-speed 75 mph with 5-iron
}`,
  },
  "an average of few shots, which says little": {
    wrong: `player "P-07" {
  right-handed
  usual face-angle 2° open spread 2° over 400 shots
  usual club-path 0° over 400 shots
  «usual face-to-path 4° open over 400 shots»
}`,
    code: CODE,
    says: ["face-to-path 2° open"],
    right: `player "P-07" {
  right-handed
  usual face-angle 2° open spread 2° over 10 shots
  usual club-path 0°
  usual face-to-path 4° open
}`,
  },
});

describe("averages of shots", () => {
  const side = (value: number, right: string, left: string) =>
    `${Math.abs(value).toFixed(1)}° ${value < 0 ? left : right}`;

  /** Of shots that vary as those of beginners do. */
  const averages = (seed: number) => {
    const random = randomNumbers(seed);
    const around = (middle: number, by: number) => middle + by * (random() + random() + random() - 1.5) * 2;
    const middles = [around(0, 3), around(0, 3), around(85, 20), around(1.3, 0.05), around(150, 30)];
    const sums = { face: 0, path: 0, club: 0, ball: 0, smash: 0, carry: 0, total: 0, roll: 0 };
    const shots = 5 + Math.floor(random() * 60);
    for (let shot = 0; shot < shots; shot++) {
      const [face, path, club, smash, carry] = middles.map((middle, place) =>
        around(middle, [3, 3, middle / 20, middle / 20, 12][place] ?? 0),
      ) as [number, number, number, number, number];
      const roll = 2 + 10 * random();
      const readings = { face, path, club, ball: club * smash, smash, carry, total: carry + roll, roll };
      for (const name of Object.keys(sums) as (keyof typeof sums)[]) sums[name] += readings[name] / shots;
    }
    return sums;
  };

  test("are never told to be at odds", async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer(), fc.integer({ min: 0, max: 2 }), async (seed, decimals) => {
        const { face, path, club, ball, smash, carry, total, roll } = averages(seed);
        const text = `player "P-07" {
  right-handed
  usual face-angle ${side(face, "open", "closed")}
  usual club-path ${side(path, "in-to-out", "out-to-in")}
  usual face-to-path ${side(face - path, "open", "closed")}
  usual club-speed ${club.toFixed(decimals)} mph
  usual ball-speed ${ball.toFixed(decimals)} mph
  usual smash-factor ${smash.toFixed(2)}
  usual carry ${carry.toFixed(decimals)} yd
  usual total ${total.toFixed(decimals)} yd
  usual roll ${roll.toFixed(decimals)} yd
}
`;
        expect((await check(text)).map(({ message }) => message)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test("are told to be at odds where one is 3° or a tenth off", async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer(), async (seed) => {
        const { face, path, club, ball, smash } = averages(seed);
        const text = `player "P-07" {
  right-handed
  usual face-angle ${side(face, "open", "closed")}
  usual club-path ${side(path, "in-to-out", "out-to-in")}
  usual face-to-path ${side(face - path + 3, "open", "closed")}
  usual club-speed ${club.toFixed(1)} mph
  usual ball-speed ${ball.toFixed(1)} mph
  usual smash-factor ${(smash * 0.9).toFixed(2)}
}
`;
        expect((await check(text)).map(({ code }) => code)).toEqual([CODE, CODE]);
      }),
      { numRuns: 50 },
    );
  });
});
