/** Goals that cannot be missed, each beside a look-alike that can. */
import { expectCases } from "../plans.ts";

const CODE = "goal-should-be-able-to-miss";

expectCases({
  "a spread that is wider than what is required": {
    wrong: `20 shots
      require carry between 145 yd and 150 yd
      require offline within ±15 yd
      success {
        «spread of carry at most 8 yd»
        «middle 80 % of offline spans at most 30 yd»
      }`,
    code: CODE,
    says: [
      "cannot be missed",
      /leaves (carry 145 yd to 150 yd|offline 15 yd left to 15 yd right), and shots so close together never scatter more/,
    ],
    right: `20 shots
      require carry between 145 yd and 150 yd
      require offline within ±15 yd
      success {
        spread of carry at most 3 yd
        middle 80 % of offline spans at most 25 yd
        spread of curve at most 8 yd
      }`,
  },
  "a spread over clubs": {
    wrong: `window "Gap" {
  for 7-iron is carry between 148 yd and 152 yd
  for 9-iron is carry between 128 yd and 132 yd
}

plan "Gate" {
  block "One" {
    10 shots with 7-iron
    require inside "Gap"
    success «spread of carry at most 8 yd»
  }
}`,
    code: CODE,
    says: ["leaves carry 148 yd to 152 yd"],
    right: `window "Gap" {
  for 7-iron is carry between 148 yd and 152 yd
  for 9-iron is carry between 128 yd and 132 yd
}

plan "Gate" {
  block "Both" {
    10 shots with 7-iron
    10 shots with 9-iron
    require inside "Gap"
    success spread of carry at most 8 yd
  }
}`,
  },
  "a goal that the requirement has answered": {
    wrong: `10 shots
      require smash-factor at least 1.4
      success «average smash-factor at least 1.35»`,
    code: CODE,
    says: ["cannot be missed", "line 5"],
    right: `10 shots
      require smash-factor at least 1.4
      success average smash-factor at least 1.42`,
  },
  "bad shots that were left out already": {
    wrong: `10 shots
      leave out shots where smash-factor below 1.3
      success «at most 1 of 10 shots with ball-speed below 90 mph and club-speed above 90 mph»`,
    code: CODE,
    says: ["cannot be missed", "line 5", "smash-factor is ball-speed / club-speed"],
    right: `10 shots
      leave out shots where smash-factor below 1.3
      success at most 1 of 10 shots with ball-speed below 120 mph and club-speed above 90 mph`,
  },
  "bad shots up to the very limit that were left out": {
    wrong: `10 shots
      leave out shots where carry below 140 yd
      success {
        «at least 80 % of shots with carry at least 140 yd»
        «average carry at least 140 yd»
        «worst carry at least 140 yd»
      }`,
    code: CODE,
    says: ["line 5 (`leave out shots where carry below 140 yd`) rules out every shot that would"],
    right: `10 shots
      leave out shots where carry below 140 yd
      success {
        at least 80 % of shots with carry above 140 yd
        average carry above 140 yd
        worst carry above 140 yd
      }`,
  },
  "a target that only shots miss which were left out": {
    wrong: `10 shots
      leave out shots where smash-factor below 1.3
      target smash-factor at least 1.25
      success «at least 7 of 10 shots on target»`,
    code: CODE,
    says: ["line 5 (`leave out shots where smash-factor below 1.3`) rules out every shot that would"],
    right: `10 shots
      leave out shots where smash-factor below 1.3
      target smash-factor at least 1.35
      success at least 7 of 10 shots on target`,
  },
});
