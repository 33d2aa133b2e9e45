/** The words of care that end every report for people. */
export const CAUTION =
  "Verdicts and estimates are about numbers, not about health. Warm up, build effort gradually, keep clear space around you, and stop on pain, dizziness or numbness: see a licensed clinician before you go on.";
