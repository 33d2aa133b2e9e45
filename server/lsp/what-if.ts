/** What a degree is worth at the launch of the shots that were hit: a sentence for hovers over targets and goals. */
import { CAUTION } from "../../shared/care.ts";
import type { ScoringInput } from "../../shared/plan-model.ts";
import { plural } from "../../shared/plural.ts";
import { formatAmount, formatReading } from "../../shared/quantity.ts";
import type { SessionData, Shot } from "../../shared/session-data.ts";
import { DEGREE, RPM } from "../flight/constants.ts";
import { deliveryFrom } from "../flight/derived-metrics.ts";
import { type ClubDelivery, FACE_SHARE } from "../flight/impact.ts";
import type { Launch } from "../flight/launch.ts";
import { LABEL } from "../flight/limits.ts";
import { launchFrom, measured } from "../flight/measured-launch.ts";
import { type Effect, whatIfClub, whatIfLaunch } from "../flight/what-if.ts";

/** By a block and the metrics that a line of it speaks of; undefined where nothing can be said. */
export type WhatIf = (block: string, metrics: readonly string[]) => string | undefined;

const CLUB = ["face-angle", "club-path", "attack-angle"] as const;
const BALL = ["launch-angle", "start-direction", "spin-axis", "spin-rate"] as const;

/** One step more of each, SI. */
const STEPS: Readonly<Record<string, number>> = { "spin-rate": 500 * RPM };

export function whatIfOf({ metrics, player }: ScoringInput, { shots }: SessionData): WhatIf {
  const hand = player.hand ?? "right";
  return (block, asked) => {
    const average = averageOf(shots.filter((shot) => shot.block === block && shot.excluded === null));
    if (average === undefined) return undefined;
    const lines = asked.flatMap((name) => {
      const metric = metrics.get(name);
      const effect = metric && effectOf(name, average);
      if (metric === undefined || effect === undefined) return [];
      const step = formatReading(STEPS[name] ?? DEGREE, metric, hand);
      const parts = (["carry", "offline", "curve"] as const).flatMap((part) => {
        const moved = metrics.get(part);
        const estimate = effect[part];
        if (moved === undefined || estimate.status === "not-measured") return [];
        if (part !== "carry") return [`${formatReading(estimate.value, moved, hand)} of ${part}`];
        const more = estimate.value < 0 ? "less" : "more";
        return [`${formatAmount(Math.abs(estimate.value), moved)} ${more} carry`];
      });
      return parts.length === 0 ? [] : [`${step} more ${name} is about ${parts.join(", ")}`];
    });
    if (lines.length === 0) return undefined;
    const worth = `At the average launch of ${plural(average.count, "shot")} in reference air, everything else the same: ${lines.join("; ")}.`;
    return `${worth} ${LABEL} ${CAUTION}`;
  };
}

interface Average {
  readonly count: number;
  readonly launch: Launch;
  readonly delivery: ClubDelivery | undefined;
}

/** The average over the shots whose launch was measured. */
function averageOf(shots: readonly Shot[]): Average | undefined {
  const known = shots.filter(
    (shot) => typeof measured(shot, ["ball-speed", "launch-angle", "spin-rate", "spin-axis"]) !== "string",
  );
  if (known.length === 0) return undefined;
  const values: Record<string, number> = {};
  for (const name of Object.keys(known[0]?.values ?? {})) {
    const column = known.map((shot) => shot.values[name]).filter((value) => value !== undefined);
    if (column.length === known.length) {
      values[name] = column.reduce((sum, value) => sum + value, 0) / column.length;
    }
  }
  const launch = launchFrom(values as Parameters<typeof launchFrom>[0]);
  return { count: known.length, launch, delivery: deliveryFrom(withLoft(values)) };
}

/** Tables seldom tell the loft at impact: it follows from the launch, which lies between it and the attack angle. */
function withLoft(values: Readonly<Record<string, number>>): Readonly<Record<string, number>> {
  const { "launch-angle": launch, "attack-angle": attack } = values;
  if (Object.hasOwn(values, "dynamic-loft") || launch === undefined || attack === undefined) return values;
  const share = (FACE_SHARE.least + FACE_SHARE.most) / 2;
  return { ...values, "dynamic-loft": (launch - (1 - share) * attack) / share };
}

function effectOf(name: string, { launch, delivery }: Average): Effect | undefined {
  const by = STEPS[name] ?? DEGREE;
  const club = CLUB.find((metric) => metric === name);
  if (club !== undefined) return delivery && whatIfClub(launch, delivery, { metric: club, by });
  const ball = BALL.find((metric) => metric === name);
  return ball && whatIfLaunch(launch, { metric: ball, by });
}
