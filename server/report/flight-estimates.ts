/** What `drillwright flight --format json` prints: what the flight model says of launches. SI, target frame, radians. */
import * as z from "zod/mini";
import { Conditions, Hand } from "../../shared/plan-model.ts";

/** A number of the model, rounded, or a sentence that says why there is none. */
export const Estimate = z.union([
  z.object({
    status: z.enum(["supported", "extrapolated"]),
    value: z.number(),
    /** Not negative: see `uncertainty` of the whole. */
    uncertainty: z.number(),
    /** Why it is extrapolated; null where it is supported. */
    warning: z.nullable(z.string()),
    /** What was not stated and taken for granted. */
    assumptions: z.array(z.string()),
  }),
  z.object({ status: z.literal("not-measured"), reason: z.string() }),
]);

/** m, m/s, s, rad, rad/s; the descent below the horizontal. */
export const FlightOfLaunch = z.object({
  carry: Estimate,
  offline: Estimate,
  curve: Estimate,
  apex: Estimate,
  "descent-angle": Estimate,
  "flight-time": Estimate,
  "landing-speed": Estimate,
  "landing-spin": Estimate,
});

/** A reading outside what the others of its shot allow. */
export const Disagreement = z.object({
  metric: z.string(),
  measured: z.number(),
  low: z.number(),
  high: z.number(),
  /** The metrics that `low` and `high` come from. */
  from: z.array(z.string()),
  /** `model`: the limits are estimates of the flight model. */
  by: z.enum(["geometry", "model"]),
  reason: z.string(),
});

export const Launch = z.object({
  ballSpeed: z.number(),
  launchAngle: z.number(),
  startDirection: z.number(),
  spinRate: z.number(),
  spinAxis: z.number(),
});

export const EstimatedLaunch = z.object({
  /** Of the table, from 1; null where options stated the launch. */
  line: z.nullable(z.number()),
  /** The readings, by metric. */
  launch: z.record(z.string(), z.number()),
  /** What of it could not be read. */
  problems: z.array(z.string()),
  /** In the air that was stated, and in reference air. */
  flight: FlightOfLaunch,
  reference: FlightOfLaunch,
  /** Null where no carry, and where no attack angle, was stated. */
  standardCarry: z.nullable(Estimate),
  launchEfficiency: z.nullable(Estimate),
  /** The launch within reach of the attack angle that carries farthest in reference air. */
  best: z.nullable(z.object({ launchAngle: z.number(), spinRate: z.number(), carry: z.number() })),
  /** What a strike of these club angles would do, as far as it was not stated. */
  strike: z.array(z.object({ metric: z.string(), value: z.number(), by: z.enum(["geometry", "strike"]) })),
  disagreements: z.array(Disagreement),
});

/** What one change is worth: how much more carry, offline and curve. */
export const Worth = z.object({
  change: z.object({ metric: z.string(), by: z.number() }),
  effect: z.object({ carry: Estimate, offline: Estimate, curve: Estimate }),
});

export const FlightEstimates = z.object({
  format: z.literal("drillwright/flight-estimates"),
  version: z.literal(1),
  /** The version of this tool. */
  tool: z.string(),
  /** What the numbers are, what `uncertainty` is, and when not to trust them. */
  label: z.string(),
  uncertainty: z.string(),
  limits: z.array(z.string()),
  /** Words of care for whoever swings because of a number. */
  caution: z.string(),
  units: z.string(),
  /** Of the wind, which grows with this power of the height. */
  conditions: z.extend(Conditions, { windExponent: z.number() }),
  hand: Hand,
  flights: z.array(EstimatedLaunch),
  /** For one launch: what its ball speed could do, and what changes are worth. */
  bounds: z.nullable(
    z.object({
      /** The launches within reach of the attack angle that carry 99 % of the farthest; null without an attack angle. */
      window: z.nullable(z.object({ low: Launch, high: Launch })),
      /** The farthest of all, launch angle and spin both free. */
      free: z.object({ launch: Launch, spinLoft: z.nullable(z.number()), carry: z.number() }),
    }),
  ),
  worth: z.array(Worth),
});
export type FlightEstimates = Shown<z.infer<typeof FlightEstimates>>;

/** As it is handed on: nobody changes it. */
type Shown<T> = T extends object ? { readonly [Name in keyof T]: Shown<T[Name]> } : T;
