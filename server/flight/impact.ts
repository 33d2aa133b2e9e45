/**
 * What the club does to the ball: geometry of a strike through the middle of the face, and the contact of a rigid ball.
 *
 * The force of the contact lies in the plane of the face normal and the club's motion, since there is no other direction in the
 * problem. From that follow the axis of the spin and the plane of the start, for any friction. How far the start leans from
 * the normal needs a model of the contact: a rigid ball that ends in rolling on a face of finite mass.
 *
 * Strikes off the middle of the face turn the club and gear the ball; none of this holds for them.
 */
import { BALL_MASS, BALL_RADIUS } from "./constants.ts";
import { frameOf } from "./launch.ts";
import { combine, cross, dot, length, scale, type Vector } from "./vector.ts";

/** The club at contact. Radians, in the target frame of every player: right and up are positive. */
export interface ClubDelivery {
  readonly dynamicLoft: number;
  readonly faceAngle: number;
  readonly attackAngle: number;
  readonly clubPath: number;
}

/** The contact. */
export interface Contact {
  /** kg. */
  readonly headMass: number;
  /** Coefficient of restitution. */
  readonly restitution: number;
  /** The friction between face and ball; null where it is enough for rolling, as on a dry face. */
  readonly friction: number | null;
}

/** A driver's head; from Proceedings 2020, 49(1), 47. */
export const CONTACT: Contact = { headMass: 0.204, restitution: 0.83, friction: null };

export interface Strike {
  /** Unit vectors: where the face looks, and where the club moves. */
  readonly normal: Vector;
  readonly club: Vector;
  /** The angle between the two. */
  readonly spinLoft: number;
  /** The angle between the normal and the start, towards the club's motion. */
  readonly lean: number;
  /** Unit vectors: where the ball starts, and what it spins about. */
  readonly start: Vector;
  readonly axis: Vector;
  readonly launchAngle: number;
  readonly startDirection: number;
  /** Tilt of the axis, to the right positive. */
  readonly spinAxis: number;
  /** Speed of the ball and of its surface, for each unit of club speed. */
  readonly ballSpeed: number;
  readonly surfaceSpeed: number;
}

/** The strike by a contact. A spin rate is `surfaceSpeed` times the club speed, over the ball's radius. */
export function strikeOf(delivery: ClubDelivery, contact: Contact = CONTACT): Strike {
  const geometry = geometryOf(delivery);
  const { spinLoft } = geometry;
  const ratio = BALL_MASS / contact.headMass;
  const normalSpeed = ((1 + contact.restitution) / (1 + ratio)) * Math.cos(spinLoft);
  const rolling = Math.sin(spinLoft) / (3.5 + ratio);
  const alongFace = contact.friction === null ? rolling : Math.min(rolling, contact.friction * normalSpeed);
  return {
    ...geometry,
    ...startAt(geometry, Math.atan2(alongFace, normalSpeed)),
    ballSpeed: Math.sqrt(normalSpeed * normalSpeed + alongFace * alongFace),
    surfaceSpeed: 2.5 * alongFace,
  };
}

/**
 * The start where the face has a share of it, from 0 (along the club's motion) to 1 (along the normal). P. Wood, E. Henrikson and
 * C. Broadie 2018 (Proceedings 2(6), 249) measured 0.61 to 0.83.
 */
export function startByShare(delivery: ClubDelivery, faceShare: number) {
  const geometry = geometryOf(delivery);
  return startAt(geometry, (1 - faceShare) * geometry.spinLoft);
}

/** The share of the face in the start that was measured, over players and clubs. */
export const FACE_SHARE = { least: 0.61, most: 0.83 } as const;

interface Geometry {
  readonly normal: Vector;
  readonly club: Vector;
  readonly spinLoft: number;
  readonly axis: Vector;
}

function geometryOf({ dynamicLoft, faceAngle, attackAngle, clubPath }: ClubDelivery): Geometry {
  const normal = frameOf(dynamicLoft, faceAngle).along;
  const club = frameOf(attackAngle, clubPath).along;
  const across = cross(club, normal);
  const sine = length(across);
  const axis = sine > 0 ? scale(1 / sine, across) : frameOf(dynamicLoft, faceAngle).right;
  return { normal, club, spinLoft: Math.atan2(sine, dot(club, normal)), axis };
}

function startAt({ normal, club, spinLoft, axis }: Geometry, lean: number) {
  const sine = Math.sin(spinLoft);
  const start =
    sine > 0 ? combine(Math.sin(spinLoft - lean) / sine, normal, Math.sin(lean) / sine, club) : normal;
  const launchAngle = Math.atan2(start[1], Math.sqrt(start[0] * start[0] + start[2] * start[2]));
  const startDirection = Math.atan2(start[2], start[0]);
  const { right, up } = frameOf(launchAngle, startDirection);
  return {
    lean,
    start,
    launchAngle,
    startDirection,
    spinAxis: Math.atan2(0 - dot(axis, up), dot(axis, right)),
  };
}

/** A strike's launch at a club speed (m/s). */
export function launchOf(strike: Strike, clubSpeed: number) {
  const { launchAngle, startDirection, spinAxis, ballSpeed, surfaceSpeed } = strike;
  return {
    ballSpeed: ballSpeed * clubSpeed,
    launchAngle,
    startDirection,
    spinRate: (surfaceSpeed * clubSpeed) / BALL_RADIUS,
    spinAxis,
  };
}
