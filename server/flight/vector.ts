/** Vectors in space: x towards the target, y up, z to the right. */
export type Vector = readonly [x: number, y: number, z: number];

// By index: taking vectors apart costs more than all sums in code that runs for the first time.

export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** By the right-hand rule. */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function length(a: Vector): number {
  return Math.sqrt(dot(a, a));
}

/** p a + q b. */
export function combine(p: number, a: Vector, q: number, b: Vector): Vector {
  return [p * a[0] + q * b[0], p * a[1] + q * b[1], p * a[2] + q * b[2]];
}

export function scale(p: number, a: Vector): Vector {
  return [p * a[0], p * a[1], p * a[2]];
}
