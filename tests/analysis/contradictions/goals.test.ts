/** Goals that need shots which the block rules out, each beside a look-alike that can be met. */
import { expectCases } from "../plans.ts";

const CODE = "goal-must-be-possible";

expectCases({
  "a goal of shots that do not count": {
    wrong: `10 shots
      require carry at least 120 yd
      success «at least 5 of 10 shots with carry below 100 yd»`,
    code: CODE,
    says: ["needs 5 shots with carry below 100 yd", "line 5"],
    right: `10 shots
      require carry at least 120 yd
      success at most 5 of 10 shots with carry below 120 yd`,
  },
  "a goal over more shots than there are with the only club that can": {
    wrong: `
window "Flight" {
  is launch-angle between 14° up and 20° up
  for driver is launch-angle between 8° up and 12° up
}

plan "Gate" {
  for 7-iron
  block "Start" test {
    4 shots with 7-iron
    8 shots with driver
    success {
      at least 6 of 12 shots inside "Flight"
      «at least 6 of 12 shots with launch-angle above 16° up and launch-angle below 10° up»
    }
  }
}`,
    code: CODE,
    says: ["needs 6 shots", "there is none"],
    right: `
window "Flight" {
  is launch-angle between 14° up and 20° up
  for driver is launch-angle between 8° up and 12° up
}

plan "Gate" {
  for 7-iron
  block "Start" test {
    4 shots with 7-iron
    8 shots with driver
    require inside "Flight"
    success at least 4 of 12 shots with launch-angle above 16° up
  }
}`,
  },
  "an average that no shot lets come about": {
    wrong: `10 shots
      require total at most 160 yd
      success «average carry at least 165 yd»`,
    code: CODE,
    says: ["needs a shot with carry at least 165 yd", "line 5", "a plausible roll"],
    right: `10 shots
      require total at most 160 yd
      success average carry at least 145 yd`,
  },
  "a percentile beyond the requirement": {
    wrong: `10 shots
      require start-direction within ±4°
      success «90th percentile of start-direction at least 6° right»`,
    code: CODE,
    says: ["start-direction at least 6° right", "line 5"],
    right: `10 shots
      require start-direction within ±4°
      success 90th percentile of start-direction at most 3° right`,
  },
  "a worst shot that is left out": {
    wrong: `10 shots
      leave out shots where carry below 120 yd
      success «worst carry below 110 yd»`,
    code: CODE,
    says: ["line 5"],
    right: `10 shots
      leave out shots where carry below 120 yd
      success worst carry above 125 yd`,
  },
});
