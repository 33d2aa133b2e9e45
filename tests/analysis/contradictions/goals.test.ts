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
  "a spread wider than what is required": {
    wrong: `10 shots
      require launch-angle between 14° up and 16° up
      leave out shots where offline at least 10 yd left
      leave out shots where offline at least 10 yd right
      success {
        «spread of launch-angle at least 2°»
        «middle 80 % of offline spans at least 24 yd»
      }`,
    code: CODE,
    says: [
      "This goal cannot be met: line",
      /(leaves launch-angle 14° to 16° up|leave offline 10 yd left to 10 yd right), and shots so close together never scatter so much\. Change one of them/,
    ],
    right: `10 shots
      require launch-angle between 14° up and 18° up
      leave out shots where offline at least 10 yd left
      leave out shots where offline at least 20 yd right
      success {
        spread of launch-angle at least 2°
        middle 80 % of offline spans at least 24 yd
      }`,
  },
  "a spread that no shots have": {
    wrong: `10 shots
      success «spread of club-path at least 40°»`,
    code: CODE,
    says: ["cannot be met: no plausible shots scatter so much", "Check the number and its unit"],
    right: `10 shots
      success spread of club-path at least 4°`,
  },
  "a change by more than there is": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      «spread of offline falls by at least 120 % against "Before"»
      «carry loses at least 101 % against "Before"»
    }
  }
}`,
    code: CODE,
    says: [
      /asks for a (spread of offline|average carry) that falls by more than there is: 100 % less would leave none/,
    ],
    right: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      spread of offline rises by at least 120 % against "Before"
      carry loses no more than 10 % against "Before"
    }
  }
}`,
  },
  "a change beyond what is plausible": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      «carry gains at least 800 yd against "Before"»
      «club-path moves at least 60° in-to-out against "Before"»
      «spread of offline falls by at least 900 yd against "Before"»
    }
  }
}`,
    code: CODE,
    says: [
      /^No (average carry|average club-path|spread of offline) changes as much as this goal asks for, since a plausible .* is .*\. Check the number and its unit\.$/,
    ],
    right: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      carry gains at least 8 yd against "Before"
      club-path moves at least 6° in-to-out against "Before"
      carry loses at most 800 yd against "Before"
    }
  }
}`,
  },
});
