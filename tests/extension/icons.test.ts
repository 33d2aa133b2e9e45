/** The icons of files are seen on the backgrounds they come to stand on. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

/** Relative luminance of a colour such as `#c5ced6`, from 0 to 1 (WCAG 2.2). */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

// The editor shows the icon of dark themes on white too: in its light theme of high contrast.
test.each([
  { icon: "drill-light.svg", backgrounds: ["#ffffff"] },
  { icon: "drill-dark.svg", backgrounds: ["#000000", "#1f1f1f", "#ffffff"] },
])("$icon stands out from $backgrounds", ({ icon, backgrounds }) => {
  const svg = readFileSync(new URL(`../../extension/icons/${icon}`, import.meta.url), "utf8");
  const colours = new Set(svg.match(/#[0-9a-f]{6}/g));
  expect(colours.size).toBe(2);
  for (const colour of colours)
    for (const background of backgrounds)
      expect(contrast(colour, background), `${colour} on ${background}`).toBeGreaterThanOrEqual(3);
});
