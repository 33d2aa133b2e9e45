/** A metric that is one of several names, and an `or` behind it. */
import { block, type Slip } from "./slip.ts";

const FURTHER = "Behind `or` further names of `shape` are read";
const limitFirst = (metric: string, text: string) => `${FURTHER}. Put \`${metric}\` first: \`${text}\`.`;

export const SLIPS: readonly Slip[] = [
  {
    name: "a name or a limit",
    text: block(
      "10 shots",
      "target «shape is push or carry at least 150 yd»",
      "target «shape is push or pull or smash-factor at least 1.4»",
      "require «shape is draw or carry within 5 yd of 150 yd and offline within ±8 yd or curve within ±2 yd»",
      "leave out shots where «shape is hook or offline at least 40 yd left»",
    ),
    messages: [
      limitFirst("carry", "carry at least 150 yd or shape is push"),
      limitFirst("smash-factor", "smash-factor at least 1.4 or shape is push or pull"),
      limitFirst(
        "carry",
        "carry within 5 yd of 150 yd and offline within ±8 yd or curve within ±2 yd or shape is draw",
      ),
      limitFirst("offline", "offline at least 40 yd left or shape is hook"),
    ],
    fixed: block(
      "10 shots",
      "target carry at least 150 yd or shape is push",
      "target smash-factor at least 1.4 or shape is push or pull",
      "require carry within 5 yd of 150 yd and offline within ±8 yd or curve within ±2 yd or shape is draw",
      "leave out shots where offline at least 40 yd left or shape is hook",
    ),
  },
  {
    name: "a name or a limit, before a confidence",
    text: block(
      "40 shots",
      "success at least 60 % of shots with «shape is push or carry at least 150 yd» at 80 % confidence",
    ),
    messages: [limitFirst("carry", "carry at least 150 yd or shape is push")],
    fixed: block(
      "40 shots",
      "success at least 60 % of shots with carry at least 150 yd or shape is push at 80 % confidence",
    ),
  },
  {
    name: "a limit that goes with a name, or another limit",
    text: block("10 shots", "target offline within ±8 yd and «shape is push or carry» at least 150 yd"),
    messages: [`${FURTHER}. Put what is said of \`carry\` before them.`],
  },
  {
    name: "the metric again before each name",
    text: block("10 shots", "target shape is push or «shape is» pull"),
    messages: [`${FURTHER}: leave \`shape is\` out before \`pull\`.`],
    fixed: block("10 shots", "target shape is push or pull"),
  },
  {
    name: "names of two metrics",
    text: block("10 shots", "target shape is push or «strike» is toe"),
    messages: [`${FURTHER}. Declare a \`window\` for what stands there, and write \`or inside "…"\`.`],
  },
  {
    name: "a name that must not be",
    text: block("10 shots", "target shape is «not hook»"),
    messages: ["What must not be is said with the names that may be: `shape is … or …`."],
  },
];
