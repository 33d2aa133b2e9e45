/** What everybody who is shown a number of the model must be told. */

export const LABEL =
  "An estimate of a flight model, not a measurement. It never overrules what was measured.";

export const UNCERTAINTY =
  "± is how far a second set of coefficients is from the first. New balls differ by about as much again: some 18 m (20 yd) on a drive.";

/** When not to trust it. Sentences. */
export const LIMITS: readonly string[] = [
  "Range balls and worn, wet or muddy ones have other drag and lift.",
  "A strike away from the middle of the face tilts the spin; then face and path no longer explain the curve.",
  "A wet face, or grass between face and ball, changes start and spin.",
  "Slow shots and shots with very little or very much spin are beyond what was measured: wedges are stretched, or not told at all.",
  "Wind is one steady stream here; real wind gusts, turns, and blows harder up where the ball is.",
  "The pressure of a weather report is for sea level; the model needs that of the place.",
  "A spin that a device filled in, and did not measure, makes the curve and the standard carry just as much a guess.",
  "Carry ends at the height the ball was hit from. Run is not modelled.",
];
