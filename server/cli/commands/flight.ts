import { EXIT_CODES } from "../../../shared/exit-codes.ts";
import { defineCommand } from "../command.ts";

export const flight = defineCommand({
  summary: "Estimate the flight of a launch, or of a table of launches.",
  operands: { usage: "[FILE|-]", least: 0, most: 1 },
  description: [
    "Computes where a ball goes by drag, lift, spin, wind and air, what that would be in reference air (15 °C, 101 325 Pa, dry, still), and how much of the carry within reach the launch used. These are estimates of a model, with a warning where it is stretched, and none where it is not made for the launch.",
    'Amounts have a unit, and a side where it matters, as in plans: "70 m/s", "1.5° right", "3° down". A number without a side is to the right, or up. Draw, fade, in-to-out and the like are read for the --hand.',
    "FILE is a table, CSV or JSON, packed with gzip or not, with columns named as the first options are; the unit stands in the header (`ball-speed in m/s`) or in the cells. Options fill columns that are not there. `-` reads standard input.",
    "Exits with 4 where the table cannot be read.",
  ],
  options: {
    "ball-speed": { kind: "text", placeholder: "SPEED", meaning: "Speed of the ball just after impact." },
    "launch-angle": { kind: "text", placeholder: "ANGLE", meaning: "Above the horizontal." },
    "start-direction": {
      kind: "text",
      placeholder: "ANGLE",
      default: "0°",
      meaning: "To the side of the target line.",
    },
    "spin-rate": { kind: "text", placeholder: "RATE", meaning: "Spin just after impact." },
    "spin-axis": {
      kind: "text",
      placeholder: "ANGLE",
      default: "0°",
      meaning: "Sideways tilt of the axis.",
    },
    carry: {
      kind: "text",
      placeholder: "LENGTH",
      meaning: "Measured carry, to be brought to reference air.",
    },
    "dynamic-loft": { kind: "text", placeholder: "ANGLE", meaning: "Loft at impact." },
    "face-angle": { kind: "text", placeholder: "ANGLE", meaning: "Where the face looks." },
    "attack-angle": {
      kind: "text",
      placeholder: "ANGLE",
      meaning: "Club's way up or down: gives the launch efficiency.",
    },
    "club-path": {
      kind: "text",
      placeholder: "ANGLE",
      meaning: "Club's way across. With the three before: what a degree is worth.",
    },
    hand: {
      kind: "choice",
      choices: ["right", "left"],
      default: "right",
      meaning: "The side the player swings from.",
    },
    temperature: { kind: "text", placeholder: "TEMPERATURE", default: "15 °C", meaning: "Of the air." },
    pressure: {
      kind: "text",
      placeholder: "PRESSURE",
      meaning: "Of the air at the place, not reduced to sea level. Otherwise that of the altitude.",
    },
    altitude: { kind: "text", placeholder: "LENGTH", default: "0 m", meaning: "Above the sea." },
    humidity: { kind: "text", placeholder: "SHARE", default: "0 %", meaning: "Relative humidity." },
    wind: {
      kind: "text",
      placeholder: "WIND",
      default: "calm",
      meaning: 'As in sessions: "3 m/s head", "2 m/s tail and 1 m/s left-to-right".',
    },
    "wind-growth": {
      kind: "text",
      placeholder: "POWER",
      default: "0",
      meaning: "The wind, given for 10 m, grows with this power of the height. 0.14 is usual over grass.",
    },
    ball: {
      kind: "text",
      placeholder: "SHARE",
      default: "100 %",
      meaning: "How far the ball carries compared with a new one: for a measured carry.",
    },
    format: {
      kind: "choice",
      choices: ["text", "json", "csv", "svg"],
      default: "text",
      meaning: "text for people; json and csv for programs; svg for a picture from the side and from above.",
    },
  },
  examples: [
    ['flight --ball-speed "70 m/s" --launch-angle 12° --spin-rate "2700 rpm"', "one launch in reference air"],
    [
      'flight launches.csv --temperature "8 °C" --altitude "400 m" --wind "3 m/s head"',
      "a table in the air of a day",
    ],
    ["flight launches.json --format svg > flights.svg", "a picture"],
  ],
  async run({ operands: [file], options, palette }, io) {
    const { runFlight } = await import("../flight/run-flight.ts");
    const { output, notes } = await runFlight(file, options, palette, io);
    io.stdout.write(output);
    for (const note of notes) io.stderr.write(`${note}\n`);
    return EXIT_CODES.ok.code;
  },
});
