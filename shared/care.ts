/** The words of care. They stand wherever somebody is asked to swing. */

import { textLiteral } from "./text-literal.ts";

export const CARE =
  "Warm up, build effort gradually, keep clear space around you and follow the rules of the range. Stop on pain, dizziness or numbness, and see a licensed clinician before you go on: nothing here is medical advice. Minors practise with a guardian's consent.";

/** The same beside verdicts and estimates. */
export const CAUTION = `Verdicts and estimates are about numbers, not about health. ${CARE}`;

/** What a new plan or drill tells its player, until the coach finds better words. */
export const FIRST_CAUTIONS: readonly string[] = [
  "Warm up and build up slowly. Stop on pain, dizziness or numbness, and see a licensed clinician before you go on.",
  "Keep clear space, and follow the rules of the range.",
];

/** The same as lines of a plan or drill, indented by a tab. */
export const CAUTION_LINES = FIRST_CAUTIONS.map((caution) => `\tcaution ${textLiteral(caution)}`).join("\n");
