/** The words of care that stand wherever somebody is asked to swing. */
export const CAUTION =
  "Verdicts and estimates are about numbers, not about health, and nothing here is medical advice. Warm up, build effort gradually, keep clear space around you and follow the rules of the range; stop on pain, dizziness or numbness, and see a licensed clinician before you go on. Minors practise with a guardian's consent.";
