/** What holds of every shot by geometry alone, and apart from that, what holds of centred strikes. */
import type { Expression } from "../../../shared/plan-model.ts";
import type { Interval } from "../../../shared/statistics/interval.ts";

export interface Fact {
  readonly expression: Expression;
  readonly range: Interval;
  readonly says: string;
  /** How far it may be off in readings that are shown in these steps (SI), in the order of the expression. */
  readonly slackOf: (steps: readonly number[]) => number;
}

const UP_TO_ZERO: Interval = { low: Number.NEGATIVE_INFINITY, high: 0 };
const FROM_ZERO: Interval = { low: 0, high: Number.POSITIVE_INFINITY };

const carry = metric("carry");
const offline = metric("offline");
const curve = metric("curve");
const start = metric("start-direction");
const lowPoint = metric("low-point");
const attack = metric("attack-angle");
const dynamicLoft = metric("dynamic-loft");
const spinLoft = metric("spin-loft");

/**
 * How much of the way that the start line has gone off the target line counts at the landing point: cos(θ − s/2)·sin(s/2)·2/s
 * for a ball that starts at s and lands at θ. No metric has a name with spaces.
 */
const counted = "share of the start line";

/** Numbers that are in no reading, and where they lie: below 0.3 only beyond 70° from where the ball started. */
export const UNREAD: ReadonlyMap<string, Interval> = new Map([[counted, { low: 0.3, high: 1 }]]);

const NO_FARTHER_OFF = "no ball lands farther off a line than it carried";

/** No reading of these has a larger amount: metres, radians. */
const LARGEST_LOW_POINT = 0.5;
const LARGEST_ATTACK = 0.35;

/** Only what is exact has a place here. */
export const GEOMETRY: readonly Fact[] = [
  // The landing point is `carry` away from the ball, and so no farther from any line through the ball.
  { expression: minus(offline, carry), range: UP_TO_ZERO, says: NO_FARTHER_OFF, slackOf: largest },
  { expression: plus(offline, carry), range: FROM_ZERO, says: NO_FARTHER_OFF, slackOf: largest },
  { expression: minus(curve, carry), range: UP_TO_ZERO, says: NO_FARTHER_OFF, slackOf: largest },
  { expression: plus(curve, carry), range: FROM_ZERO, says: NO_FARTHER_OFF, slackOf: largest },
  {
    // Landing at the angle θ it is carry·sin θ off the target line, and carry·sin(θ − s) off the line it started on.
    expression: minus(minus(offline, curve), times(carry, times(start, metric(counted)))),
    range: { low: 0, high: 0 },
    says: "a ball lands where its start line leads, and its curve beside that",
    slackOf: largest,
  },
  {
    // Positive is ahead of the ball, and up.
    expression: times(lowPoint, attack),
    range: UP_TO_ZERO,
    says: "the club moves down before its low point and up after it",
    slackOf: ([low = 0, angle = 0]) => Math.max((low / 2) * LARGEST_ATTACK, (angle / 2) * LARGEST_LOW_POINT),
  },
  {
    // The angle in space between two directions is at least the difference of their heights.
    expression: plus(minus(spinLoft, dynamicLoft), attack),
    range: FROM_ZERO,
    says: "spin-loft is at least dynamic-loft − attack-angle",
    slackOf: largest,
  },
];

const BETWEEN = "struck in the middle of the face a ball starts between face and path";
const BENDS =
  "struck in the middle of the face a ball bends to the side that the face looks to from the path";
const TILTS = "in still air a ball bends to the side that its spin axis tilts to";

/** What holds besides of strikes in the middle of the face and of balls in still air, by the model of a rigid ball. */
export const CENTRED: readonly Fact[] = [
  { expression: times(metric("face-to-path"), curve), range: FROM_ZERO, says: BENDS, slackOf: none },
  { expression: times(metric("spin-axis"), curve), range: FROM_ZERO, says: TILTS, slackOf: none },
  {
    expression: times(minus(start, metric("face-angle")), minus(start, metric("club-path"))),
    range: UP_TO_ZERO,
    says: BETWEEN,
    slackOf: none,
  },
];

/** Only sides are compared. */
function none(): number {
  return 0;
}

function largest(steps: readonly number[]): number {
  return Math.max(...steps);
}

function metric(name: string): Expression {
  return { kind: "metric", name };
}

function plus(left: Expression, right: Expression): Expression {
  return { kind: "operation", operator: "+", left, right };
}

function minus(left: Expression, right: Expression): Expression {
  return { kind: "operation", operator: "-", left, right };
}

function times(left: Expression, right: Expression): Expression {
  return { kind: "operation", operator: "*", left, right };
}
