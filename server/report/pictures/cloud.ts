/** Shots as points over two metrics, with their ellipse: where do they go, and how far do they scatter? */
import { cloudOf, ellipseOf, factorForShots } from "../../../shared/statistics/ellipse.ts";
import { html, type Markup } from "../html/markup.ts";
import { axisBelow, axisBeside, axisName, type Shown } from "./axis.ts";
import { figure } from "./figure.ts";
import { shotMark } from "./marks.ts";
import { type Scale, scaleOf, tenth } from "./scale.ts";

export interface CloudDrawing {
  readonly title: string;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly x: Shown;
  readonly y: Shown;
  /** Share of the shots that the ellipse would hold if they scattered as these did; null for none. */
  readonly share: number | null;
  readonly alternative: string;
  /** Of the picture; as high as wide otherwise. */
  readonly height?: number;
  /** Numbers the axes must hold besides the points, so that pictures beside each other have the same. */
  readonly with: readonly { readonly x: number; readonly y: number }[];
}

const SIZE = 200;
const [LEFT, RIGHT, TOP] = [34, SIZE - 8, 20];
const MOST_MARKS = 500;

/** The picture; null below two shots. */
export function cloudPicture(drawing: CloudDrawing): Markup | null {
  const { title, points, x, y, share, alternative, height = SIZE } = drawing;
  const bottom = height - 20;
  const cloud = cloudOf(
    points.map((point) => point.x),
    points.map((point) => point.y),
  );
  if (cloud === undefined) return null;
  const factor = share === null ? 0 : factorForShots(share);
  const ellipse = share === null ? null : ellipseOf(cloud, factor);
  const reach = { x: Math.sqrt(factor * cloud.varianceX), y: Math.sqrt(factor * cloud.varianceY) };
  const all = [
    ...points,
    ...drawing.with,
    { x: cloud.meanX - reach.x, y: cloud.meanY - reach.y },
    { x: cloud.meanX + reach.x, y: cloud.meanY + reach.y },
  ];
  const xs = scaleOf([0, ...all.map((point) => point.x)], {
    from: LEFT,
    to: RIGHT,
    unit: x.metric.unit.factor,
    ticks: 4,
  });
  const ys = scaleOf(
    all.map((point) => point.y),
    { from: bottom, to: TOP, unit: y.metric.unit.factor, ticks: 4 },
  );
  return figure({
    width: SIZE,
    height: height + 8,
    alternative,
    caption: `Upwards: ${axisName(y, ["↓", "↑"])}.${share === null ? "" : ` The shots' own ${Math.round(100 * share)} % ellipse: of few shots it is small, and the next one falls outside more often.`}`,
    body: [
      html`<text class="title" x="${LEFT}" y="11">${title}</text>`,
      ...axisBeside(ys, y, LEFT, RIGHT),
      ...axisBelow(xs, x, TOP, bottom),
      ...points.slice(0, MOST_MARKS).map((point) => shotMark("shot", xs.at(point.x), ys.at(point.y))),
      ellipse === null || ellipse.long === 0
        ? html``
        : html`<path class="ellipse" d="${outline(cloud.meanX, cloud.meanY, ellipse, xs, ys)}"/>`,
      html`<path class="centre" d="M${tenth(xs.at(cloud.meanX) - 4)} ${ys.at(cloud.meanY)}h8M${xs.at(cloud.meanX)} ${tenth(ys.at(cloud.meanY) - 4)}v8"/>`,
    ],
  });
}

const POINTS = 48;

/** The ellipse as a path: the two axes of a picture need not have the same scale. */
function outline(
  meanX: number,
  meanY: number,
  { long, short, angle }: { readonly long: number; readonly short: number; readonly angle: number },
  xs: Scale,
  ys: Scale,
): string {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const points = Array.from({ length: POINTS }, (_, place) => {
    const turn = (2 * Math.PI * place) / POINTS;
    const [along, across] = [long * Math.cos(turn), short * Math.sin(turn)];
    return `${xs.at(meanX + along * cos - across * sin)} ${ys.at(meanY + along * sin + across * cos)}`;
  });
  return `M${points.join("L")}Z`;
}
