/** Slips of the pen: what is marked is what is shown, with what is said, and the text after the first fix of each. */
export interface Slip {
  readonly name: string;
  readonly text: string;
  /** One for each mark, in their order. */
  readonly messages: readonly string[];
  /** Undefined where there is no fix. */
  readonly fixed?: string;
}

/** The text of a plan, and of one with a block, around lines. */
export const plan = (...lines: string[]) =>
  `plan "Gate" {\n${lines.map((line) => `  ${line}\n`).join("")}}\n`;
export const block = (...lines: string[]) =>
  plan('block "Start" {', ...lines.map((line) => `  ${line}`), "}");
