/** A small curriculum in two files, for tests that go from one to the other. */
export const DRILLS = `/** Starts the ball through a gate. */
drill "Gate" (width: angle = 3°, hits: ratio = 7) blocked {
  10 shots
  target start-direction within ±width
  success at least hits of 10 shots on target
}

finding "Opens the face" {
  when average face-to-path at least 2° open
  suspect "a weak lead hand"
  try "Gate" with width = 4°
}
`;

export const PLANS = `use "./drills"

plan "Strike first" {
  block "Strike" test {
    5 shots
    success 3 in a row with smash-factor at least 1.3
  }
}

plan "Start line" {
  look for "Opens the face"

  block "Where we are" baseline {
    10 shots
  }

  block "Narrow" from "Gate" with width = 2°

  block "Wide" from "Gate"

  then {
    step back to "Strike first" otherwise
  }
}

curriculum "Irons" {
  step "Strike first"
  step "Start line" after "Strike first"
}
`;
