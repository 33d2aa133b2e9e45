/** Where the ball started, bent and landed, block beside block: what became of the shots? */
import type { Metric } from "../../shared/plan-model.ts";
import type { Shot } from "../../shared/session-data.ts";
import { type PicturedBlock, pointsOf, shownAs } from "./goal-picture.ts";
import type { Markup } from "./html/markup.ts";
import { cloudPicture } from "./pictures/cloud.ts";

const LANDING_SHARE = 0.8;

/** What tells how a ball bends, the best first. */
const CURVES = ["curve", "spin-axis", "face-to-path"] as const;

/** Start line against curve, and landing pattern, for these blocks; none of what was not measured. */
export function flightPictures(blocks: readonly string[], around: Omit<PicturedBlock, "name">): Markup[] {
  const curve = CURVES.find((name) =>
    shotsOf(blocks, around).some(({ values }) => values[name] !== undefined),
  );
  return [
    ...(curve === undefined ? [] : beside("start-direction", curve, null, blocks, around)),
    ...beside("offline", "carry", LANDING_SHARE, blocks, around),
  ];
}

/** One picture a block, all with the same axes. */
function beside(
  one: string,
  other: string,
  share: number | null,
  blocks: readonly string[],
  around: Omit<PicturedBlock, "name">,
): Markup[] {
  const every = pointsOf(shotsOf(blocks, around), one, other);
  return blocks.flatMap((name) => {
    const block = { ...around, name };
    const [x, y] = [shownAs(one, block), shownAs(other, block)];
    const points = pointsOf(around.counted.get(name) ?? [], one, other);
    if (x === null || y === null) return [];
    const what = `${words(x.metric)} and ${words(y.metric)}`;
    const ellipse = share === null ? "" : ` with the ellipse that would hold ${100 * share} % of such shots`;
    const picture = cloudPicture({
      title: name,
      points,
      x,
      y,
      share,
      with: every,
      alternative: `${name}: ${points.length} shots over ${what}${ellipse}.`,
    });
    return picture === null ? [] : [picture];
  });
}

function shotsOf(blocks: readonly string[], { counted }: Omit<PicturedBlock, "name">): Shot[] {
  return blocks.flatMap((name) => counted.get(name) ?? []);
}

function words({ name }: Metric): string {
  return name.replaceAll("-", " ");
}
