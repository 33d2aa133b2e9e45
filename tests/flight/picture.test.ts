/** Pictures of balls in the air: what they say, and that they say it to everybody. */
import { describe, expect, test } from "vitest";
import { SS94_FLAT } from "../../server/flight/coefficients.ts";
import { fly } from "../../server/flight/fly.ts";
import { pathOf } from "../../server/flight/path.ts";
import { REFERENCE } from "../../server/flight/surroundings.ts";
import type { Drawing } from "../../server/report/pictures/figure.ts";
import {
  type FlightDrawing,
  flightDrawing,
  landingDrawing,
  type PicturedShot,
  standalone,
} from "../../server/report/pictures/flight.ts";
import { launch } from "./balls.ts";

/** A shot that starts a degree right or left, in a head wind. */
function shot(name: string, degrees: number): PicturedShot {
  const ball = launch(53 + degrees, 16, degrees, 6200, degrees);
  const windy = { ...REFERENCE, wind: { along: -4, across: 0, exponent: 0 } };
  const [here, there] = [fly(ball, windy, SS94_FLAT), fly(ball, REFERENCE, SS94_FLAT)];
  return {
    name,
    path: pathOf(ball, windy, SS94_FLAT),
    landing: { x: here.downrange, z: here.offline },
    standard: { x: there.downrange, z: there.offline },
  };
}

const SHOTS = [-2, 1, 3, 2, -1].map((degrees, place) => shot(`shot ${place + 1}`, degrees));

const drawing = (other: Partial<FlightDrawing> = {}): FlightDrawing => ({
  title: "Gate",
  shots: SHOTS,
  unit: { symbol: "yd", factor: 0.9144 },
  landing: "measured",
  share: 0.8,
  ...other,
});

/** The drawing as a file. */
const flightPicture = (drawing: FlightDrawing) => fileOf(flightDrawing(drawing), drawing);
const landingPicture = (drawing: FlightDrawing) => fileOf(landingDrawing(drawing), drawing);
const fileOf = (drawn: Drawing | null, drawing: FlightDrawing) =>
  drawn === null ? null : standalone(drawn, drawing);

const count = (svg: string | null, part: string | RegExp) => svg?.match(new RegExp(part, "g"))?.length ?? 0;

describe("from the side and from above", () => {
  const svg = flightPicture(drawing()) ?? "";

  test("every shot has its way, its dot and its diamond in both views", () => {
    expect(count(svg, '<circle class="landed"')).toBe(10);
    expect(count(svg, '<path class="standard"')).toBe(10);
    expect(count(svg, 'stroke-opacity="0.55"')).toBe(10 + 1); // and the key's
    expect(count(svg, "<title>shot 2</title>")).toBe(4);
  });

  test("two patterns have two ellipses, told apart by their lines", () => {
    expect(count(svg, 'stroke-dasharray="none"')).toBe(1);
    expect(count(svg, 'stroke-dasharray="4 3"')).toBe(1);
    expect(count(flightPicture(drawing({ share: null })), "stroke-dasharray")).toBe(0);
    expect(count(flightPicture(drawing({ shots: SHOTS.slice(0, 4) })), "stroke-dasharray")).toBe(0);
  });

  test("a text says what is to be seen", () => {
    expect(/<desc>(.*)<\/desc>/.exec(svg)?.[1]).toMatch(
      /^Gate, flights of 5 shots\. Measured: carry 15\d yd to 17\d yd, on average 16\d yd; from \d+ yd left to \d+ yd right\. In reference air, an estimate: carry 17\d yd to 19\d yd, .*\. Highest point 4\d yd on average, an estimate\.$/,
    );
    expect(svg).toContain('role="img"');
    expect(svg).toContain("<title>Gate</title>");
    expect(svg).toContain("an estimate");
  });

  test("it has no colours of its own, no scripts, no styles and nothing from elsewhere", () => {
    const colours = [...svg.matchAll(/(?:fill|stroke)="([^"]*)"/g)].map(([, colour]) => colour);
    expect(new Set(colours)).toEqual(new Set(["currentColor", "none"]));
    expect(svg.replace(/^<svg style="[^"]*"/, "")).not.toMatch(
      /<script|<style|style=|href|url\(|<image|<foreignObject/,
    );
  });

  test("a metre is as long upwards, aside and along", () => {
    // The carry of a shot in the view from above, in pixels, against its parts.
    const [first] = SHOTS;
    const alone = flightPicture(drawing({ shots: first === undefined ? [] : [first], share: null })) ?? "";
    const circles = [...alone.matchAll(/<circle class="landed" cx="([\d.]+)" cy="([\d.]+)"/g)];
    const zero = [
      ...alone.matchAll(/y1="([\d.]+)" x2="[\d.]+" y2="[\d.]+" stroke="currentColor" stroke-opacity="0.6"/g),
    ];
    const [x, z] = [Number(circles[1]?.[1]) - 54, Number(circles[1]?.[2]) - Number(zero[1]?.[1])];
    expect(z / x).toBeCloseTo((first?.landing?.z ?? 9) / (first?.landing?.x ?? 1), 2);
  });

  test("nothing is drawn beyond its edges, the key not either", () => {
    const [width = 0, height = 0] = (/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)?.slice(1) ?? []).map(Number);
    const parts = [...svg.matchAll(/<g transform="translate\(([\d.]+) ([\d.]+)\)">/g)];
    expect(parts.length).toBeGreaterThan(3);
    for (const [, x, y] of parts) {
      expect(Number(x)).toBeLessThan(width);
      expect(Number(y)).toBeLessThan(height);
    }
  });

  test("all coordinates are numbers with a digit", () => {
    const numbers = svg.replace(/stroke-opacity="[^"]*"/g, "");
    expect(numbers).not.toMatch(/NaN|Infinity|\d\.\d\d/);
  });
});

test("close up, without the ways through the air", () => {
  const svg = landingPicture(drawing());
  expect(count(svg, '<circle class="landed"')).toBe(5);
  expect(count(svg, '<path class="way"')).toBe(0);
  expect(landingDrawing(drawing())?.caption).toMatch(
    /^Average carry 16\d yd measured; 18\d yd in reference air, an estimate\.$/,
  );
});

test("what is not known is not drawn, and nothing at all is no picture", () => {
  const unknown = { name: "shot 4", path: [], landing: null, standard: null };
  const [known = unknown] = SHOTS;
  expect(flightPicture(drawing({ shots: [] }))).toBeNull();
  expect(flightPicture(drawing({ shots: [unknown] }))).toBeNull();
  expect(flightPicture(drawing({ shots: [known, unknown] }))).toContain("flights of 1 shot. ");
  const measured = drawing({ shots: [{ ...known, path: [], standard: null }], share: null });
  expect(flightPicture(measured)).toBeNull();
  expect(landingPicture(measured)).not.toContain("an estimate");
});

test("names are texts, whatever is in them", () => {
  const svg = flightPicture(drawing({ title: "</svg><script>alert(1)</script>" }));
  expect(svg).not.toContain("<script>");
  expect(svg).toContain("&lt;script&gt;");
});

test("standing alone it follows a light or a dark surface", () => {
  expect(flightPicture(drawing())).toMatch(
    /^<svg style="color-scheme:light dark;color:CanvasText;background:Canvas" /,
  );
});
