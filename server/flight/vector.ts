/** Vectors in space: x towards the target, y up, z to the right. */
export type Vector = readonly [x: number, y: number, z: number];

export function dot([ax, ay, az]: Vector, [bx, by, bz]: Vector): number {
  return ax * bx + ay * by + az * bz;
}

/** By the right-hand rule. */
export function cross([ax, ay, az]: Vector, [bx, by, bz]: Vector): Vector {
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
}

export function length(a: Vector): number {
  return Math.sqrt(dot(a, a));
}

/** p a + q b. */
export function combine(p: number, [ax, ay, az]: Vector, q: number, [bx, by, bz]: Vector): Vector {
  return [p * ax + q * bx, p * ay + q * by, p * az + q * bz];
}

export function scale(p: number, [x, y, z]: Vector): Vector {
  return [p * x, p * y, p * z];
}
