/** Shots that hang together as real ones do, made from a seed: SI units, target frame. */

/** A small generator with a known sequence (mulberry32). */
export function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export interface GeneratedShot {
  readonly club: string;
  readonly block: string;
  /** Seconds after midnight. */
  readonly time: number;
  readonly values: Readonly<Record<string, number>>;
  readonly shape: string;
}

const DEGREE = Math.PI / 180;
const CLUBS = [
  { club: "7-iron", speed: 36, smash: 1.33, launch: 18, spin: 6800, loft: 26, attack: -3.5 },
  { club: "driver", speed: 46, smash: 1.46, launch: 13, spin: 2700, loft: 15, attack: 1.5 },
  { club: "gap-wedge", speed: 31, smash: 1.16, launch: 28, spin: 9200, loft: 41, attack: -5 },
];

/** So many shots by a player whose path and face wander about these means, in degrees to the right. */
export function generatedShots(count: number, seed: number, means = { path: 1, face: 0.5 }): GeneratedShot[] {
  const next = random(seed);
  const normal = () => next() + next() + next() + next() - 2; // near enough: spread 0.58
  return Array.from({ length: count }, (_, place) => {
    const kind = CLUBS[Math.min(CLUBS.length - 1, Math.floor((3 * place) / count))] ?? CLUBS[0];
    if (kind === undefined) throw new Error("There is no club.");
    const path = means.path + 5 * normal();
    const face = means.face + 5 * normal();
    const attack = kind.attack + 2 * normal();
    const loft = kind.loft + 2 * normal();
    const clubSpeed = kind.speed + 1.5 * normal();
    const smash = kind.smash + 0.03 * normal();
    const ballSpeed = clubSpeed * smash;
    const start = 0.8 * face + 0.2 * path;
    const axis = 2.2 * (face - path);
    const carry = ballSpeed * 2.6 * (kind.club === "driver" ? 1.25 : 1.1) + 4 * normal();
    const curve = carry * 0.006 * axis;
    const roll = 3 + 6 * next();
    const values = {
      "club-speed": clubSpeed,
      "ball-speed": ballSpeed,
      "smash-factor": smash,
      "attack-angle": attack * DEGREE,
      "club-path": path * DEGREE,
      "face-angle": face * DEGREE,
      "face-to-path": (face - path) * DEGREE,
      "dynamic-loft": loft * DEGREE,
      "spin-loft": Math.sqrt((loft - attack) ** 2 + (0.6 * (face - path)) ** 2) * DEGREE,
      "swing-direction": (path + 2 * normal()) * DEGREE,
      "swing-plane": (60 + 2 * normal()) * DEGREE,
      "low-point": 0.05 + 0.03 * normal(),
      "strike-side": 0.012 * normal(),
      "strike-height": 0.008 * normal(),
      tempo: 3 + 0.2 * normal(),
      effort: 0.6 + 0.4 * next(),
      "launch-angle": (kind.launch + 2 * normal()) * DEGREE,
      "start-direction": start * DEGREE,
      "spin-rate": ((kind.spin + 500 * normal()) * Math.PI) / 30,
      "spin-axis": axis * DEGREE,
      carry,
      total: carry + roll,
      roll,
      apex: 22 + 4 * normal(),
      "descent-angle": (45 + 4 * normal()) * DEGREE,
      "flight-time": 5.5 + 0.5 * normal(),
      offline: carry * Math.sin(start * DEGREE) + curve,
      curve,
    };
    const shape = curve > 3 ? "fade" : curve < -3 ? "draw" : "straight";
    return {
      club: kind.club,
      block: place < count / 2 ? "Gate" : "Test",
      time: 36000 + 37 * place,
      values,
      shape,
    };
  });
}
